/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/zone-button.h"

#include <glib/gi18n-lib.h>

#define FOLDER "/usr/share/zoneinfo"
#define TABLE  "zone.tab" /* country, place, name, remark, with tabs between: its own first lines say so */
#define NAME   2

typedef struct {
  AdwEntryRow        *row; /* has the button */
  GtkWidget          *popover, *search, *list;
  GtkStringFilter    *filter;
  GtkFilterListModel *shown;
} ZoneButton;

static int
compare (gconstpointer a, gconstpointer b)
{
  return g_strcmp0 (*(char **) a, *(char **) b);
}

/* UTC, and what the table lists. */
static GtkStringList *
read_zones (void)
{
  const char *folder = g_getenv ("TZDIR");
  g_autofree char *path = g_build_filename (folder != NULL ? folder : FOLDER, TABLE, NULL), *text = NULL;
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  g_auto (GStrv) lines = NULL;

  g_ptr_array_add (names, g_strdup ("UTC"));
  if (g_file_get_contents (path, &text, NULL, NULL))
    lines = g_strsplit (text, "\n", -1);
  for (guint i = 0; lines != NULL && lines[i] != NULL; i++) {
    g_auto (GStrv) columns = g_strsplit (lines[i], "\t", -1);

    if (*lines[i] != '#' && g_strv_length (columns) > NAME)
      g_ptr_array_add (names, g_strdup (columns[NAME]));
  }
  g_ptr_array_sort (names, compare);
  g_ptr_array_add (names, NULL);
  return gtk_string_list_new ((const char * const *) names->pdata);
}

static void
choose (ZoneButton *self, guint n)
{
  g_autoptr (GtkStringObject) zone = g_list_model_get_item (G_LIST_MODEL (self->shown), n);

  if (zone == NULL) {
    gtk_widget_error_bell (self->search);
    return;
  }
  gtk_editable_set_text (GTK_EDITABLE (self->row), gtk_string_object_get_string (zone));
  gtk_popover_popdown (GTK_POPOVER (self->popover));
  g_signal_emit_by_name (self->row, "entry-activated");
}

static void
activate_cb (ZoneButton *self, guint n)
{
  choose (self, n);
}

/* People write New York as two words. */
static void
search_cb (ZoneButton *self)
{
  g_autofree char *text = g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->search)));

  gtk_string_filter_set_search (self->filter, g_strdelimit (text, " ", '_'));
}

/* Enter may come before the entry tells of what was typed. */
static void
first_cb (ZoneButton *self)
{
  search_cb (self);
  choose (self, 0);
}

/* The list is long: it is read when it is asked for. */
static void
opened_cb (ZoneButton *self)
{
  g_autoptr (GtkStringList) zones = NULL;

  gtk_editable_set_text (GTK_EDITABLE (self->search), "");
  gtk_widget_grab_focus (self->search);
  if (gtk_filter_list_model_get_model (self->shown) != NULL)
    return;
  zones = read_zones ();
  gtk_filter_list_model_set_model (self->shown, G_LIST_MODEL (zones));
}

static void
setup_cb (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_list_item_set_child (item, label);
}

static void
bind_cb (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (item)),
                      gtk_string_object_get_string (gtk_list_item_get_item (item)));
}

static GtkWidget *
make_list (ZoneButton *self)
{
  GtkExpression *name = gtk_property_expression_new (GTK_TYPE_STRING_OBJECT, NULL, "string");
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  GtkWidget *scroll = gtk_scrolled_window_new ();

  self->filter = gtk_string_filter_new (name);
  self->shown = gtk_filter_list_model_new (NULL, GTK_FILTER (self->filter));
  g_signal_connect (factory, "setup", G_CALLBACK (setup_cb), NULL);
  g_signal_connect (factory, "bind", G_CALLBACK (bind_cb), NULL);
  self->list = gtk_list_view_new (GTK_SELECTION_MODEL (gtk_no_selection_new (G_LIST_MODEL (self->shown))), factory);
  gtk_list_view_set_single_click_activate (GTK_LIST_VIEW (self->list), TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Timezones"), -1);
  g_signal_connect_swapped (self->list, "activate", G_CALLBACK (activate_cb), self);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroll), self->list);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroll), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_min_content_height (GTK_SCROLLED_WINDOW (scroll), 260);
  return scroll;
}

GtkWidget *
lap_zone_button_new (AdwEntryRow *row)
{
  GtkWidget *button = gtk_menu_button_new (), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  ZoneButton *self = g_new0 (ZoneButton, 1);

  self->row = row;
  self->popover = gtk_popover_new ();
  self->search = gtk_search_entry_new ();
  g_object_set (self->search, "placeholder-text", _("City or area"), NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->search), GTK_ACCESSIBLE_PROPERTY_LABEL, _("City or area"), -1);
  gtk_box_append (GTK_BOX (box), self->search);
  gtk_box_append (GTK_BOX (box), make_list (self));
  gtk_popover_set_child (GTK_POPOVER (self->popover), box);
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (button), self->popover);
  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (button), "edit-find-symbolic");
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button, _("Look for a timezone"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Look for a timezone"), -1);
  g_object_set_data_full (G_OBJECT (button), "zone-button", self, g_free);
  g_signal_connect_swapped (self->popover, "show", G_CALLBACK (opened_cb), self);
  g_signal_connect_swapped (self->search, "search-changed", G_CALLBACK (search_cb), self);
  g_signal_connect_swapped (self->search, "activate", G_CALLBACK (first_cb), self);
  return button;
}
