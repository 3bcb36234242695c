/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A landing as it is drawn: a caret through all lanes, the dashed outline of what would stand there, and a mark in each
 * lane that would show a new warning.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

/* What all lanes have; over their content. */
void lap_landing_draw        (LapLane     *lane,
                              GtkSnapshot *snapshot,
                              int          height);
/* What the blocks have besides: the blocks that would land. Before the rest. */
void lap_landing_draw_ghosts (LapLane     *lane,
                              GtkSnapshot *snapshot,
                              int          height);

G_END_DECLS
