/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What reading and saving share: how they complain, and how a file is told from itself at another time.
 * Internal to store/.
 */
#pragma once

#include <glib.h>
#include <sys/stat.h>

#include "base/error.h"

G_BEGIN_DECLS

/* Sets "PATH: WHAT", the path as people see it and on one line. Returns FALSE, to be returned. */
gboolean lap_file_fail (GError     **error,
                        LapError     code,
                        const char  *path,
                        const char  *what);

/* Time of the last write, to the nanosecond, and size: equal as long as nobody wrote. Opaque; transfer
 * full. */
char    *lap_file_etag (const struct stat *state);

G_END_DECLS
