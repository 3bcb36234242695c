/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A landing as it is drawn: a caret through all lanes, the dashed outline of what would stand there and what it would
 * work, and in each lane that would show a new warning a mark with its words; on the ruler those that no lane shows.
 */
#pragma once

#include "ui/palette.h"
#include "ui/score/lane.h"

G_BEGIN_DECLS

/* The path of @cr in the dashes of what isn't there yet, filled with @fill. */
void lap_landing_dashes      (cairo_t     *cr,
                              LapColour    fill);
/* What @lane says of the new warnings that it would show: "Hard for long, and 2 more". NULL without any. Transfer
 * full. */
char *lap_landing_words      (LapLane     *lane);
/* What all lanes have; over their content. */
void lap_landing_draw        (LapLane     *lane,
                              GtkSnapshot *snapshot,
                              int          height);
/* What the blocks have besides: the blocks that would land. Before the rest. */
void lap_landing_draw_ghosts (LapLane     *lane,
                              GtkSnapshot *snapshot,
                              int          height);

G_END_DECLS
