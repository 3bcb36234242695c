/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pictures of a lane's content, side by side, so that a frame that scrolls moves what is there and paints only what
 * comes into view. While the axis is laid out anew in every frame, as in zooming, the view is painted and nothing is
 * kept.
 *
 * Content may reach LAP_TILE_BLEED px over its own place, as a label beside its mark does; how it looks must not
 * depend on where the view begins.
 */
#pragma once

#include "place/axis.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TILE_BLEED 64 /* px */

typedef struct _LapTiles LapTiles;

/* Paints what lies in the view of @axis, which begins at the left edge. */
typedef void (*LapTilePaint) (gpointer       lane,
                              cairo_t       *cr,
                              const LapAxis *axis,
                              int            height);

LapTiles *lap_tiles_new       (void);
void      lap_tiles_free      (LapTiles     *tiles);
/* What is kept isn't true any more. */
void      lap_tiles_clear     (LapTiles     *tiles);
void      lap_tiles_draw      (LapTiles     *tiles,
                               GtkSnapshot  *snapshot,
                               const LapAxis *axis,
                               int           height,
                               int           scale,
                               LapTilePaint  paint,
                               gpointer      lane);
/* How many times something was painted. */
guint     lap_tiles_n_painted (LapTiles     *tiles);

G_END_DECLS
