/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a moment of the plan is about: the interval and what is left of it, the block at hand and the one
 * after it, what to say now and what next. Computed when asked, from the clock alone; nothing is kept.
 */
#pragma once

#include "clock/shots.h"
#include "talk/script.h"

G_BEGIN_DECLS

#define LAP_MOMENT_LINES 3

typedef struct {
  const LapInterval *interval; /* NULL at the end */
  int                left;     /* seconds of it, counted down: never 0 while it lasts */
  double             gone;     /* 0 … 1 of it */
  const LapTurn     *turn;     /* whose work it is, or whose comes next; NULL behind the last */
  const LapTurn     *next;     /* the one after that; NULL without */
  gboolean           saying;   /* lines[0] is being said */
  guint              n_lines;
  const LapLine     *lines[LAP_MOMENT_LINES]; /* being said, then those to come */
} LapMoment;

/* At @clock, microseconds of the session clock. */
LapMoment lap_moment_at (const LapTimeline *timeline,
                         const LapScript   *script,
                         gint64             clock);

G_END_DECLS
