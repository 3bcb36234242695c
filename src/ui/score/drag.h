/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pointer on the blocks lane: drags of blocks to another place, and of the ends of work and rest, whose handles are
 * shown where the pointer is. A drag is one step of undo; Escape takes it back whole. While a block is carried nothing
 * moves but what shows where it would land; an end moves at once.
 */
#pragma once

#include "ui/score/blocks.h"

G_BEGIN_DECLS

/* Once, for a lane that has its context. */
void lap_score_drag_install (LapBlocksLane *lane);
/* Draws handles, and what is carried, over the blocks. */
void lap_score_drag_draw    (LapBlocksLane *lane,
                             GtkSnapshot   *snapshot);

G_END_DECLS
