/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog of what a session is: its title, coach, target, group, place, kit and camera. A row of the table in
 * properties.c is a row on screen; limits and words come from the record of the session. Each change is one step of the
 * history, at once; the dialog shows what holds when the document changes otherwise.
 */
#pragma once

#include "ui/window.h"

G_BEGIN_DECLS

/* Opens it above @window. Transfer none; it destroys itself when it is closed. */
GtkWidget *lap_properties_open (LapWindow *window);

G_END_DECLS
