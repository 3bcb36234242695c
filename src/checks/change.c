/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of what happens between two works: getting there, getting up, and the other side.
 */
#include "checks/remedies.h"
#include "checks/report.h"

#include <glib/gi18n-lib.h>

/* change-short */

static void
short_split (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapTask *task = LAP_TASK (cx, turn);
  const LapInterval *v = &cx->timeline->intervals[LAP_TURN (cx, turn)->interval];
  LapWarning *w;

  if (task->shown == NULL || task->sides != LAP_SIDES_SPLIT || task->block->switch_seconds > 0 ||
      LAP_TURN (cx, turn)->work == 0 || v->seconds >= 15 ||
      (task->shown->posture != LAP_POSTURE_SIDE_LYING && task->shown->posture != LAP_POSTURE_KNEELING))
    return;
  w = lap_report_turns (cx, check, turn, turn, turn);
  w->c = 1;
  w->x = v->seconds;
}

static void
find_change_short (LapCheckup *cx, const LapCheck *check)
{
  const LapTimeline *t = cx->timeline;

  for (guint i = 1; i < t->n_turns; i++) {
    const LapTurn *before = LAP_TURN (cx, i - 1), *turn = LAP_TURN (cx, i);
    const LapTask *from = LAP_TASK (cx, i - 1), *to = LAP_TASK (cx, i);
    int gap = turn->start - before->end, needs;
    LapWarning *w;

    if (turn->repeats || from->shown == NULL || to->shown == NULL || turn->interval == before->interval ||
        (from->shown == to->shown && from->block == to->block))
      continue;
    needs = lap_change_seconds (&cx->rule, from->shown, to->shown,
                                t->parts[turn->part].part->run == LAP_RUN_STATIONS && turn->part == before->part);
    if (gap >= needs)
      continue;
    w = lap_report_turns (cx, check, i - 1, i, i);
    w->start = before->end;
    w->end = turn->start;
    w->x = gap;
    w->y = needs;
  }
  lap_each_task (cx, check, short_split);
}

static char *
tell_change_short (const LapCheckup *cx, const LapWarning *w)
{
  const LapTask *from = LAP_TASK (cx, w->a), *to = LAP_TASK (cx, w->b);

  if (w->c == 1)
    return g_strdup_printf (_("%1$s has %2$.0f s a side and no time to turn over."), lap_turn_name (cx, w->a), w->x);
  if (from->shown->posture == to->shown->posture)
    return g_strdup_printf (_("From %1$s to %2$s people need %3$.0f s and have %4$.0f s."),
                            lap_turn_name (cx, w->a), lap_turn_name (cx, w->b), w->y, w->x);
  return g_strdup_printf (_("From %1$s (%2$s) to %3$s (%4$s) people need %5$.0f s and have %6$.0f s."),
                          lap_turn_name (cx, w->a), lap_words_label (&lap_postures, from->shown->posture),
                          lap_turn_name (cx, w->b), lap_words_label (&lap_postures, to->shown->posture), w->y, w->x);
}

static void
remedy_change_short (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTurn *before = LAP_TURN (cx, w->a);
  const LapTask *from = LAP_TASK (cx, w->a);
  LapPart *part = lap_session_nth (cx->session, before->part);
  LapEdits *edits;
  int more = (int) (w->y - w->x), rest;

  if (w->c == 1) {
    edits = lap_edits_new (_("Add time to change sides"));
    lap_edits_set_int (edits, from->block, "switch", 5);
    lap_remedy_add (remedies, g_strdup (_("5 s to change sides")), edits);
    return;
  }
  if (LAP_TURN (cx, w->b)->part != before->part) {
    edits = lap_edits_new (_("Leave time after the part"));
    lap_edits_set_int (edits, part, "rest-after", part->rest_after + more);
    lap_remedy_add (remedies, g_strdup_printf (_("Leave %1$d s after %2$s"), part->rest_after + more,
                                               lap_part_title (part)), edits);
    return;
  }
  rest = (from->block->rest + more + 4) / 5 * 5;
  lap_remedy_add (remedies, g_strdup_printf (_("Rest %1$d s after %2$s"), rest, lap_turn_name (cx, w->a)),
                  lap_verb_set_rest (from->block, rest, cx->timeline->catalogue));
  lap_remedy_swap (cx, w, w->b, remedies);
}

