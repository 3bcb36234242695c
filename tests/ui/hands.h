/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A mouse and a keyboard for tests: events that the X server makes, by its XTEST extension, as if somebody moved and
 * pressed. They go the whole way through server, GDK and GTK. The library of the extension is opened when a test runs,
 * so that building needs nothing more.
 *
 * Each call returns when the window has had its events and has drawn what came of them.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Gives the keyboard to @window, which has been drawn. There is no window manager that would. */
void hands_on           (GtkWindow  *window);

/* Where @x, @y of @widget, in a window or a popover, is on the screen. */
void hands_move         (GtkWidget  *widget,
                         double      x,
                         double      y);
/* To the middle of @widget. */
void hands_point        (GtkWidget  *widget);
void hands_button       (guint       button,
                         gboolean    down);
/* Presses and lets go @times where the pointer is. */
void hands_click        (guint       button,
                         guint       times);
/* Goes to x, y of @widget and clicks there, in one frame. */
void hands_click_at     (GtkWidget  *widget,
                         double      x,
                         double      y,
                         guint       button,
                         guint       times);
/* In the middle, once, with the first button. */
void hands_click_on     (GtkWidget  *widget);
/* Carries what is at x, y of @from to x, y of @to, which is looked for again when it has come near: lists scroll. */
void hands_drag         (GtkWidget  *from,
                         double      x,
                         double      y,
                         GtkWidget  *to,
                         double      to_x,
                         double      to_y);
/* Turns the wheel by @notches, down and up where negative. */
void hands_wheel        (int         notches);
/* Presses the keys of @modifiers, or lets them go. */
void hands_hold         (GdkModifierType modifiers,
                         gboolean        down);
/* An accelerator such as "<Control>k". */
void hands_press        (const char *keys);
void hands_type         (const char *text);
/* Presses @keys as often as it takes until @is_so; never without end. */
void hands_press_until  (const char *keys,
                         gboolean  (*is_so) (gpointer data),
                         gpointer    data);
/* Waits for what takes longer than a frame, such as a popover or a file. Runs the main loop until @is_so says TRUE; where
 * it never does the test ends and says where. */
#define hands_until(is_so, data) hands_wait (is_so, data, G_STRLOC ": " #is_so)
void hands_wait         (gboolean  (*is_so) (gpointer data),
                         gpointer    data,
                         const char *what);

G_END_DECLS
