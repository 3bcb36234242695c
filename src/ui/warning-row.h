/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One warning of the list: its mark, what and where, why and whose rule it is, remedies as buttons, and "Fine here"
 * in a menu. Remedies cost a try each, so they are made when the row is asked to; after an edit those of before stay
 * to be seen until then, but none is taken or previewed that isn't made anew.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_WARNING_ROW (lap_warning_row_get_type ())
G_DECLARE_FINAL_TYPE (LapWarningRow, lap_warning_row, LAP, WARNING_ROW, GtkListBoxRow)

/* "preview" (a LapEdits or NULL): a remedy is pointed at or has the focus, or no more.
 *
 * Warning @n of the document's checkup as it is now. */
GtkWidget        *lap_warning_row_new      (LapDocument   *document,
                                            guint          n);
/* The row is about warning @n of the document's checkup as it is now, from here on. */
void              lap_warning_row_show     (LapWarningRow *row,
                                            guint          n);
/* Makes the remedies; FALSE when they are there already. */
gboolean          lap_warning_row_fill     (LapWarningRow *row);
/* As far as anybody can tell @warning, of the document's checkup now, is the one that the row shows. */
gboolean          lap_warning_row_is       (LapWarningRow    *row,
                                            const LapWarning *warning);
const LapWarning *lap_warning_row_warning  (LapWarningRow *row);

G_END_DECLS
