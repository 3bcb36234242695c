/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/words.h"

#include <glib/gi18n-lib.h>
#include <string.h>

int
lap_words_find (const LapWords *words, const char *id)
{
  for (guint i = 0; i < words->n; i++)
    if (g_str_equal (words->words[i].id, id))
      return i;
  return -1;
}

const char *
lap_words_id (const LapWords *words, int index)
{
  g_return_val_if_fail (index >= 0 && (guint) index < words->n, NULL);
  return words->words[index].id;
}

const char *
lap_words_label (const LapWords *words, int index)
{
  g_return_val_if_fail (index >= 0 && (guint) index < words->n, NULL);
  return g_dgettext (GETTEXT_PACKAGE, words->words[index].label);
}

guint32
lap_words_mask (const LapWords *words, const char * const *ids)
{
  guint32 mask = 0;

  for (; ids != NULL && *ids != NULL; ids++) {
    int i = lap_words_find (words, *ids);

    if (i >= 0)
      mask |= LAP_BIT (i);
  }
  return mask;
}

/* A label as it stands within a sentence: languages that write nouns with a capital keep it. */
static char *
within (const char *label)
{
  /* Translators: "lower" where the words of a list within a sentence begin with a small letter ("Chest and upper
   * back"), "keep" where they stay as they are. */
  gboolean lower = g_str_equal (_("lower"), "lower");
  gunichar first = g_utf8_get_char (label);
  g_autofree char *small = g_utf8_strdown (label, g_utf8_next_char (label) - label);

  return lower && first != 0 ? g_strconcat (small, g_utf8_next_char (label), NULL) : g_strdup (label);
}

char *
lap_words_join (const LapWords *words, guint32 mask)
{
  g_autoptr (GPtrArray) items = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; i < words->n; i++)
    if (mask & LAP_BIT (i))
      g_ptr_array_add (items, items->len > 0 ? within (lap_words_label (words, i))
                                             : g_strdup (lap_words_label (words, i)));
  g_ptr_array_add (items, NULL);
  return lap_join ((const char * const *) items->pdata);
}

char *
lap_words_all (const LapWords *words)
{
  GString *all = g_string_new (NULL);

  for (guint i = 0; i < words->n; i++)
    g_string_append_printf (all, "%s%s", i > 0 ? ", " : "", words->words[i].id);
  return g_string_free (all, FALSE);
}

char *
lap_join (const char * const *items)
{
  guint n = g_strv_length ((char **) items);
  g_autoptr (GString) head = g_string_new (NULL);

  if (n < 2)
    return g_strdup (n == 1 ? items[0] : "");
  for (guint i = 0; i + 1 < n; i++) {
    if (i > 0)
      /* Translators: between two items of a list that goes on. */
      g_string_append (head, _(", "));
    g_string_append (head, items[i]);
  }
  /* Translators: the end of a list; %1$s is all but the last item. */
  return g_strdup_printf (_("%1$s and %2$s"), head->str, items[n - 1]);
}

/* Levenshtein distance by two rows; names are short. */
static guint
distance (const char *a, const char *b)
{
  gsize n = strlen (b);
  g_autofree guint *row = g_new (guint, n + 1);

  for (gsize j = 0; j <= n; j++)
    row[j] = j;
  for (gsize i = 1; a[i - 1] != '\0'; i++) {
    guint diagonal = row[0];

    row[0] = i;
    for (gsize j = 1; j <= n; j++) {
      guint swap = diagonal + (a[i - 1] != b[j - 1]);

      diagonal = row[j];
      row[j] = MIN (swap, MIN (row[j], row[j - 1]) + 1);
    }
  }
  return row[n];
}

const char *
lap_nearest (const char *name, const char * const *candidates)
{
  const char *nearest = NULL;
  guint least = G_MAXUINT;

  for (; *candidates != NULL; candidates++) {
    gsize longest = MAX (strlen (name), strlen (*candidates));
    guint d;

    if (longest > 256)
      continue;
    d = distance (name, *candidates);
    if (d < least && d * 3 <= longest + 1) {
      least = d;
      nearest = *candidates;
    }
  }
  return nearest;
}
