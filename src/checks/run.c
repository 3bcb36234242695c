/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of what runs on from one block to the next: muscles, joints, grip, landings, noise.
 */
#include "checks/ease.h"
#include "checks/remedies.h"
#include "checks/report.h"
#include "checks/week-plan.h"

#include <glib/gi18n-lib.h>

static const LapTask *
task_of (const LapCheckup *cx, guint bout)
{
  return &cx->timeline->tasks[LAP_BOUT (cx, bout)->task];
}

static const char *
name_of (const LapCheckup *cx, guint bout)
{
  return lap_task_name (task_of (cx, bout));
}

static LapWarning *
report_bouts (LapCheckup *cx, const LapCheck *check, guint from, guint to)
{
  LapWarning *w = lap_report_turns (cx, check, LAP_BOUT (cx, from)->first, LAP_BOUT (cx, to)->last,
                                    LAP_BOUT (cx, to)->first);

  w->a = from;
  w->b = to;
  return w;
}

/* same-muscle */

static gboolean
is_meant (const LapCheckup *cx, guint a, guint b, guint32 shared)
{
  guint32 focus = lap_words_mask (&lap_regions, (const char * const *) cx->session->focus);
  const LapTurn *ta = LAP_TURN (cx, LAP_BOUT (cx, a)->first), *tb = LAP_TURN (cx, LAP_BOUT (cx, b)->first);

  return (ta->part == tb->part && cx->timeline->parts[ta->part].part->aim != 0) ||
         (focus != 0 && !(lap_muscle_regions (shared) & ~focus));
}

/* One note for a part in which it is meant, at the first pair. */
static void
note_meant (LapCheckup *cx, const LapCheck *check, guint part, guint32 shared)
{
  for (guint i = 0; i < cx->warnings->len; i++) {
    LapWarning *w = &g_array_index (cx->warnings, LapWarning, i);

    if (w->check == check && w->severity == LAP_SEVERITY_NOTE && w->part == (int) part) {
      w->mask |= shared;
      return;
    }
  }
  LapWarning *w = lap_report_part (cx, check, part);

  w->severity = LAP_SEVERITY_NOTE;
  w->mask = shared;
}

static gboolean
same_muscle (LapCheckup *cx, const LapCheck *check, guint a, guint b)
{
  const LapTask *ta = task_of (cx, a), *tb = task_of (cx, b);
  guint32 shared;

  if (ta->shown == NULL || tb->shown == NULL || !lap_exercises_tire (ta->shown, tb->shown, &shared))
    return FALSE;
  if (is_meant (cx, a, b, shared))
    note_meant (cx, check, LAP_TURN (cx, LAP_BOUT (cx, b)->first)->part, shared);
  else
    report_bouts (cx, check, a, b)->mask = shared;
  return TRUE;
}

static void
find_same_muscle (LapCheckup *cx, const LapCheck *check)
{
  lap_each_pair (cx, check, same_muscle);
}

static char *
tell_same_muscle (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *muscles = lap_words_join (&lap_muscles, w->mask);

  if (w->severity == LAP_SEVERITY_NOTE)
    return g_strdup_printf (_("%1$s: neighbours work the same muscles (%2$s), as you meant."),
                            lap_part_title (cx->timeline->parts[w->part].part), muscles);
  if (w->a > w->b)
    return g_strdup_printf (_("%1$s: from %2$s, the last, back to %3$s, the first, the same muscles work on."), muscles,
                            name_of (cx, w->a), name_of (cx, w->b));
  return g_strdup_printf (_("%1$s: worked hard twice running, by %2$s and then %3$s."), muscles,
                          name_of (cx, w->a), name_of (cx, w->b));
}

static char *
why_same_muscle (const LapCheckup *cx, const LapWarning *w)
{
  int gap;

  if (w->severity == LAP_SEVERITY_NOTE || w->a > w->b)
    return g_strdup (_(w->check->reason));
  gap = LAP_TURN (cx, LAP_BOUT (cx, w->b)->first)->start - LAP_TURN (cx, LAP_BOUT (cx, w->a)->last)->end;
  return g_strdup_printf (_("%d s between two hard efforts of one muscle is little; the second turns sloppy."), gap);
}

static void
remedy_run (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_swap (cx, w, LAP_BOUT (cx, w->b)->first, remedies);
  lap_remedy_swap (cx, w, LAP_BOUT (cx, w->a)->first, remedies);
  lap_remedy_easier (cx, LAP_BOUT (cx, w->b)->first, remedies);
}

