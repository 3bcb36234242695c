/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A file's bytes, read without trusting the file: only a regular one, at most 16 MiB, never blocking on a
 * pipe.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

#define LAP_FILE_MOST (16 * 1024 * 1024)

/* The bytes of the file at @path, or NULL with LAP_ERROR_INVALID, "plan.lapwing: …". *@etag (may be NULL,
 * transfer full, untouched on error) is what lap_save_bytes() compares to see whether somebody else wrote
 * since. */
GBytes *lap_read_file (const char  *path,
                       char       **etag,
                       GError     **error);

G_END_DECLS
