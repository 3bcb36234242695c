/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog "Classes from a spreadsheet": a CSV file, or cells pasted, become classes of a week as one step. It shows
 * what each row becomes, or every row that can't be read; nothing is imported before all can.
 */
#pragma once

#include "ui/document.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_IMPORT (lap_week_import_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekImport, lap_week_import, LAP, WEEK_IMPORT, AdwWindow)

/* @document is a week's and is held; @over may be NULL. Shown by the caller. */
GtkWindow *lap_week_import_new  (LapDocument   *document,
                                 GtkWindow     *over);
/* As if the file at @path had been chosen. */
void       lap_week_import_open (LapWeekImport *import,
                                 const char    *path);

G_END_DECLS
