/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/shortcuts-window.h"

#include "ui/help.h"
#include "ui/shortcuts.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include <string.h>

/* In the order of the views; a group that no page names would not be listed. */
static const struct {
  const char *title, *icon, *groups[8];
} pages[] = {
  { N_("Window"), "focus-windows-symbolic", { "Session", "Find", "Window" } },
  { N_("Plan"), "view-list-symbolic",
    { "Blocks", "Change blocks", "Parts and rounds", "Brackets", "Score", "Overview", "Marks on the clock", "Catalogue" } },
  { N_("Rehearse"), "media-playback-start-symbolic", { "Rehearsal" } },
  { N_("Week"), "x-office-calendar-symbolic", { "Week", "Timetable", "Change classes" } },
};

/* A line each, which is never broken; without those of the keypad, which do what their likes do. */
static char *
shown_keys (const char *keys)
{
  g_auto (GStrv) all = g_strsplit (keys, " ", -1);
  g_autoptr (GPtrArray) shown = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; all[i] != NULL; i++) {
    GdkModifierType modifiers;
    guint key;

    if (strstr (all[i], "KP_") == NULL && gtk_accelerator_parse (all[i], &key, &modifiers))
      g_ptr_array_add (shown, gtk_accelerator_get_label (key, modifiers));
  }
  g_ptr_array_add (shown, NULL);
  return g_strjoinv ("\n", (char **) shown->pdata);
}

static GtkWidget *
row_new (const LapShortcut *shortcut)
{
  g_autofree char *keys = shown_keys (shortcut->keys);
  GtkWidget *row = adw_action_row_new (), *label = gtk_label_new (keys);

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), _(shortcut->title));
  gtk_label_set_xalign (GTK_LABEL (label), 1);
  gtk_label_set_justify (GTK_LABEL (label), GTK_JUSTIFY_RIGHT);
  gtk_widget_add_css_class (label, "dim-label");
  gtk_widget_add_css_class (label, "keys");
  adw_action_row_add_suffix (ADW_ACTION_ROW (row), label);
  return row;
}

static AdwPreferencesGroup *
group_new (const char *name)
{
  AdwPreferencesGroup *group = ADW_PREFERENCES_GROUP (adw_preferences_group_new ());

  adw_preferences_group_set_title (group, _(name));
  for (guint i = 0; i < lap_shortcuts_n (); i++)
    if (g_str_equal (lap_shortcuts_nth (i)->group, name))
      adw_preferences_group_add (group, row_new (lap_shortcuts_nth (i)));
  return group;
}

GtkWindow *
lap_shortcuts_window (void)
{
  AdwPreferencesWindow *window = ADW_PREFERENCES_WINDOW (adw_preferences_window_new ());

  gtk_window_set_title (GTK_WINDOW (window), _("Shortcuts"));
  gtk_widget_set_name (GTK_WIDGET (window), LAP_HELP_KEYS);
  gtk_window_set_modal (GTK_WINDOW (window), TRUE);
  for (guint i = 0; i < G_N_ELEMENTS (pages); i++) {
    AdwPreferencesPage *page = ADW_PREFERENCES_PAGE (adw_preferences_page_new ());

    adw_preferences_page_set_title (page, _(pages[i].title));
    adw_preferences_page_set_icon_name (page, pages[i].icon);
    for (guint k = 0; k < G_N_ELEMENTS (pages[i].groups) && pages[i].groups[k] != NULL; k++)
      adw_preferences_page_add (page, group_new (pages[i].groups[k]));
    adw_preferences_window_add (window, page);
  }
  return GTK_WINDOW (window);
}
