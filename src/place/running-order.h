/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The running order: the whole session on a few pages for the hand, with the clock of each block, what to say before
 * it, where the body goes and what to spare. The rounds of a part are folded: a block is one row, with the clock of
 * each round.
 */
#pragma once

#include "place/paper.h"
#include "place/page.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

LapPages *lap_running_order_build (const LapTimeline     *timeline,
                                   const LapSheetOptions *options,
                                   const LapMeasure      *measure);

G_END_DECLS
