/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/finder.h"

#include <string.h>

struct _LapFinder {
  LapCatalogue *catalogue;
  GHashTable   *words;                  /* LapExercise -> GPtrArray of folded words, without its muscles */
  GPtrArray    *muscles[LAP_N_MUSCLES]; /* folded words of each and of its region */
  GPtrArray    *wanted;                 /* folded words of the text */
  char         *text;                   /* folded, or NULL */
};

/* The folded words of @text; a word with accents is there as it is and without them. */
static void
add_words (GPtrArray *words, const char *text)
{
  g_auto (GStrv) plain = NULL, folded = g_str_tokenize_and_fold (text, NULL, &plain);

  for (guint i = 0; folded[i] != NULL; i++)
    g_ptr_array_add (words, g_strdup (folded[i]));
  for (guint i = 0; plain[i] != NULL; i++)
    g_ptr_array_add (words, g_strdup (plain[i]));
}

static GPtrArray *
words_of (const LapExercise *e)
{
  GPtrArray *words = g_ptr_array_new_with_free_func (g_free);

  add_words (words, e->name);
  if (!g_str_equal (lap_exercise_name (e), e->name))
    add_words (words, lap_exercise_name (e));
  for (guint i = 0; e->other_names != NULL && e->other_names[i] != NULL; i++) {
    add_words (words, e->other_names[i]);
    add_words (words, g_dgettext (GETTEXT_PACKAGE, e->other_names[i]));
  }
  return words;
}

LapFinder *
lap_finder_new (LapCatalogue *catalogue)
{
  LapFinder *finder = g_new0 (LapFinder, 1);

  finder->catalogue = lap_catalogue_ref (catalogue);
  finder->words = g_hash_table_new_full (NULL, NULL, NULL, (GDestroyNotify) g_ptr_array_unref);
  finder->wanted = g_ptr_array_new_with_free_func (g_free);
  for (guint i = 0; i < lap_catalogue_n (catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (catalogue, i);

    g_hash_table_insert (finder->words, e, words_of (e));
  }
  for (guint m = 0; m < LAP_N_MUSCLES; m++) {
    int region = g_bit_nth_lsf (lap_muscle_regions (LAP_BIT (m)), -1);

    finder->muscles[m] = g_ptr_array_new_with_free_func (g_free);
    add_words (finder->muscles[m], lap_words_label (&lap_muscles, m));
    add_words (finder->muscles[m], lap_words_id (&lap_muscles, m));
    add_words (finder->muscles[m], lap_words_label (&lap_regions, region));
  }
  return finder;
}

void
lap_finder_free (LapFinder *finder)
{
  for (guint m = 0; m < LAP_N_MUSCLES; m++)
    g_ptr_array_unref (finder->muscles[m]);
  g_hash_table_unref (finder->words);
  g_ptr_array_unref (finder->wanted);
  lap_catalogue_unref (finder->catalogue);
  g_free (finder->text);
  g_free (finder);
}

/* A word typed with an accent is looked for without it: somebody who types one means the same move. */
void
lap_finder_set_text (LapFinder *finder, const char *text)
{
  g_auto (GStrv) folded = g_str_tokenize_and_fold (text != NULL ? text : "", NULL, NULL);

  g_free (finder->text);
  finder->text = g_utf8_casefold (text != NULL ? text : "", -1);
  g_ptr_array_set_size (finder->wanted, 0);
  for (guint i = 0; folded[i] != NULL; i++) {
    g_auto (GStrv) plain = NULL, again = g_str_tokenize_and_fold (folded[i], NULL, &plain);

    g_ptr_array_add (finder->wanted, g_strdup (plain[0] != NULL ? plain[0] : folded[i]));
  }
}

static gboolean
begins_one (const char *wanted, const GPtrArray *words)
{
  for (guint i = 0; i < words->len; i++)
    if (g_str_has_prefix (g_ptr_array_index (words, i), wanted))
      return TRUE;
  return FALSE;
}

static gboolean
is_there (const LapFinder *finder, const char *wanted, const LapExercise *exercise)
{
  const GPtrArray *words = g_hash_table_lookup (finder->words, exercise);

  if (words != NULL && begins_one (wanted, words))
    return TRUE;
  for (guint m = 0; m < LAP_N_MUSCLES; m++)
    if ((exercise->primary_mask & LAP_BIT (m)) && begins_one (wanted, finder->muscles[m]))
      return TRUE;
  return FALSE;
}

gboolean
lap_finder_matches (const LapFinder *finder, const LapExercise *exercise)
{
  for (guint i = 0; i < finder->wanted->len; i++)
    if (!is_there (finder, g_ptr_array_index (finder->wanted, i), exercise))
      return FALSE;
  return TRUE;
}

gsize
lap_finder_distance (const LapFinder *finder, const LapExercise *exercise)
{
  g_autofree char *name = g_utf8_casefold (lap_exercise_name (exercise), -1);

  return finder->text != NULL && g_str_has_prefix (name, finder->text) ? strlen (name) : G_MAXSIZE;
}
