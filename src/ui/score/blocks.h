/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The blocks: every block's go in a round as a body for its work and a hatched tail for its rest. Only what is seen
 * is a widget, and beside it what is selected and what has the focus; boxes below 6 px are drawn together.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

#define LAP_TYPE_BLOCKS_LANE (lap_blocks_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapBlocksLane, lap_blocks_lane, LAP, BLOCKS_LANE, LapLane)

/* Widgets that show a box, and all there are with the ones kept for later. */
guint      lap_blocks_lane_n_live (LapBlocksLane *lane);
guint      lap_blocks_lane_n_all  (LapBlocksLane *lane);
/* The widget of @box, or NULL where it isn't shown. */
GtkWidget *lap_blocks_lane_find   (LapBlocksLane *lane,
                                   guint          box);
/* Selects @box beside or instead of what is, and gives the focused one the focus. */
void       lap_blocks_lane_choose (LapBlocksLane *lane,
                                   guint          box,
                                   LapChoose      how);
/* Gives the focused block, if there is one, the focus. */
void       lap_blocks_lane_take_focus (LapBlocksLane *lane);
/* Selects @box alone and gives it the focus. */
void       lap_blocks_lane_go     (LapBlocksLane *lane,
                                   guint          box);

G_END_DECLS
