/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A PDF in the making: metadata first, then pages drawn in millimetres, then its bytes. Private to this folder.
 */
#pragma once

#include "sheets/sheets.h"

#include <cairo.h>

G_BEGIN_DECLS

typedef struct {
  cairo_surface_t *surface;
  cairo_t         *cr; /* in millimetres */
  GByteArray      *bytes;
} LapPdf;

/* Titled like @pages, dated by SOURCE_DATE_EPOCH or a constant. */
void    lap_pdf_begin  (LapPdf         *pdf,
                        const LapPages *pages);
/* Before page @n of @of is drawn: FALSE where @watch (may be NULL) doesn't wait any more. */
gboolean lap_pdf_goes_on (const LapSheetWatch *watch,
                          guint                n,
                          guint                of);
/* Before a page is drawn, mm. */
void    lap_pdf_size   (LapPdf         *pdf,
                        double          width,
                        double          height);
/* The bytes; NULL with @error when cairo failed (LAP_ERROR_UNWRITABLE), or @watch has been cancelled. Either way @pdf is done. */
GBytes *lap_pdf_finish (LapPdf              *pdf,
                        const LapSheetWatch *watch,
                        GError             **error);

G_END_DECLS
