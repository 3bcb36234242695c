/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Numbers that are typed, or made more and less by a button: what holds for all of them, in whatever window they are.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Once, before the first one is shown: the wheel over a number scrolls the page that it stands on. GTK's would change
 * the number, and with it a plan in which somebody only looks on. */
void lap_numbers_let_scroll (void);

/* @spin, which tells of a distance, or of an area, in what the locale measures with, also takes one that is typed with
 * a unit: "1.8 m" or "6 ft" anywhere. What can't be read leaves it as it was. Once, after its digits are set. */
void lap_number_take_distance (GtkSpinButton *spin);
void lap_number_take_area     (GtkSpinButton *spin);

G_END_DECLS
