/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A box begins with the first interval of a block's go in a round and takes the intervals of the same part, round
 * and block along; its body ends with the last one that is no rest. Everything else finds boxes by halving.
 */
#include "place/score.h"

#include "base/halve.h"

#include <math.h>

static LapBoxKind
box_kind (const LapInterval *interval)
{
  if (interval->block == LAP_NO_BLOCK)
    return interval->kind == LAP_INTERVAL_WORK ? LAP_BOX_OWN_PACE : LAP_BOX_GAP;
  if (interval->kind == LAP_INTERVAL_TALK)
    return LAP_BOX_TALK;
  return interval->kind == LAP_INTERVAL_PAUSE ? LAP_BOX_PAUSE : LAP_BOX_EXERCISE;
}

static gboolean
is_changed (const LapTimeline *timeline, const LapInterval *interval)
{
  const LapTask *task = lap_timeline_task (timeline, interval);

  return task != NULL && task->block->in_round != NULL &&
         lap_changes_find (task->block->in_round, interval->round) != NULL;
}

static LapBox
box_new (const LapTimeline *timeline, const LapInterval *interval)
{
  LapBox box = {
    .start = interval->start, .body = interval->start, .end = interval->start, .task = interval->task,
    .part = interval->part, .block = interval->block, .round = interval->round, .kind = box_kind (interval),
  };

  box.changed = is_changed (timeline, interval);
  return box;
}

static void
box_take (LapBox *box, const LapInterval *interval)
{
  box->end = interval->start + interval->seconds;
  if (interval->kind == LAP_INTERVAL_WORK)
    box->work += interval->seconds;
  if (interval->kind != LAP_INTERVAL_REST && box->kind != LAP_BOX_GAP)
    box->body = box->end;
}

static gboolean
belongs (const LapBox *box, const LapInterval *interval)
{
  return box->block != LAP_NO_BLOCK && box->part == interval->part && box->block == interval->block &&
         box->round == interval->round;
}

/* The turn that @block of @stretch takes at one's own pace, or NULL for a talk or pause. */
static const LapTurn *
turn_of (const LapTimeline *timeline, const LapStretch *stretch, guint block)
{
  for (guint i = stretch->turn; i < stretch->turn + stretch->n_turns; i++)
    if (timeline->turns[i].block == block)
      return &timeline->turns[i];
  return NULL;
}

static LapBox
own_pace_box (const LapTimeline *timeline, const LapInterval *interval, guint block)
{
  const LapStretch *stretch = &timeline->parts[interval->part];
  const LapTurn *turn = turn_of (timeline, stretch, block);
  const LapTask *task = turn != NULL ? &timeline->tasks[turn->task] : NULL;
  LapBox box = { .part = interval->part, .block = block, .round = 1, .task = LAP_NO_TASK, .kind = LAP_BOX_OWN_PACE };

  if (task == NULL)
    box.work = lap_part_nth (stretch->part, block)->seconds;
  else
    box.work = task->estimate > 0 ? task->estimate : task->work;
  if (turn != NULL)
    box.task = turn->task;
  return box;
}

/* At one's own pace nobody knows when a block comes, but in which order, and what it takes beside the others: its
 * box is its share of the cap. */
static void
add_own_pace (GArray *boxes, const LapTimeline *timeline, const LapInterval *interval)
{
  guint n = lap_part_n (timeline->parts[interval->part].part), first = boxes->len;
  gint64 sum = 0, gone = 0;

  for (guint i = 0; i < n; i++) {
    LapBox box = own_pace_box (timeline, interval, i);

    sum += box.work;
    g_array_append_val (boxes, box);
  }
  for (guint i = first; i < boxes->len; i++) {
    LapBox *box = &g_array_index (boxes, LapBox, i);

    box->start = interval->start + gone * interval->seconds / sum;
    gone += box->work;
    box->body = box->end = interval->start + gone * interval->seconds / sum;
  }
}

static void
add_rounds (LapScore *self)
{
  GArray *rounds = g_array_new (FALSE, FALSE, sizeof (LapRoundBox));

  for (guint i = 0; i < self->n; i++) {
    const LapBox *box = &self->boxes[i];
    LapRoundBox *last = rounds->len > 0 ? &g_array_index (rounds, LapRoundBox, rounds->len - 1) : NULL;

    if (box->kind == LAP_BOX_GAP || self->timeline->parts[box->part].part->rounds < 2)
      continue;
    if (last != NULL && last->part == box->part && last->round == box->round)
      last->end = box->end;
    else
      g_array_append_vals (rounds, &(LapRoundBox) { box->start, box->end, box->part, box->round }, 1);
  }
  self->n_rounds = rounds->len;
  self->rounds = (LapRoundBox *) g_array_free (rounds, FALSE);
}

