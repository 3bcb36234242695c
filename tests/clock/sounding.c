/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is heard is where the clock is: beginnings of tones found in the samples, against the plan.
 */
#include "clock/sounding.h"

#include "clock/false-clock.h"

/* Seconds of the source at which something begins to be heard after silence, from @clock->time on. */
static GArray *
beginnings (FalseClock *clock, LapSounding *sounding, double seconds)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (double));
  gint64 began = clock->time;
  int silent = LAP_SOUNDING_RATE;

  for (gint64 chunk = 0; chunk < seconds * 100; chunk++) {
    gint16 samples[LAP_SOUNDING_CHUNK];

    lap_sounding_fill (sounding, began + chunk * 10000, samples);
    for (int i = 0; i < LAP_SOUNDING_CHUNK; i++) {
      double at = chunk / 100.0 + i / (double) LAP_SOUNDING_RATE;

      if (samples[i] == 0)
        silent++;
      else {
        if (silent > LAP_SOUNDING_RATE / 50)
          g_array_append_val (found, at);
        silent = 0;
      }
    }
    /* The window looks now and then. */
    clock->time = began + chunk * 10000;
    lap_rehearsal_tick (clock->rehearsal);
  }
  return found;
}

static void
assert_begin (GArray *found, const double *expected, guint n)
{
  g_assert_cmpuint (found->len, ==, n);
  /* A tone fades in from nothing, so that its first sample that is heard is its second or third. */
  for (guint i = 0; i < n; i++)
    g_assert_cmpfloat_with_epsilon (g_array_index (found, double, i), expected[i], 4.0 / LAP_SOUNDING_RATE);
  g_array_unref (found);
}

/* Three seconds of count, the mark at 0:00, then the plan: counted before work at 25 s. */
static void
test_from_the_beginning (void)
{
  static const double expected[] = { 0, 1, 2, 3, 25, 26, 27, 28 };
  FalseClock clock;
  LapSounding *sounding;

  false_clock_init (&clock);
  sounding = lap_sounding_new (clock.rehearsal, clock.timeline, FALSE);
  lap_rehearsal_start (clock.rehearsal, 3);
  assert_begin (beginnings (&clock, sounding, 40), expected, G_N_ELEMENTS (expected));
  lap_sounding_free (sounding);
  false_clock_clear (&clock);
}

/* From the middle of a rest: the tones of the plan where it will be. */
static void
test_from_the_middle (void)
{
  static const double expected[] = { 0, 1, 2, 4, 5, 6, 7 };
  FalseClock clock;
  LapSounding *sounding;

  false_clock_init (&clock);
  sounding = lap_sounding_new (clock.rehearsal, clock.timeline, FALSE);
  lap_rehearsal_jump (clock.rehearsal, 81);
  lap_rehearsal_start (clock.rehearsal, 3);
  assert_begin (beginnings (&clock, sounding, 10), expected, G_N_ELEMENTS (expected));
  lap_sounding_free (sounding);
  false_clock_clear (&clock);
}

/* With the room's own sound nothing is heard in work: not its beginning at 85, not its half. */
static void
test_live (void)
{
  static const double expected[] = { 2, 3, 4, 45 };
  FalseClock clock;
  LapSounding *sounding;

  false_clock_init (&clock);
  sounding = lap_sounding_new (clock.rehearsal, clock.timeline, TRUE);
  lap_rehearsal_jump (clock.rehearsal, 80);
  lap_rehearsal_start (clock.rehearsal, 0);
  assert_begin (beginnings (&clock, sounding, 50), expected, G_N_ELEMENTS (expected));
  lap_sounding_free (sounding);
  false_clock_clear (&clock);
}

static void
test_held (void)
{
  FalseClock clock;
  LapSounding *sounding;

  false_clock_init (&clock);
  sounding = lap_sounding_new (clock.rehearsal, clock.timeline, FALSE);
  lap_rehearsal_jump (clock.rehearsal, 83);
  assert_begin (beginnings (&clock, sounding, 20), NULL, 0);
  lap_sounding_free (sounding);
  false_clock_clear (&clock);
}

/* Each name once told of is heard where the script has it; the others aren't. With the
 * room's own sound filmed it ends where work begins. */
static void
test_names (void)
{
  static const double expected[] = { 5, 6, 22, 23, 24 };
  FalseClock clock;
  LapSounding *sounding;
  LapSpoken *spoken = g_new (LapSpoken, 1);
  const LapNames *names;
  g_autoptr (LapEffort) effort = NULL;
  g_autoptr (LapTalk) talk = NULL;
  g_autoptr (LapScript) script = NULL;

  false_clock_init (&clock);
  effort = lap_effort_new (clock.timeline);
  talk = lap_talk_new (clock.timeline, effort);
  script = lap_script_new (talk);
  sounding = lap_sounding_new (clock.rehearsal, clock.timeline, TRUE);
  lap_sounding_speak (sounding, script);
  names = lap_sounding_names (sounding);
  g_assert_cmpuint (names->n, ==, 6);
  g_assert_cmpstr (names->names[1].text, ==, "Push-up");
  *spoken = (LapSpoken) { 9 * LAP_SOUNDING_RATE / 10, g_new (gint16, 9 * LAP_SOUNDING_RATE / 10) };
  for (guint i = 0; i < spoken->n; i++)
    spoken->samples[i] = 1000;
  lap_sounding_teach (sounding, "Push-up", spoken);
  lap_rehearsal_jump (clock.rehearsal, 60);
  lap_rehearsal_start (clock.rehearsal, 0);
  assert_begin (beginnings (&clock, sounding, 35), expected, G_N_ELEMENTS (expected));
  lap_sounding_free (sounding);
  false_clock_clear (&clock);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sounding/from-the-beginning", test_from_the_beginning);
  g_test_add_func ("/sounding/from-the-middle", test_from_the_middle);
  g_test_add_func ("/sounding/live", test_live);
  g_test_add_func ("/sounding/held", test_held);
  g_test_add_func ("/sounding/names", test_names);
  return g_test_run ();
}
