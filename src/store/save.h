/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writing a file so that an end at any moment, of the program or of the power, leaves the old one or the new
 * one, whole: the bytes go to a file beside it, which is synced and renamed over the old; then the folder is
 * synced. GIO's g_file_replace() does the same at best, but it writes a new file in place, and overwrites
 * one in place that has a second hard link or belongs to another group, or when no file can be made beside
 * it: a crash or a full disk then leaves halves.
 *
 * What always holds: on FALSE the old file is as it was and nothing is left beside it. After a kill there may
 * be a file ".lapwing-XXXXXX" beside it. Mode and group are kept. Symbolic links are followed, and stay. A
 * file with other hard links becomes one of its own, the others keep the old bytes. Access lists and extended
 * attributes are not kept.
 *
 * Refused: a folder that can't be written; a file that belongs to another user or to a group one isn't in, or
 * is read-only; a symbolic link that leads nowhere; what isn't a regular file.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

/* Writes @bytes to @path. @etag is what lap_read_file() gave when the file was read, or NULL not to compare.
 * FALSE with LAP_ERROR_CHANGED where it has been changed since (gone is not changed), LAP_ERROR_UNWRITABLE
 * where it can't be written. *@new_etag (may be NULL, untouched on error) is the written file's. Syncs the
 * disk: not for the main loop of a window. */
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
