/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The sheets that a document can be printed on, a session's or a week's: one list of rows and one way to build a page
 * list for whoever shows, prints or saves them.
 */
#pragma once

#include "sheets/sheets.h"
#include "ui/document.h"

G_BEGIN_DECLS

guint           lap_document_sheets_n   (LapDocument           *document);
/* Of a week the row has no build of its own: use lap_document_pages(). */
const LapSheet *lap_document_sheets_nth (LapDocument           *document,
                                         guint                  n);
/* The page list; of a week the one of its date, where a sheet needs one at least of this week. Transfer full. */
LapPages       *lap_document_pages      (LapDocument           *document,
                                         const LapSheet        *sheet,
                                         const LapSheetOptions *options);

/* What to ask for instead of @options so that the names of a week's sheet read from where they are to; FALSE where that
 * isn't needed or doesn't help, and of a session. */
gboolean        lap_document_larger     (LapDocument           *document,
                                         const LapSheet        *sheet,
                                         const LapSheetOptions *options,
                                         LapSheetOptions       *larger);

G_END_DECLS
