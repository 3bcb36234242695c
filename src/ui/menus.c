/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/menus.h"

#include "ui/shortcuts.h"

#include <glib/gi18n-lib.h>

void
lap_menu_add_item (GMenu *section, const char *label, const char *action, gboolean possible)
{
  /* No such action: what is there to be read, but not to be used. */
  g_autoptr (GMenuItem) item = g_menu_item_new (label, possible ? action : "read-only.never");
  g_autofree char *key = lap_shortcuts_key (action);

  if (key != NULL)
    g_menu_item_set_attribute (item, "accel", "s", key);
  g_menu_append_item (section, item);
}

void
lap_menu_add_section (GMenu *menu, const LapMenuItem *items, LapDocument *document)
{
  g_autoptr (GMenu) section = g_menu_new ();
  gboolean first = g_menu_model_get_n_items (G_MENU_MODEL (menu)) == 0;
  const char *why = first && !lap_document_is_editable (document) ? _("Read-only: it can’t be changed") : NULL;

  for (; items->label != NULL; items++)
    lap_menu_add_item (section, _(items->label), items->action, items->reads || lap_document_is_editable (document));
  g_menu_append_section (menu, why, G_MENU_MODEL (section));
}

void
lap_menu_open (GMenu *menu, GtkWidget *parent, const GdkRectangle *at, GtkWidget **popover)
{
  g_clear_pointer (popover, gtk_widget_unparent);
  *popover = gtk_popover_menu_new_from_model (G_MENU_MODEL (menu));
  gtk_popover_set_has_arrow (GTK_POPOVER (*popover), FALSE);
  gtk_widget_set_halign (*popover, GTK_ALIGN_START);
  gtk_widget_set_parent (*popover, parent);
  gtk_popover_set_pointing_to (GTK_POPOVER (*popover), at);
  gtk_popover_popup (GTK_POPOVER (*popover));
}
