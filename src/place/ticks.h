/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ticks of the ruler: the finest step of the clock whose labels still have room.
 */
#pragma once

#include "place/axis.h"

G_BEGIN_DECLS

typedef struct {
  double   x;       /* px of the view */
  int      second;   /* of the session */
  gboolean labelled;
} LapTick;

/* The ticks in the view, ascending in time, on whole steps of a clock that shows @lead seconds at the start of the
 * session. A label needs @label px. Folded pieces have one at their start, without a label where the one before it is
 * too near. */
GArray *lap_ticks (const LapAxis *axis,
                   int            lead,
                   double         label);

G_END_DECLS
