/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A page of a sheet on the screen, as large as its place: paper with a shadow, painted by the painter of the PDF.
 */
#pragma once

#include "place/page.h"
#include "place/paper.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_SHEET_PAGE (lap_sheet_page_get_type ())
G_DECLARE_FINAL_TYPE (LapSheetPage, lap_sheet_page, LAP, SHEET_PAGE, GtkWidget)

/* @least is the least length of its longer side, px. */
GtkWidget *lap_sheet_page_new  (int             least);
/* Shows page @n of @pages, which must live until it shows another one; NULL shows nothing. */
void       lap_sheet_page_show (LapSheetPage   *page,
                                const LapPages *pages,
                                guint           n,
                                LapInk          ink);

G_END_DECLS
