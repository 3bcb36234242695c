/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Work that took long and ended while nobody looked at the program is told by the desktop. Somebody who looks sees it
 * in the window, and what took no time is worth no notification.
 *
 * lap_notify_ended() beside what the window itself says, always: it knows when to be quiet. What it told goes as soon as
 * somebody looks at the window.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* The actions of the notifications, for @application. */
void lap_notify_install      (GApplication *application);
/* Something of @window, a GtkApplicationWindow, that began at @began (g_get_monotonic_time()) has ended: @title, and
 * @text in a line. Pressed, it raises @window; where it wrote @path, not NULL, a button shows the folder. */
void lap_notify_ended        (GtkWindow    *window,
                              gint64        began,
                              const char   *title,
                              const char   *text,
                              const char   *path);
/* How many microseconds are long: five seconds, unless a test says otherwise. */
void lap_notify_set_patience (gint64        patience);

G_END_DECLS
