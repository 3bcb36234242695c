/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Convex polygons: outlines of hulls of discs, and what is left of one without another. Private to
 * figure/.
 *
 * Corners run clockwise with y upwards. Locals are left unset on purpose: a polygon is large, and only its
 * first n corners are ever read.
 */
#pragma once

#include "figure/ink.h"

G_BEGIN_DECLS

#define LAP_MAX_CORNERS 64
#define LAP_MAX_POINTS (3 * LAP_MAX_CORNERS)

typedef struct {
  guint n;
  LapFigureBox box;
  LapFigPoint p[LAP_MAX_POINTS];
} LapPolygon;

/* In which directions an outline has its corners. */
typedef struct {
  guint n;
  LapFigPoint toward[LAP_MAX_CORNERS];
} LapCompass;

/* As many as a circle of the size of a head needs to look round at @scale pixels a unit. */
void lap_compass_init (LapCompass *compass, double scale);

/* The outline of @hull, grown by @grow. */
void lap_polygon_around (LapPolygon *polygon, const LapCompass *compass, const LapHull *hull, double grow);

/* The part of @from on the left (@sign 1) or the right (-1) of the line @a → @b; n < 3 when there is none. */
void lap_polygon_half (const LapPolygon *from, LapFigPoint a, LapFigPoint b, double sign, LapPolygon *to);

/* Adds to @out, an array of polygons, the convex pieces of @from without @cut. */
void lap_polygon_subtract (const LapPolygon *from, const LapPolygon *cut, GArray *out);

/* Adds room for one polygon to @out. */
LapPolygon *lap_polygon_slot (GArray *out);

/* The way from @at to the polygon, 0 inside. */
double lap_polygon_way (const LapPolygon *polygon, LapFigPoint at);

G_END_DECLS
