/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/marks.h"

#include "ui/mark.h"

#include <glib/gi18n-lib.h>

#define RULER      "ruler"
#define BLOCKS     "blocks"
#define BEHIND     4 /* px that a second mark shows behind one that stands for several */
#define MOST_WORDS 4 /* warnings that are told; the rest is counted */

/* The lane that shows the trouble. What isn't here is on the ruler only. */
static const struct { const char *lane; const char *checks; } shown[] = {
  { BLOCKS, "repeat unchosen unknown-exercise option-missing option-elsewhere too-loud sides-uneven reps-over minute-full "
            "hold-long space-short kit-missing frame-cut" },
  { "muscles", "same-muscle joint-run grip-run warm-up-misses out-of-balance" },
  { "posture", "change-short up-and-down cool-down-abrupt" },
  { "effort", "warm-up-flat warm-up-hard gone-cold effort-dip effort-over effort-early tired-balance too-dense "
              "lone-hard impact-run" },
  { "talk", "talk-over" },
};

/* Check id -> lane id: asked for every warning in every lane that is painted. */
static GHashTable *
lanes_by_check (void)
{
  static GHashTable *lanes;

  if (lanes != NULL)
    return lanes;
  lanes = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (shown); i++) {
    g_auto (GStrv) checks = g_strsplit (shown[i].checks, " ", -1);

    for (guint c = 0; checks[c] != NULL; c++)
      g_hash_table_insert (lanes, g_strdup (checks[c]), (gpointer) shown[i].lane);
  }
  return lanes;
}

gboolean
lap_marks_shows (const char *lane, const char *id)
{
  return g_str_equal (lane, RULER) || g_strcmp0 (g_hash_table_lookup (lanes_by_check (), id), lane) == 0;
}

static gboolean
is_shown (const LapWarning *warning, gconstpointer lane)
{
  return lap_marks_shows (lane, warning->check->id);
}

int
lap_marks_size (int line)
{
  return line + 10;
}

LapMarks *
lap_marks_of (const LapCheckup *checkup, const LapAxis *axis, int line, const char *id)
{
  /* Where its work ends a block has the room that its number, figure and seconds leave. */
  return lap_marks_new (checkup, axis, lap_marks_size (line), g_str_equal (id, BLOCKS) ? 1 : 0.5,
                        g_str_equal (id, RULER) ? NULL : is_shown, id);
}

void
lap_marks_paint (cairo_t *cr, const LapCheckup *checkup, const LapMarkPlace *mark, int size, int y, PangoLayout *layout)
{
  LapSeverity severity = lap_checkup_nth (checkup, mark->first)->severity;
  g_autofree char *number = g_strdup_printf ("%u", mark->first + 1);

  if (mark->n > 1) {
    pango_layout_set_text (layout, "", -1);
    lap_mark_paint (cr, severity, layout, mark->x - size / 2 + BEHIND, y - size / 2, size);
  }
  pango_layout_set_text (layout, number, -1);
  lap_mark_paint (cr, severity, layout, mark->x - size / 2, y - size / 2, size);
}

char *
lap_marks_words (const LapCheckup *checkup, const LapMarks *marks, guint mark)
{
  GString *words = g_string_new (NULL);
  guint n = g_array_index (marks->places, LapMarkPlace, mark).n, told = 0;

  for (guint i = 0; i < marks->members->len && told < MOST_WORDS; i++) {
    const LapMarkMember *member = &g_array_index (marks->members, LapMarkMember, i);
    g_autofree char *message = NULL;

    if (member->mark != mark)
      continue;
    message = lap_warning_message (checkup, lap_checkup_nth (checkup, member->warning));
    /* Translators: the number of a warning, and what it says. */
    g_string_append_printf (words, _("%1$u: %2$s"), member->warning + 1, message);
    g_string_append_c (words, '\n');
    told++;
  }
  if (n > told)
    g_string_append_printf (words, ngettext ("and %u more", "and %u more", n - told), n - told);
  else if (words->len > 0)
    g_string_truncate (words, words->len - 1);
  return g_string_free (words, FALSE);
}
