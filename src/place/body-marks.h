/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an exercise works, on a body from the front and, beside it, from the back: solid where a muscle works hard, pale
 * and outlined where it helps. A sketch for laymen, read from about 2 m; off at first.
 */
#pragma once

#include "place/page.h"

G_BEGIN_DECLS

/* Width of both bodies for a height of 1. */
#define LAP_BODY_WIDTH 0.96

/* Puts both, @height high, with the top left corner at @x, @y. @primary and @secondary are sets of LapMuscle. */
void lap_body_put (LapPage *page,
                   guint32  primary,
                   guint32  secondary,
                   double   x,
                   double   y,
                   double   height);

G_END_DECLS
