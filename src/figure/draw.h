/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is drawn when, and how much room it takes. Private to figure/.
 */
#pragma once

#include "figure/ink.h"
#include "figure/solve.h"

G_BEGIN_DECLS

/* Works out the boxes of a figure whose poses are solved. */
void lap_figure_measure (LapFigure *figure);

/* The side of a figure that alternates whose turn it is at @phase. */
const LapFigure *lap_figure_side (const LapFigure *figure, double phase);

/* The share of its rectangle that a tile or poster figure leaves free on each side, below its feet too. */
#define LAP_FIGURE_PADDING 0.06

G_END_DECLS
