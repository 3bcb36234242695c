/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A file in the list of sessions: the picture of its shape, its title, and a line of what else is known of it.
 */
#pragma once

#include "store/index.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_LIBRARY_ROW (lap_library_row_get_type ())
G_DECLARE_FINAL_TYPE (LapLibraryRow, lap_library_row, LAP, LIBRARY_ROW, GtkWidget)

GtkWidget *lap_library_row_new  (void);
/* @folder is where the list is of, or NULL: a file elsewhere says where. */
void       lap_library_row_show (LapLibraryRow *row,
                                 LapIndexEntry *entry,
                                 const char    *folder);

/* "30:00, 3 warnings, yesterday": length or classes, warnings, the day it was written as seen at @now. Translated;
 * transfer full. */
char      *lap_library_told     (LapIndexEntry *entry,
                                 GDateTime     *now);

G_END_DECLS
