/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The foot of a poster: the words of safety, what the signs on it mean, the square code of its link, the version and
 * which page it is. It is laid out once for a page size and put on each page.
 */
#pragma once

#include "place/poster-subject.h"

G_BEGIN_DECLS

typedef struct _LapPosterFoot LapPosterFoot;

/* @poster must outlive it. */
LapPosterFoot *lap_poster_foot_new    (const LapPoster     *poster);
void           lap_poster_foot_free   (LapPosterFoot       *foot);

double         lap_poster_foot_height (const LapPosterFoot *foot); /* mm */
/* At the bottom of @page. @where says which page it is, "2 of 3", or is NULL. */
void           lap_poster_foot_put    (LapPosterFoot       *foot,
                                       LapPage             *page,
                                       const char          *where);

G_END_DECLS
