/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ruler shows the session clock, 0:00 at the first block, or the film clock, 0:00 when the camera starts.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

#define LAP_TYPE_RULER_LANE (lap_ruler_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapRulerLane, lap_ruler_lane, LAP, RULER_LANE, LapLane)

void       lap_ruler_lane_set_film (LapRulerLane *lane,
                                    gboolean      film);
/* Seconds on its clock at the start of the session. */
int        lap_ruler_lane_lead     (LapRulerLane *lane);
/* The label of the lane: a button that changes the clock. */
GtkWidget *lap_ruler_label_new     (LapLane      *lane);

G_END_DECLS
