/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Menus of what is under the pointer or has the cursor: each entry names an action of the widget that they open over,
 * with its key from the table of shortcuts.
 *
 * A button opens one when it is let go, not when it is pressed: with a menu in between GTK (4.8.3) takes a press and its
 * release for those of two widgets, and one of them stays as if it were pressed.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef struct {
  const char *label; /* marked for translation */
  const char *action;
  gboolean    reads; /* it changes nothing, so that it is there for a document that is read-only, too */
} LapMenuItem;

void lap_menu_add_item    (GMenu              *section,
                           const char         *label,
                           const char         *action,
                           gboolean            possible);
/* Adds @items, ended by one without label, as a section of their own; the first says where @document can't be
 * changed. */
void lap_menu_add_section (GMenu              *menu,
                           const LapMenuItem  *items,
                           LapDocument        *document);
/* Opens @menu at @at of @parent, as a child of it that takes the place of *@popover, the one before, or NULL. */
void lap_menu_open        (GMenu              *menu,
                           GtkWidget          *parent,
                           const GdkRectangle *at,
                           GtkWidget         **popover);

G_END_DECLS
