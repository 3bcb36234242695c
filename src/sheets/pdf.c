/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A page list as PDF. One Document tag stands round all pages: one opened for each page is refused by readers.
 */
#include "sheets/sheets.h"

#include "base/error.h"
#include "sheets/paint.h"

#include <cairo-pdf.h>
#include <glib/gi18n-lib.h>

#define POINTS_PER_MM (72 / 25.4)

/* When SOURCE_DATE_EPOCH says nothing: a day before the first release, so that the bytes don't depend on the clock. */
#define CONSTANT_DATE 1764028800 /* 2025-11-25 00:00 UTC */

static char *
creation_date (void)
{
  const char *epoch = g_getenv ("SOURCE_DATE_EPOCH");
  guint64 seconds = CONSTANT_DATE;
  g_autoptr (GDateTime) date = NULL;

  if (epoch != NULL)
    g_ascii_string_to_unsigned (epoch, 10, 0, 253402300799, &seconds, NULL);
  date = g_date_time_new_from_unix_utc (seconds);
  return g_date_time_format (date, "%Y-%m-%dT%H:%M:%SZ");
}

static void
set_metadata (cairo_surface_t *surface, const LapPages *pages)
{
  g_autofree char *date = creation_date ();

  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_TITLE, pages->title);
  if (pages->author != NULL && *pages->author != '\0')
    cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_AUTHOR, pages->author);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATOR, "Lapwing " LAP_VERSION);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATE_DATE, date);
}

static void
add_outline (cairo_surface_t *surface, const LapPages *pages)
{
  int parents[8] = { CAIRO_PDF_OUTLINE_ROOT };

  for (guint i = 0; i < pages->outline->len; i++) {
    const LapOutline *entry = &g_array_index (pages->outline, LapOutline, i);
    char number[G_ASCII_DTOSTR_BUF_SIZE];
    g_autofree char *where = NULL;

    /* Always with a position: without one the reader is sent to "nan". */
    g_ascii_formatd (number, sizeof number, "%.2f", entry->y * POINTS_PER_MM);
    where = g_strdup_printf ("page=%u pos=[0 %s]", entry->page + 1, number);
    parents[entry->level + 1] = cairo_pdf_surface_add_outline (surface, parents[entry->level], entry->title, where,
                                                               CAIRO_PDF_OUTLINE_FLAG_OPEN);
  }
}

static cairo_status_t
append (void *closure, const unsigned char *data, unsigned int length)
{
  g_byte_array_append (closure, data, length);
  return CAIRO_STATUS_SUCCESS;
}

static void
paint_pages (cairo_surface_t *surface, cairo_t *cr, const LapPages *pages, LapInk ink)
{
  g_autoptr (LapPainter) painter = lap_painter_new (cr, ink, TRUE);

  cairo_scale (cr, POINTS_PER_MM, POINTS_PER_MM);
  for (guint i = 0; i < lap_pages_n (pages); i++) {
    const LapPage *page = lap_pages_nth (pages, i);

    cairo_pdf_surface_set_size (surface, page->width * POINTS_PER_MM, page->height * POINTS_PER_MM);
    if (i == 0)
      cairo_tag_begin (cr, "Document", "");
    if (page->label != NULL)
      cairo_pdf_surface_set_page_label (surface, page->label);
    lap_painter_page (painter, page);
    cairo_show_page (cr);
  }
  cairo_tag_end (cr, "Document");
}

GBytes *
lap_pages_print (const LapPages *pages, LapInk ink, GError **error)
{
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (append, bytes, 595, 842);
  cairo_t *cr = cairo_create (surface);
  cairo_status_t status;

  set_metadata (surface, pages);
  paint_pages (surface, cr, pages, ink);
  add_outline (surface, pages);
  status = cairo_status (cr);
  cairo_destroy (cr);
  cairo_surface_finish (surface);
  status = status != CAIRO_STATUS_SUCCESS ? status : cairo_surface_status (surface);
  cairo_surface_destroy (surface);
  if (status != CAIRO_STATUS_SUCCESS) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("The PDF can't be made: %s"), cairo_status_to_string (status));
    return NULL;
  }
  return g_byte_array_free_to_bytes (g_steal_pointer (&bytes));
}
