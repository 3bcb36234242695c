/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Station cards: one for each exercise, to stand at its place in the room. The number reads from 5 m, the name from
 * 2 m; an arrow leads on. A large sheet holds two or four, to be cut apart.
 */
#pragma once

#include "place/paper.h"
#include "place/page.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

LapPages *lap_cards_build (const LapTimeline     *timeline,
                           const LapSheetOptions *options,
                           const LapMeasure      *measure);

G_END_DECLS
