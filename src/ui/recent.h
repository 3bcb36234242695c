/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Files opened or saved lately: the desktop's own list, so that other programs and the file chooser show them, too.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* The file at @path was opened or saved just now. */
void        lap_recent_note   (const char *path,
                               gboolean    week);
/* The file at @path isn't there any more. */
void        lap_recent_forget (const char *path);
/* path -> when it was opened last, seconds since 1970, as a pointer: of our files only. Transfer full. */
GHashTable *lap_recent_times  (void);

G_END_DECLS
