/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What all that stands on a page of a poster has in common.
 *
 * Sizes are in units: one unit is a millimetre on A3 and in proportion on smaller papers, so that an A4 poster is an
 * A3 one seen from nearer by. Papers above A3 keep the unit and gain room.
 */
#pragma once

#include "place/paper.h"
#include "place/wrap.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef struct {
  const LapTimeline     *timeline;
  const LapSheetOptions *options;
  const LapMeasure      *measure;
  guint                  part;
  guint32                signs;         /* LapSign, a set: those on the poster, to be explained */
  double                 width, height; /* of the page, mm */
  double                 margin;        /* mm */
  double                 unit;          /* mm */
  double                 least;         /* scale at which names read from as far as was asked for; 1 = 3 m on A3 */
} LapPoster;

G_END_DECLS
