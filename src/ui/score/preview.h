/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a remedy would make of the blocks: those that would be other ones or elsewhere, as dashed boxes with their
 * names, over those that are there.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

void lap_preview_blocks (LapLane          *lane,
                         cairo_t          *cr,
                         const LapScore   *score,
                         const LapCheckup *checkup,
                         int               height);
/* Whether box @index of @score is as one of @now is. */
gboolean lap_preview_is_same (const LapScore *score,
                              guint           index,
                              const LapScore *now);

G_END_DECLS
