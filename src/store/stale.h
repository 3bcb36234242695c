/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Files and folders beside that were left by a writer that was killed. Who fills one holds a lock of it (flock(2)),
 * which ends with the process, however that ends. lap_stale_hold() when one is made, lap_stale_clear() before.
 */
#pragma once

#include <glib.h>

/* What they are called, as g_mkstemp() and g_mkdtemp() take it: nothing else is ever cleared. */
#define LAP_STALE_FILE   ".lapwing-XXXXXX"
#define LAP_STALE_FOLDER ".lapwing-folder-XXXXXX"

/* Says that what @fd is open on is being filled, until it is closed. */
void lap_stale_hold   (int         fd);
/* Takes away what others left in @folder: our own plain files and folders with such a name, untouched for an hour,
 * which nobody fills. An hour, since between making one and holding it there is a moment. */
void lap_stale_clear  (const char *folder);
/* Takes away @folder with all that is in it, and what a link in it leads to stays. */
void lap_stale_remove (const char *folder);
