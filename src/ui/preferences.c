/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What new sessions begin with is a form over a session that nobody opens: each member has a setting of its own, called
 * "new-" and the member. Without the program's schema nothing can be kept, which the page says.
 */
#include "ui/preferences.h"

#include "model/kit.h"
#include "store/documents.h"
#include "ui/field-row.h"
#include "ui/files.h"
#include "ui/form.h"
#include "ui/help.h"
#include "ui/rehearse/output-row.h"
#include "ui/settings.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

static const LapFormRow rows[] = {
  { NULL, N_("New sessions begin with"), N_("Sessions that you have stay as they are.") },
  { "coach", N_("Coach") },
  { "group-level", N_("Level") },
  { "group-count", N_("People"), NULL, 1, 0, 1 },
  { "kit", N_("Kit that is there") },
  { "space-width", N_("Width"), N_("for all people together; 0 when it doesn’t matter"), LAP_UNIT_DISTANCE, 1, 0.5 },
  { "space-length", N_("Length"), N_("for all people together; 0 when it doesn’t matter"), LAP_UNIT_DISTANCE, 1, 0.5 },
  { NULL, N_("Effort wanted in main parts") },
  { "band-low", N_("At least"), N_("Percent of heart-rate reserve"), 0.01, 0, 5 },
  { "band-high", N_("At most"), N_("Percent of heart-rate reserve"), 0.01, 0, 5 },
  { NULL, N_("How fast you speak") },
  { "talk-voice", N_("In talks"), N_("Words a second, standing still"), 1, 1, 0.1 },
  { "talk-rest", N_("In rests"), N_("Words a second, getting your breath back"), 1, 1, 0.1 },
  { "talk-moderate", N_("In moderate work"), N_("Words a second, working along"), 1, 1, 0.1 },
  { "talk-vigorous", N_("In vigorous work"), N_("Words a second, short of breath"), 1, 1, 0.1 },
  { "change", N_("Changing position and kit"), N_("1 is as usual, 2 takes twice as long"), 1, 1, 0.1 },
};

/* What else is set here. */
#define FOLDER_KEY "library-folder"
#define CALM_KEY   "rehearse-calm"
#define OUTPUT_KEY "rehearse-output"
static const char *const others[] = { FOLDER_KEY, CALM_KEY, OUTPUT_KEY };

/* What is set, as a new session has it. */
typedef struct {
  LapSession *session;
  LapForm    *form;
} New;

/* The setting of a member; NULL for a row that begins a group. Transfer full. */
static char *
key_of (const char *property)
{
  return property != NULL ? g_strconcat ("new-", property, NULL) : NULL;
}

static GVariant *
kit_variant (const LapKit *kit)
{
  GVariantBuilder words;

  g_variant_builder_init (&words, G_VARIANT_TYPE_STRING_ARRAY);
  for (guint i = 0; kit != NULL && i < kit->n; i++)
    g_variant_builder_add (&words, "s", lap_words_id (&lap_kit_words, kit->order[i]));
  return g_variant_builder_end (&words);
}

static LapKit *
variant_kit (GVariant *words)
{
  LapKit *kit = lap_kit_new ();

  for (gsize i = 0; i < g_variant_n_children (words); i++) {
    const char *id;
    int word;

    g_variant_get_child (words, i, "&s", &id);
    word = lap_words_find (&lap_kit_words, id);
    if (word >= 0)
      lap_kit_set (kit, word, 1);
  }
  return kit;
}

/* Floating. */
static GVariant *
to_variant (const LapField *field, const GValue *value)
{
  if (field->kind == &lap_kind_kit)
    return kit_variant (g_value_get_boxed (value));
  if (field->kind == &lap_kind_word)
    return g_variant_new_string (lap_words_id (field->words, g_value_get_int (value)));
  if (field->kind == &lap_kind_int)
    return g_variant_new_int32 (g_value_get_int (value));
  if (field->kind == &lap_kind_number)
    return g_variant_new_double (g_value_get_double (value));
  return g_variant_new_string (g_value_get_string (value) != NULL ? g_value_get_string (value) : "");
}

/* @value has the type of @field. */
static void
from_variant (const LapField *field, GVariant *kept, GValue *value)
{
  if (field->kind == &lap_kind_kit)
    g_value_take_boxed (value, variant_kit (kept));
  else if (field->kind == &lap_kind_word)
    g_value_set_int (value, lap_words_find (field->words, g_variant_get_string (kept, NULL)));
  else if (field->kind == &lap_kind_int)
    g_value_set_int (value, g_variant_get_int32 (kept));
  else if (field->kind == &lap_kind_number)
    g_value_set_double (value, g_variant_get_double (kept));
  else
    g_value_set_string (value, g_variant_get_string (kept, NULL));
}

