/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Expansion. A part goes round by round through its blocks. What a block asks for is resolved once and used in
 * every round that doesn't change it; a round that is like an earlier one is copied from it with its clock moved,
 * which is what makes long plans cheap. The first thing that can't be laid out stops it all: the work so far is
 * dropped and the error names the place.
 */
#include "timeline/timeline.h"

#include "base/error.h"
#include "base/halve.h"
#include "timeline/task.h"

static const LapWord kinds[] = {
  { "work", "work" }, { "rest", "rest" }, { "switch", "switch" }, { "set-rest", "set-rest" },
  { "round-rest", "round-rest" }, { "after", "after" }, { "talk", "talk" }, { "pause", "pause" },
};
const LapWords lap_interval_kinds = { "a kind of interval", kinds, G_N_ELEMENTS (kinds) };

G_DEFINE_BOXED_TYPE (LapTimeline, lap_timeline, lap_timeline_ref, lap_timeline_unref)

/* A round that has been laid out: what copying it takes. */
typedef struct {
  guint interval, n_intervals; /* without the round rest after it */
  guint turn, n_turns;
  int   start, seconds;
  int   work, rest;            /* what it added to the sums of the part */
} Round;

/* The state of one expansion. */
typedef struct {
  LapTimeline *timeline;
  guint        room, task_room, turn_room; /* of the arrays */
  gboolean     full;    /* a limit was met: nothing more is added */
  LapPart     *part;
  guint16      p, round;
  gboolean     apart;   /* the next turn isn't neighbour to the last */
  guint        per_round; /* turns in a round of the part */
  guint        matched; /* turns in a row that were just so one round earlier */
} Build;

/* Three bouts of two sides each: as far back as a check looks. */
#define LOOK_BACK 6

static void
reserve (Build *b, guint intervals, guint turns)
{
  LapTimeline *t = b->timeline;

  if (t->n + intervals > b->room) {
    b->room = MAX (b->room * 2, t->n + intervals);
    t->intervals = g_renew (LapInterval, t->intervals, b->room);
  }
  if (t->n_turns + turns > b->turn_room) {
    b->turn_room = MAX (b->turn_room * 2, t->n_turns + turns);
    t->turns = g_renew (LapTurn, t->turns, b->turn_room);
  }
}

static void
push (Build *b, LapIntervalKind kind, int seconds, guint32 task, guint16 block, LapSide side)
{
  LapTimeline *t = b->timeline;
  LapInterval *interval;

  if (seconds <= 0 || b->full)
    return;
  reserve (b, 1, 0);
  interval = &t->intervals[t->n++];
  interval->start = t->length;
  interval->seconds = seconds;
  interval->task = task;
  interval->part = b->p;
  interval->block = block;
  interval->round = b->round;
  interval->kind = kind;
  interval->side = side;
  t->length += seconds;
  b->full = t->n > LAP_MOST_INTERVALS || t->length > LAP_MOST_SECONDS;
}

static guint32
add_task (Build *b, const LapTask *task)
{
  LapTimeline *t = b->timeline;

  if (t->n_tasks == b->task_room) {
    b->task_room *= 2;
    t->tasks = g_renew (LapTask, t->tasks, b->task_room);
  }
  t->tasks[t->n_tasks] = *task;
  return t->n_tasks++;
}

/* The same block again, or left and right of one exercise in two blocks, tire the body as one. */
static gboolean
is_joined (const LapTimeline *t, const LapTurn *before, const LapTurn *turn)
{
  const LapTask *a = &t->tasks[before->task], *b = &t->tasks[turn->task];

  if (turn->apart || before->part_kind != turn->part_kind)
    return FALSE;
  if (a->block == b->block)
    return a->shown == b->shown;
  return a->shown != NULL && a->shown == b->shown &&
         ((a->sides == LAP_SIDES_LEFT && b->sides == LAP_SIDES_RIGHT) ||
          (a->sides == LAP_SIDES_RIGHT && b->sides == LAP_SIDES_LEFT));
}

