/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The view "Sheets" of a window: a sheet of the document as it will be printed, following the plan, with its pages
 * small beside it, what is asked of it, and from where it reads. Prints it, and saves it as PDF. Pages are laid out in a
 * worker; those before stay until the others are there.
 *
 * Calling order: in a window's template, then lap_sheets_view_set_document() once.
 */
#pragma once

#include "place/page.h"
#include "ui/document.h"
#include "ui/sheet-options.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_SHEETS_VIEW (lap_sheets_view_get_type ())
G_DECLARE_FINAL_TYPE (LapSheetsView, lap_sheets_view, LAP, SHEETS_VIEW, AdwBin)

void                  lap_sheets_view_set_document (LapSheetsView *view,
                                                    LapDocument   *document);

/* Asks for a printer; a sheet larger than the paper of most is offered in pieces first. */
void                  lap_sheets_view_print        (LapSheetsView *view);

/* What is shown now, and what is asked of it. */
const LapSheet       *lap_sheets_view_sheet        (LapSheetsView *view);
const LapSheetChoice *lap_sheets_view_choice       (LapSheetsView *view);
const LapPages       *lap_sheets_view_pages        (LapSheetsView *view);
/* Whether what is asked isn't shown yet. */
gboolean              lap_sheets_view_is_busy      (LapSheetsView *view);

G_END_DECLS