/* What is set and no session could have, as by another program, is passed over. */
void
lap_preferences_fill (LapSession *session)
{
  for (guint i = 0; i < G_N_ELEMENTS (rows) && lap_settings () != NULL; i++) {
    g_autofree char *key = key_of (rows[i].property);
    g_autoptr (GVariant) kept = key != NULL ? g_settings_get_user_value (lap_settings (), key) : NULL;
    g_auto (GValue) value = G_VALUE_INIT;
    const LapField *field;

    if (kept == NULL)
      continue;
    field = lap_record_field (lap_object_record (session), rows[i].property);
    lap_field_get (field, session, &value);
    from_variant (field, kept, &value);
    if (lap_session_allows (session, rows[i].property, &value, NULL))
      g_object_set_property (G_OBJECT (session), rows[i].property, &value);
  }
}

static gconstpointer
get_session (gpointer data)
{
  return ((New *) data)->session;
}

static gboolean
set_value (gpointer data, const LapField *field, const char *title, const GValue *value, GError **error)
{
  g_autofree char *property = lap_field_property (field), *key = key_of (property);

  if (!lap_session_allows (((New *) data)->session, property, value, error))
    return FALSE;
  g_settings_set_value (lap_settings (), key, to_variant (field, value));
  return TRUE;
}

/* A band that isn't stated is the usual one. */
static double
usual_band (gpointer data, const LapField *field)
{
  double low, high;

  lap_session_band (((New *) data)->session, &low, &high);
  return g_str_equal (field->name, "low") ? low : high;
}

static void
new_show (New *self)
{
  g_clear_object (&self->session);
  self->session = lap_session_new ("");
  lap_preferences_fill (self->session);
  lap_form_show (self->form);
}

static void
settings_cb (GtkWidget *window)
{
  new_show (g_object_get_data (G_OBJECT (window), "new"));
}

static void
new_free (gpointer data)
{
  New *self = data;

  lap_form_free (self->form);
  g_object_unref (self->session);
  g_free (self);
}

static void
add_new (GtkWidget *window, AdwPreferencesPage *page)
{
  New *self = g_new0 (New, 1);
  LapFormTarget target = { NULL, get_session, set_value, usual_band, NULL };

  self->session = lap_session_new ("");
  target.record = lap_object_record (self->session);
  self->form = lap_form_new (&target, self);
  lap_form_fill (self->form, page, rows, G_N_ELEMENTS (rows));
  new_show (self);
  g_object_set_data_full (G_OBJECT (window), "new", self, new_free);
  g_signal_connect_object (lap_settings (), "changed", G_CALLBACK (settings_cb), window, G_CONNECT_SWAPPED);
}

/* What is chosen may not be plugged in. */
static void
show_output (LapOutputRow *row)
{
  const char *chosen = lap_output_row_chosen (row);
  g_autofree char *text = NULL;

  if (*chosen != '\0' && adw_combo_row_get_selected (ADW_COMBO_ROW (row)) == 0) {
    g_autofree char *plain = g_strdup_printf (_("%s isn’t connected: the default output is used"), chosen);

    text = g_markup_escape_text (plain, -1);
  }
  adw_action_row_set_subtitle (ADW_ACTION_ROW (row), text != NULL ? text
                               : _("Where rehearsals are heard"));
}

static GtkWidget *
rehearsal (void)
{
  GtkWidget *group = adw_preferences_group_new (), *toggle = gtk_switch_new ();
  GtkWidget *output = g_object_new (LAP_TYPE_OUTPUT_ROW, "title", _("Sound output"), NULL);

  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _("Rehearsal"));
  lap_settings_bind (CALM_KEY, toggle, "active");
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group),
                             lap_field_row (_("Less flashing"),
                                            _("The edge of the screen lights up for a second, and doesn’t flash"), toggle));
  lap_output_row_set (LAP_OUTPUT_ROW (output), OUTPUT_KEY, _("Default output"));
  g_signal_connect_object (lap_settings (), "changed::" OUTPUT_KEY, G_CALLBACK (show_output), output, G_CONNECT_SWAPPED);
  g_signal_connect (output, "notify::selected", G_CALLBACK (show_output), NULL);
  g_signal_connect (output, "map", G_CALLBACK (show_output), NULL);
  show_output (LAP_OUTPUT_ROW (output));
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), output);
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
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autofree char *key = key_of (rows[i].property);

    if (key != NULL)
      g_settings_reset (lap_settings (), key);
  }
  for (guint i = 0; i < G_N_ELEMENTS (others); i++)
    g_settings_reset (lap_settings (), others[i]);
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
  GtkWidget *(*groups[]) (void) = { rehearsal, folder, reset };

  if (lap_settings () != NULL)
    add_new (window, ADW_PREFERENCES_PAGE (page));
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
  gtk_window_set_default_size (GTK_WINDOW (window), 560, 640);
  gtk_window_present (GTK_WINDOW (window));
  return GTK_WINDOW (window);
}
