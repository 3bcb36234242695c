/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands around the exercises of a poster: above, the title and the formula; below, the safety words and what
 * the signs mean. Both are laid out once for a page size and put on each page.
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

typedef struct _LapPosterFrame LapPosterFrame;

LapPosterFrame *lap_poster_frame_new  (const LapPoster *poster);
void            lap_poster_frame_free (LapPosterFrame  *frame);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapPosterFrame, lap_poster_frame_free)

/* Where the exercises may stand, mm from the top of the page. The first page of a part has the whole formula; the
 * others, which hang beside it, have it as a line and more room. */
double          lap_poster_frame_top    (const LapPosterFrame *frame,
                                         gboolean              first);
double          lap_poster_frame_bottom (const LapPosterFrame *frame);

void            lap_poster_frame_head   (LapPosterFrame *frame,
                                         LapPage        *page,
                                         gboolean        first);
/* @where says which page it is, "2 of 3", or is NULL. */
void            lap_poster_frame_foot   (LapPosterFrame *frame,
                                         LapPage        *page,
                                         const char     *where);

/* The ground: the work solid, the rest a thinner hatched tail, to scale along @width. */
void            lap_ground_put          (LapPage        *page,
                                         double          x,
                                         double          y,
                                         double          width,
                                         double          thick,
                                         int             work,
                                         int             rest);

G_END_DECLS
