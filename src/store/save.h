/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writing a file so that a crash at any moment leaves the old one or the new one, whole: g_file_replace() writes a
 * file beside it, syncs it and renames it over the old; then the folder is synced. Mode and symbolic links are
 * kept; a file with other hard links becomes one of its own.
 *
 * A folder that can't be written, a file of another owner, and a group that can't be kept leave only the way of
 * overwriting in place, which a crash would leave in halves. They are refused, and the old file is untouched.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

/* Writes @bytes to @path. @etag is what lap_read_file() gave when the file was read, or NULL not to compare.
 * FALSE with LAP_ERROR_CHANGED where it has been changed since, LAP_ERROR_UNWRITABLE where it can't be written.
 * Syncs the disk: not for the main loop of a window. *@new_etag (may be NULL) is the written file's. */
gboolean lap_save_bytes        (const char           *path,
                                GBytes               *bytes,
                                const char           *etag,
                                char                **new_etag,
                                GError              **error);

/* The same in a worker; @callback runs in the caller's main context. */
void     lap_save_bytes_async  (const char           *path,
                                GBytes               *bytes,
                                const char           *etag,
                                GAsyncReadyCallback   callback,
                                gpointer              data);
gboolean lap_save_bytes_finish (GAsyncResult         *result,
                                char                **new_etag,
                                GError              **error);

G_END_DECLS
