/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/formula.h"

#include <glib/gi18n-lib.h>

typedef struct {
  int low, high;
} Range;

static void
widen (Range *range, int value, gboolean first)
{
  range->low = first ? value : MIN (range->low, value);
  range->high = first ? value : MAX (range->high, value);
}

static char *
range_text (const char *low, const char *high)
{
  return g_str_equal (low, high) ? g_strdup (low) : g_strdup_printf ("%s–%s", low, high);
}

/* The number and its unit: seconds below two minutes, whole minutes, or minutes and seconds. */
static char *
seconds_text (Range range, gboolean *minutes)
{
  g_autofree char *low = NULL, *high = NULL;

  *minutes = range.high >= 120;
  if (!*minutes) {
    low = g_strdup_printf ("%d", range.low);
    high = g_strdup_printf ("%d", range.high);
  } else if (range.low % 60 == 0 && range.high % 60 == 0) {
    low = g_strdup_printf ("%d", range.low / 60);
    high = g_strdup_printf ("%d", range.high / 60);
  } else {
    low = lap_clock_text (range.low);
    high = lap_clock_text (range.high);
  }
  return range_text (low, high);
}

static void
cell_clear (gpointer data)
{
  g_free (((LapCell *) data)->big);
  g_free (((LapCell *) data)->small);
}

static void
add_cell (GArray *cells, LapCellKind kind, char *big, const char *small, int seconds)
{
  LapCell cell = { kind, big, g_strdup (small), seconds };

  g_array_append_val (cells, cell);
}

static void
add_seconds (GArray *cells, LapCellKind kind, Range range, const char *with_seconds, const char *with_minutes)
{
  gboolean minutes;
  char *big = seconds_text (range, &minutes);

  add_cell (cells, kind, big, minutes ? with_minutes : with_seconds, range.high);
}

static void
add_count (GArray *cells, guint count, const char *words)
{
  add_cell (cells, LAP_CELL_COUNT, g_strdup_printf ("%u", count), words, 0);
}

/* What the turns of a part have in common. */
typedef struct {
  Range work, rest, reps;
  guint stations;
  gboolean all_reps;
} Common;

static Common
common_of (const LapTimeline *timeline, const LapStretch *stretch)
{
  Common common = { .all_reps = TRUE };
  int sets = stretch->part->run == LAP_RUN_ON_THE_MINUTE ? 1 : stretch->part->sets;

  for (guint i = 0; i < stretch->n_turns; i++) {
    const LapTurn *turn = &timeline->turns[stretch->turn + i];
    const LapTask *task = &timeline->tasks[turn->task];

    widen (&common.work, turn->work / sets, i == 0);
    widen (&common.rest, turn->rest, i == 0);
    widen (&common.reps, LAP_REPS_HIGH (task->reps), i == 0);
    common.reps.low = MIN (common.reps.low, LAP_REPS_LOW (task->reps));
    common.all_reps = common.all_reps && task->reps != 0;
    common.stations += turn->round == 1;
  }
  return common;
}

static void
add_reps (GArray *cells, const Common *common, const char *small)
{
  g_autofree char *low = g_strdup_printf ("%d", common->reps.low);
  g_autofree char *high = g_strdup_printf ("%d", common->reps.high);

  add_cell (cells, LAP_CELL_WORK, range_text (low, high), small, common->work.high);
}

static void
add_work (GArray *cells, const LapPart *part, const Common *common)
{
  if (!common->all_reps) {
    add_seconds (cells, LAP_CELL_WORK, common->work, _("s work"), _("min work"));
  } else if (part->run == LAP_RUN_ON_THE_MINUTE || common->work.low != common->work.high) {
    add_reps (cells, common, _("reps"));
  } else {
    g_autofree char *length = lap_duration_text (common->work.high);
    g_autofree char *small = g_strdup_printf (_("reps in %s"), length);

    add_reps (cells, common, small);
  }
}

static void
add_every (GArray *cells, const LapPart *part)
{
  g_autofree char *length = lap_duration_text (part->every);
  g_autofree char *words = part->every == 60 ? g_strdup (_("each minute")) : g_strdup_printf (_("every %s"), length);

  add_cell (cells, LAP_CELL_WORDS, NULL, words, 0);
}

static void
add_counts (GArray *cells, const LapPart *part, const Common *common)
{
  guint n = common->stations;

  if (part->run != LAP_RUN_OWN_PACE && part->run != LAP_RUN_ON_THE_MINUTE && part->sets > 1)
    add_count (cells, part->sets, g_dngettext (GETTEXT_PACKAGE, "set", "sets", part->sets));
  if (part->run == LAP_RUN_STATIONS)
    add_count (cells, n, g_dngettext (GETTEXT_PACKAGE, "station", "stations", n));
  else
    add_count (cells, n, g_dngettext (GETTEXT_PACKAGE, "exercise", "exercises", n));
  if (part->run != LAP_RUN_OWN_PACE && part->rounds > 1)
    add_count (cells, part->rounds, g_dngettext (GETTEXT_PACKAGE, "round", "rounds", part->rounds));
}

GArray *
lap_formula_of (const LapTimeline *timeline, guint part)
{
  const LapStretch *stretch = &timeline->parts[part];
  GArray *cells = g_array_new (FALSE, FALSE, sizeof (LapCell));
  Common common = common_of (timeline, stretch);

  g_array_set_clear_func (cells, cell_clear);
  if (stretch->part->run == LAP_RUN_OWN_PACE) {
    add_cell (cells, LAP_CELL_WORDS, NULL, _("as many rounds as you can in"), 0);
    add_seconds (cells, LAP_CELL_WORK, (Range) { stretch->part->cap, stretch->part->cap }, _("s"), _("min"));
  } else {
    add_work (cells, stretch->part, &common);
    if (stretch->part->run == LAP_RUN_ON_THE_MINUTE)
      add_every (cells, stretch->part);
    else if (common.rest.high > 0)
      add_seconds (cells, LAP_CELL_REST, common.rest, _("s rest"), _("min rest"));
  }
  add_counts (cells, stretch->part, &common);
  return cells;
}

char *
lap_formula_text (const LapTimeline *timeline, guint part)
{
  g_autoptr (GArray) cells = lap_formula_of (timeline, part);
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < cells->len; i++) {
    const LapCell *cell = &g_array_index (cells, LapCell, i);

    if (i > 0)
      g_string_append (text, cell->kind == LAP_CELL_COUNT ? " × " : cell->kind == LAP_CELL_REST ? ", " : " ");
    if (cell->big != NULL)
      g_string_append_printf (text, "%s ", cell->big);
    g_string_append (text, cell->small);
  }
  return g_string_free (text, FALSE);
}
