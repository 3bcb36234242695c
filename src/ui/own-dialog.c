/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/own-dialog.h"

#include "edit/own.h"
#include "ui/chooser.h"
#include "ui/form.h"
#include "ui/help.h"
#include "ui/personal.h"
#include "ui/tell.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

static const LapFormRow rows[] = {
  { NULL, N_("Exercise") },
  { "name", N_("Name") },
  { "other-names", N_("Other names, with commas between") },
  { "for", N_("Good for") },
  { NULL, N_("How it is done") },
  { "posture", N_("Posture") },
  { "sides", N_("Sides") },
  { "pattern", N_("Pattern") },
  { "move", N_("Kind of move"), N_("Brings its usual energy along") },
  { "seconds-per-rep", N_("One repetition"), N_("Seconds; 0 for a hold"), 1, 1, 0.5 },
  { "impact", N_("Landing") },
  { "noise", N_("Noise") },
  { "kit", N_("Kit") },
  { "width", N_("Width"), N_("of floor"), LAP_UNIT_DISTANCE, 1, 0.1 },
  { "length", N_("Length"), N_("of floor"), LAP_UNIT_DISTANCE, 1, 0.1 },
  { NULL, N_("Muscles") },
  { "primary", N_("Worked hard") },
  { "secondary", N_("Help") },
};

static const LapFormRow words[] = {
  { NULL, N_("Words to say") },
  { "setup", N_("To get ready") },
  { "cues", N_("While it is done, with ; between"), NULL, 0, 0, 0, ";" },
  { "fault", N_("Against the usual fault") },
  { "easier", N_("What is easier") },
  { "harder", N_("What is harder") },
};

/* Another exercise that this one names. */
static const struct {
  const char *property; /* NULL for the figure, which is lent */
  const char *title;
} links[] = { { NULL, N_("Figure of") }, { "easier", N_("Easier exercise") }, { "harder", N_("Harder exercise") } };

typedef struct {
  GtkWidget   *window;
  LapDocument *document;
  char        *id;
  LapForm     *form, *words;
  GtkWidget   *links[G_N_ELEMENTS (links)];    /* AdwActionRow */
  GtkWidget   *choosers[G_N_ELEMENTS (links)]; /* LapChooser */
  GPtrArray   *cares;                          /* AdwComboRow, by care word */
  gboolean     showing;
} Dialog;

static void
dialog_free (gpointer data)
{
  Dialog *self = data;

  lap_form_free (self->form);
  lap_form_free (self->words);
  g_ptr_array_unref (self->cares);
  g_object_unref (self->document);
  g_free (self->id);
  g_free (self);
}

/* As it is now; NULL once it is gone. */
static LapExercise *
own_of (Dialog *self)
{
  GPtrArray *own = lap_document_session (self->document)->exercises;

  for (guint i = 0; own != NULL && i < own->len; i++)
    if (g_str_equal (((LapExercise *) g_ptr_array_index (own, i))->id, self->id))
      return g_ptr_array_index (own, i);
  return NULL;
}

static gconstpointer
get_exercise (gpointer data)
{
  return own_of (data);
}

static gconstpointer
get_words (gpointer data)
{
  LapExercise *own = own_of (data);

  return own != NULL ? own->say : NULL;
}

static gboolean
set_value (gpointer data, const LapField *field, const char *title, const GValue *value, GError **error)
{
  Dialog *self = data;
  LapExercise *own = own_of (self);
  g_autofree char *label = g_strdup_printf (_("%1$s: %2$s"), own->name, title);
  LapEdits *edits = lap_verb_change_own (lap_document_session (self->document), own, field, value, label, error);

  if (edits == NULL)
    return FALSE;
  lap_document_apply (self->document, edits);
  return TRUE;
}

