/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window that lists every shortcut of the table, in pages and with a search. GTK's own window puts its groups in no
 * order, and is too tall for a small screen and too wide for a narrow one.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Shown by the caller. Transfer none, as of any new window. */
GtkWindow *lap_shortcuts_window (void);

G_END_DECLS