LapScore *
lap_score_new (LapTimeline *timeline)
{
  LapScore *self = g_new0 (LapScore, 1);
  GArray *boxes = g_array_sized_new (FALSE, FALSE, sizeof (LapBox), timeline->n / 2 + 1);

  self->timeline = lap_timeline_ref (timeline);
  for (guint i = 0; i < timeline->n; i++) {
    const LapInterval *interval = &timeline->intervals[i];
    LapBox *last = boxes->len > 0 ? &g_array_index (boxes, LapBox, boxes->len - 1) : NULL;

    if (last != NULL && belongs (last, interval))
      box_take (last, interval);
    else if (box_kind (interval) == LAP_BOX_OWN_PACE && lap_part_n (timeline->parts[interval->part].part) > 0)
      add_own_pace (boxes, timeline, interval);
    else {
      LapBox box = box_new (timeline, interval);

      box_take (&box, interval);
      g_array_append_val (boxes, box);
    }
  }
  self->n = boxes->len;
  self->boxes = (LapBox *) g_array_free (boxes, FALSE);
  add_rounds (self);
  return self;
}

void
lap_score_free (LapScore *self)
{
  lap_timeline_unref (self->timeline);
  g_free (self->boxes);
  g_free (self->rounds);
  g_free (self);
}

gboolean
lap_box_is_block (const LapBox *box)
{
  return box->block != LAP_NO_BLOCK;
}

guint
lap_score_at (const LapScore *self, double second)
{
  if (self->n == 0)
    return LAP_NO_BOX;
  return lap_last_of (LAP_HALVE (self->n, i, self->boxes[i].start <= second));
}

/* Part, then round, then block is the order of time, but for a rest after a part, which has neither: it is last. */
static int
compare (const LapBox *box, guint part, guint block, guint round)
{
  guint box_round = box->round == 0 ? G_MAXUINT : box->round;

  if (box->part != part)
    return box->part < part ? -1 : 1;
  if (box_round != round)
    return box_round < round ? -1 : 1;
  return box->block < block ? -1 : box->block > block;
}

guint
lap_score_find (const LapScore *self, guint part, guint block, guint round)
{
  guint found = LAP_HALVE (self->n, i, compare (&self->boxes[i], part, block, round) < 0);

  return found < self->n && compare (&self->boxes[found], part, block, round) == 0 ? found : LAP_NO_BOX;
}

guint
lap_score_step (const LapScore *self, guint box, int by)
{
  gint64 i = box != LAP_NO_BOX ? (gint64) box + by : by > 0 ? 0 : (gint64) self->n - 1;

  for (; i >= 0 && i < self->n; i += by)
    if (lap_box_is_block (&self->boxes[i]))
      return i;
  return LAP_NO_BOX;
}

LapPlaced
lap_score_place (const LapScore *self, const LapAxis *axis, guint box)
{
  const LapBox *b = &self->boxes[box];
  int from = lround (lap_axis_x (axis, b->start)), body = lround (lap_axis_x (axis, b->body));
  int to = lround (lap_axis_x (axis, b->end));

  if (axis->mirrored)
    return (LapPlaced) { to, from - to, from - body };
  return (LapPlaced) { from, to - from, body - from };
}

void
lap_score_visible (const LapScore *self, const LapAxis *axis, guint *first, guint *end)
{
  double from = lap_axis_first (axis), to = lap_axis_last (axis);

  *first = *end = 0;
  if (self->n == 0)
    return;
  *first = lap_score_at (self, from);
  *end = lap_score_at (self, to);
  if (self->boxes[*end].start < to || *end == *first)
    (*end)++;
}

void
lap_score_turns (const LapScore *self, const LapAxis *axis, guint *first, guint *end)
{
  double from = lap_axis_first (axis), to = lap_axis_last (axis);
  guint before = lap_timeline_turn (self->timeline, from);

  *first = before > 2 ? before - 2 : 0;
  *end = MIN (lap_timeline_turn (self->timeline, to) + 1, self->timeline->n_turns);
}