/* joint-run */

static guint32
loaded_joints (const LapCheckup *cx, guint bout)
{
  guint32 also = lap_words_mask (&lap_care_words, (const char * const *) cx->session->also_for);
  const LapTask *task = task_of (cx, bout);

  return (task->load_mask | (task->care & also)) & ~LAP_BIT (LAP_CARE_BALANCE);
}

static gboolean
joint_run (LapCheckup *cx, const LapCheck *check, guint a, guint b, guint c)
{
  guint32 joints = loaded_joints (cx, a) & loaded_joints (cx, b) & loaded_joints (cx, c);

  if (joints == 0)
    return FALSE;
  report_bouts (cx, check, a, c)->mask = joints;
  g_array_index (cx->warnings, LapWarning, cx->warnings->len - 1).c = b;
  return TRUE;
}

static void
find_joint_run (LapCheckup *cx, const LapCheck *check)
{
  lap_each_triple (cx, check, joint_run);
}

static char *
tell_joint_run (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *joints = lap_words_join (&lap_care_words, w->mask);

  return g_strdup_printf (_("Three in a row load the %1$s: %2$s, %3$s and %4$s."), joints, name_of (cx, w->a),
                          name_of (cx, w->c), name_of (cx, w->b));
}

static void
remedy_triple (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_swap (cx, w, LAP_BOUT (cx, w->c)->first, remedies);
  lap_remedy_swap (cx, w, LAP_BOUT (cx, w->b)->first, remedies);
  lap_remedy_swap (cx, w, LAP_BOUT (cx, w->a)->first, remedies);
  lap_remedy_easier (cx, LAP_BOUT (cx, w->c)->first, remedies);
}

/* grip-run and impact-run */

static gboolean
holds_weight (const LapTask *task)
{
  return (task->kit & (LAP_BIT (LAP_KIT_DUMBBELLS) | LAP_BIT (LAP_KIT_DUMBBELL) | LAP_BIT (LAP_KIT_KETTLEBELL))) != 0;
}

static gboolean
is_high (const LapTask *task)
{
  return task->shown != NULL && task->shown->impact == LAP_IMPACT_HIGH;
}

static gboolean
report_triple (LapCheckup *cx, const LapCheck *check, guint a, guint b, guint c)
{
  report_bouts (cx, check, a, c)->c = b;
  return TRUE;
}

static gboolean
grip_run (LapCheckup *cx, const LapCheck *check, guint a, guint b, guint c)
{
  return holds_weight (task_of (cx, a)) && holds_weight (task_of (cx, b)) && holds_weight (task_of (cx, c)) &&
         report_triple (cx, check, a, b, c);
}

static void
find_grip_run (LapCheckup *cx, const LapCheck *check)
{
  lap_each_triple (cx, check, grip_run);
}

static char *
tell_grip_run (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("The hands hold weights three times running: %1$s, %2$s and %3$s."), name_of (cx, w->a),
                          name_of (cx, w->c), name_of (cx, w->b));
}

static gboolean
impact_run (LapCheckup *cx, const LapCheck *check, guint a, guint b, guint c)
{
  return is_high (task_of (cx, a)) && is_high (task_of (cx, b)) && is_high (task_of (cx, c)) &&
         report_triple (cx, check, a, b, c);
}

static void
find_impact_run (LapCheckup *cx, const LapCheck *check)
{
  lap_each_triple (cx, check, impact_run);
}

static char *
tell_impact_run (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("Three in a row land hard: %1$s, %2$s and %3$s."), name_of (cx, w->a), name_of (cx, w->c),
                          name_of (cx, w->b));
}

/* impact-much */

static void
find_impact_much (LapCheckup *cx, const LapCheck *check)
{
  int high = 0;
  double most = cx->session->level == LAP_LEVEL_NEW ? 0.25 : 0.40;

  if (cx->session->level == LAP_LEVEL_TRAINED || cx->main_work == 0)
    return;
  for (guint i = 0; i < cx->timeline->n_turns; i++)
    if (LAP_TURN (cx, i)->part_kind == LAP_PART_MAIN && is_high (LAP_TASK (cx, i)))
      high += LAP_TURN (cx, i)->work;
  if (high > most * cx->main_work) {
    LapWarning *w = lap_report_part (cx, check, cx->first_main_part);

    w->a = 100 * high / cx->main_work;
    w->b = (int) (100 * most);
  }
}