/* up-and-down */

#define BREATHLESS 0.60 /* of heart-rate reserve: above it is vigorous, ACSM 2011 */

static int
divisor (const LapCheckup *cx)
{
  static const int seconds[] = { [LAP_LEVEL_NEW] = 180, [LAP_LEVEL_MIXED] = 120, [LAP_LEVEL_TRAINED] = 90 };

  return seconds[cx->session->level];
}

#define NO_HEIGHT -1

/* How high people are, by task, in main parts where the posture is known: tasks are few, turns many. */
static int *
heights_of (const LapCheckup *cx)
{
  int *heights = g_new (int, MAX (1, cx->timeline->n_tasks));

  for (guint i = 0; i < cx->firsts->len; i++) {
    const LapTurn *turn = LAP_TURN (cx, LAP_FIRST (cx, i));
    const LapExercise *shown = LAP_TASK (cx, LAP_FIRST (cx, i))->shown;

    heights[turn->task] = turn->part_kind == LAP_PART_MAIN && shown != NULL ? lap_posture_height (shown->posture)
                                                                            : NO_HEIGHT;
  }
  return heights;
}

/* Steps of height up to turn @i; 0 where either isn't known. */
static int
steps_to (const LapCheckup *cx, guint i, const int *heights)
{
  int from = heights[LAP_TURN (cx, i - 1)->task], to = heights[LAP_TURN (cx, i)->task];

  return from != NO_HEIGHT && to != NO_HEIGHT ? to - from : 0;
}

/* Getting up from lying to turn @i while still out of breath, once for each block that it leads to. */
static void
find_getting_up (LapCheckup *cx, const LapCheck *check, guint i, guint8 *told)
{
  LapWarning *w;
  double x;

  if (told[LAP_TURN (cx, i)->task] || cx->effort->peak <= BREATHLESS)
    return;
  x = lap_effort_at (cx->effort, LAP_TURN (cx, i - 1)->end);
  if (x <= BREATHLESS)
    return;
  told[LAP_TURN (cx, i)->task] = TRUE;
  w = lap_report_turns (cx, check, i - 1, i, i);
  w->severity = cx->tender ? LAP_SEVERITY_WARNING : LAP_SEVERITY_NOTE;
  w->c = 1;
  w->x = x;
}

static void
find_up_and_down (LapCheckup *cx, const LapCheck *check)
{
  const LapTimeline *t = cx->timeline;
  g_autofree guint8 *told = g_malloc0 (MAX (1, t->n_tasks));
  g_autofree int *heights = heights_of (cx);
  int changes = 0, seconds = 0;
  LapWarning *w;

  for (guint p = 0; p < t->n_parts; p++)
    if (t->parts[p].part->kind == LAP_PART_MAIN)
      seconds += t->parts[p].end - t->parts[p].start;
  for (guint i = 1; i < t->n_turns; i++) {
    int steps = steps_to (cx, i, heights);

    changes += ABS (steps) >= 2;
    if (steps == 3)
      find_getting_up (cx, check, i, told);
  }
  if (changes <= (double) seconds / divisor (cx))
    return;
  w = lap_report_part (cx, check, cx->first_main_part);
  w->severity = cx->tender ? LAP_SEVERITY_WARNING : LAP_SEVERITY_NOTE;
  w->a = changes;
  w->b = seconds / divisor (cx);
}

static char *
tell_up_and_down (const LapCheckup *cx, const LapWarning *w)
{
  if (w->c == 1)
    return g_strdup_printf (_("People get up from %1$s to %2$s at %3$.0f %% effort; an estimate."),
                            lap_turn_name (cx, w->a), lap_turn_name (cx, w->b), 100 * w->x);
  return g_strdup_printf (_("The main part goes down to the floor or up from it %1$u times; up to %2$u is calm for "
                            "its length."), w->a, w->b);
}

