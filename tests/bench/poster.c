/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * poster FILE: the poster of a session laid out and printed, against emitting the same shapes and glyphs bare: pages
 * recorded once and played back into PDFs. Both in this run, in turn; the ratio of the quickest of each counts.
 */
#include "sheets/paint.h"
#include "sheets/sheets.h"
#include "store/documents.h"
#include "store/read-file.h"

#include <cairo-pdf.h>

#define TIMES  20
#define BAR    3.0
#define POINTS (72 / 25.4)

static cairo_status_t
swallow (void *closure, const unsigned char *data, unsigned int length)
{
  return CAIRO_STATUS_SUCCESS;
}

static GPtrArray *
record (const LapPages *pages)
{
  GPtrArray *records = g_ptr_array_new_with_free_func ((GDestroyNotify) cairo_surface_destroy);

  for (guint i = 0; i < lap_pages_n (pages); i++) {
    cairo_surface_t *surface = cairo_recording_surface_create (CAIRO_CONTENT_COLOR_ALPHA, NULL);
    cairo_t *cr = cairo_create (surface);
    g_autoptr (LapPainter) painter = lap_painter_new (cr, LAP_INK_COLOUR, FALSE);

    cairo_scale (cr, POINTS, POINTS);
    lap_painter_page (painter, lap_pages_nth (pages, i));
    g_ptr_array_add (records, surface);
    cairo_destroy (cr);
  }
  return records;
}

static gint64
emit_bare (const LapPages *pages, GPtrArray *records)
{
  gint64 start = g_get_monotonic_time ();
  cairo_surface_t *pdf = cairo_pdf_surface_create_for_stream (swallow, NULL, 595, 842);
  cairo_t *cr = cairo_create (pdf);

  for (guint i = 0; i < records->len; i++) {
    const LapPage *page = lap_pages_nth (pages, i);

    cairo_pdf_surface_set_size (pdf, page->width * POINTS, page->height * POINTS);
    cairo_set_source_surface (cr, g_ptr_array_index (records, i), 0, 0);
    cairo_paint (cr);
    cairo_show_page (cr);
  }
  cairo_destroy (cr);
  cairo_surface_finish (pdf);
  cairo_surface_destroy (pdf);
  return g_get_monotonic_time () - start;
}

static gint64
print_whole (const LapSheet *sheet, const LapTimeline *timeline, const LapSheetOptions *options)
{
  gint64 start = g_get_monotonic_time ();
  g_autoptr (GBytes) bytes = lap_sheet_print (sheet, timeline, options, NULL);

  g_assert_nonnull (bytes);
  return g_get_monotonic_time () - start;
}

int
main (int argc, char **argv)
{
  const LapSheet *sheet = lap_sheets_find ("poster");
  const LapSheetOptions options = { .paper = LAP_PAPER_A3 };
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (argv[1], NULL, &error);
  g_autoptr (LapSession) session = bytes != NULL ? lap_session_from_bytes (bytes, &error) : NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapTimeline) timeline = session != NULL ? lap_timeline_new (session, builtin, &error) : NULL;
  g_autoptr (LapPages) pages = NULL;
  g_autoptr (GPtrArray) records = NULL;
  gint64 bare = G_MAXINT64, whole = G_MAXINT64;

  if (timeline == NULL)
    g_error ("%s", error->message);
  pages = lap_sheet_build (sheet, timeline, &options);
  records = record (pages);
  for (int i = 0; i < TIMES; i++) {
    bare = MIN (bare, emit_bare (pages, records));
    whole = MIN (whole, print_whole (sheet, timeline, &options));
  }
  g_print ("poster on A3: %.2f times as long as its shapes and glyphs bare (bar %.0f)\n", whole / (double) bare, BAR);
  return whole > BAR * bare;
}
