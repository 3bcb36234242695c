/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small chart of what the main parts work: a bar for each region, solid for seconds of hard work, outlined for
 * seconds of helping, and in words what pushes and pulls. Part of the running order.
 */
#pragma once

#include "place/wrap.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

/* mm that the chart takes; @unit is the sheet's scale, 1 on A4. 0 where there is no main work. */
double lap_balance_height (const LapTimeline *timeline,
                           const LapMeasure  *measure,
                           double             unit);

/* Puts it with its top left corner at @x, @y. */
void   lap_balance_put    (const LapTimeline *timeline,
                           const LapMeasure  *measure,
                           LapPage           *page,
                           double             unit,
                           double             x,
                           double             y,
                           double             width);

G_END_DECLS
