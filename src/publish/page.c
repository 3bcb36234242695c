/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/page.h"

#include "base/error.h"
#include "sheets/paint.h"
#include "sheets/sheets.h"

#include <cairo-svg.h>
#include <glib/gi18n-lib.h>
#include <math.h>

#define PIXELS_PER_MM (150 / 25.4)
#define POINTS_PER_MM (72 / 25.4)

/* What cairo's function for writing is called with. */
typedef struct {
  LapOutput *output;
  GError   **error;
} Stream;

static cairo_status_t
write_some (void *closure, const unsigned char *data, unsigned int length)
{
  Stream *stream = closure;

  return lap_output_write (stream->output, data, length, stream->error) ? CAIRO_STATUS_SUCCESS
                                                                        : CAIRO_STATUS_WRITE_ERROR;
}

static void
paint (cairo_surface_t *surface, const LapPage *page, double scale)
{
  cairo_t *cr = cairo_create (surface);
  g_autoptr (LapPainter) painter = lap_painter_new (cr, LAP_INK_COLOUR, FALSE);

  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  cairo_scale (cr, scale, scale);
  lap_painter_page (painter, page);
  cairo_destroy (cr);
}

static cairo_status_t
write_page (const LapPage *page, gboolean svg, Stream *stream)
{
  cairo_surface_t *surface;
  cairo_status_t status;

  if (svg) {
    surface = cairo_svg_surface_create_for_stream (write_some, stream, page->width * POINTS_PER_MM,
                                                   page->height * POINTS_PER_MM);
    paint (surface, page, POINTS_PER_MM);
    cairo_surface_finish (surface);
    status = cairo_surface_status (surface);
  } else {
    surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, lround (page->width * PIXELS_PER_MM),
                                          lround (page->height * PIXELS_PER_MM));
    paint (surface, page, PIXELS_PER_MM);
    status = cairo_surface_write_to_png_stream (surface, write_some, stream);
  }
  cairo_surface_destroy (surface);
  return status;
}

gboolean
lap_page_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  LapSheetOptions options = { .paper = LAP_PAPER_A3 };
  g_autoptr (LapPages) pages = lap_sheet_build (lap_sheets_find ("poster"), what->timeline, &options);
  GError *mistake = NULL;
  Stream stream = { output, &mistake };
  cairo_status_t status = write_page (lap_pages_nth (pages, 0), g_str_equal (suffix, "svg"), &stream);

  if (mistake != NULL)
    g_propagate_error (error, mistake);
  else if (status != CAIRO_STATUS_SUCCESS)
    g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("the picture can’t be made: %s"),
                 cairo_status_to_string (status));
  return mistake == NULL && status == CAIRO_STATUS_SUCCESS;
}
