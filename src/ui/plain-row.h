/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A row of a list that only says something: all of it, in as many lines as it takes.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Appends it to @list, a list box; @subtitle may be NULL. No markup. */
void lap_plain_row_append (GtkWidget  *list,
                           const char *title,
                           const char *subtitle);

G_END_DECLS