static void
chosen_cb (Dialog *self, const char *id, LapChooser *chooser)
{
  LapSession *session = lap_document_session (self->document);
  g_autofree char *chosen = g_strdup (id);
  g_auto (GValue) value = G_VALUE_INIT;
  g_autoptr (GError) error = NULL;
  guint i = 0;

  while (self->choosers[i] != GTK_WIDGET (chooser))
    i++;
  gtk_popover_popdown (GTK_POPOVER (gtk_widget_get_ancestor (GTK_WIDGET (chooser), GTK_TYPE_POPOVER)));
  if (links[i].property == NULL) {
    lap_document_apply (self->document,
                        lap_verb_borrow_figure (session, own_of (self),
                                                lap_catalogue_find (lap_document_catalogue (self->document), chosen)));
    return;
  }
  g_value_init (&value, G_TYPE_STRING);
  g_value_set_string (&value, chosen);
  if (!set_value (self, lap_record_field (&lap_exercise_record, links[i].property), _(links[i].title), &value, &error))
    lap_tell_in (ADW_PREFERENCES_WINDOW (self->window), error->message);
}

static void
choose_cb (Dialog *self)
{
  for (guint i = 0; i < G_N_ELEMENTS (links); i++)
    lap_chooser_set_catalogue (LAP_CHOOSER (self->choosers[i]), lap_document_catalogue (self->document));
}

static void
care_cb (Dialog *self, GParamSpec *pspec, GtkWidget *combo)
{
  guint word = 0;
  g_autofree char *label = NULL;

  if (self->showing || !g_ptr_array_find (self->cares, combo, &word))
    return;
  label = g_strdup_printf (_("%1$s: %2$s"), own_of (self)->name, lap_words_label (&lap_care_words, word));
  lap_document_apply (self->document,
                      lap_verb_set_own_care (lap_document_session (self->document), own_of (self), word,
                                             adw_combo_row_get_selected (ADW_COMBO_ROW (combo)), label));
}

/* The id of the exercise that @own names there, or NULL. */
static const char *
link_of (LapExercise *own, guint i)
{
  JsonObject *figure = own->figure != NULL ? json_node_get_object (own->figure) : NULL;

  if (links[i].property != NULL)
    return g_str_equal (links[i].property, "easier") ? own->easier : own->harder;
  return figure != NULL && json_object_has_member (figure, "like") ? json_object_get_string_member (figure, "like") : NULL;
}

static void
show (Dialog *self)
{
  LapExercise *own = own_of (self);

  if (own == NULL) {
    gtk_window_close (GTK_WINDOW (self->window));
    return;
  }
  self->showing = TRUE;
  lap_form_show (self->form);
  lap_form_show (self->words);
  for (guint i = 0; i < G_N_ELEMENTS (links); i++) {
    const char *id = link_of (own, i);
    LapExercise *other = id != NULL ? lap_catalogue_find (lap_document_catalogue (self->document), id) : NULL;

    adw_action_row_set_subtitle (ADW_ACTION_ROW (self->links[i]), other != NULL ? lap_exercise_name (other) : _("None"));
  }
  for (guint word = 0; word < self->cares->len; word++) {
    const LapCare *care = lap_exercise_care (own, word);

    adw_combo_row_set_selected (g_ptr_array_index (self->cares, word), care != NULL ? care->load : 0);
  }
  gtk_window_set_title (GTK_WINDOW (self->window), own->name);
  self->showing = FALSE;
}

static void
show_cb (GtkWidget *window)
{
  show (g_object_get_data (G_OBJECT (window), "dialog"));
}

static void
fill_links (Dialog *self, AdwPreferencesPage *page)
{
  GtkWidget *group = adw_preferences_group_new ();

  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _("Like others"));
  for (guint i = 0; i < G_N_ELEMENTS (links); i++) {
    GtkWidget *button = gtk_menu_button_new (), *popover = gtk_popover_new ();

    self->choosers[i] = g_object_new (LAP_TYPE_CHOOSER, NULL);
    self->links[i] = adw_action_row_new ();
    gtk_popover_set_child (GTK_POPOVER (popover), self->choosers[i]);
    g_signal_connect_swapped (popover, "show", G_CALLBACK (choose_cb), self);
    g_signal_connect_swapped (self->choosers[i], "chosen", G_CALLBACK (chosen_cb), self);
    gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _("Choose…"));
    gtk_menu_button_set_popover (GTK_MENU_BUTTON (button), popover);
    gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
    adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->links[i]), _(links[i].title));
    adw_action_row_add_suffix (ADW_ACTION_ROW (self->links[i]), button);
    adw_action_row_set_activatable_widget (ADW_ACTION_ROW (self->links[i]), button);
    adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), self->links[i]);
  }
  adw_preferences_page_add (page, ADW_PREFERENCES_GROUP (group));
}