/* Whether the newest turn is that of one round earlier, in the same neighbourhood. */
static gboolean
matches_round_before (const Build *b)
{
  const LapTimeline *t = b->timeline;
  guint k = t->n_turns;

  return k >= t->parts[b->p].turn + b->per_round && t->turns[k].task == t->turns[k - b->per_round].task &&
         t->turns[k].apart == t->turns[k - b->per_round].apart;
}

static void
add_turn (Build *b, guint32 task, guint16 block, guint interval, int start, int work)
{
  LapTimeline *t = b->timeline;
  LapStretch *stretch = &t->parts[b->p];
  LapTurn *turn;

  reserve (b, 0, 1);
  turn = &t->turns[t->n_turns];
  turn->start = start;
  turn->end = t->length;
  turn->work = work;
  turn->rest = t->tasks[task].rest;
  turn->task = task;
  turn->interval = interval;
  turn->part = b->p;
  turn->block = block;
  turn->round = b->round;
  turn->part_kind = b->part->kind;
  turn->apart = b->apart || t->n_turns == 0;
  turn->joined = t->n_turns > 0 && is_joined (t, turn - 1, turn);
  b->matched = matches_round_before (b) ? b->matched + 1 : 0;
  turn->repeats = b->matched >= LOOK_BACK;
  b->apart = FALSE;
  t->n_turns++;
  stretch->work += work;
}

/* One work of a block: whole, or split over the two sides. */
static void
push_work (Build *b, guint32 task, guint16 block, int work)
{
  const LapTask *k = &b->timeline->tasks[task];
  int rest = k->block->switch_seconds, first;
  gboolean left = b->round % 2 == 1;

  if (k->sides != LAP_SIDES_SPLIT) {
    push (b, LAP_INTERVAL_WORK, work, task, block,
          k->sides == LAP_SIDES_LEFT ? LAP_SIDE_LEFT : k->sides == LAP_SIDES_RIGHT ? LAP_SIDE_RIGHT : LAP_SIDE_NONE);
    return;
  }
  first = (work - rest + 1) / 2;
  push (b, LAP_INTERVAL_WORK, first, task, block, left ? LAP_SIDE_LEFT : LAP_SIDE_RIGHT);
  push (b, LAP_INTERVAL_SWITCH, rest, task, block, LAP_SIDE_NONE);
  push (b, LAP_INTERVAL_WORK, work - rest - first, task, block, left ? LAP_SIDE_RIGHT : LAP_SIDE_LEFT);
}

/* Seconds of work and rest of a task, as the part is run. */
static void
lengths (const LapPart *part, const LapTask *task, int *work, int *rest)
{
  *work = task->work;
  *rest = task->rest;
  if (part->run != LAP_RUN_ON_THE_MINUTE)
    return;
  if (task->estimate > 0)
    *work = task->estimate;
  *work = MIN (*work, part->every);
  *rest = part->every - *work;
}

static gboolean
can_split (Build *b, const LapTask *task, int work, guint block, GError **error)
{
  g_autofree char *pointer = NULL;

  if (task->sides != LAP_SIDES_SPLIT || work - task->block->switch_seconds >= 2)
    return TRUE;
  pointer = g_strdup_printf ("/parts/%u/blocks/%u", b->p, block);
  lap_error_at (error, pointer, "%d s of work less %d s to switch is too short to split over two sides", work,
                task->block->switch_seconds);
  return FALSE;
}

static gboolean
push_block (Build *b, guint32 task, guint16 block, gboolean last, GError **error)
{
  LapTimeline *t = b->timeline;
  const LapPart *part = b->part;
  const LapTask *k = &t->tasks[task];
  int sets = part->run == LAP_RUN_ON_THE_MINUTE ? 1 : part->sets;
  guint interval = t->n;
  int start = t->length, work, rest;

  if (k->block->kind != LAP_BLOCK_EXERCISE) {
    push (b, k->block->kind == LAP_BLOCK_TALK ? LAP_INTERVAL_TALK : LAP_INTERVAL_PAUSE, k->work, task, block,
          LAP_SIDE_NONE);
    b->apart = TRUE;
    return TRUE;
  }
  lengths (part, k, &work, &rest);
  if (!can_split (b, k, work, block, error))
    return FALSE;
  for (int s = 1; s <= sets && !b->full; s++) {
    push_work (b, task, block, work);
    if (s < sets)
      push (b, LAP_INTERVAL_SET_REST, part->set_rest, task, block, LAP_SIDE_NONE);
  }
  add_turn (b, task, block, interval, start, work * sets);
  t->turns[t->n_turns - 1].rest = rest;
  t->parts[b->p].rest += rest + part->set_rest * (sets - 1);
  if (!last || part->keep_last_rest)
    push (b, LAP_INTERVAL_REST, rest, task, block, LAP_SIDE_NONE);
  return TRUE;
}

