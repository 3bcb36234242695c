/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the stories about files have in common: dialogs that come and go over a window, with the hands on the one that
 * is to be used (hands.h), and a small plan in a file.
 */
#pragma once

#include "ui/hands.h"
#include "ui/plan.h"
#include "ui/rows.h"
#include "ui/windows.h"

G_BEGIN_DECLS

/* The hands go to the window of @type that comes up over @window, or over any with NULL. Transfer none. */
GtkWindow  *stories_dialog       (GType      type);
/* No window of @type is there any more; the hands go back to @window, where one is left. */
void        stories_away         (LapWindow *window,
                                  GType      type);
/* The window of a document that comes up beside @first (or NULL), drawn, with the hands on it. */
LapWindow  *stories_other        (LapWindow *first);
/* How many windows of documents there are. */
guint       stories_n_windows    (void);
const char *stories_title        (LapWindow *window);
/* Something of the menu of the window, by mouse. */
void        stories_choose       (LapWindow *window,
                                  const char *label);
/* With the keyboard; types nothing with NULL. */
void        stories_tab_to       (GtkWidget *widget);
void        stories_type_into    (GtkWindow *dialog,
                                  GType      type,
                                  const char *id,
                                  const char *text);
/* In the platform's dialog for files: the path in place of the name that it offers. */
void        stories_type_path    (const char *path);

/* Writes the small plan, called @title, to @path. */
void        stories_put_plan     (const char *path,
                                  const char *title);
/* A window with that file, changed by a key; the hands are on it. */
LapWindow  *stories_changed_plan (const char *path);
/* Waits until it is in that state. */
void        stories_until_state  (LapWindow       *window,
                                  LapDocumentState state);
/* What the session of the file is called. */
char       *stories_saved_title  (const char *path);

G_END_DECLS
