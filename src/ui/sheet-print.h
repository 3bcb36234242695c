/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The print dialog for a sheet: the painter of the PDF, on the paper of the sheet or in pieces. The sheet is laid out
 * in a worker before the dialog comes.
 */
#pragma once

#include "ui/window.h"
#include "ui/sheet-options.h"

G_BEGIN_DECLS

/* Whether a sheet of @choice is larger than what printers at home and in offices take: A4 or Letter. */
gboolean lap_sheet_is_large (const LapSheetChoice *choice);
/* The paper of such a printer here, by the locale. */
LapPaper lap_printer_paper  (void);

/* Shows the dialog over @window and prints what it asks for; what goes wrong is told there. With @path nothing is asked
 * and the same pages go to that PDF. */
void     lap_sheet_print_dialog (LapWindow            *window,
                                 const LapSheet       *sheet,
                                 const LapSheetChoice *choice,
                                 const char           *path);

G_END_DECLS