static void
fill_cares (Dialog *self, AdwPreferencesPage *page)
{
  const char *const loads[] = { _("Nothing"), _("A little"), _("Much"), NULL };
  GtkWidget *group = adw_preferences_group_new ();

  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _("What it asks of joints and states"));
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (group),
                                         _("Warnings and kinder versions follow from it. In doubt, say more."));
  for (guint word = 0; word < lap_care_words.n; word++) {
    g_autoptr (GtkStringList) labels = gtk_string_list_new (loads);
    GtkWidget *combo = adw_combo_row_new ();

    adw_preferences_row_set_title (ADW_PREFERENCES_ROW (combo), lap_words_label (&lap_care_words, word));
    adw_combo_row_set_model (ADW_COMBO_ROW (combo), G_LIST_MODEL (labels));
    adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), combo);
    g_ptr_array_add (self->cares, combo);
    g_signal_connect_swapped (combo, "notify::selected", G_CALLBACK (care_cb), self);
  }
  adw_preferences_page_add (page, ADW_PREFERENCES_GROUP (group));
}

static gboolean
close_cb (Dialog *self)
{
  LapExercise *own = own_of (self);
  g_autoptr (GError) error = NULL;

  if (own != NULL && !lap_personal_keep (lap_personal (), own, &error))
    lap_document_tell (self->document, error->message);
  return FALSE;
}

GtkWidget *
lap_own_dialog_open (GtkWindow *parent, LapDocument *document, const char *id)
{
  static const LapFormTarget exercise = { &lap_exercise_record, get_exercise, set_value, NULL, NULL };
  static const LapFormTarget say = { &lap_say_record, get_words, set_value, NULL, NULL };
  GtkWidget *window = adw_preferences_window_new (), *page = adw_preferences_page_new ();
  AdwPreferencesPage *filled = ADW_PREFERENCES_PAGE (page);
  Dialog *self = g_new0 (Dialog, 1);

  self->window = window;
  self->document = g_object_ref (document);
  self->id = g_strdup (id);
  self->cares = g_ptr_array_new ();
  self->form = lap_form_new (&exercise, self);
  self->words = lap_form_new (&say, self);
  g_object_set_data_full (G_OBJECT (window), "dialog", self, dialog_free);
  lap_form_fill (self->form, filled, rows, G_N_ELEMENTS (rows));
  lap_form_fill (self->words, filled, words, G_N_ELEMENTS (words));
  fill_links (self, filled);
  self->showing = TRUE;
  fill_cares (self, filled);
  adw_preferences_page_set_title (filled, _("Exercise"));
  adw_preferences_window_add (ADW_PREFERENCES_WINDOW (window), filled);
  adw_preferences_window_set_search_enabled (ADW_PREFERENCES_WINDOW (window), FALSE);
  gtk_widget_set_sensitive (page, lap_document_is_editable (document));
  gtk_window_set_transient_for (GTK_WINDOW (window), parent);
  gtk_window_set_modal (GTK_WINDOW (window), TRUE);
  gtk_window_set_default_size (GTK_WINDOW (window), 560, 640);
  gtk_widget_set_name (window, LAP_HELP_OWN);
  g_signal_connect_swapped (window, "close-request", G_CALLBACK (close_cb), self);
  g_signal_connect_object (document, "changed", G_CALLBACK (show_cb), window, G_CONNECT_SWAPPED);
  show (self);
  gtk_window_present (GTK_WINDOW (window));
  return window;
}
