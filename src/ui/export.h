/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sheet as PDF: which sheet, on what paper, in which file.
 */
#pragma once

#include "sheets/sheets.h"
#include "ui/window.h"

G_BEGIN_DECLS

#define LAP_TYPE_EXPORT (lap_export_get_type ())
G_DECLARE_FINAL_TYPE (LapExport, lap_export, LAP, EXPORT, AdwMessageDialog)

/* The dialog that asks for all of it, and then does it. Shown by the caller. */
GtkWindow *lap_export_new (LapWindow             *window);

/* Below the dialog: writes the PDF, on paper @pieces (LapPaper) in pieces or with -1 in one, and tells in @window how it
 * went. */
void       lap_export_to  (LapWindow             *window,
                           const LapSheet        *sheet,
                           const LapSheetOptions *options,
                           int                    pieces,
                           const char            *path);

G_END_DECLS
