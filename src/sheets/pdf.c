/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A page list as PDF. One Document tag stands round all pages, opened after the size of the first is known: readers
 * refuse one for each page.
 */
#include "sheets/sheets.h"

#include "base/error.h"
#include "sheets/paint.h"
#include "sheets/pdf.h"

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

void
lap_pdf_begin (LapPdf *pdf, const LapPages *pages)
{
  pdf->bytes = g_byte_array_new ();
  pdf->surface = cairo_pdf_surface_create_for_stream (append, pdf->bytes, 595, 842);
  pdf->cr = cairo_create (pdf->surface);
  set_metadata (pdf->surface, pages);
  cairo_scale (pdf->cr, POINTS_PER_MM, POINTS_PER_MM);
}

void
lap_pdf_size (LapPdf *pdf, double width, double height)
{
  cairo_pdf_surface_set_size (pdf->surface, width * POINTS_PER_MM, height * POINTS_PER_MM);
}

gboolean
lap_pdf_goes_on (const LapSheetWatch *watch, guint n, guint of)
{
  if (watch == NULL)
    return TRUE;
  watch->tell ((double) n / of, watch->data);
  return !g_cancellable_is_cancelled (watch->cancellable);
}

GBytes *
lap_pdf_finish (LapPdf *pdf, const LapSheetWatch *watch, GError **error)
{
  cairo_status_t status = cairo_status (pdf->cr);

  cairo_destroy (pdf->cr);
  cairo_surface_finish (pdf->surface);
  status = status != CAIRO_STATUS_SUCCESS ? status : cairo_surface_status (pdf->surface);
  cairo_surface_destroy (pdf->surface);
  if (status == CAIRO_STATUS_SUCCESS && !(watch != NULL && g_cancellable_is_cancelled (watch->cancellable)))
    return g_byte_array_free_to_bytes (pdf->bytes);
  g_byte_array_unref (pdf->bytes);
  if (watch != NULL && g_cancellable_set_error_if_cancelled (watch->cancellable, error))
    return NULL;
  g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("The PDF can't be made: %s"), cairo_status_to_string (status));
  return NULL;
}

GBytes *
lap_pages_print (const LapPages *pages, LapInk ink, const LapSheetWatch *watch, GError **error)
{
  g_autoptr (LapPainter) painter = NULL;
  LapPdf pdf;

  lap_pdf_begin (&pdf, pages);
  painter = lap_painter_new (pdf.cr, ink, TRUE);
  for (guint i = 0; i < lap_pages_n (pages) && lap_pdf_goes_on (watch, i, lap_pages_n (pages)); i++) {
    const LapPage *page = lap_pages_nth (pages, i);

    lap_pdf_size (&pdf, page->width, page->height);
    if (i == 0)
      cairo_tag_begin (pdf.cr, "Document", "");
    if (page->label != NULL)
      cairo_pdf_surface_set_page_label (pdf.surface, page->label);
    lap_painter_page (painter, page);
    cairo_show_page (pdf.cr);
  }
  cairo_tag_end (pdf.cr, "Document");
  add_outline (pdf.surface, pages);
  return lap_pdf_finish (&pdf, watch, error);
}
