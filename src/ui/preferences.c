/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A setting here is one row of the table. Without the program's schema nothing can be kept, which the page says.
 */
#include "ui/preferences.h"

#include "ui/files.h"
#include "ui/help.h"
#include "ui/settings.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

typedef enum { ROW_TEXT, ROW_LEVEL, ROW_NUMBER } RowKind;

static const struct {
  const char *key;
  RowKind     kind;
  const char *title, *hint; /* marked for translation */
} rows[] = {
  { "new-coach", ROW_TEXT, N_("Coach"), N_("Who leads it, as on sheets") },
  { "new-level", ROW_LEVEL, N_("Level"), N_("What the warnings expect of the group") },
  { "new-voice", ROW_NUMBER, N_("Words a second"), N_("How fast you speak when you are not moving") },
};

#define FOLDER_KEY "library-folder"

static void
write_level (AdwComboRow *row)
{
  g_settings_set_string (lap_settings (), "new-level", lap_words_id (&lap_levels, adw_combo_row_get_selected (row)));
}

static void
read_level (AdwComboRow *row)
{
  g_autofree char *level = g_settings_get_string (lap_settings (), "new-level");

  adw_combo_row_set_selected (row, lap_words_find (&lap_levels, level));
}

static GtkWidget *
level_row (void)
{
  GtkWidget *row = adw_combo_row_new ();
  g_autoptr (GtkStringList) labels = gtk_string_list_new (NULL);

  for (guint i = 0; i < lap_levels.n; i++)
    gtk_string_list_append (labels, lap_words_label (&lap_levels, i));
  adw_combo_row_set_model (ADW_COMBO_ROW (row), G_LIST_MODEL (labels));
  read_level (ADW_COMBO_ROW (row));
  g_signal_connect (row, "notify::selected", G_CALLBACK (write_level), NULL);
  g_signal_connect_object (lap_settings (), "changed::new-level", G_CALLBACK (read_level), row, G_CONNECT_SWAPPED);
  return row;
}

static GtkWidget *
number_row (const char *key, const char *title)
{
  GtkWidget *row = adw_action_row_new (), *spin = gtk_spin_button_new_with_range (0.5, 5, 0.1);

  gtk_widget_set_valign (spin, GTK_ALIGN_CENTER);
  gtk_accessible_update_property (GTK_ACCESSIBLE (spin), GTK_ACCESSIBLE_PROPERTY_LABEL, title, -1);
  lap_settings_bind (key, spin, "value");
  adw_action_row_add_suffix (ADW_ACTION_ROW (row), spin);
  adw_action_row_set_activatable_widget (ADW_ACTION_ROW (row), spin);
  return row;
}

static GtkWidget *
text_row (const char *key)
{
  GtkWidget *row = adw_entry_row_new ();

  lap_settings_bind (key, row, "text");
  return row;
}

static GtkWidget *
new_files (void)
{
  GtkWidget *group = adw_preferences_group_new ();

  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _("New sessions begin with"));
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (group), _("Sessions that you have stay as they are."));
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    const char *title = _(rows[i].title);
    GtkWidget *row = rows[i].kind == ROW_TEXT ? text_row (rows[i].key)
                     : rows[i].kind == ROW_LEVEL ? level_row () : number_row (rows[i].key, title);

    adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), title);
    if (ADW_IS_ACTION_ROW (row))
      adw_action_row_set_subtitle (ADW_ACTION_ROW (row), _(rows[i].hint));
    else
      gtk_widget_set_tooltip_text (row, _(rows[i].hint));
    adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), row);
  }
  return group;
}

static void
show_folder (AdwActionRow *row)
{
  g_autofree char *path = g_settings_get_string (lap_settings (), FOLDER_KEY);
  g_autofree char *name = *path != '\0' ? g_filename_display_name (path) : g_strdup (_("Your folder of documents"));
  g_autofree char *markup = g_markup_escape_text (name, -1);

  adw_action_row_set_subtitle (row, markup);
}

