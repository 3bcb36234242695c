/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The solver and the blender of key poses. Private to figure/.
 */
#pragma once

#include "figure/key.h"

G_BEGIN_DECLS

/* Finds the joints of @key. Contacts hold exactly; a point out of reach is approached, and the miss is
 * told in LapSolvedLimb.reach_missed. */
void lap_solve (const LapFigure *figure, const LapKey *key, LapFigurePose *pose);

/* The pose between keys @a and @b of the figure at share @t of the way (0 … 1); @even: at an even pace,
 * without slowing down at the ends. */
void lap_blend (const LapFigure *figure, guint a, guint b, double t, gboolean even, LapFigurePose *pose);

/* The height of the highest surface under the point @at, the floor included. */
double lap_surface_under (const LapFigure *figure, LapFigPoint at);

/* The height of the surface a limb or a pin names. */
double lap_surface_of (const LapFigure *figure, int on);

/* The joint as it would be drawn if it were in the plane of the picture (three-quarter view; else as
 * drawn). */
LapFigPoint lap_grounded (const LapFigure *figure, const LapFigurePose *pose, LapJoint joint);

/* The skin around a joint that rests on a surface. */
double lap_skin (const LapFigure *figure, const LapFigurePose *pose, LapJoint joint);

/* How far the lowest point of the body is below the surfaces under it; 0 when nothing is. */
double lap_sunk (const LapFigure *figure, const LapFigurePose *pose);

/* A limb of the figure wishes for a contact with something fixed. */
gboolean lap_limb_is_planted (const LapLimb *limb);

G_END_DECLS
