/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The effort of a session for a person of the group: the exact trace over the timeline, one segment for each
 * interval, and its sums. An estimate: no drift, heat or dehydration, holds and arm work raise the pulse more than
 * this says, the maximum alone is uncertain by ± 12 beats, and medicine for the heart makes it void. Whoever shows a
 * number says so; it is never printed on a wall.
 *
 * Always true: segment i lies on interval i; each begins where the one before ended; 0 ≤ x ≤ 1. Immutable once made.
 * Times are seconds on the session clock, in doubles where they may fall between two seconds.
 */
#pragma once

#include "effort/kinetics.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef struct {
  int      start, seconds;
  int      kind;     /* LapIntervalKind */
  double   met;
  double   demand;   /* share of the reserve asked for, may be above 1 */
  LapCurve curve;    /* from, target (demand within 0…1), τ */
  double   to;       /* effort at its end */
  double   area;     /* integral of effort from 0 to its start */
} LapEffortSegment;

typedef struct {
  LapTimeline      *timeline; /* held */
  double            fitness;  /* METs */
  double            rest_pulse, maximum; /* beats a minute */
  guint             n;
  LapEffortSegment *segments;
  double            mean, peak;  /* over all */
  double            low, high;   /* the wanted band */
  double            in_band;     /* seconds within it, in main parts */
  double            met_minutes;
  int               kcal_low, kcal_high; /* ± 25 %, rounded to 10 */
} LapEffort;

/* For the session's group, everyone starting at the first block. */
LapEffort *lap_effort_new      (LapTimeline      *timeline);
/* The same for somebody who can reach @fitness METs (above 1) and starts @station blocks later wherever people
 * rotate. */
LapEffort *lap_effort_new_as   (LapTimeline      *timeline,
                                double            fitness,
                                guint             station);
void       lap_effort_free     (LapEffort        *effort);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapEffort, lap_effort_free)

/* Effort at @second, within 0 … length. O(log n). */
double     lap_effort_at       (const LapEffort  *effort,
                                double            second);
double     lap_effort_mean     (const LapEffort  *effort,
                                double            start,
                                double            end);
/* The highest effort from @start to @end, and in *@when (may be NULL) the last moment it was reached: of peaks that
 * differ by less than a millionth the last counts. */
double     lap_effort_peak     (const LapEffort  *effort,
                                double            start,
                                double            end,
                                double           *when);
/* Seconds from @start to @end with @low ≤ x ≤ @high. */
double     lap_effort_within   (const LapEffort  *effort,
                                double            start,
                                double            end,
                                double            low,
                                double            high);

/* A run of seconds on one side of a level. */
typedef struct {
  double start, end;
} LapEffortRun;

/* The next run from @start to @end in which effort stays below @level (@below) or at it or above. FALSE when there
 * is none; go on from run->end. */
gboolean   lap_effort_next_run (const LapEffort  *effort,
                                double            start,
                                double            end,
                                double            level,
                                gboolean          below,
                                LapEffortRun     *run);

/* Between whom the estimate lies: fitness 2 METs less and 2 more, and where people rotate everyone's start. */
typedef struct {
  guint       n;
  LapEffort **traces;
} LapRibbon;

LapRibbon *lap_ribbon_new      (LapTimeline      *timeline);
void       lap_ribbon_free     (LapRibbon        *ribbon);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapRibbon, lap_ribbon_free)

void       lap_ribbon_at       (const LapRibbon  *ribbon,
                                double            second,
                                double           *low,
                                double           *high);

/* Blocks that people start at: the most of any part where they rotate, 1 where none does. */
guint      lap_effort_starts   (const LapTimeline *timeline);

G_END_DECLS
