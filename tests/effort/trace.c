/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The trace over whole sessions: what each kind of interval costs, the sums, and agreement with stepping through
 * the same differential equation, which knows nothing of the closed form.
 */
#include "effort/effort.h"

#include <math.h>

#include "timelines.h"

#define assert_near(a, b, within) g_assert_cmpfloat_with_epsilon (a, b, within)

static const char *mixed =
  "'group': {'level': 'mixed', 'age': 40, 'mass': 70, 'rest-pulse': 65, 'fitness': 10},"
  "'parts': [ {'kind': 'opening', 'blocks': [{'talk': 'Hello', 'seconds': 30}]},"
  "           {'kind': 'warm-up', 'blocks': [{'exercise': 'march-on-the-spot', 'work': 60, 'rest': 10}]},"
  "           {'kind': 'main', 'rounds': 4, 'round-rest': 30, 'rest-after': 20, 'blocks': ["
  "             {'exercise': 'squat', 'work': 40, 'rest': 20}, {'exercise': 'burpee', 'work': 40, 'rest': 20},"
  "             {'pause': 'water', 'seconds': 45}, {'talk': 'Now', 'seconds': 15},"
  "             {'exercise': 'side-plank', 'work': 41, 'rest': 15, 'switch': 5, 'sides': 'split'}]},"
  "           {'kind': 'cool-down', 'rest-as': 'march-on-the-spot', 'blocks': ["
  "             {'exercise': 'child-s-pose', 'work': 60, 'rest': 30},"
  "             {'exercise': 'figure-four-stretch', 'work': 60, 'rest': 0, 'pace': 'hard', 'sides': 'both'}]},"
  "           {'kind': 'closing', 'blocks': [{'talk': 'Bye', 'seconds': 30}]} ]";

static LapEffort *
effort_of (const char *members)
{
  g_autoptr (LapTimeline) timeline = test_timeline (members);

  return lap_effort_new (timeline);
}

static void
test_costs (void)
{
  g_autoptr (LapEffort) effort = effort_of (mixed);
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  double squat = lap_catalogue_find (catalogue, "squat")->met_hard;
  double march = lap_catalogue_find (catalogue, "march-on-the-spot")->met_steady;
  double side = lap_catalogue_find (catalogue, "side-plank")->met_hard;
  double figure_four = lap_catalogue_find (catalogue, "figure-four-stretch")->met_hard;
  double child = lap_catalogue_find (catalogue, "child-s-pose")->met_steady;
  const double mets[] = { 1.3, march };
  const double round[] = { squat, 1.3, 0, 1.3, 1.3, 2.0, side, 1.3, side, 1.3, 1.3 };
  const double last[] = { child, march, figure_four, 1.3 };

  for (guint i = 0; i < G_N_ELEMENTS (mets); i++)
    assert_near (effort->segments[i].met, mets[i], 1e-12);
  for (guint i = 0; i < G_N_ELEMENTS (round); i++)
    if (i != 2)
      assert_near (effort->segments[2 + i].met, round[i], 1e-12);
  for (guint i = 0; i < G_N_ELEMENTS (last); i++)
    assert_near (effort->segments[effort->n - G_N_ELEMENTS (last) + i].met, last[i], 1e-12);
  assert_near (effort->segments[2].demand, (squat - 1) / 9, 1e-12);
  assert_near (effort->segments[2].curve.tau, 35, 1e-12);
  assert_near (effort->segments[3].curve.tau, 50, 1e-12);
  assert_near (effort->segments[0].curve.from, 0.03, 1e-12);
}

/* Falling while moving on, at 2 METs and more, is slower. */
static void
test_active_rest (void)
{
  g_autoptr (LapEffort) still = effort_of ("'parts': [{'kind': 'main', 'rounds': 2, 'blocks': ["
                                           "{'exercise': 'burpee', 'work': 60, 'rest': 60}]}]");
  g_autoptr (LapEffort) active = effort_of ("'parts': [{'kind': 'main', 'rest-as': 'march-on-the-spot', 'rounds': 2,"
                                            "'blocks': ["
                                            "{'exercise': 'burpee', 'work': 60, 'rest': 60}]}]");

  assert_near (still->segments[1].curve.tau, 50, 1e-12);
  assert_near (active->segments[1].curve.tau, 80, 1e-12);
  g_assert_cmpfloat (active->segments[1].to, >, still->segments[1].to);
}

/* A demand beyond reach is told as it is; the target stops at all there is. */
static void
test_out_of_reach (void)
{
  g_autoptr (LapEffort) effort = effort_of ("'group': {'fitness': 5}, 'parts': [{'kind': 'main', 'blocks': ["
                                            "{'exercise': 'burpee', 'work': 600, 'rest': 0}]}]");

  g_assert_cmpfloat (effort->segments[0].demand, >, 1);
  assert_near (effort->segments[0].curve.target, 1, 1e-12);
  g_assert_cmpfloat (effort->peak, <=, 1);
  assert_near (lap_pulse (lap_effort_at (effort, 600), effort->rest_pulse, effort->maximum), 180, 0.1);
}

