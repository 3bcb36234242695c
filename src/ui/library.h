/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window that lists the sessions and weeks of a folder, and what was opened lately elsewhere: what Lapwing starts
 * with when it is given no file, and what "Open" shows. It lists what the index has at once and refreshes it in a
 * worker; a file that is opened closes it.
 */
#pragma once

#include "store/index.h"
#include "ui/application.h"

G_BEGIN_DECLS

#define LAP_TYPE_LIBRARY (lap_library_get_type ())
G_DECLARE_FINAL_TYPE (LapLibrary, lap_library, LAP, LIBRARY, AdwApplicationWindow)

GtkWindow *lap_library_new        (LapApplication *application);
/* The folder it lists, or NULL where none was chosen and the desktop names none. */
const char *lap_library_folder    (LapLibrary     *library);
/* Lists @path from now on, and remembers it. */
void       lap_library_set_folder (LapLibrary     *library,
                                   const char     *path);
/* What is listed now: LapIndexEntry, as filtered by the search. */
GListModel *lap_library_list      (LapLibrary     *library);
/* Whether a worker is reading. */
gboolean   lap_library_is_busy    (LapLibrary     *library);

G_END_DECLS
