/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands around the exercises of a poster: above, the title and the formula; below, the safety words and what
 * the signs mean. Both are laid out once for a page size and put on each page.
 */
#pragma once

#include "place/poster-subject.h"

G_BEGIN_DECLS

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

G_END_DECLS
