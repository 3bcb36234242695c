/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is noted while filming: how late the talk before a block was, and the marks of takes.
 */
#include "clock/takes.h"

#include "clock/false-clock.h"

typedef struct {
  FalseClock clock;
  LapTakes  *takes;
} Day;

typedef void (*DayTest) (Day *day);

#define assert_over(day, shot, seconds) \
  g_assert_cmpfloat_with_epsilon (lap_takes_over ((day)->takes, shot), seconds, 1e-9)

static void
run (gconstpointer data)
{
  Day day;

  false_clock_init (&day.clock);
  day.takes = lap_takes_new (day.clock.rehearsal);
  lap_rehearsal_start (day.clock.rehearsal, 0);
  ((DayTest) data) (&day);
  lap_takes_free (day.takes);
  false_clock_clear (&day.clock);
}

/* Frame by frame, and looks each time. */
static void
pass (Day *day, double seconds)
{
  for (int i = 0; i < 10; i++) {
    false_clock_pass (&day->clock, seconds / 10);
    lap_takes_look (day->takes);
  }
}

static void
hold (Day *day, double seconds)
{
  lap_rehearsal_hold (day->clock.rehearsal);
  lap_takes_look (day->takes);
  pass (day, seconds);
  lap_rehearsal_start (day->clock.rehearsal, 0);
  lap_takes_look (day->takes);
}

/* "The talk before block 2 overran by 12 s": the coach held in the rest and went on speaking. */
static void
test_hold_in_rest (Day *day)
{
  pass (day, 80);
  hold (day, 12);
  assert_over (day, 1, 12);
  pass (day, 20);
  assert_over (day, 1, 12);
  /* Holding while people work is about something else. */
  hold (day, 30);
  assert_over (day, 1, 12);
  /* Once more in the same rest, or just after it, adds up. */
  lap_rehearsal_jump (day->clock.rehearsal, 85);
  pass (day, 1);
  hold (day, 3);
  assert_over (day, 1, 15);
}

static void
test_not_about_talk (Day *day)
{
  pass (day, 80);
  lap_rehearsal_hold (day->clock.rehearsal);
  lap_takes_look (day->takes);
  pass (day, 12);
  lap_rehearsal_jump (day->clock.rehearsal, 145);
  lap_takes_look (day->takes);
  lap_rehearsal_start (day->clock.rehearsal, 0);
  lap_takes_look (day->takes);
  assert_over (day, 1, 0);
  assert_over (day, 2, 0);
  /* Nor was the computer asleep for the sake of talk. */
  lap_rehearsal_jump (day->clock.rehearsal, 80);
  pass (day, 1);
  day->clock.time += 10 * LAP_SECOND;
  lap_rehearsal_tick (day->clock.rehearsal);
  lap_takes_look (day->takes);
  pass (day, 5);
  lap_rehearsal_start (day->clock.rehearsal, 0);
  lap_takes_look (day->takes);
  assert_over (day, 1, 0);
}

static void
test_said (Day *day)
{
  pass (day, 21.5);
  lap_takes_said (day->takes);
  assert_over (day, 0, -3.5);
  pass (day, 70);
  lap_takes_said (day->takes);
  assert_over (day, 1, 6.5);
  /* The last word counts, and what was held comes to it. */
  pass (day, 0.5);
  lap_takes_said (day->takes);
  assert_over (day, 1, 7);
  lap_takes_again (day->takes, 1);
  assert_over (day, 1, 0);
  /* Nothing comes after the last talk that it could keep waiting. */
  lap_rehearsal_jump (day->clock.rehearsal, 420);
  lap_takes_said (day->takes);
  assert_over (day, 6, 0);
}

static void
test_marks (Day *day)
{
  const LapTakeMark *mark;

  pass (day, 80);
  hold (day, 12);
  pass (day, 30);
  lap_takes_mark (day->takes, lap_rehearsal_shot (day->clock.rehearsal), TRUE, "2027-01-11T10:00:00Z");
  lap_takes_mark (day->takes, 0, FALSE, "2027-01-11T10:00:01Z");
  g_assert_cmpuint (lap_takes_n (day->takes), ==, 2);
  mark = lap_takes_nth (day->takes, 0);
  g_assert_cmpstr (mark->at, ==, "2027-01-11T10:00:00Z");
  g_assert_cmpfloat_with_epsilon (mark->clock, 110, 1e-9);
  g_assert_cmpuint (mark->shot, ==, 1);
  g_assert_true (mark->good);
  g_assert_cmpfloat_with_epsilon (mark->over, 12, 1e-9);
  g_assert_false (lap_takes_nth (day->takes, 1)->good);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_data_func ("/takes/hold-in-rest", test_hold_in_rest, run);
  g_test_add_data_func ("/takes/not-about-talk", test_not_about_talk, run);
  g_test_add_data_func ("/takes/said", test_said, run);
  g_test_add_data_func ("/takes/marks", test_marks, run);
  return g_test_run ();
}