/* At one's own pace the part is one stretch of work; its blocks are turns over all of it. */
static void
push_own_pace (Build *b)
{
  LapTimeline *t = b->timeline;
  LapStretch *stretch = &t->parts[b->p];
  guint interval = t->n;
  int start = t->length;

  push (b, LAP_INTERVAL_WORK, b->part->cap, LAP_NO_TASK, LAP_NO_BLOCK, LAP_SIDE_NONE);
  for (guint i = 0; i < lap_part_n (b->part); i++) {
    LapTask task = lap_task_resolve (t->catalogue, b->part, lap_part_nth (b->part, i), 1, NULL);
    guint32 index = add_task (b, &task);

    if (task.block->kind == LAP_BLOCK_EXERCISE)
      add_turn (b, index, i, interval, start, 0);
    else
      b->apart = TRUE;
  }
  stretch->work = b->part->cap;
}

/* The task of block @i in the round, resolved when @known has none for it yet. */
static guint32
task_of (Build *b, guint32 *known, guint i, guint step)
{
  LapBlock *block = lap_part_nth (b->part, i);
  guint n = lap_part_n (b->part);
  const LapStep *row = b->part->steps != NULL ? lap_rows_nth (b->part->steps, LapStep, step) : NULL;
  LapTask task;

  if (lap_changes_find (block->in_round, b->round) != NULL) {
    task = lap_task_resolve (b->timeline->catalogue, b->part, block, b->round, row);
    return add_task (b, &task);
  }
  if (known[step * n + i] == LAP_NO_TASK) {
    task = lap_task_resolve (b->timeline->catalogue, b->part, block, 0, row);
    known[step * n + i] = add_task (b, &task);
  }
  return known[step * n + i];
}

/* Lays round @r out block by block. */
static gboolean
push_round (Build *b, guint32 *known, guint step, gboolean last, GError **error)
{
  guint n = lap_part_n (b->part);

  for (guint i = 0; i < n && !b->full; i++)
    if (!push_block (b, task_of (b, known, i, step), i, last && i == n - 1, error))
      return FALSE;
  return TRUE;
}

static void
copy_turns (Build *b, const Round *from, int later, guint shift)
{
  LapTimeline *t = b->timeline;
  const LapTurn *source = t->turns + from->turn, *before = t->turns + t->n_turns - b->per_round;
  LapTurn *to = t->turns + t->n_turns, *end = to + from->n_turns;
  guint matched = b->matched;
  guint16 round = b->round;

  for (; to < end; to++, source++, before++) {
    *to = *source;
    to->start += later;
    to->end += later;
    to->interval += shift;
    to->round = round;
    if (source == t->turns + from->turn) {
      /* What a round has before its first turn are talks and pauses. */
      to->apart = b->apart || source->interval > from->interval;
      to->joined = is_joined (t, to - 1, to);
    }
    matched = to->task == before->task && to->apart == before->apart ? matched + 1 : 0;
    to->repeats = matched >= LOOK_BACK;
  }
  b->matched = matched;
  t->n_turns += from->n_turns;
}

