/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rows of the running order. Private to the sheet: running-order.c makes the table and its pages, these functions
 * fill it part by part.
 *
 * Folded, a block is one row with the clock of each of its rounds; unfolded, each round has rows of its own, so that
 * the table reads in order of time.
 */
#pragma once

#include "place/paper.h"
#include "place/table.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef enum {
  LAP_ORDER_GROUND, LAP_ORDER_FILM, LAP_ORDER_CLOCK, LAP_ORDER_FIGURE, LAP_ORDER_DO, LAP_ORDER_SAY, LAP_ORDER_GOES,
  LAP_ORDER_CAMERA, LAP_ORDER_CARE,
  LAP_N_ORDER_COLUMNS,
} LapOrderColumn;

typedef struct {
  const LapTimeline     *timeline;
  const LapSheetOptions *options;
  const LapMeasure      *measure;
  LapTable              *table;
  double                 width, height, margin, unit;
  int                    places[LAP_N_ORDER_COLUMNS]; /* column of the table, -1 where it isn't shown */
  LapType                plain, strong, second, quiet, stop, part, name;
  const LapExercise     *before; /* what the body comes from */
  guint                  p;      /* the part at hand */
  guint                  round;  /* the only one told of; 0 = all, folded */
  gboolean               unseen; /* a row is marked: the screen is out of sight */
} LapOrder;

/* The rows of part order->p. */
void lap_order_put_part (LapOrder *order);

G_END_DECLS
