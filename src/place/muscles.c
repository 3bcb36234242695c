/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/muscles.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define HARD_MET  7.0 /* METs from which work leaves people breathless; vigorous begins at 6 (2024 Compendium) */
#define GROUP_GAP 5   /* px above the rows that begin a group */
#define PAD       3   /* px above and below all rows */

/* Rows before which there is a gap: trunk, upper body, breath. */
static const guint32 group_starts = LAP_BIT (LAP_REGION_FRONT_CORE) | LAP_BIT (LAP_REGION_CHEST) |
                                    LAP_BIT (LAP_ROW_BREATHLESS);

/* Rows that a task works hard, and those that it has help. */
typedef struct {
  guint32  hard, helps;
  gboolean known;
} Rows;

typedef struct {
  const LapScore *score;
  const LapAxis  *axis;
  Rows           *rows; /* by task, found when they are asked for: tasks are few, boxes many */
  GArray         *loads;
  gint64          last[LAP_N_ROWS]; /* index of the last load, -1 without */
} Gather;

void
lap_task_rows (const LapTask *task, guint32 *hard, guint32 *helps)
{
  *hard = *helps = 0;
  if (task->shown == NULL)
    return;
  *hard = lap_muscle_regions (task->primary);
  *helps = lap_muscle_regions (task->secondary) & ~*hard;
  if (task->met >= HARD_MET || task->shown->impact == LAP_IMPACT_HIGH)
    *hard |= LAP_BIT (LAP_ROW_BREATHLESS);
}

static Rows
rows_of (Gather *g, guint32 task)
{
  Rows *rows = &g->rows[task];

  if (!rows->known)
    lap_task_rows (&g->score->timeline->tasks[task], &rows->hard, &rows->helps);
  rows->known = TRUE;
  return *rows;
}

/* Small neighbours in a row become one bar, so that there is at most one a pixel: where both lie in a pixel, what works
 * hard is seen. */
static gboolean
join (Gather *g, const LapLoad *load)
{
  LapLoad *last = g->last[load->row] >= 0 ? &g_array_index (g->loads, LapLoad, g->last[load->row]) : NULL;
  int from = MIN (load->x, last != NULL ? last->x : load->x);
  gboolean touches = last != NULL && (g->axis->mirrored ? load->x + load->width >= last->x
                                                        : load->x <= last->x + last->width);

  if (!touches || load->width >= LAP_MERGE_BELOW)
    return FALSE;
  last->width = MAX (last->x + last->width, load->x + load->width) - from;
  last->x = from;
  last->helps &= load->helps;
  return TRUE;
}

static void
add (Gather *g, const LapBox *box, guint row, gboolean helps)
{
  int a = lround (lap_axis_x (g->axis, box->start)), b = lround (lap_axis_x (g->axis, box->body));
  LapLoad load = { MIN (a, b), MAX (ABS (b - a), 1), 0, row, helps, box->round > 1 && !box->changed };

  if (join (g, &load))
    return;
  g->last[row] = g->loads->len;
  g_array_append_val (g->loads, load);
}

/* A load fades until the next hard one in its row. Loads are small when they are many; then nothing fades. */
static void
add_fades (Gather *g)
{
  double most = LAP_FADE * g->axis->zoom;
  double next[LAP_N_ROWS];

  for (guint row = 0; row < LAP_N_ROWS; row++)
    next[row] = G_MAXDOUBLE;
  for (guint i = g->loads->len; i-- > 0;) {
    LapLoad *load = &g_array_index (g->loads, LapLoad, i);
    double start = g->axis->mirrored ? -(load->x + load->width) : load->x;

    if (load->helps)
      continue;
    if (load->width >= LAP_MERGE_BELOW)
      load->fade = MIN (most, MAX (0, next[load->row] - start - load->width));
    next[load->row] = start;
  }
}

GArray *
lap_score_loads (const LapScore *score, const LapAxis *axis)
{
  g_autofree Rows *rows = g_new0 (Rows, score->timeline->n_tasks + 1);
  Gather g = { score, axis, rows, g_array_new (FALSE, FALSE, sizeof (LapLoad)), { 0 } };
  double last = lap_axis_last (axis) + LAP_FADE;
  guint first = score->n > 0 ? lap_score_at (score, MAX (0, lap_axis_first (axis) - LAP_FADE)) : 0;

  for (guint row = 0; row < LAP_N_ROWS; row++)
    g.last[row] = -1;
  for (guint i = first; i < score->n && score->boxes[i].start <= last; i++) {
    const LapBox *box = &score->boxes[i];
    Rows of = box->task != LAP_NO_TASK ? rows_of (&g, box->task) : (Rows) { 0 };
    guint32 all = of.hard | of.helps;

    for (guint row = 0; all != 0; row++, all >>= 1)
      if (all & 1)
        add (&g, box, row, (of.hard & LAP_BIT (row)) == 0);
  }
  add_fades (&g);
  return g.loads;
}

/* Whether the turn runs on from the one before it and tires the same muscles; as the check of that name sees it. */
static guint32
shared_rows (const LapTimeline *t, guint turn)
{
  const LapTurn *a = &t->turns[turn - 1], *b = &t->turns[turn];
  const LapExercise *from = t->tasks[a->task].shown, *to = t->tasks[b->task].shown;
  guint32 muscles;

  if (b->apart || b->joined || a->part_kind != LAP_PART_MAIN || b->part_kind != LAP_PART_MAIN || a->end > b->start ||
      from == NULL || to == NULL || !lap_exercises_tire (from, to, &muscles))
    return 0;
  return lap_muscle_regions (muscles);
}

GArray *
lap_score_clashes (const LapScore *score, const LapAxis *axis)
{
  const LapTimeline *t = score->timeline;
  GArray *clashes = g_array_new (FALSE, FALSE, sizeof (LapClash));
  int drawn = -LAP_MOST_SECONDS;
  guint first, end;

  lap_score_turns (score, axis, &first, &end);
  for (guint i = first + 1; i < end; i++) {
    const LapTurn *a = &t->turns[i - 1], *b = &t->turns[i];
    guint32 rows;
    int from, to;

    /* Nearer than a pixel to the last it can't be told from that. */
    if ((b->start - drawn) * axis->zoom < 1 || (rows = shared_rows (t, i)) == 0)
      continue;
    drawn = b->start;
    from = lround (lap_axis_x (axis, a->end));
    to = lround (lap_axis_x (axis, b->start));
    g_array_append_vals (clashes, &(LapClash) { MIN (from, to), ABS (to - from), a->start, b->end, rows,
                                                b->round > 1 }, 1);
  }
  return clashes;
}

int
lap_load_rows_height (int line, gboolean open)
{
  int top, height;

  lap_load_rows_place (line, open, LAP_N_ROWS - 1, &top, &height);
  return top + height + PAD;
}

void
lap_load_rows_place (int line, gboolean open, guint row, int *top, int *height)
{
  *height = open ? line : line + line / 2;
  *top = PAD;
  for (guint i = 0; open && i < row; i++)
    *top += *height + (group_starts & LAP_BIT (i + 1) ? GROUP_GAP : 0);
}

const char *
lap_load_row_label (guint row)
{
  return row == LAP_ROW_BREATHLESS ? _("Breathless") : lap_words_label (&lap_regions, row);
}
