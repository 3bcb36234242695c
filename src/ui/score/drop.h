/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An exercise from the catalogue, dropped between two blocks or onto one. Where it would come is shown while it is held
 * over the lane; the view scrolls at its edges.
 */
#pragma once

#include "ui/score/blocks.h"

G_BEGIN_DECLS

/* Makes @lane a target. Once; it goes with the lane. */
void lap_score_drop_install (LapBlocksLane *lane);
/* What is held over the lane, over its content. */
void lap_score_drop_draw    (LapBlocksLane *lane,
                             GtkSnapshot   *snapshot);

G_END_DECLS
