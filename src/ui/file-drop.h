/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Files dropped on a window: sessions and weeks are opened, each in a window of its own, a
 * table of classes goes into the week it is dropped on; what is neither is said.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Anywhere in @window, where no widget takes files for itself. */
void lap_file_drop_install (GtkWindow *window);

G_END_DECLS
