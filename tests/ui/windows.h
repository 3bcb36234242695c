/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For tests with windows: the application without its main loop, and ways to do what a user does.
 */
#pragma once

#include "ui/application.h"
#include "ui/session-window.h"

G_BEGIN_DECLS

/* Where this test's program keeps its data: what one test leaves unsaved is not offered to the next. Set before GLib
 * looks for it, so before anything else. */
const char    *windows_data_folder (void);
/* Starts GTK and the application; before g_test_run(). */
void           windows_init    (int             *argc,
                                char          ***argv);
/* The demo in a window that has been drawn. */
LapWindow     *windows_demo    (void);
/* The demo of a week in a window that has been drawn. */
LapWindow     *windows_demo_week (void);
/* A window with @session, drawn. */
LapWindow     *windows_show    (LapSession      *session);
/* The file at @path in a window that has been drawn. */
LapWindow     *windows_open    (const char      *path);
/* Lets the window draw, idle sources run, and pages that are looked at be laid out. */
void           windows_settle  (LapWindow       *window);
/* Closes it without a question and asserts that window, document and context are finalised. */
void           windows_close   (LapWindow       *window);

LapBlocksLane *windows_blocks  (LapWindow       *window);
/* The box of the first exercise of the main part, in its first round. */
guint          windows_first_main (LapWindow    *window);
/* Presses the first button at x, y of @widget through its click gesture. */
void           windows_click   (GtkWidget       *widget,
                                double           x,
                                double           y);
/* Presses it where the middle of @box is. */
void           windows_click_box (LapWindow     *window,
                                  guint          box);
/* Takes what is at x, y of @widget, which is in @window, through its drag gesture, and carries it @dx to the side in
 * steps; then @last comes: "drag-end" or "cancel". */
void           windows_drag    (LapWindow       *window,
                                GtkWidget       *widget,
                                double           x,
                                double           y,
                                double           dx,
                                const char      *last);
/* The first controller of @type that @widget has. Transfer none. */
gpointer       windows_controller (GtkWidget      *widget,
                                  GType           type);
/* Sends @keys, an accelerator such as "<Control>z", to the controllers of @widget and above. FALSE when nobody took
 * it. */
gboolean       windows_press   (GtkWidget       *widget,
                                const char      *keys);
/* The first descendant of @type that is called @id in its template, or just the first with @id NULL. */
GtkWidget     *windows_find    (GtkWidget       *widget,
                                GType            type,
                                const char      *id);
/* The AdwPreferencesRow called @title in @widget, or NULL; the second knows none that is hidden. */
GtkWidget     *windows_find_row (GtkWidget      *widget,
                                 const char     *title);
GtkWidget     *windows_find_shown_row (GtkWidget *widget,
                                       const char *title);
/* The newest window that is open beside @window; there has to be one. What a worker looks for to show there has been
 * found. Transfer full. */
GtkWindow     *windows_dialog  (LapWindow       *window);
/* The dialog of what a window does in a worker, shown or not yet. It is finalised when that is over. Transfer none. */
GtkWindow     *windows_errand  (void);
/* Does @cancel (may be NULL) to it, and waits until that is over. */
void           windows_end_errand (void          (*cancel) (GtkWindow *dialog));
/* The session's bytes, to compare. */
char          *windows_text    (LapWindow       *window);

G_END_DECLS
