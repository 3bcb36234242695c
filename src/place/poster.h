/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The poster: what there is to do, to be read from across a room. Each main part has its pages; where there is none,
 * each part with exercises. As many exercises stand on a page as can be read: a name is at least 14 mm on A3 (a capital
 * under 16 minutes of arc at 3 m) and in proportion on smaller papers, an option 9 mm; or
 * as is asked for with a distance. Then there are more pages.
 */
#pragma once

#include "place/paper.h"
#include "place/page.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

LapPages *lap_poster_build (const LapTimeline     *timeline,
                            const LapSheetOptions *options,
                            const LapMeasure      *measure);

G_END_DECLS
