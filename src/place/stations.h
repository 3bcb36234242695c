/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words that stand at each exercise of a part when it hangs on a wall: short enough to be read from afar. What is
 * written is computed from the timeline, so that a sheet can't say other than what is rehearsed.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef struct {
  guint          number;   /* from 1 within the part */
  const LapTurn *turn;     /* its go in the round asked for; belongs to the timeline */
  const LapTask *task;
  char          *name;
  char          *detail;   /* "12 reps · 8 kg", or NULL */
  char          *easier, *harder; /* or NULL */
  char          *later;    /* "2: Squat jump", what round 2 changes, or NULL */
  gboolean       swaps;      /* the sides are swapped half way */
  gboolean       breathless; /* high impact, or 7 MET and more at its pace */
  int            work, rest; /* seconds; work 0 where there is no time of its own */
} LapStation;

/* The exercises of part @part in their order, as LapStation. */
GPtrArray *lap_stations_of   (const LapTimeline *timeline,
                              guint              part);
/* The same as they are done in @round, without what later rounds change. */
GPtrArray *lap_stations_in   (const LapTimeline *timeline,
                              guint              part,
                              guint              round);

/* Takes the weight out of the detail, where it stands elsewhere. */
void       lap_station_without_load (LapStation *station);

/* Whether the poster shows the part: a main part with exercises, or any with exercises where there is no main part. */
gboolean   lap_part_is_shown (const LapTimeline *timeline,
                              guint              part);

/* "12 reps", "8–12 reps". */
char      *lap_reps_text     (guint              reps);

G_END_DECLS
