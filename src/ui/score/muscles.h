/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lane of muscles: folded up one row of clashes, open a row for each region. Its label opens it.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

#define LAP_TYPE_MUSCLES_LANE (lap_muscles_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapMusclesLane, lap_muscles_lane, LAP, MUSCLES_LANE, LapLane)

gboolean   lap_muscles_lane_is_open   (LapMusclesLane *lane);
void       lap_muscles_lane_set_open  (LapMusclesLane *lane,
                                       gboolean        open);
/* px above its rows: where its label has its title. */
int        lap_muscles_lane_head      (LapMusclesLane *lane);

/* The label of the lane: a title that opens it, and the names of the rows. */
GtkWidget *lap_muscles_label_new      (LapLane        *lane);

G_END_DECLS
