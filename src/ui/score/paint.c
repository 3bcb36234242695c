/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/paint.h"

#define REST_PITCH  5.0
#define REST_LINE   1.7
#define WORDS_PITCH 3.5
#define WORDS_LINE  1.4

static void
rest_lines (cairo_t *cr, double x, double y, double width, double height)
{
  /* The pitch is measured across the lines, which run up to the right; along x they are √2 apart. The lines hang
   * on whole pitches of x, so that tails beside each other go on. */
  const double step = REST_PITCH * G_SQRT2;

  cairo_set_line_width (cr, REST_LINE);
  for (double from = x - height; from < x + width; from += step) {
    cairo_move_to (cr, from, y + height);
    cairo_line_to (cr, from + height, y);
  }
}

static void
word_lines (cairo_t *cr, double x, double y, double width, double height)
{
  cairo_set_line_width (cr, WORDS_LINE);
  for (double line = y + WORDS_PITCH / 2; line < y + height; line += WORDS_PITCH) {
    cairo_move_to (cr, x, line);
    cairo_line_to (cr, x + width, line);
  }
}

void
lap_paint_hatch (GtkSnapshot *snapshot, LapHatch hatch, const GdkRGBA *colour, double x, double y, double width,
                 double height)
{
  cairo_t *cr;

  if (width <= 0 || height <= 0)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (x, y, width, height));
  cairo_rectangle (cr, x, y, width, height);
  cairo_clip (cr);
  gdk_cairo_set_source_rgba (cr, colour);
  if (hatch == LAP_HATCH_REST)
    rest_lines (cr, x, y, width, height);
  else
    word_lines (cr, x, y, width, height);
  cairo_stroke (cr);
  cairo_destroy (cr);
}

void
lap_paint_box (GtkSnapshot *snapshot, const GdkRGBA *fill, const GdkRGBA *stroke, double line, double radius, double x,
               double y, double width, double height)
{
  GskRoundedRect shape;

  if (width <= 0 || height <= 0)
    return;
  gsk_rounded_rect_init_from_rect (&shape, &GRAPHENE_RECT_INIT (x, y, width, height), MIN (radius, width / 2));
  if (fill != NULL) {
    gtk_snapshot_push_rounded_clip (snapshot, &shape);
    gtk_snapshot_append_color (snapshot, fill, &shape.bounds);
    gtk_snapshot_pop (snapshot);
  }
  if (stroke != NULL)
    gtk_snapshot_append_border (snapshot, &shape, (float[]) { line, line, line, line },
                                (GdkRGBA[]) { *stroke, *stroke, *stroke, *stroke });
}

void
lap_paint_text (GtkSnapshot *snapshot, PangoLayout *layout, const GdkRGBA *colour, double x, double y)
{
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (x, y));
  gtk_snapshot_append_layout (snapshot, layout, colour);
  gtk_snapshot_restore (snapshot);
}

void
lap_paint_rect (GtkSnapshot *snapshot, const GdkRGBA *colour, double x, double y, double width, double height)
{
  if (width > 0 && height > 0)
    gtk_snapshot_append_color (snapshot, colour, &GRAPHENE_RECT_INIT (x, y, width, height));
}
