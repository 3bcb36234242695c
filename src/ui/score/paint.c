/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/paint.h"

#include "ui/palette.h"

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
lap_paint_hatch (cairo_t *cr, LapHatch hatch, const GdkRGBA *colour, double x, double y, double width, double height)
{
  if (width <= 0 || height <= 0)
    return;
  cairo_save (cr);
  cairo_rectangle (cr, x, y, width, height);
  cairo_clip (cr);
  gdk_cairo_set_source_rgba (cr, colour);
  if (hatch == LAP_HATCH_REST)
    rest_lines (cr, x, y, width, height);
  else
    word_lines (cr, x, y, width, height);
  cairo_stroke (cr);
  cairo_restore (cr);
}

/* One dot in a picture that is repeated: a thousand dots would be a thousand shapes. */
void
lap_paint_dots (cairo_t *cr, const GdkRGBA *colour, int pitch, int origin_x, int origin_y, double x, double y,
                double width, double height)
{
  cairo_surface_t *dot = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, pitch, pitch);
  cairo_t *in = cairo_create (dot);

  gdk_cairo_set_source_rgba (in, colour);
  cairo_rectangle (in, 0, pitch / 2, 1, 1);
  cairo_fill (in);
  cairo_destroy (in);
  cairo_set_source_surface (cr, dot, origin_x, origin_y);
  cairo_pattern_set_extend (cairo_get_source (cr), CAIRO_EXTEND_REPEAT);
  cairo_pattern_set_filter (cairo_get_source (cr), CAIRO_FILTER_NEAREST);
  cairo_rectangle (cr, x, y, width, height);
  cairo_fill (cr);
  cairo_surface_destroy (dot);
}

static void
rounded (cairo_t *cr, double radius, double x, double y, double width, double height)
{
  double r = MIN (radius, MIN (width, height) / 2), right = x + width, bottom = y + height;

  cairo_new_path (cr);
  cairo_arc (cr, right - r, y + r, r, -G_PI_2, 0);
  cairo_arc (cr, right - r, bottom - r, r, 0, G_PI_2);
  cairo_arc (cr, x + r, bottom - r, r, G_PI_2, G_PI);
  cairo_arc (cr, x + r, y + r, r, G_PI, 3 * G_PI_2);
  cairo_close_path (cr);
}

void
lap_paint_box (cairo_t *cr, const GdkRGBA *fill, const GdkRGBA *stroke, double line, double radius, double x, double y,
               double width, double height)
{
  if (width <= 0 || height <= 0)
    return;
  if (fill != NULL) {
    rounded (cr, radius, x, y, width, height);
    gdk_cairo_set_source_rgba (cr, fill);
    cairo_fill (cr);
  }
  if (stroke != NULL && width > line) {
    rounded (cr, radius, x + line / 2, y + line / 2, width - line, height - line);
    gdk_cairo_set_source_rgba (cr, stroke);
    cairo_set_line_width (cr, line);
    cairo_stroke (cr);
  }
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
lap_paint_layout (cairo_t *cr, PangoLayout *layout, const GdkRGBA *colour, double x, double y)
{
  gdk_cairo_set_source_rgba (cr, colour);
  cairo_move_to (cr, x, y);
  pango_cairo_show_layout (cr, layout);
  cairo_new_path (cr);
}

void
lap_paint_small (cairo_t *cr, PangoLayout *layout, const GdkRGBA *colour, double x, double y)
{
  int width, height;

  pango_layout_get_pixel_size (layout, &width, &height);
  cairo_save (cr);
  cairo_translate (cr, x, y);
  cairo_scale (cr, LAP_SMALL, LAP_SMALL);
  lap_paint_layout (cr, layout, colour, -width / 2.0, -height / 2.0);
  cairo_restore (cr);
}

void
lap_paint_rect (GtkSnapshot *snapshot, const GdkRGBA *colour, double x, double y, double width, double height)
{
  if (width > 0 && height > 0)
    gtk_snapshot_append_color (snapshot, colour, &GRAPHENE_RECT_INIT (x, y, width, height));
}

void
lap_paint_handle (GtkSnapshot *snapshot, double x, double y, double height)
{
  GdkRGBA accent = lap_colour (LAP_COLOUR_WORK), paper = lap_colour (LAP_COLOUR_PAPER);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (x - 4, y - 1, 8, height + 2));

  lap_paint_box (cr, &paper, NULL, 0, 4, x - 4, y - 1, 8, height + 2);
  lap_paint_box (cr, &accent, NULL, 0, 2.5, x - 2.5, y, 5, height);
  cairo_destroy (cr);
}
