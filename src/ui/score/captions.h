/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What folded parts and rounds hold, in words under their blocks, which are too small there for names.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

/* At @top in the blocks lane; what doesn't fit whole is left out. */
void lap_captions_draw (LapLane     *lane,
                        GtkSnapshot *snapshot,
                        int          top);

G_END_DECLS
