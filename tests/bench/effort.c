/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The benchmark of effort: the whole estimate (trace, sums, time in band, energy) against stepping through the same
 * equation ten times a second for the same sums, in one run, by turns. Only their ratio is a bar: 0.02. It prints
 * what a word budget and a script take beside them.
 */
#include "bench/measure.h"
#include "talk/script.h"

#include <time.h>

#define RUNS 31
#define BAR 0.02

static const char *const circle[] = { "squat", "push-up", "step-jack", "dead-bug", "reverse-lunge", "prone-w-raise" };

enum { TRACE, STEPPING, TALK, SCRIPT, N_MEASURED };
static const char *const names[] = { "effort", "stepping", "words", "script" };

static LapTimeline *
lay_out (guint blocks, int rounds)
{
  g_autoptr (LapSession) session = lap_session_new ("Benchmark");
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapPart) part = lap_part_new (LAP_PART_MAIN);
  g_autoptr (GPtrArray) parts = g_ptr_array_new (), items = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (GError) error = NULL;
  LapTimeline *timeline;

  for (guint i = 0; i < blocks; i++)
    g_ptr_array_add (items, lap_block_new_exercise (circle[i % G_N_ELEMENTS (circle)], 40, 20));
  part->rounds = rounds;
  lap_list_splice (part->blocks, 0, 0, items);
  g_ptr_array_add (parts, part);
  lap_list_splice (session->parts, 0, 0, parts);
  timeline = lap_timeline_new (session, builtin, &error);
  if (timeline == NULL)
    g_error ("%s", error->message);
  return timeline;
}

/* Mean and time in band, step by step. */
static double
step_through (const LapEffort *effort)
{
  double x = LAP_EFFORT_START, sum = 0;
  guint within = 0;

  for (guint i = 0; i < effort->n; i++) {
    const LapEffortSegment *s = &effort->segments[i];

    for (int k = 0; k < 10 * s->seconds; k++) {
      sum += x;
      within += x >= effort->low && x <= effort->high;
      x += (s->curve.target - x) / lap_kinetics_tau (&lap_kinetics, x, s->curve.target, s->met) / 10;
    }
  }
  return sum + within;
}

static double
now (void)
{
  struct timespec time;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &time);
  return time.tv_sec * 1e9 + time.tv_nsec;
}

int
main (int argc, char **argv)
{
  g_autoptr (LapTimeline) timeline = lay_out (10, 70);
  double taken[N_MEASURED][RUNS], sum = 0;

  for (int i = 0; i < RUNS; i++) {
    double start = now ();
    g_autoptr (LapEffort) effort = lap_effort_new (timeline);
    double traced = now ();
    g_autoptr (LapTalk) talk = NULL;
    g_autoptr (LapScript) script = NULL;
    double stepped, spoken;

    sum += step_through (effort);
    stepped = now ();
    talk = lap_talk_new (timeline, effort);
    spoken = now ();
    script = lap_script_new (talk);
    taken[SCRIPT][i] = now () - spoken;
    taken[TALK][i] = spoken - stepped;
    taken[STEPPING][i] = stepped - traced;
    taken[TRACE][i] = traced - start;
  }
  for (guint k = 0; k < N_MEASURED; k++) {
    measure_sort (taken[k], RUNS);
    g_print ("%s: %.0f ns an interval\n", names[k], taken[k][RUNS / 2] / timeline->n);
  }
  g_print ("effort / stepping: %.4f (bar %.2f; checksum %.0f)\n", taken[TRACE][RUNS / 2] / taken[STEPPING][RUNS / 2],
           BAR, sum);
  return taken[TRACE][RUNS / 2] <= BAR * taken[STEPPING][RUNS / 2] ? 0 : 1;
}
