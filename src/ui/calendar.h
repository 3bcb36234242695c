/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What GTK's calendar leaves out: the names of the buttons that turn it, for who can't see their arrows.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Once, after @calendar was made. */
void lap_calendar_name (GtkWidget *calendar);

G_END_DECLS