/* At one's own pace: blocks of 60 s (10 repetitions of 3-1-2) and 30 s as written weigh 2 to 1, at hard pace. */
static void
test_own_pace (void)
{
  g_autoptr (LapEffort) effort = effort_of ("'parts': [{'kind': 'main', 'run': 'own-pace', 'cap': 300, 'blocks': ["
    "{'exercise': 'squat', 'work': 10, 'rest': 0, 'reps': 10, 'tempo': '3-1-2', 'pace': 'steady'},"
    "{'exercise': 'burpee', 'work': 30, 'rest': 0}]}]");
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  double squat = lap_catalogue_find (catalogue, "squat")->met_hard;
  double burpee = lap_catalogue_find (catalogue, "burpee")->met_hard;

  g_assert_cmpuint (effort->n, ==, 1);
  assert_near (effort->segments[0].met, (2 * squat + burpee) / 3, 1e-12);
}

/* dx/dt = (d − x)/τ in small steps. @beats is the largest distance from the trace, in beats a minute. */
static double
step_through (const LapEffort *effort, int steps)
{
  double x = LAP_EFFORT_START, most = 0;

  for (guint i = 0; i < effort->n; i++) {
    const LapEffortSegment *segment = &effort->segments[i];
    double fall = segment->met < 2 ? 50 : 80;

    for (int k = 0; k < segment->seconds * steps; k++) {
      double error = fabs (lap_effort_at (effort, segment->start + (double) k / steps) - x);

      most = MAX (most, error * (effort->maximum - effort->rest_pulse));
      x += (segment->curve.target - x) / (segment->curve.target > x ? 35 : fall) / steps;
    }
  }
  return most;
}

static void
test_stepping (void)
{
  g_autoptr (LapEffort) effort = effort_of (mixed);
  double ten = step_through (effort, 10), one = step_through (effort, 1);

  g_assert_cmpfloat (ten, <=, 0.05);
  g_assert_cmpfloat (one, <=, 0.5);
  /* A first-order method: a tenth of the step, a tenth of the error. */
  assert_near (one / ten, 10, 1);
}

/* Two works of 20 s in a row are one of 40 s. */
static void
test_splitting (void)
{
  g_autoptr (LapTimeline) whole = test_part ("main", 8, "{'exercise': 'squat', 'work': 40, 'rest': 20}");
  g_autoptr (LapTimeline) split = test_part ("main", 8, "{'exercise': 'squat', 'work': 17, 'rest': 0},"
                                                        "{'exercise': 'squat', 'work': 23, 'rest': 20}");
  g_autoptr (LapEffort) a = lap_effort_new (whole), b = lap_effort_new (split);

  for (int second = 0; second <= whole->length; second++)
    assert_near (lap_effort_at (a, second), lap_effort_at (b, second), 1e-9);
  assert_near (a->mean, b->mean, 1e-9);
  assert_near (a->peak, b->peak, 1e-9);
  assert_near (a->in_band, b->in_band, 1e-9);
  assert_near (a->met_minutes, b->met_minutes, 1e-9);
}

/* Means and times by adding up the trace at a hundredth of a second. */
static void
test_sums (void)
{
  g_autoptr (LapEffort) effort = effort_of (mixed);
  double sum = 0, window = 0, within = 0, peak = 0;
  int n = effort->timeline->length * 100;

  for (int k = 0; k < n; k++) {
    double second = (k + 0.5) / 100, x = lap_effort_at (effort, second);

    sum += x;
    peak = MAX (peak, x);
    if (second > 133 && second < 313)
      window += x;
    if (second > 90 && second < 400 && x >= 0.4 && x <= 0.6)
      within += 0.01;
  }
  assert_near (effort->mean, sum / n, 1e-6);
  assert_near (effort->peak, peak, 1e-4);
  assert_near (lap_effort_mean (effort, 133, 313), window / 18000, 1e-6);
  assert_near (lap_effort_within (effort, 90, 400, 0.4, 0.6), within, 0.05);
  assert_near (lap_effort_mean (effort, 133, 133), lap_effort_at (effort, 133), 1e-12);
}

static void
test_runs (void)
{
  g_autoptr (LapEffort) effort = effort_of (mixed);
  int length = effort->timeline->length;
  double at = 0, below = 0, above = 0;
  LapEffortRun run;

  for (at = 0; lap_effort_next_run (effort, at, length, 0.5, TRUE, &run); at = run.end) {
    g_assert_cmpfloat (run.start, >=, at);
    g_assert_cmpfloat (run.end, >, run.start);
    if (run.end < length)
      assert_near (lap_effort_at (effort, run.end), 0.5, 1e-9);
    below += run.end - run.start;
  }
  for (at = 0; lap_effort_next_run (effort, at, length, 0.5, FALSE, &run); at = run.end)
    above += run.end - run.start;
  assert_near (above + below, length, 1e-3);
  assert_near (above, lap_effort_within (effort, 0, length, 0.5, 1), 1e-3);
  g_assert_false (lap_effort_next_run (effort, 0, 20, 0.5, FALSE, &run));
}

