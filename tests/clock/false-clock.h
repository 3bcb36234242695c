/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A rehearsal whose time is what a test says it is.
 */
#pragma once

#include "clock/rehearsal.h"

typedef struct {
  gint64        time; /* microseconds */
  LapTimeline  *timeline;
  LapRehearsal *rehearsal;
} FalseClock;

/* Of two rounds of three blocks, 40 s of work and 20 s of rest, 30 s between the rounds, after a talk of 25 s
 * and with a talk of 10 s at the end: 25 + 180 + 30 + 160 + 20 + 10 s. The work starts at 25, 85, 145, 235,
 * 295, 355. */
void false_clock_init  (FalseClock  *clock);
void false_clock_clear (FalseClock  *clock);
/* The time source; @clock is the FalseClock. */
gint64 false_clock_time (gpointer    clock);
/* Lets @seconds go by in steps of a frame, as a window looks at it. */
void false_clock_pass  (FalseClock  *clock,
                        double       seconds);
/* Seconds of the session. */
double false_clock_at  (FalseClock  *clock);
