/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a moment is about.
 */
#include "clock/moment.h"

#include "timelines.h"

typedef struct {
  LapTimeline *timeline;
  LapEffort   *effort;
  LapTalk     *talk;
  LapScript   *script;
} Plan;

static Plan
plan_of (const char *members)
{
  Plan plan = { test_timeline (members) };

  plan.effort = lap_effort_new (plan.timeline);
  plan.talk = lap_talk_new (plan.timeline, plan.effort);
  plan.script = lap_script_new (plan.talk);
  return plan;
}

static void
plan_clear (Plan *plan)
{
  lap_script_free (plan->script);
  lap_talk_free (plan->talk);
  lap_effort_free (plan->effort);
  lap_timeline_unref (plan->timeline);
}

static LapMoment
at (const Plan *plan, double second)
{
  return lap_moment_at (plan->timeline, plan->script, second * G_USEC_PER_SEC);
}

#define MAIN "'parts': [{'kind': 'main', 'blocks': [{'exercise': 'squat', 'work': 40, 'rest': 20}, " \
             "{'exercise': 'push-up', 'work': 40, 'rest': 20}]}, {'kind': 'closing', 'blocks': [" \
             "{'talk': 'Bye.', 'seconds': 10}]}]"

static void
test_count_down (void)
{
  Plan plan = plan_of (MAIN);

  g_assert_cmpint (at (&plan, 0).left, ==, 40);
  g_assert_cmpint (at (&plan, 0.000001).left, ==, 40);
  g_assert_cmpint (at (&plan, 1).left, ==, 39);
  g_assert_cmpint (at (&plan, 39.999999).left, ==, 1);
  g_assert_cmpint (at (&plan, 40).left, ==, 20);
  g_assert_cmpfloat (at (&plan, 10).gone, ==, 0.25);
  g_assert_null (at (&plan, plan.timeline->length).interval);
  plan_clear (&plan);
}

static void
test_turns (void)
{
  Plan plan = plan_of (MAIN);
  const LapTurn *turns = plan.timeline->turns;

  g_assert_true (at (&plan, 39.9).turn == &turns[0]);
  g_assert_true (at (&plan, 39.9).next == &turns[1]);
  /* In the rest it is the next block's turn. */
  g_assert_true (at (&plan, 40).turn == &turns[1]);
  g_assert_null (at (&plan, 40).next);
  g_assert_null (at (&plan, 105).turn);
  plan_clear (&plan);
}

static void
test_own_pace (void)
{
  Plan plan = plan_of ("'parts': [{'kind': 'main', 'run': 'own-pace', 'cap': 300, 'blocks': ["
                       "{'exercise': 'squat', 'work': 40}, {'exercise': 'push-up', 'work': 40}]}, {'kind': 'cool-down', 'blocks': "
                       "[{'exercise': 'knee-hug', 'work': 40}]}]");

  g_assert_true (at (&plan, 100).turn == &plan.timeline->turns[0]);
  g_assert_true (at (&plan, 100).next == &plan.timeline->turns[2]);
  plan_clear (&plan);
}

/* At every tenth of a second: what is said has begun and isn't long over, what comes has not begun. */
static void
test_lines (void)
{
  Plan plan = plan_of (MAIN);
  guint said = 0;

  for (double second = 0; second < plan.timeline->length; second += 0.125) {
    LapMoment moment = at (&plan, second);

    said += moment.saying;
    for (guint i = 0; i < moment.n_lines; i++) {
      gboolean begun = moment.lines[i]->start <= second;

      g_assert_cmpint (begun, ==, moment.saying && i == 0);
      if (begun)
        g_assert_cmpfloat (second, <, moment.lines[i]->start + moment.lines[i]->seconds + 2);
      if (i > 0)
        g_assert_true (moment.lines[i] == moment.lines[i - 1] + 1);
    }
  }
  g_assert_cmpuint (said, >, 100);
  plan_clear (&plan);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/moment/count-down", test_count_down);
  g_test_add_func ("/moment/turns", test_turns);
  g_test_add_func ("/moment/own-pace", test_own_pace);
  g_test_add_func ("/moment/lines", test_lines);
  return g_test_run ();
}
