/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is different with one class in the week of the year that is looked at: cancelled, on another date, at another
 * time, in another room, with somebody else, and a note for the door. Hidden while the week as it always is is shown.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_CLASS_DATE (lap_class_date_get_type ())
G_DECLARE_FINAL_TYPE (LapClassDate, lap_class_date, LAP, CLASS_DATE, GtkWidget)

/* Once; the document of a week. */
void lap_class_date_set_document (LapClassDate *date,
                                  LapDocument  *document);
/* @c in the week of the document's date; NULL: nothing. */
void lap_class_date_show         (LapClassDate *date,
                                  LapClass     *c);
/* Applies what is typed and isn't an edit yet. */
void lap_class_date_commit       (LapClassDate *date);

G_END_DECLS
