/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Paints the outlines of a figure through cairo: fills and nothing else, so that a PDF holds paths and no
 * picture.
 */
#pragma once

#include <cairo.h>

#include "figure/figure.h"

G_BEGIN_DECLS

typedef enum {
  LAP_FIGURE_LIGHT,      /* on the light window */
  LAP_FIGURE_DARK,       /* on the dark window */
  LAP_FIGURE_PRINT,      /* in colour on white paper */
  LAP_FIGURE_ONE_COLOUR, /* black ink: what moves is black, the rest greys */
  LAP_FIGURE_N_COLOURS,
} LapFigureColours;

/* 0xRRGGBB each. */
typedef struct {
  guint32 paper;
  guint32 role[LAP_FIGURE_N_ROLES];
} LapFigurePalette;

const LapFigurePalette *lap_figure_palette (LapFigureColours colours);

/* Paints @drawing with the corner of its rectangle at the origin of @cr. */
void lap_figure_paint (cairo_t *cr, const LapFigureDrawing *drawing, const LapFigurePalette *palette);

/* The same as lines of @width pixels in @ink with @paper between them, to save ink; what moves is
 * tinted. */
void lap_figure_paint_outline (cairo_t *cr, const LapFigureDrawing *drawing, guint32 ink, guint32 paper,
                               double width);

G_END_DECLS