/* Copies @from as the round of @b: the same intervals and turns, later. */
static void
copy_round (Build *b, const Round *from, gboolean drop_rest)
{
  LapTimeline *t = b->timeline;
  int later = t->length - from->start;
  guint n = from->n_intervals - drop_rest;
  const LapInterval *source;
  LapInterval *to, *end;
  guint16 round = b->round;

  reserve (b, n, from->n_turns);
  copy_turns (b, from, later, t->n - from->interval);
  source = t->intervals + from->interval;
  to = t->intervals + t->n;
  for (end = to + n; to < end; to++, source++) {
    *to = *source;
    to->start += later;
    to->round = round;
  }
  t->n += n;
  t->length += from->seconds - (drop_rest ? source->seconds : 0);
  t->parts[b->p].work += from->work;
  t->parts[b->p].rest += from->rest;
  b->apart = end[-1].kind == LAP_INTERVAL_TALK || end[-1].kind == LAP_INTERVAL_PAUSE;
  b->full = t->n > LAP_MOST_INTERVALS || t->length > LAP_MOST_SECONDS;
}

/* The rounds of @part in which some block differs. */
static guint8 *
changed_rounds (const LapPart *part)
{
  guint8 *changed = g_malloc0 (part->rounds + 1);

  for (guint i = 0; i < lap_part_n (part); i++) {
    const LapChanges *changes = lap_part_nth (part, i)->in_round;

    for (guint k = 0; changes != NULL && k < changes->items->len; k++) {
      int round = ((LapChange *) g_ptr_array_index (changes->items, k))->round;

      if (round <= part->rounds)
        changed[round] = TRUE;
    }
  }
  return changed;
}

/* The latest round before @r that is like it, or NULL: of the same step and, for the sides, as odd or even. */
static const Round *
like_round (const Round *rounds, const guint8 *changed, int r, int period)
{
  if (changed[r])
    return NULL;
  for (int k = r - period; k >= 1; k -= period)
    if (!changed[k] && rounds[k].n_turns > 0)
      return &rounds[k];
  return NULL;
}

static gboolean
lay_round (Build *b, Round *rounds, const guint8 *changed, guint32 *known, GError **error)
{
  LapTimeline *t = b->timeline;
  LapPart *part = b->part;
  LapStretch *stretch = &t->parts[b->p];
  int steps = MAX (1, lap_rows_n (part->steps)), r = b->round;
  const Round *from = like_round (rounds, changed, r, steps % 2 == 1 ? 2 * steps : steps);
  Round now = { .interval = t->n, .turn = t->n_turns, .start = t->length, .work = stretch->work, .rest = stretch->rest };
  gboolean last = r == part->rounds;

  if (from != NULL) {
    const LapInterval *end = &t->intervals[from->interval + from->n_intervals - 1];

    copy_round (b, from, last && !part->keep_last_rest && end->kind == LAP_INTERVAL_REST);
  } else if (!push_round (b, known, (r - 1) % steps, last, error)) {
    return FALSE;
  }
  now.n_intervals = t->n - now.interval;
  now.n_turns = t->n_turns - now.turn;
  now.seconds = t->length - now.start;
  now.work = stretch->work - now.work;
  now.rest = stretch->rest - now.rest;
  rounds[r] = now;
  return TRUE;
}

/* Once two rounds are known, room for the rest is made in one go. */
static void
reserve_rounds (Build *b, const Round *round)
{
  guint more = b->part->rounds - b->round;

  reserve (b, MIN (more * (round->n_intervals + 1), LAP_MOST_INTERVALS), MIN (more * round->n_turns, LAP_MOST_INTERVALS));
}

static gboolean
push_rounds (Build *b, GError **error)
{
  LapPart *part = b->part;
  guint n = lap_part_n (part) * MAX (1, lap_rows_n (part->steps));
  g_autofree guint32 *known = g_new (guint32, MAX (1, n));
  g_autofree Round *rounds = g_new0 (Round, part->rounds + 1);
  g_autofree guint8 *changed = changed_rounds (part);

  for (guint i = 0; i < n; i++)
    known[i] = LAP_NO_TASK;
  for (int r = 1; r <= part->rounds && !b->full; r++) {
    b->round = r;
    if (!lay_round (b, rounds, changed, known, error))
      return FALSE;
    if (r == 2)
      reserve_rounds (b, &rounds[r]);
    if (r < part->rounds) {
      push (b, LAP_INTERVAL_ROUND_REST, part->round_rest, LAP_NO_TASK, LAP_NO_BLOCK, LAP_SIDE_NONE);
      b->timeline->parts[b->p].rest += part->round_rest;
    }
  }
  return TRUE;
}

