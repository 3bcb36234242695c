/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A remedy is tried on the document itself and taken back before anybody can look: it is only offered when the check
 * then says less and nothing new stops the plan.
 */
#include "checks/remedies.h"

#include "checks/week-plan.h"

#include <glib/gi18n-lib.h>

void
lap_remedy_free (LapRemedy *remedy)
{
  g_free (remedy->label);
  lap_edits_free (remedy->edits);
  g_free (remedy);
}

void
lap_remedy_add (GPtrArray *remedies, char *label, LapEdits *edits)
{
  LapRemedy *remedy;

  if (lap_edits_n (edits) == 0) {
    g_free (label);
    lap_edits_free (edits);
    return;
  }
  remedy = g_new0 (LapRemedy, 1);
  remedy->label = label;
  remedy->edits = edits;
  g_ptr_array_add (remedies, remedy);
}

/* Whether @swap is among @remedies already: A with B is B with A, and the name of the edit is the same for both. */
static gboolean
has_swap (const GPtrArray *remedies, const LapEdits *swap)
{
  for (guint i = 0; i < remedies->len; i++) {
    const LapRemedy *remedy = g_ptr_array_index (remedies, i);

    if (g_str_equal (lap_edits_label (remedy->edits), lap_edits_label (swap)))
      return TRUE;
  }
  return FALSE;
}

void
lap_remedy_swap (const LapCheckup *cx, const LapWarning *warning, guint turn, GPtrArray *remedies)
{
  const LapTurn *t = LAP_TURN (cx, turn);
  LapPart *part = lap_session_nth (cx->session, t->part);
  guint n = lap_part_n (part);

  if (lap_part_nth (part, t->block)->fixed)
    return;
  for (guint step = 1; step < n; step++)
    for (int side = 1; side >= -1; side -= 2) {
      int other = (int) t->block + side * (int) step;
      g_autofree char *title = NULL;
      LapEdits *edits;

      if (other < 0 || other >= (int) n || lap_part_nth (part, other)->fixed ||
          lap_part_nth (part, other)->kind != LAP_BLOCK_EXERCISE)
        continue;
      edits = lap_verb_swap (part, t->block, other, cx->timeline->catalogue);
      if (has_swap (remedies, edits)) {
        lap_edits_free (edits);
        continue;
      }
      title = lap_block_title (lap_part_nth (part, other), cx->timeline->catalogue);
      lap_remedy_add (remedies, g_strdup_printf (_("Swap %1$s with %2$s"), lap_turn_name (cx, turn), title), edits);
    }
}

void
lap_remedy_easier (const LapCheckup *cx, guint turn, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, turn);
  LapExercise *easier = task->shown != NULL && task->shown->easier != NULL
                      ? lap_catalogue_find (cx->timeline->catalogue, task->shown->easier) : NULL;

  if (easier == NULL || task->option == LAP_OPTION_EASIER)
    return;
  lap_remedy_add (remedies, g_strdup_printf (_("Show %s instead"), lap_exercise_name (easier)),
                  task->option == LAP_OPTION_HARDER
                  ? lap_verb_set_option (task->block, LAP_OPTION_AS_SHOWN, cx->timeline->catalogue)
                  : lap_verb_set_option (task->block, LAP_OPTION_EASIER, cx->timeline->catalogue));
}

static guint
count_of (const LapCheckup *cx, const LapCheck *check)
{
  guint count = 0;

  for (guint i = 0; i < cx->warnings->len; i++) {
    const LapWarning *w = lap_checkup_nth (cx, i);

    if (w->check == check && !w->fine)
      count += w->severity == LAP_SEVERITY_NOTE ? 1 : 2;
  }
  return count;
}

/* Open stops and warnings, the length aside: a remedy may cost time, and then says so as the next warning. */
static guint
burden (const LapCheckup *cx)
{
  guint count = 0;

  for (guint i = 0; i < cx->warnings->len; i++) {
    const LapWarning *w = lap_checkup_nth (cx, i);

    count += !w->fine && w->severity != LAP_SEVERITY_NOTE && !g_str_equal (w->check->id, "length-over");
  }
  return count;
}

/* Whether the check says less in @then, and nothing new stops the plan. */
static gboolean
says_less (const LapCheckup *then, const LapCheckup *cx, const LapCheck *check)
{
  return count_of (then, check) < count_of (cx, check) &&
         lap_checkup_count (then, LAP_SEVERITY_STOP) <= lap_checkup_count (cx, LAP_SEVERITY_STOP);
}

/* A checkup of the timeline alone turns most ideas down at a fraction of the cost. */
static gboolean
is_worth_a_checkup (const LapCheckup *cx, const LapCheck *check, LapTimeline *timeline)
{
  g_autoptr (LapCheckup) then = NULL;

  if (timeline == NULL)
    return FALSE;
  if (check->needs != LAP_NEEDS_TIMELINE)
    return TRUE;
  then = lap_checkup_new_up_to (timeline, LAP_NEEDS_TIMELINE);
  return says_less (then, cx, check);
}

/* Whether with @edits the check says less, nothing new stops the plan and nothing else gets worse on the whole. */
static gboolean
helps (const LapCheckup *cx, const LapCheck *check, LapEdits *edits)
{
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapCheckup) then = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();

  lap_edits_swap (edits);
  if (cx->plan != NULL)
    then = lap_checkup_new_week (cx->plan->week, cx->plan->date, cx->plan->attachments);
  else
    timeline = lap_timeline_new (cx->session, builtin, NULL);
  if (then == NULL && is_worth_a_checkup (cx, check, timeline))
    then = lap_checkup_new (timeline);
  lap_edits_swap (edits);
  return then != NULL && says_less (then, cx, check) && burden (then) <= burden (cx);
}

#define MOST_REMEDIES 3
#define MOST_TRIES    24

GPtrArray *
lap_warning_ideas (const LapCheckup *cx, const LapWarning *warning)
{
  GPtrArray *ideas = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_remedy_free);

  if (warning->check->remedies != NULL)
    warning->check->remedies (cx, warning, ideas);
  return ideas;
}

GPtrArray *
lap_warning_remedies (const LapCheckup *cx, const LapWarning *warning)
{
  GPtrArray *remedies = lap_warning_ideas (cx, warning);
  guint kept = 0, tries = 0;

  while (kept < remedies->len) {
    const LapRemedy *remedy = g_ptr_array_index (remedies, kept);
    const LapRemedy *last = g_ptr_array_index (remedies, remedies->len - 1);
    guint most = last->resort && remedy != last ? MOST_REMEDIES - 1 : MOST_REMEDIES;

    if (kept < most && tries++ < MOST_TRIES && helps (cx, warning->check, remedy->edits))
      kept++;
    else
      g_ptr_array_remove_index (remedies, kept);
  }
  return remedies;
}
