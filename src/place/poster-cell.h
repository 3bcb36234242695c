/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One exercise on a poster: its number, name, figure on the ground line, and what there is to say. The same function
 * asks whether it fits a cell and puts it there, so that what was asked and what is drawn can't differ.
 */
#pragma once

#include "place/poster-subject.h"
#include "place/stations.h"

G_BEGIN_DECLS

/* Height of a name at scale 1, in units: a capital under 16 minutes of arc at 3 m. */
#define LAP_NAME_CAP 14.0

typedef enum {
  LAP_CELL_SIDE,  /* number and figure left, words right */
  LAP_CELL_STACK, /* number and name above, figure left and options right below */
  LAP_CELL_TALL,  /* number and name, figure, options, one below the other */
  LAP_N_CELL_STYLES,
} LapCellStyle;

/* How all cells of a page look. */
typedef struct {
  LapCellStyle style;
  double       share;   /* of the width, for the figure */
  double       scale;   /* of all letters: 1 is the least that is read from the poster's distance */
  double       width;   /* mm */
  gboolean     figures;
  double       below;   /* room kept for the words below a tall figure, so that a row stands on one ground, mm */
  double       number;  /* the least height of the number, mm; 0 = as the scale has it */
} LapCellPlan;

typedef struct _LapPosterCell LapPosterCell;

LapPosterCell *lap_poster_cell_new  (const LapPoster   *poster,
                                     const LapStation  *station);
void           lap_poster_cell_free (LapPosterCell     *cell);

/* The signs it shows, a set of LapSign. */
guint32        lap_poster_cell_signs (const LapPosterCell *cell);

/* The least height everything stands in, mm; -1 where the plan's width is too small. */
double         lap_poster_cell_need (LapPosterCell     *cell,
                                     const LapCellPlan *plan);
/* The height of the words below a tall figure, mm; 0 in other styles. */
double         lap_poster_cell_below (LapPosterCell     *cell,
                                      const LapCellPlan *plan);
/* How large its figure is at @height: the lesser side of its place, mm; 0 without figures. */
double         lap_poster_cell_figure (LapPosterCell    *cell,
                                       const LapCellPlan *plan,
                                       double            height);
/* What more height than it needs still makes its figure larger, mm. */
double         lap_poster_cell_grows (const LapCellPlan *plan);
/* At least the height it needs; what is over goes to the figure. */
void           lap_poster_cell_put  (LapPosterCell     *cell,
                                     const LapCellPlan *plan,
                                     LapPage           *page,
                                     double             x,
                                     double             y,
                                     double             height);

G_END_DECLS
