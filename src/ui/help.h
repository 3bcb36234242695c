/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * F1: the page of the help about what has the focus. One table says which widget is told of on which page; a widget
 * that isn't in it is told of where the one around it is.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef struct {
  const char *type; /* name of the widget's type */
  const char *page; /* "files#new" */
} LapHelpPage;

guint              lap_help_n     (void);
const LapHelpPage *lap_help_nth   (guint      n);
/* The page about @widget (may be NULL), "index" where no other is. */
const char        *lap_help_page  (GtkWidget *widget);
/* Shows the page about what has the focus in @window (may be NULL), or says that nothing shows help. */
void               lap_help_show  (GtkWindow *window);

G_END_DECLS
