/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The clock of the film: 0 is where its file begins. The session starts `film.lead` seconds later, and everything
 * can be moved by an offset. Put on the takes, only what was kept of it is there, each piece where the camera has
 * it.
 *
 * Always true: pieces stand in the order of the film and don't overlap there.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

typedef struct {
  double from, to; /* seconds on the session clock */
  double ahead;    /* seconds later in the film; below 0 before its beginning */
} LapPiece;

typedef struct {
  guint     n;
  LapPiece *pieces;
} LapFilm;

/* One piece, or those that were kept. NULL with LAP_ERROR_USAGE where the session has no takes, or
 * LAP_ERROR_INVALID where one of them can't be understood. */
LapFilm *lap_film_new  (const LapPublication *what,
                        GError              **error);
void     lap_film_free (LapFilm              *film);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFilm, lap_film_free)

/* What there is of the session's @start until @end in @piece, in seconds of the film from 0 on. FALSE for
 * nothing. */
gboolean lap_piece_of  (const LapPiece       *piece,
                        double                start,
                        double                end,
                        double               *in,
                        double               *out);

/* Seconds on the film's clock at second 0 of the session, without regard to takes. */
double   lap_film_lead (const LapPublication *what);

G_END_DECLS
