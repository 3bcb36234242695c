/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The formula of a part: "40 s work, 20 s rest, × 10 exercises, × 2 rounds" as cells of a big number and a small
 * word. Where the lengths differ it is a range, "30–45"; people only change "stations" when they rotate.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef enum {
  LAP_CELL_WORK,  /* on the solid ground */
  LAP_CELL_REST,  /* on the hatched ground */
  LAP_CELL_COUNT, /* after a × */
  LAP_CELL_WORDS, /* words alone, in `small` */
} LapCellKind;

typedef struct {
  LapCellKind kind;
  char       *big, *small;
  int         seconds; /* what the number stands for at most; 0 for counts and words */
} LapCell;

/* LapCell, transfer full. */
GArray *lap_formula_of   (const LapTimeline *timeline,
                          guint              part);

/* The same in a line: "40 s work, 20 s rest × 10 exercises × 2 rounds". */
char   *lap_formula_text (const LapTimeline *timeline,
                          guint              part);

G_END_DECLS
