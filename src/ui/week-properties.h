/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog of what a week is made of: its title, timezone, dates and opening hours; its rooms; its coaches. Each
 * change is one step of the history, at once. What a room or coach has is made on screen when its row is opened.
 */
#pragma once

#include "ui/window.h"

G_BEGIN_DECLS

/* Opens it above @window. Transfer none; it destroys itself when it is closed. */
GtkWidget *lap_week_properties_open (LapWindow *window);

G_END_DECLS
