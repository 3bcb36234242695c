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
 *
 * Calling order: new, any number of writes, finish, free. Freed without finish, or after an error, nothing is
 * left of it. Whoever writes by other means than lap_saving_write() uses the file descriptor, which may be read
 * and seeked, or opens the file beside by its name.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct _LapSaving LapSaving;

/* NULL with LAP_ERROR_UNWRITABLE where @path can't be written. */
LapSaving  *lap_saving_new    (const char     *path,
                               GError        **error);
void        lap_saving_free   (LapSaving      *saving);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSaving, lap_saving_free)

gboolean    lap_saving_write  (LapSaving      *saving,
                               gconstpointer   data,
                               gsize           size,
                               GError        **error);
int         lap_saving_fd     (const LapSaving *saving);
const char *lap_saving_beside (const LapSaving *saving);

/* Puts the new file in the place of the old. @etag is what lap_read_file() gave when the file was read, or NULL
 * not to compare. FALSE with LAP_ERROR_CHANGED where it has been changed since (gone is not changed),
 * LAP_ERROR_UNWRITABLE where it can't be written. *@new_etag (may be NULL, untouched on error) is the written
 * file's. Syncs the disk: not for the main loop of a window. */
gboolean    lap_saving_finish (LapSaving      *saving,
                               const char     *etag,
                               char          **new_etag,
                               GError        **error);

G_END_DECLS