static void
chosen_cb (const char *path, gpointer data)
{
  g_autoptr (GtkWidget) row = data;

  if (path != NULL)
    g_settings_set_string (lap_settings (), FOLDER_KEY, path);
}

static void
choose_cb (GtkWidget *row)
{
  lap_files_folder (GTK_WINDOW (gtk_widget_get_root (row)), _("The folder of your sessions"), chosen_cb,
                    g_object_ref (row));
}

static GtkWidget *
folder (void)
{
  GtkWidget *group = adw_preferences_group_new (), *row = adw_action_row_new ();
  GtkWidget *button = gtk_button_new_with_mnemonic (_("_Choose…"));

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), _("Folder of the list of sessions"));
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  adw_action_row_add_suffix (ADW_ACTION_ROW (row), button);
  adw_action_row_set_activatable_widget (ADW_ACTION_ROW (row), button);
  g_signal_connect_swapped (button, "clicked", G_CALLBACK (choose_cb), row);
  g_signal_connect_object (lap_settings (), "changed::" FOLDER_KEY, G_CALLBACK (show_folder), row, G_CONNECT_SWAPPED);
  show_folder (ADW_ACTION_ROW (row));
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), row);
  return group;
}

void
lap_preferences_reset (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_settings_reset (lap_settings (), rows[i].key);
  g_settings_reset (lap_settings (), FOLDER_KEY);
}

static GtkWidget *
reset (void)
{
  GtkWidget *group = adw_preferences_group_new (), *button = gtk_button_new_with_mnemonic (_("_Set all back"));

  gtk_widget_set_halign (button, GTK_ALIGN_START);
  g_signal_connect (button, "clicked", G_CALLBACK (lap_preferences_reset), NULL);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), button);
  return group;
}

static GtkWidget *
without (void)
{
  GtkWidget *group = adw_preferences_group_new ();

  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _("Nothing can be kept"));
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (group),
                                         _("Lapwing is not installed with its settings. It works without them."));
  return group;
}

GtkWindow *
lap_preferences_open (GtkWindow *parent)
{
  GtkWidget *window = adw_preferences_window_new (), *page = adw_preferences_page_new ();
  GtkWidget *(*groups[]) (void) = { new_files, folder, reset };

  for (guint i = 0; i < G_N_ELEMENTS (groups) && lap_settings () != NULL; i++)
    adw_preferences_page_add (ADW_PREFERENCES_PAGE (page), ADW_PREFERENCES_GROUP (groups[i] ()));
  if (lap_settings () == NULL)
    adw_preferences_page_add (ADW_PREFERENCES_PAGE (page), ADW_PREFERENCES_GROUP (without ()));
  adw_preferences_page_set_title (ADW_PREFERENCES_PAGE (page), _("Settings"));
  adw_preferences_window_add (ADW_PREFERENCES_WINDOW (window), ADW_PREFERENCES_PAGE (page));
  adw_preferences_window_set_search_enabled (ADW_PREFERENCES_WINDOW (window), FALSE);
  gtk_window_set_title (GTK_WINDOW (window), _("Settings"));
  gtk_widget_set_name (window, LAP_HELP_SETTINGS);
  gtk_window_set_transient_for (GTK_WINDOW (window), parent);
  gtk_window_set_modal (GTK_WINDOW (window), TRUE);
  gtk_window_set_default_size (GTK_WINDOW (window), 520, 480);
  gtk_window_present (GTK_WINDOW (window));
  return GTK_WINDOW (window);
}

void
lap_preferences_fill (LapSession *session)
{
  g_autofree char *coach = NULL, *level = NULL;

  if (lap_settings () == NULL)
    return;
  coach = g_settings_get_string (lap_settings (), "new-coach");
  level = g_settings_get_string (lap_settings (), "new-level");
  if (*coach != '\0')
    g_object_set (session, "coach", coach, NULL);
  g_object_set (session, "group-level", lap_words_find (&lap_levels, level), "talk-voice",
                g_settings_get_double (lap_settings (), "new-voice"), NULL);
}