/* Streaks are gathered pixel by pixel: what part of it each kind covers, and the greatest wins. A stretch of one
 * kind that covers whole pixels goes through at once. */
typedef struct {
  const LapAxis *axis;
  GArray        *streaks;
  int            x;                    /* the pixel being gathered, from the side where time comes from */
  double         share[LAP_N_STREAKS]; /* of it */
  guint8         later;
} Gather;

static void
emit (Gather *g, int x, int width, guint8 kind, guint8 later)
{
  LapStreak *last = g->streaks->len > 0 ? &g_array_index (g->streaks, LapStreak, g->streaks->len - 1) : NULL;

  if (last != NULL && last->kind == kind && last->later == later && last->x + last->width == x)
    last->width += width;
  else
    g_array_append_vals (g->streaks, &(LapStreak) { x, width, kind, later }, 1);
}

static void
flush (Gather *g)
{
  guint8 best = 0;

  for (guint8 i = 1; i < LAP_N_STREAKS; i++)
    if (g->share[i] > g->share[best])
      best = i;
  if (g->share[best] > 0)
    emit (g, g->x, 1, best, g->later);
  memset (g->share, 0, sizeof g->share);
}

static void
gather (Gather *g, double from, double to, guint8 kind, guint8 later)
{
  int last = floor (to);

  if (floor (from) > g->x) {
    flush (g);
    g->x = floor (from);
  }
  if (last > g->x) {
    g->share[kind] += g->x + 1 - from;
    g->later = later;
    flush (g);
    if (last > g->x + 1)
      emit (g, g->x + 1, last - g->x - 1, kind, later);
    g->x = last;
    from = last;
  }
  g->share[kind] += to - from;
  g->later = later;
}

/* Distance from the side where time comes from, held to the view. */
static double
along (const LapAxis *axis, double second)
{
  double x = lap_axis_x (axis, second);

  return CLAMP (axis->mirrored ? axis->view - x : x, 0, axis->view);
}

GArray *
lap_score_streaks (const LapScore *self, const LapAxis *axis, int below)
{
  static const guint8 kinds[] = { LAP_STREAK_WORK, LAP_STREAK_TALK, LAP_STREAK_PAUSE, LAP_STREAK_WORK,
                                  LAP_STREAK_REST };
  Gather g = { axis, g_array_new (FALSE, FALSE, sizeof (LapStreak)), 0, { 0 }, 0 };
  guint first, end;

  lap_score_visible (self, axis, &first, &end);
  for (guint i = first; i < end; i++) {
    const LapBox *box = &self->boxes[i];

    if (lap_score_place (self, axis, i).width >= below)
      continue;
    if (box->body > box->start)
      gather (&g, along (axis, box->start), along (axis, box->body), kinds[box->kind], box->round > 1);
    if (box->end > box->body)
      gather (&g, along (axis, box->body), along (axis, box->end), LAP_STREAK_REST, box->round > 1);
  }
  flush (&g);
  for (guint i = 0; axis->mirrored && i < g.streaks->len; i++) {
    LapStreak *streak = &g_array_index (g.streaks, LapStreak, i);

    streak->x = (int) axis->view - streak->x - streak->width;
  }
  return g.streaks;
}

LapHit
lap_score_hit (const LapScore *self, const LapAxis *axis, double x, double reach)
{
  LapHit hit = { .second = lap_axis_second (axis, x), .box = LAP_NO_BOX };
  double from = lap_axis_x (axis, 0), to = lap_axis_x (axis, axis->length);
  guint near;

  if (self->n == 0 || x < MIN (from, to) || x >= MAX (from, to))
    return hit;
  hit.box = lap_score_at (self, hit.second);
  near = hit.box;
  /* Just past an edge the box before is meant. */
  if (near > 0 && fabs (lap_axis_x (axis, self->boxes[near].start) - x) <= reach)
    near--;
  for (; near <= hit.box; near++) {
    const LapBox *box = &self->boxes[near];

    if (box->kind == LAP_BOX_GAP)
      continue;
    if (fabs (lap_axis_x (axis, box->body) - x) <= reach)
      hit.edge = LAP_EDGE_BODY;
    else if (fabs (lap_axis_x (axis, box->end) - x) <= reach)
      hit.edge = LAP_EDGE_TAIL;
    else
      continue;
    hit.box = near;
    return hit;
  }
  return hit;
}
