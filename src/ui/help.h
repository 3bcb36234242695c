/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * F1: the page of the help about what has the focus. One table says which widget is told of on which page; a widget
 * that isn't in it is told of where the one around it is.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* What dialogs that have no type of their own are named, by gtk_widget_set_name(). */
#define LAP_HELP_PROPERTIES "properties"
#define LAP_HELP_SETTINGS   "settings"
#define LAP_HELP_OWN        "own-exercise"
#define LAP_HELP_FILE       "about-the-file"
#define LAP_HELP_EXPORTING  "exporting"
#define LAP_HELP_KEYS       "keys"
#define LAP_HELP_LANES      "choose-lanes"
/* Before the id of a check: what is about that check. */
#define LAP_HELP_CHECK      "check-"
#define LAP_HELP_PART       "part"

typedef struct {
  const char *type; /* name of the widget's type, or one that is set, where dialogs are of one type */
  const char *page; /* "files#new" */
} LapHelpPage;

guint              lap_help_n     (void);
const LapHelpPage *lap_help_nth   (guint      n);
/* The page about @widget (may be NULL), "index" where no other is. Valid as long as the widget. */
const char        *lap_help_page  (GtkWidget *widget);
/* Shows the page about what has the focus in @window (may be NULL), else about the window that it belongs to, or says
 * that nothing shows help. */
void               lap_help_show  (GtkWindow *window);
/* From now on F1 works in dialogs and popovers, too, which are no windows of the application and so have none of its
 * keys. Once, before the first popover. */
void               lap_help_serve_dialogs (void);

G_END_DECLS