static char *
tell_impact_much (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("Jumps are %1$u %% of the main work; for this group up to %2$u %% is kind."), w->a, w->b);
}

static void
remedy_impact_much (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  for (guint i = 0; i < cx->bouts->len && LAP_TURN (cx, LAP_BOUT (cx, i)->first)->round == 1; i++)
    if (is_high (task_of (cx, i)))
      lap_remedy_easier (cx, LAP_BOUT (cx, i)->first, remedies);
}

/* too-loud */

static void
loud_task (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapTask *task = LAP_TASK (cx, turn);

  if (task->shown != NULL && task->shown->noise == LAP_NOISE_LOUD)
    lap_report_turns (cx, check, turn, turn, turn);
}

/* More than three soft ones running on: one note for each run, where it first stands. */
static void
soft_runs (LapCheckup *cx, const LapCheck *check)
{
  guint from = 0, length = 0;

  for (guint i = 0; i < cx->bouts->len; i++) {
    const LapTask *task = task_of (cx, i);
    gboolean soft = task->shown != NULL && task->shown->noise == LAP_NOISE_SOFT;

    if (LAP_BOUT (cx, i)->repeats) {
      length = 0;
      continue;
    }
    if (!soft || !LAP_BOUT (cx, i)->runs_on)
      length = 0;
    if (soft && length++ == 0)
      from = i;
    if (length == 4) {
      LapWarning *w = report_bouts (cx, check, from, i);

      w->severity = LAP_SEVERITY_NOTE;
      w->c = 1;
    }
  }
}

static void
find_too_loud (LapCheckup *cx, const LapCheck *check)
{
  if (!cx->session->quiet)
    return;
  lap_each_task (cx, check, loud_task);
  soft_runs (cx, check);
}

/* In a week: a class whose session is loud, in the quiet hours of its room. */
static void
find_week_too_loud (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *event = LAP_EVENT (cx, i);

    if (event->inside && event->facts.loud && event->room != NULL &&
        lap_hours_touch (event->room->quiet_hours, event->o.start, event->o.start + event->o.c->minutes))
      lap_report_events (cx, check, i, G_MAXUINT);
  }
}

static char *
tell_too_loud (const LapCheckup *cx, const LapWarning *w)
{
  if (cx->plan != NULL)
    return g_strdup_printf (_("%1$s is loud, and falls into the quiet hours of %2$s."),
                            lap_event_title (LAP_EVENT (cx, w->a)), lap_room_title (LAP_EVENT (cx, w->a)->room));
  if (w->c == 1)
    return g_strdup_printf (_("From %s on, four in a row can be heard below."), name_of (cx, w->a));
  return g_strdup_printf (_("%s is loud, and this session is to be quiet."), lap_turn_name (cx, w->a));
}

static void
remedy_too_loud (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  if (cx->plan != NULL) {
    lap_remedy_other_room (cx, w->a, remedies);
    lap_remedy_other_time (cx, w->a, remedies);
    return;
  }
  if (w->c == 1)
    return;
  lap_remedy_easier (cx, w->a, remedies);
  lap_remedy_choose (cx, w->a, remedies);
}

const LapCheck lap_checks_run[] = {
  { "same-muscle", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("The same muscles twice running"),
    N_("A muscle that has just worked hard gives a poorer second effort; another one first lets it recover."),
    N_("common practice"), find_same_muscle, tell_same_muscle, why_same_muscle, remedy_run },
  { "joint-run", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("One joint three times running"),
    N_("No joint carries more than two blocks in a row; a third is where wrists and knees start to ache."),
    N_("common practice"), find_joint_run, tell_joint_run, NULL, remedy_triple },
  { "grip-run", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Weights held three times running"),
    N_("When the grip tires, weights get dropped."), N_("common practice"),
    find_grip_run, tell_grip_run, NULL, remedy_triple },
  { "impact-run", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Hard landings three times running"),
    N_("At most two blocks of jumps in a row, then something that keeps the feet down."), N_("common practice"),
    find_impact_run, tell_impact_run, NULL, remedy_triple },
  { "impact-much", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("A lot of jumping"),
    N_("Shins, knees and pelvic floor get used to landings slowly."), N_("common practice"),
    find_impact_much, tell_impact_much, NULL, remedy_impact_much },
  { "too-loud", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Too loud for a quiet session"),
    N_("Landings on a mat carry through a ceiling; soft steps add up when they go on."), N_("common practice"),
    find_too_loud, tell_too_loud, NULL, remedy_too_loud, find_week_too_loud },
  { NULL },
};
