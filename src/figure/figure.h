/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures: how the body of an exercise looks at any moment, as outlines that any painter can fill.
 *
 * Order of use:
 *   set = lap_figure_set_new (lookup, data)       once; lookup finds the member "figure" of an exercise by id
 *   figure = lap_figure_set_get (set, id, &error) read at the first call, kept by the set
 *   lap_figure_phase (figure, seconds, per_rep)   where a player is
 *   drawing = lap_figure_draw (figure, …)         outlines, placed in a rectangle
 *   lap_figure_drawing_free (drawing)
 *
 * A figure never changes once it is read, and may be drawn from several threads; a set belongs to one
 * thread. No function here draws or measures text. The pose format is told in figure-read.c.
 */
#pragma once

#include <json-glib/json-glib.h>

#include "figure/pose.h"

G_BEGIN_DECLS

typedef struct _LapFigure LapFigure;
typedef struct _LapFigureSet LapFigureSet;

/* The figure member of exercise @id, borrowed, or NULL when there is none. */
typedef JsonObject *(*LapFigureLookup) (const char *id, gpointer data);

typedef enum {
  LAP_FIGURE_SIDE,
  LAP_FIGURE_FRONT,
} LapFigureView;

typedef enum {
  LAP_FIGURE_THERE_AND_BACK,
  LAP_FIGURE_LOOP,        /* ends where it began, never turns round */
  LAP_FIGURE_HOLD,        /* taken up once, then held */
  LAP_FIGURE_HOLD_BOTTOM, /* waits in the last key of every repetition */
  LAP_FIGURE_TRAVEL,      /* every repetition goes on from where the last one ended */
} LapFigureCycle;

typedef struct {
  double x0, y0, x1, y1;
} LapFigureBox;

/* ---- Reading ---- */

LapFigureSet *lap_figure_set_new (LapFigureLookup lookup, gpointer data);
void lap_figure_set_free (LapFigureSet *set);

/* The figure of exercise @id, owned by the set; NULL without an error when the exercise has none, NULL with
 * LAP_ERROR_INVALID (its pointer relative to the figure) when it can't be read. */
const LapFigure *lap_figure_set_get (LapFigureSet *set, const char *id, GError **error);

/* A figure on its own; free with lap_figure_free(). */
LapFigure *lap_figure_new (const char *id, JsonObject *object, LapFigureLookup lookup, gpointer data,
                           GError **error);
void lap_figure_free (LapFigure *figure);

/* ---- Asking ---- */

/* The key that says most about the exercise. */
guint lap_figure_poster_key (const LapFigure *figure);

/* ---- Posing ---- */

/* The phase of a player after @seconds at @per_rep seconds a repetition (0 = a hold): 0 ≤ phase < 1, or 1
 * for good once a held pose is taken up. */
double lap_figure_phase (const LapFigure *figure, double seconds, double per_rep);

/* The phase at which key @key stands still. */
double lap_figure_key_phase (const LapFigure *figure, guint key);

/* Solves the pose at @phase, 0 … 1 = one repetition (both sides of one that alternates). Allocates
 * nothing. */
void lap_figure_pose (const LapFigure *figure, double phase, LapFigurePose *pose);

/* ---- Drawing ---- */

typedef enum {
  LAP_FIGURE_ROLE_GROUND, /* a patch of floor or a wall seen face on */
  LAP_FIGURE_ROLE_FLOOR,
  LAP_FIGURE_ROLE_MAT,
  LAP_FIGURE_ROLE_SHADOW,
  LAP_FIGURE_ROLE_GHOST,
  LAP_FIGURE_ROLE_KIT,
  LAP_FIGURE_ROLE_FAR,
  LAP_FIGURE_ROLE_FAR_MOVING,
  LAP_FIGURE_ROLE_BODY,
  LAP_FIGURE_ROLE_MOVING,
  LAP_FIGURE_ROLE_ARROW,
  LAP_FIGURE_N_ROLES,
} LapFigureRole;

/* How much is shown, and what is fitted into the rectangle. */
typedef enum {
  LAP_FIGURE_ICON,   /* this pose alone, fitted tightly, standing on the lower edge: 64 pixels and less */
  LAP_FIGURE_TILE,   /* the pose; the whole movement is fitted, so that playing never jumps */
  LAP_FIGURE_POSTER, /* the poster key over its pale ghost, with the arrow */
} LapFigureLook;

typedef enum {
  LAP_FIGURE_PLAIN = 0,
  LAP_FIGURE_NO_FLOOR = 1 << 0, /* for figures that stand on a line of somebody else's */
} LapFigureDrawFlags;

/* A shape is filled with the non-zero winding rule, all its contours in one go: they may touch and
 * overlap, and the gaps between limbs are already cut out of them. Shapes are painted in their order. */
typedef struct {
  LapFigureRole role;
  guint first, n; /* contours */
} LapFigureShape;

typedef struct {
  guint first, n; /* points; the contour is closed, convex and runs clockwise as seen with y upwards */
} LapFigureContour;

typedef struct {
  double scale, x, y; /* a point of the drawing is at (x + scale * px, y - scale * py) in the rectangle */
  LapFigureBox box;   /* what was fitted, in units */
  guint n_shapes, n_contours, n_points;
  LapFigureShape *shapes;
  LapFigureContour *contours;
  LapFigPoint *points;
} LapFigureDrawing;

/* The outlines at @phase, placed in a rectangle of @width × @height pixels of 1/96 inch (they decide how
 * thin a line may get). LAP_FIGURE_POSTER shows its own key and ignores @phase. */
LapFigureDrawing *lap_figure_draw (const LapFigure *figure, LapFigureLook look, LapFigureDrawFlags flags,
                                   double phase, double width, double height);
void lap_figure_drawing_free (LapFigureDrawing *drawing);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFigureSet, lap_figure_set_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFigure, lap_figure_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFigureDrawing, lap_figure_drawing_free)

G_END_DECLS
