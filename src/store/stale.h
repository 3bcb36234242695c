/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Files beside that were left by a writer that was killed: `.lapwing-XXXXXX`. Who writes one holds a lock of it
 * (flock(2)), which ends with the process, however that ends. lap_stale_hold() when a file beside is made,
 * lap_stale_clear() before.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Says that the file @fd is being written, until it is closed. */
void lap_stale_hold  (int         fd);
/* Takes away what others left in @folder: our own plain files with such a name, untouched for an hour, which nobody
 * writes. An hour, since between making a file and holding it there is a moment. */
void lap_stale_clear (const char *folder);

G_END_DECLS
