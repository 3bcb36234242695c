/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A folder that is filled beside its place and put there when it is whole.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* A new, empty folder beside @path, hidden. NULL with LAP_ERROR_UNWRITABLE. Transfer full. */
char    *lap_folder_beside (const char  *path,
                            GError     **error);
/* Puts @folder at @path. What is there may be a folder that holds nothing but files of names that @folder has
 * too, and numbered pictures: it is what was published before, and goes. Else FALSE with LAP_ERROR_UNWRITABLE,
 * and both stay. */
gboolean lap_folder_place  (const char  *folder,
                            const char  *path,
                            GError     **error);
/* Removes @folder with all that is in it. Only for folders of lap_folder_beside(). */
void     lap_folder_remove (const char  *folder);

G_END_DECLS
