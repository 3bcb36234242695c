/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The clock of the film: 0 is where its file begins. The session starts `film.lead` seconds later, and everything can
 * be moved by an offset.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

/* Seconds on the film's clock at second @clock of the session; below 0 before the film begins. */
double lap_film_at   (const LapPublication *what,
                      double                clock);

G_END_DECLS
