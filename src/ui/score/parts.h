/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lane of parts: a bracket and title for each, under it a bracket and number for each round, and the rests between
 * and after them. It draws them; what can be seen, and what has the focus, is a widget besides.
 */
#pragma once

#include "place/brackets.h"
#include "ui/score/lane.h"

G_BEGIN_DECLS

#define LAP_TYPE_PARTS_LANE (lap_parts_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapPartsLane, lap_parts_lane, LAP, PARTS_LANE, LapLane)

const LapBrackets *lap_parts_lane_brackets (LapPartsLane *lane);
/* The widget of bracket @index, or NULL. */
GtkWidget         *lap_parts_lane_find     (LapPartsLane *lane,
                                            guint         index);
/* The bracket at a place of the lane, or LAP_NO_BRACKET; *@at_end: it can be drawn there. */
guint              lap_parts_lane_hit      (LapPartsLane *lane,
                                            double        x,
                                            double        y,
                                            gboolean     *at_end);
/* Gives bracket @index the focus, in view. */
void               lap_parts_lane_go       (LapPartsLane *lane,
                                            guint         index);

G_END_DECLS
