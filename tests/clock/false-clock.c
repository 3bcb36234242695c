/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "clock/false-clock.h"

#include "timelines.h"

#define FRAME 16667

gint64
false_clock_time (gpointer data)
{
  return ((FalseClock *) data)->time;
}

void
false_clock_init (FalseClock *clock)
{
  *clock = (FalseClock) { .time = 1234567890123 };
  clock->timeline = test_timeline (
    "'parts': [{'kind': 'opening', 'blocks': [{'talk': 'Hello and welcome.', 'seconds': 25}]}, {'kind': 'main', "
    "'rounds': 2, 'round-rest': 30, 'rest-after': 20, 'blocks': [{'exercise': 'squat', 'work': 40, 'rest': 20}, "
    "{'exercise': 'push-up', 'work': 40, 'rest': 20}, "
    "{'exercise': 'side-plank', 'work': 40, 'rest': 20, 'switch': 4}]}, "
    "{'kind': 'closing', 'blocks': [{'talk': 'Thank you.', 'seconds': 10}]}]");
  clock->rehearsal = lap_rehearsal_new (clock->timeline, false_clock_time, clock);
}

void
false_clock_clear (FalseClock *clock)
{
  lap_rehearsal_free (clock->rehearsal);
  lap_timeline_unref (clock->timeline);
}

void
false_clock_pass (FalseClock *clock, double seconds)
{
  gint64 until = clock->time + seconds * G_USEC_PER_SEC;

  while (clock->time < until) {
    clock->time = MIN (clock->time + FRAME, until);
    lap_rehearsal_tick (clock->rehearsal);
  }
}

double
false_clock_at (FalseClock *clock)
{
  return lap_rehearsal_clock (clock->rehearsal) / (double) LAP_SECOND;
}
