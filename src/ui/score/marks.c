/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/marks.h"

#include "ui/mark.h"
#include "ui/palette.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define RULER      "ruler"
#define BLOCKS     "blocks"
#define MOST_MORE  99 /* that are counted beside a mark for several */
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

gboolean
lap_marks_only_ruler (const char *id)
{
  return g_hash_table_lookup (lanes_by_check (), id) == NULL;
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

/* px beside a mark for "+99". */
static int
more_width (int line)
{
  return line * 3 / 2;
}

/* "+4" on a strip of paper that begins under the mark. */
static void
paint_more (cairo_t *cr, guint more, int size, int wide, int x, int y, PangoLayout *layout, gboolean mirrored)
{
  GdkRGBA paper = lap_colour (LAP_COLOUR_CARD), rim = lap_colour (LAP_COLOUR_LINE2), ink = lap_colour (LAP_COLOUR_INK);
  g_autofree char *text = g_strdup_printf ("+%u", MIN (more, MOST_MORE));
  int high = size * 5 / 8, under = size / 2, left = mirrored ? x : x + under, free = wide - size;

  pango_layout_set_text (layout, text, -1);
  lap_paint_box (cr, &paper, &rim, 1, high / 2, left, y - high / 2, wide - under, high);
  lap_paint_small (cr, layout, &ink, (mirrored ? x : x + size) + free / 2.0 + (mirrored ? 1 : -1), y);
}

LapMarks *
lap_marks_of (const LapCheckup *checkup, const LapAxis *axis, int line, const char *id)
{
  /* Where its work ends a block has the room that its number, figure and seconds leave. */
  return lap_marks_new (checkup, axis, lap_marks_size (line), lap_marks_size (line) + more_width (line),
                        g_str_equal (id, BLOCKS) ? 1 : 0.5,
                        g_str_equal (id, RULER) ? NULL : is_shown, id);
}

void
lap_marks_paint (cairo_t *cr, const LapCheckup *checkup, const LapMarkPlace *mark, int size, int y, PangoLayout *layout,
                 gboolean mirrored)
{
  int x = mark->x - mark->width / 2;

  LapSeverity severity = lap_checkup_nth (checkup, mark->first)->severity;
  g_autofree char *number = g_strdup_printf ("%u", mark->first + 1);

  if (mark->n > 1)
    paint_more (cr, mark->n - 1, size, mark->width, x, y, layout, mirrored);
  pango_layout_set_text (layout, number, -1);
  lap_mark_paint (cr, severity, layout, mirrored ? x + mark->width - size : x, y - size / 2, size);
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