static void
test_peak (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 100, "{'exercise': 'squat', 'work': 40, 'rest': 20}");
  g_autoptr (LapEffort) effort = lap_effort_new (timeline);
  double when;

  assert_near (lap_effort_peak (effort, 0, timeline->length, &when), effort->peak, 1e-12);
  /* Peaks grow into a steady state; the last of them is the highest. */
  assert_near (when, timeline->length, 1e-12);
  assert_near (lap_effort_peak (effort, 10, 30, &when), lap_effort_at (effort, 30), 1e-12);
  assert_near (when, 30, 1e-12);
  assert_near (lap_effort_peak (effort, 45, 50, &when), lap_effort_at (effort, 45), 1e-12);
  assert_near (when, 45, 1e-12);
}

/* 20 min of 40/20 at 7.5 and 1.3 METs and 70 kg are 133.1 kcal. */
static void
test_energy (void)
{
  g_autoptr (LapEffort) effort = effort_of (
    "'exercises': [{'id': 'own', 'name': 'Own', 'for': ['work'], 'pattern': 'squat', 'move': 'own',"
    " 'posture': 'standing', 'primary': ['quads'], 'secondary': [], 'sides': 'both', 'impact': 'none',"
    " 'noise': 'silent', 'kit': [], 'met': {'steady': {'value': 3.8, 'code': '02022'}, 'hard': {'value': 7.5,"
    " 'code': '02020'}}, 'width': 1, 'length': 1, 'view': 'front', 'seconds-per-rep': 3,"
    " 'say': {'setup': 'Stand.', 'cues': ['Sit']}}],"
    "'parts': [{'kind': 'main', 'rounds': 20, 'keep-last-rest': true, 'blocks': ["
    " {'exercise': 'own', 'work': 40, 'rest': 20}]}]");

  assert_near (effort->met_minutes * 3.5 * 70 / 200, 133.1, 0.05);
  g_assert_cmpint (effort->kcal_low, ==, 100);
  g_assert_cmpint (effort->kcal_high, ==, 170);
}

/* People who start elsewhere do the same blocks at other times; the ribbon holds them all. */
static void
test_stations (void)
{
  g_autoptr (LapTimeline) timeline = test_timeline (
    "'parts': [{'kind': 'main', 'run': 'stations', 'rounds': 2, 'blocks': ["
    "{'exercise': 'burpee', 'work': 40, 'rest': 20}, {'exercise': 'plank', 'work': 40, 'rest': 20},"
    "{'exercise': 'squat', 'work': 40, 'rest': 20}]}]");
  g_autoptr (LapEffort) first = lap_effort_new (timeline);
  g_autoptr (LapEffort) second = lap_effort_new_as (timeline, lap_session_fitness (timeline->session), 1);
  g_autoptr (LapRibbon) ribbon = lap_ribbon_new (timeline);

  g_assert_cmpuint (lap_effort_starts (timeline), ==, 3);
  g_assert_cmpuint (ribbon->n, ==, 6);
  for (guint i = 0; i < 3; i++) {
    assert_near (second->segments[2 * i].met, first->segments[2 * ((i + 1) % 3)].met, 1e-12);
    assert_near (second->segments[6 + 2 * i].met, first->segments[6 + 2 * ((i + 1) % 3)].met, 1e-12);
  }
  assert_near (second->met_minutes, first->met_minutes, 1e-9);
  for (int s = 0; s <= timeline->length; s += 7) {
    double low, high;

    lap_ribbon_at (ribbon, s, &low, &high);
    g_assert_cmpfloat (low, <=, MIN (lap_effort_at (first, s), lap_effort_at (second, s)));
    g_assert_cmpfloat (high, >=, MAX (lap_effort_at (first, s), lap_effort_at (second, s)));
  }
}

static void
test_empty (void)
{
  g_autoptr (LapEffort) effort = effort_of ("'parts': []");

  g_assert_cmpuint (effort->n, ==, 1e-12);
  assert_near (effort->mean, 0.03, 1e-12);
  assert_near (effort->peak, 0.03, 1e-12);
  assert_near (effort->in_band, 0, 1e-12);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/effort/costs", test_costs);
  g_test_add_func ("/effort/active-rest", test_active_rest);
  g_test_add_func ("/effort/out-of-reach", test_out_of_reach);
  g_test_add_func ("/effort/own-pace", test_own_pace);
  g_test_add_func ("/effort/stepping", test_stepping);
  g_test_add_func ("/effort/splitting", test_splitting);
  g_test_add_func ("/effort/sums", test_sums);
  g_test_add_func ("/effort/runs", test_runs);
  g_test_add_func ("/effort/peak", test_peak);
  g_test_add_func ("/effort/energy", test_energy);
  g_test_add_func ("/effort/stations", test_stations);
  g_test_add_func ("/effort/empty", test_empty);
  return g_test_run ();
}