/* Swaps of any two blocks. */
static void
remedy_up_and_down (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  guint turn = cx->timeline->parts[w->part].turn, n = lap_part_n (cx->timeline->parts[w->part].part);

  if (w->c == 1) {
    lap_remedy_swap (cx, w, w->b, remedies);
    lap_remedy_swap (cx, w, w->a, remedies);
    return;
  }
  for (guint i = turn; i < turn + n && i < cx->timeline->n_turns && remedies->len < 60; i++)
    lap_remedy_swap (cx, w, i, remedies);
}

/* sides-uneven */

typedef struct {
  int left, right, times;
  guint turn;
} Sides;

static void
find_sides_uneven (LapCheckup *cx, const LapCheck *check)
{
  const LapTimeline *t = cx->timeline;
  g_autoptr (GHashTable) sums = g_hash_table_new_full (NULL, NULL, NULL, g_free);
  g_autoptr (GPtrArray) order = g_ptr_array_new ();

  for (guint i = 0; i < t->n_turns; i++) {
    const LapTask *task = LAP_TASK (cx, i);
    Sides *sides;

    if (task->shown == NULL || task->sides < LAP_SIDES_SPLIT || LAP_TURN (cx, i)->work == 0)
      continue;
    sides = g_hash_table_lookup (sums, task->shown);
    if (sides == NULL) {
      sides = g_new0 (Sides, 1);
      sides->turn = i;
      g_hash_table_insert (sums, task->shown, sides);
      g_ptr_array_add (order, sides);
    }
    sides->times++;
    for (guint k = LAP_TURN (cx, i)->interval; k < t->n && t->intervals[k].start < LAP_TURN (cx, i)->end; k++) {
      sides->left += t->intervals[k].side == LAP_SIDE_LEFT ? t->intervals[k].seconds : 0;
      sides->right += t->intervals[k].side == LAP_SIDE_RIGHT ? t->intervals[k].seconds : 0;
    }
  }
  for (guint i = 0; i < order->len; i++) {
    const Sides *sides = g_ptr_array_index (order, i);

    if (ABS (sides->left - sides->right) > sides->times) {
      LapWarning *w = lap_report_turns (cx, check, sides->turn, sides->turn, sides->turn);

      w->x = sides->left;
      w->y = sides->right;
    }
  }
}

static char *
tell_sides_uneven (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s works the left side %2$.0f s and the right %3$.0f s."), lap_turn_name (cx, w->a),
                          w->x, w->y);
}

static void
remedy_sides_uneven (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, w->a);
  LapEdits *edits = lap_edits_new (_("Work both sides"));

  if (task->sides != LAP_SIDES_SPLIT) {
    lap_edits_set_int (edits, task->block, "sides", LAP_SIDES_SPLIT);
    lap_edits_set_int (edits, task->block, "switch", 5);
    lap_edits_set_int (edits, task->block, "work", 2 * task->block->work + 5);
  }
  lap_remedy_add (remedies, g_strdup (_("Left, then right, in one block")), edits);
}

const LapCheck lap_checks_change[] = {
  { "change-short", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("No time to get there"),
    N_("Getting up, lying down and fetching kit take seconds; without them people miss the start and hurry."),
    N_("common practice"), find_change_short, tell_change_short, NULL, remedy_change_short },
  { "up-and-down", LAP_SEVERITY_NOTE, LAP_NEEDS_EFFORT, N_("Up and down a lot"),
    N_("Floor work in one stretch saves breath, knees and time; getting up quickly makes some people dizzy."),
    N_("common practice"), find_up_and_down, tell_up_and_down, NULL, remedy_up_and_down },
  { "sides-uneven", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Left and right uneven"),
    N_("Both sides get the same time."), N_("common practice"),
    find_sides_uneven, tell_sides_uneven, NULL, remedy_sides_uneven },
  { NULL },
};
