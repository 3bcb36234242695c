/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * GLib lets its table of names go, on purpose, when a program has used more than 2,048 of them ("This leaks the old
 * quarks array", gquark.c); a program with all our windows does. The stack of that table has no name that a
 * suppression could tell, so it is told by where it is.
 */
#pragma once

#include <glib.h>

/* The leak check passes over GLib's first table. Before so many names are used; nothing without a sanitizer. */
void quarks_keep_first_table (void);
