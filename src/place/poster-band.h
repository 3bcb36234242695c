/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The formula of a poster's part as a band of cells: work solid, rest hatched, and how often. First it is fitted into a
 * width, as large as that allows; then what is left of its rows is spread; then it is put.
 */
#pragma once

#include "place/poster-subject.h"

G_BEGIN_DECLS

typedef struct _LapPosterBand LapPosterBand;

/* @poster must outlive it. */
LapPosterBand *lap_poster_band_new      (const LapPoster     *poster);
void           lap_poster_band_free     (LapPosterBand       *band);

/* All in mm. Returns the width it takes, at most @width. */
double         lap_poster_band_fit      (LapPosterBand       *band,
                                         double               width);
/* Whether it fits into one row at the size wanted. */
gboolean       lap_poster_band_is_large (const LapPosterBand *band);
double         lap_poster_band_height   (const LapPosterBand *band);
/* What is left of @width in a row goes to work and rest, so that the ground comes near its true proportion. */
void           lap_poster_band_spread   (LapPosterBand       *band,
                                         double               width);
void           lap_poster_band_put      (LapPosterBand       *band,
                                         LapPage             *page,
                                         double               x,
                                         double               y);

G_END_DECLS
