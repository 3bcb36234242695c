/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Seconds that are drawn longer or shorter by hand: the end of a block's work or rest, a rest between rounds. Each call
 * holds the new value in place of the one before; one that would be impossible leaves the last that was not.
 */
#pragma once

#include "edit/verbs-time.h"
#include "ui/document.h"

G_BEGIN_DECLS

typedef struct {
  LapTimeSource source;
  int           factor; /* seconds that the end moves for one of the source */
  int           now;     /* what is held */
  int           refused; /* the least that was too long */
} LapStretching;

void     lap_stretching_begin (LapStretching       *stretching,
                               const LapTimeSource *source,
                               int                  factor);
/* Its end was carried by @seconds. FALSE when that changes nothing. */
gboolean lap_stretching_to    (LapStretching       *stretching,
                               LapDocument         *document,
                               double               seconds,
                               int                  grid);

G_END_DECLS
