/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drawing the end of a part or of its last round, which makes more or fewer rounds, and the rests between rounds and
 * after a part. What is drawn is seen at once; letting go makes it one step, Escape takes it back whole.
 */
#pragma once

#include "ui/score/parts.h"

G_BEGIN_DECLS

/* Gives @lane the gesture. Once; it goes with the lane. */
void     lap_bracket_drag_install (LapPartsLane *lane);
/* Draws what is held over the lane: its words. */
void     lap_bracket_drag_draw    (LapPartsLane *lane,
                                   GtkSnapshot  *snapshot);
gboolean lap_bracket_drag_is_held (LapPartsLane *lane);

G_END_DECLS