static guint
count_exercises (const LapPart *part)
{
  guint count = 0;

  for (guint i = 0; i < lap_part_n (part); i++)
    count += lap_part_nth (part, i)->kind == LAP_BLOCK_EXERCISE;
  return count;
}

static gboolean
push_part (Build *b, guint p, GError **error)
{
  LapTimeline *t = b->timeline;
  LapStretch *stretch = &t->parts[p];

  b->p = p;
  b->round = 1;
  b->part = lap_session_nth (t->session, p);
  b->per_round = count_exercises (b->part);
  *stretch = (LapStretch) { .part = b->part, .start = t->length, .interval = t->n, .turn = t->n_turns };
  if (b->part->run == LAP_RUN_OWN_PACE)
    push_own_pace (b);
  else if (!push_rounds (b, error))
    return FALSE;
  b->round = 0;
  push (b, LAP_INTERVAL_AFTER, b->part->rest_after, LAP_NO_TASK, LAP_NO_BLOCK, LAP_SIDE_NONE);
  stretch->rest += b->part->rest_after;
  stretch->end = t->length;
  stretch->n_intervals = t->n - stretch->interval;
  stretch->n_turns = t->n_turns - stretch->turn;
  return TRUE;
}

static gboolean
is_within_limits (const Build *b, GError **error)
{
  const LapTimeline *t = b->timeline;
  g_autofree char *pointer = g_strdup_printf ("/parts/%u", b->p);

  if (!b->full)
    return TRUE;
  if (t->length > LAP_MOST_SECONDS)
    lap_error_at (error, pointer, "the session is longer than %d s (12 hours)", LAP_MOST_SECONDS);
  else
    lap_error_at (error, pointer, "the session has more than %d intervals", LAP_MOST_INTERVALS);
  return FALSE;
}

LapTimeline *
lap_timeline_new (LapSession *session, LapCatalogue *builtin, GError **error)
{
  g_autoptr (LapTimeline) t = g_new0 (LapTimeline, 1);
  Build b = { .timeline = t, .room = 64, .task_room = 32, .turn_room = 32 };

  g_atomic_ref_count_init (&t->references);
  t->session = g_object_ref (session);
  t->catalogue = lap_session_catalogue (session, builtin);
  t->n_parts = lap_session_n (session);
  t->intervals = g_new (LapInterval, b.room);
  t->tasks = g_new (LapTask, b.task_room);
  t->turns = g_new (LapTurn, b.turn_room);
  t->parts = g_new0 (LapStretch, MAX (1, t->n_parts));
  for (guint p = 0; p < t->n_parts; p++)
    if (!push_part (&b, p, error) || !is_within_limits (&b, error))
      return NULL;
  return g_steal_pointer (&t);
}

LapTimeline *
lap_timeline_ref (LapTimeline *timeline)
{
  g_atomic_ref_count_inc (&timeline->references);
  return timeline;
}

void
lap_timeline_unref (LapTimeline *timeline)
{
  if (!g_atomic_ref_count_dec (&timeline->references))
    return;
  g_free (timeline->intervals);
  g_free (timeline->tasks);
  g_free (timeline->turns);
  g_free (timeline->parts);
  lap_catalogue_unref (timeline->catalogue);
  g_object_unref (timeline->session);
  g_free (timeline);
}

const LapInterval *
lap_timeline_at (const LapTimeline *timeline, int second)
{
  if (second < 0 || second >= timeline->length)
    return NULL;
  return &timeline->intervals[lap_last_of (LAP_HALVE (timeline->n, i, timeline->intervals[i].start <= second))];
}

guint
lap_timeline_turn (const LapTimeline *timeline, double second)
{
  return LAP_HALVE (timeline->n_turns, i, timeline->turns[i].start <= second);
}

const LapTask *
lap_timeline_task (const LapTimeline *timeline, const LapInterval *interval)
{
  return interval->task != LAP_NO_TASK ? &timeline->tasks[interval->task] : NULL;
}
