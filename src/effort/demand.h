/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The MET of every interval of a timeline; only this folder uses it.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

/* One MET for each interval, for somebody who starts @station blocks later where people rotate. Transfer full. */
double *lap_demand_mets     (const LapTimeline *timeline,
                             guint              station);

/* The seconds that @turn of an own-pace part weighs with: what its repetitions take, else its work as written. */
double  lap_demand_weight   (const LapTimeline *timeline,
                             const LapTurn     *turn);

/* Exercise blocks that people rotate over in the part @stretch, 0 where they don't. */
guint   lap_demand_stations (const LapStretch  *stretch);

G_END_DECLS
