/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The list of a document's warnings, numbered as the marks are. "chosen" carries the number of one that somebody wants
 * to see in the plan, "preview" (LapEdits or NULL) what a remedy that is pointed at would do.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_WARNINGS (lap_warnings_get_type ())
G_DECLARE_FINAL_TYPE (LapWarnings, lap_warnings, LAP, WARNINGS, GtkWidget)

/* Once. */
void       lap_warnings_set_document (LapWarnings *warnings,
                                      LapDocument *document);
/* Its mark was clicked: the row gets the focus, so that the page scrolls to it and keys go on from there. */
void       lap_warnings_choose       (LapWarnings *warnings,
                                      guint        n);
/* The row of warning @n of the checkup, or NULL where it isn't in a list. */
GtkWidget *lap_warnings_row          (LapWarnings *warnings,
                                      guint        n);

G_END_DECLS
