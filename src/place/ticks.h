/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ticks of the ruler: the finest step of the clock whose labels still have room.
 */
#pragma once

#include "place/axis.h"

G_BEGIN_DECLS

typedef struct {
  double   x;       /* px of the view */
  int      second;
  gboolean labelled;
} LapTick;

/* The ticks in the view, ascending in time. A label needs @label px. Folded pieces have one at their start, without
 * a label where the one before it is too near. */
GArray *lap_ticks (const LapAxis *axis,
                   double         label);

G_END_DECLS
