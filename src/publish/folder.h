/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A folder that is filled beside its place and put there when it is whole. What a writer leaves that is killed goes
 * with a later one.
 *
 * Calling order: lap_folder_beside(); fill it; lap_folder_place(), or not; lap_folder_free().
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct _LapFolder LapFolder;

/* A new, empty folder beside @path, hidden. NULL with LAP_ERROR_UNWRITABLE. Transfer full. */
LapFolder  *lap_folder_beside (const char       *path,
                               GError          **error);
/* Where it is to be filled. Transfer none. */
const char *lap_folder_path   (const LapFolder  *folder);
/* Puts it at @path, at once where the file system can exchange two names. What is there may be a folder that holds
 * nothing but files of names that the new one has too, and numbered pictures: it is what was published before, and
 * goes. Else FALSE with LAP_ERROR_UNWRITABLE, and what is there stays. */
gboolean    lap_folder_place  (LapFolder        *folder,
                               const char       *path,
                               GError          **error);
/* Takes away what isn't in its place. */
void        lap_folder_free   (LapFolder        *folder);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFolder, lap_folder_free)

G_END_DECLS
