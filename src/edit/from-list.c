/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/from-list.h"

#include <glib/gi18n-lib.h>
#include <stdlib.h>
#include <string.h>

/* Common practice, no source. */
#define USUAL_WORK 40
#define USUAL_REST 20
#define MOST_SECONDS 10800

typedef struct {
  LapCatalogue *catalogue;
  GHashTable   *names; /* folded name -> LapExercise */
  LapSession   *session;
  LapPart      *part;  /* of the session, or NULL before the first block */
  GArray       *unknown;
  int           work, rest;
} Reading;

static char *
folded (const char *name)
{
  g_autofree char *lower = g_utf8_casefold (name, -1);

  for (char *c = lower; *c != '\0'; c++)
    if (*c == '-' || *c == '\t')
      *c = ' ';
  return g_utf8_normalize (g_strstrip (lower), -1, G_NORMALIZE_ALL);
}

static void
know (Reading *reading, const char *name, LapExercise *e)
{
  char *key = folded (name);

  if (g_hash_table_contains (reading->names, key))
    g_free (key);
  else
    g_hash_table_insert (reading->names, key, e);
}

/* Names before other names, so that what one exercise is called wins over what another is called, too. */
static void
know_all (Reading *reading)
{
  for (guint i = 0; i < lap_catalogue_n (reading->catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (reading->catalogue, i);

    know (reading, lap_exercise_name (e), e);
    know (reading, e->name, e);
    know (reading, e->id, e);
  }
  for (guint i = 0; i < lap_catalogue_n (reading->catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (reading->catalogue, i);

    for (guint k = 0; e->other_names != NULL && e->other_names[k] != NULL; k++) {
      know (reading, e->other_names[k], e);
      know (reading, g_dgettext (GETTEXT_PACKAGE, e->other_names[k]), e);
    }
  }
}

/* "3. ", "3) ", "- ", "• ", "* " in front goes. */
static const char *
skip_bullet (const char *line)
{
  static const char *const bullets[] = { "-", "•", "*", "–" };
  const char *at = line;

  while (g_ascii_isdigit (*at))
    at++;
  if (at > line && (*at == '.' || *at == ')'))
    return at + 1;
  for (guint i = 0; i < G_N_ELEMENTS (bullets); i++)
    if (g_str_has_prefix (line, bullets[i]))
      return line + strlen (bullets[i]);
  return line;
}

/* Takes "40/20" off the end of @line and keeps it for this line and those after it. */
static void
take_seconds (Reading *reading, char *line)
{
  char *last = strrchr (line, ' '), *end;
  gint64 work, rest;

  if (last == NULL || !g_ascii_isdigit (last[1]))
    return;
  work = g_ascii_strtoll (last + 1, &end, 10);
  if (*end != '/' || !g_ascii_isdigit (end[1]))
    return;
  rest = g_ascii_strtoll (end + 1, &end, 10);
  if (*end != '\0' || work < 1 || work > MOST_SECONDS || rest > MOST_SECONDS)
    return;
  reading->work = work;
  reading->rest = rest;
  *last = '\0';
  g_strchomp (line);
}

static void
begin_part (Reading *reading, LapPartKind kind)
{
  g_autoptr (LapPart) part = lap_part_new (kind);
  g_autoptr (GPtrArray) parts = g_ptr_array_new ();

  g_ptr_array_add (parts, part);
  lap_list_splice (reading->session->parts, lap_session_n (reading->session), 0, parts);
  reading->part = part;
}

/* Whether @line is the heading of a part, which then begins. */
static gboolean
take_heading (Reading *reading, const char *line)
{
  g_autofree char *name = NULL;

  if (!g_str_has_suffix (line, ":"))
    return FALSE;
  name = g_strndup (line, strlen (line) - 1);
  for (guint i = 0; i < lap_part_kinds.n; i++) {
    g_autofree char *wanted = folded (name), *label = folded (lap_words_label (&lap_part_kinds, i));
    g_autofree char *id = folded (lap_words_id (&lap_part_kinds, i));

    if (g_str_equal (wanted, label) || g_str_equal (wanted, id)) {
      begin_part (reading, i);
      return TRUE;
    }
  }
  return FALSE;
}

static int
by_text (gconstpointer a, gconstpointer b)
{
  return strcmp (*(const char * const *) a, *(const char * const *) b);
}

static const char *
nearest_name (Reading *reading, const char *key)
{
  guint n;
  g_autofree gpointer *keys = g_hash_table_get_keys_as_array (reading->names, &n);
  const char *nearest;

  qsort (keys, n, sizeof *keys, by_text); /* the same answer on every machine */
  nearest = lap_nearest (key, (const char * const *) keys);
  return nearest != NULL ? lap_exercise_name (g_hash_table_lookup (reading->names, nearest)) : NULL;
}

static void
take_exercise (Reading *reading, guint number, const char *line)
{
  g_autofree char *key = folded (line);
  LapExercise *e = g_hash_table_lookup (reading->names, key);
  g_autoptr (LapBlock) block = lap_block_new_exercise (e != NULL ? e->id : NULL, reading->work, reading->rest);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new ();
  LapUnknownLine unknown = { number, NULL, NULL };

  if (e == NULL) {
    block->note = g_strdup (line);
    unknown.text = g_strdup (line);
    unknown.nearest = nearest_name (reading, key);
    g_array_append_val (reading->unknown, unknown);
  }
  if (reading->part == NULL)
    begin_part (reading, LAP_PART_MAIN);
  g_ptr_array_add (blocks, block);
  lap_list_splice (reading->part->blocks, lap_part_n (reading->part), 0, blocks);
}

static void
unknown_clear (gpointer data)
{
  g_free (((LapUnknownLine *) data)->text);
}

LapSession *
lap_session_from_list (const char *title, const char *text, LapCatalogue *catalogue, GArray **unknown)
{
  Reading reading = { .catalogue = catalogue, .work = USUAL_WORK, .rest = USUAL_REST };
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);

  reading.session = lap_session_new (title);
  reading.names = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  reading.unknown = g_array_new (FALSE, FALSE, sizeof (LapUnknownLine));
  g_array_set_clear_func (reading.unknown, unknown_clear);
  know_all (&reading);
  for (guint i = 0; lines[i] != NULL; i++) {
    g_autofree char *line = g_strstrip (g_strdup (skip_bullet (g_strstrip (lines[i]))));

    if (*line == '\0' || take_heading (&reading, line))
      continue;
    take_seconds (&reading, line);
    take_exercise (&reading, i + 1, line);
  }
  g_hash_table_unref (reading.names);
  if (unknown != NULL)
    *unknown = reading.unknown;
  else
    g_array_unref (reading.unknown);
  return reading.session;
}

char *
lap_unknown_line_told (const LapUnknownLine *line)
{
  if (line->nearest != NULL)
    return g_strdup_printf (_("Line %1$u, “%2$s”, isn’t known; it may be %3$s."), line->line, line->text, line->nearest);
  return g_strdup_printf (_("Line %1$u, “%2$s”, isn’t known."), line->line, line->text);
}
