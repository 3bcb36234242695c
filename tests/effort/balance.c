/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "effort/balance.h"

#include "timelines.h"

#define ALL_KINDS 0x1f

/* Squat: quads and glutes, helped by hamstrings, inner thigh and lower back. Push-up: pushes. Row: pulls. */
static void
test_seconds (void)
{
  g_autoptr (LapTimeline) timeline = test_timeline (
    "'parts': [{'kind': 'warm-up', 'blocks': [{'exercise': 'march-on-the-spot', 'work': 60, 'rest': 0}]},"
    "{'kind': 'main', 'rounds': 2, 'blocks': [{'exercise': 'squat', 'work': 40, 'rest': 20},"
    "{'exercise': 'push-up', 'work': 30, 'rest': 20}, {'exercise': 'bent-over-row', 'work': 20, 'rest': 20},"
    "{'exercise': 'unheard-of', 'work': 99, 'rest': 20}, {'talk': 'Now', 'seconds': 30}]}]");
  LapBalance main_only, all;

  lap_balance_of (timeline, LAP_BIT (LAP_PART_MAIN), &main_only);
  lap_balance_of (timeline, ALL_KINDS, &all);
  g_assert_cmpint (main_only.work, ==, 180);
  g_assert_cmpint (all.work, ==, 240);
  g_assert_cmpint (main_only.primary[LAP_REGION_THIGHS], ==, 80);
  g_assert_cmpint (main_only.primary[LAP_REGION_CHEST], ==, 60);
  /* The squat's hamstrings are of a region that already works hard; its back only helps. */
  g_assert_cmpint (main_only.secondary[LAP_REGION_THIGHS], ==, 1e-12);
  g_assert_cmpint (main_only.secondary[LAP_REGION_LOWER_BACK], >=, 80);
  g_assert_cmpint (main_only.push, ==, 60);
  g_assert_cmpint (main_only.pull, ==, 40);
  g_assert_cmpint (main_only.front, ==, 80);
  g_assert_cmpint (main_only.posture[LAP_POSTURE_HANDS_AND_FEET], ==, 60);
  g_assert_cmpint (main_only.care[LAP_CARE_WRISTS], ==, 60);
}

/* 300 s shared by 60 s of repetitions and 30 s as written. */
static void
test_own_pace (void)
{
  g_autoptr (LapTimeline) timeline = test_timeline (
    "'parts': [{'kind': 'main', 'run': 'own-pace', 'cap': 300, 'blocks': ["
    "{'exercise': 'squat', 'work': 10, 'rest': 0, 'reps': 10, 'tempo': '3-1-2'},"
    "{'exercise': 'push-up', 'work': 30, 'rest': 0}]}]");
  LapBalance balance;

  lap_balance_of (timeline, ALL_KINDS, &balance);
  g_assert_cmpint (balance.work, ==, 300);
  g_assert_cmpint (balance.primary[LAP_REGION_THIGHS], ==, 200);
  g_assert_cmpint (balance.push, ==, 100);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/balance/seconds", test_seconds);
  g_test_add_func ("/balance/own-pace", test_own_pace);
  return g_test_run ();
}
