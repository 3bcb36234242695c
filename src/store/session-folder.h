/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The sessions that a week's classes name by paths relative to the week's file, read when first asked for and kept
 * until lap_session_folder_refresh() finds the file changed. lap_session_folder_load() gives the same object as long
 * as the file stays as it is.
 */
#pragma once

#include "model/session.h"

G_BEGIN_DECLS

typedef struct _LapSessionFolder LapSessionFolder;

/* @week is the path of the week's file, or NULL for one that was never saved: then only absolute paths lead
 * anywhere. */
LapSessionFolder *lap_session_folder_new     (const char       *week);
void              lap_session_folder_free    (LapSessionFolder *folder);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSessionFolder, lap_session_folder_free)

/* The session at @path, or NULL with @error; both are remembered. Transfer none. */
LapSession *lap_session_folder_load    (const char *path, gpointer folder, GError **error);
/* The path, relative to the week, of a file called like the one at @path: beside the week or one folder below. NULL
 * where there is none. Transfer full. */
char       *lap_session_folder_seek    (const char *path, gpointer folder);
/* Forgets what has changed on the disk since it was read. TRUE when that was anything. */
gboolean    lap_session_folder_refresh (LapSessionFolder *folder);

/* The file behind @path; transfer full. */
char       *lap_session_folder_file    (LapSessionFolder *folder, const char *path);
/* How a week beside it calls @file: relative where it lies in the week's folder or below or beside it. Transfer
 * full. */
char       *lap_session_folder_path    (LapSessionFolder *folder, const char *file);

G_END_DECLS
