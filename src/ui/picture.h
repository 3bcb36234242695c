/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A picture that is painted once and shown often: a render node that paints an image surface. To show it again is one
 * blit. A texture would look the same, but GTK 4.8 draws one through cairo by making all of it anew, pixel by pixel, in
 * each frame; and strokes would be stroked again.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef void (*LapPicturePaint) (cairo_t *cr, gpointer data);

/* What @paint paints on @width × @height px at @scale device px in one. Transfer full. */
GskRenderNode *lap_picture_new  (int              width,
                                 int              height,
                                 int              scale,
                                 LapPicturePaint  paint,
                                 gpointer         data);
/* Whether two show the same, px for px. */
gboolean       lap_picture_is_same (GskRenderNode *picture,
                                    GskRenderNode *other);
/* Its upper left corner at @x, @y. */
void           lap_picture_draw (GskRenderNode   *picture,
                                 GtkSnapshot     *snapshot,
                                 double           x,
                                 double           y);

G_END_DECLS
