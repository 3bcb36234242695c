/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Inks: what is to be drawn, before it becomes contours. Private to figure/.
 *
 * Every shape is a union of convex hulls of discs: a limb is the hull of two, a rectangle that of four
 * small ones, a line that of two. A list of inks is put in order by rank; an ink with cuts then takes a
 * gap out of all inks before it that can be cut. lap_inks_draw() makes contours of them: a convex polygon
 * less a convex polygon falls into convex pieces that touch without a seam, because they are filled in one
 * go.
 *
 *   inks = lap_inks_new (scale); lap_inks_add (…); lap_inks_hull (…) …; lap_inks_draw (…); lap_inks_free ()
 */
#pragma once

#include "figure/key.h"

G_BEGIN_DECLS

typedef struct {
  LapFigPoint c;
  double r;
} LapDisc;

#define LAP_MAX_DISCS 8

typedef struct {
  guint n;
  gboolean cuts;   /* part of what knocks a gap out of earlier inks */
  gboolean unseen; /* only cuts */
  LapDisc disc[LAP_MAX_DISCS];
} LapHull;

typedef struct {
  LapFigureRole role;
  int rank, serial;
  gboolean can_be_cut, spares_legs; /* spares_legs: doesn't cut a leg of its own role */
  gboolean is_leg;
  double gap;                       /* 0: the usual one */
  guint first, n;                   /* hulls */
} LapInk;

typedef struct {
  double scale, thick, gap;         /* pixels per unit; factor on the radii of a body; units */
  double pixel;                     /* one pixel, in units */
  GArray *inks, *hulls;
} LapInks;

LapInks *lap_inks_new (double scale);
void lap_inks_free (LapInks *inks);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapInks, lap_inks_free)

/* Begins an ink; the hulls added next are its own. The pointer holds until the next ink begins. */
LapInk *lap_inks_add (LapInks *inks, LapFigureRole role, int rank);
LapHull *lap_inks_hull (LapInks *inks, const LapDisc *discs, guint n);
void lap_inks_line (LapInks *inks, LapFigPoint a, LapFigPoint b, double r);
void lap_inks_disc (LapInks *inks, LapFigPoint c, double r);
void lap_inks_ring (LapInks *inks, LapFigPoint c, double r, double half);
void lap_inks_box (LapInks *inks, double x0, double y0, double x1, double y1, double r);

/* What all inks from @first on cover. An empty list gives a box with x0 > x1. */
LapFigureBox lap_inks_bounds (const LapInks *inks, guint first);

/* Turns all inks round the line x = @about, and gives them the roles of something far. */
void lap_inks_mirror (LapInks *inks, guint first, double about);

/* The way from @at to the nearest ink from @first on, 0 inside one; ranks below @rank don't count. */
double lap_inks_clearance (const LapInks *inks, int rank, LapFigPoint at);

/* Contours of all inks; nothing is drawn under @crop (NAN: no limit). */
LapFigureDrawing *lap_inks_draw (LapInks *inks, double crop);

/* ---- What adds inks ---- */

#define LAP_RANK_GROUND (-40)
#define LAP_RANK_BACK (-30)
#define LAP_RANK_GHOST (-20)
#define LAP_RANK_PARTNER 0
#define LAP_RANK_BODY 200
#define LAP_RANK_ARROW 1000

/* Where in the body's order a piece of kit goes. */
int lap_rank_of_layer (LapLayer layer);

void lap_ink_body (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose, int rank);
void lap_ink_shadow (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose);
/* @held: only what moves with the body; else only what stands. */
void lap_ink_kit (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose, gboolean held, int rank);
void lap_ink_arrows (LapInks *inks, const LapFigure *figure);

/* The floor and the mat under a body that takes @box; nothing reaches out of @from … @to. */
void lap_ink_ground (LapInks *inks, const LapFigure *figure, LapFigureBox box, double from, double to);

/* How far they reach down under the figure, in units, where a pixel is @pixel units. */
double lap_ground_depth (const LapFigure *figure, double pixel);

/* The line an arrow runs along. Returns the number of points written, at most @room. */
guint lap_arrow_path (const LapFigure *figure, const LapArrow *arrow, LapFigPoint *points, guint room);

G_END_DECLS
