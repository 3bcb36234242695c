/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The strokes that lanes share: hatches, outlines, text.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum {
  LAP_HATCH_REST,  /* lines at 45°, 5 px apart */
  LAP_HATCH_WORDS, /* level lines like text, 3.5 px apart */
} LapHatch;

/* Fills a rectangle with a hatch. */
void lap_paint_hatch (cairo_t       *cr,
                      LapHatch       hatch,
                      const GdkRGBA *colour,
                      double         x,
                      double         y,
                      double         width,
                      double         height);

/* Fills a rectangle with dots of a px, @pitch px apart, one of which is at @origin_x, @origin_y. */
void lap_paint_dots  (cairo_t       *cr,
                      const GdkRGBA *colour,
                      int            pitch,
                      int            origin_x,
                      int            origin_y,
                      double         x,
                      double         y,
                      double         width,
                      double         height);

/* A rounded rectangle, filled where @fill is given, with a line of @line px inside its edge where @stroke is. Through
 * cairo, whose fill of a shape costs a fraction of what clipping to it does. */
void lap_paint_box   (cairo_t       *cr,
                      const GdkRGBA *fill,
                      const GdkRGBA *stroke,
                      double         line,
                      double         radius,
                      double         x,
                      double         y,
                      double         width,
                      double         height);

/* The handle of an end that can be held: a short upright bar, @x its middle. */
void lap_paint_handle (GtkSnapshot  *snapshot,
                       double        x,
                       double        y,
                       double        height);

/* @layout with its top left corner at x, y. */
void lap_paint_text  (GtkSnapshot   *snapshot,
                      PangoLayout   *layout,
                      const GdkRGBA *colour,
                      double         x,
                      double         y);

/* The same in a picture of its own. */
void lap_paint_layout (cairo_t      *cr,
                       PangoLayout  *layout,
                       const GdkRGBA *colour,
                       double        x,
                       double        y);

/* @layout in letters of LAP_SMALL of its size, its middle at x, y. Scaled where it is painted: a font of another size has
 * to be found, measured and hinted first. */
#define LAP_SMALL 0.85
void lap_paint_small  (cairo_t      *cr,
                       PangoLayout  *layout,
                       const GdkRGBA *colour,
                       double        x,
                       double        y);

void lap_paint_rect  (GtkSnapshot   *snapshot,
                      const GdkRGBA *colour,
                      double         x,
                      double         y,
                      double         width,
                      double         height);

G_END_DECLS
