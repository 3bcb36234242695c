/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/properties.h"

#include "model/session.h"
#include "store/documents.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include <math.h>

typedef struct {
  const char *property;      /* of the session; NULL begins a group called title */
  const char *title, *hint;
  double      unit;          /* what one of the shown is in the file: 60 for minutes */
  int         digits;
  double      step;
} Row;

static const Row rows[] = {
  { NULL, N_("Session") },
  { "title", N_("Title") },
  { "coach", N_("Coach") },
  { "link", N_("Link"), N_("Printed on sheets as a square code") },
  { "target", N_("Length wanted"), N_("Minutes; 0 for none") , 60, 0, 5 },
  { "focus", N_("Works on purpose"), N_("Regions; none for the whole body") },
  { NULL, N_("Group") },
  { "group-level", N_("Level") },
  { "group-count", N_("People"), NULL, 1, 0, 1 },
  { "group-age", N_("Age"), N_("Years, about"), 1, 0, 5 },
  { "also-for", N_("Also for"), N_("Whom the plan spares: a line on sheets and in the script") },
  { NULL, N_("Place") },
  { "kit", N_("Kit that is there") },
  { "space-width", N_("Width"), N_("Metres, for all people together; 0 when it doesn’t matter"), 1, 1, 0.5 },
  { "space-length", N_("Length"), N_("Metres; 0 when it doesn’t matter"), 1, 1, 0.5 },
  { "quiet", N_("Quiet"), N_("Somebody lives below") },
  { NULL, N_("Effort wanted in main parts") },
  { "band-low", N_("At least"), N_("Percent of heart-rate reserve"), 0.01, 0, 5 },
  { "band-high", N_("At most"), N_("Percent of heart-rate reserve"), 0.01, 0, 5 },
  { NULL, N_("Filming") },
  { "film-sound", N_("Sound") },
  { "film-frame", N_("Frame") },
  { "film-lens", N_("Lens"), N_("Millimetres, as on full frame"), 1, 0, 1 },
  { "film-room", N_("Farthest camera"), N_("Metres that the room gives"), 1, 1, 0.5 },
  { "film-camera-height", N_("Height of the camera"), N_("Metres"), 1, 1, 0.1 },
  { "film-lead", N_("Lead"), N_("Seconds the camera runs before the clock starts"), 1, 0, 1 },
};

typedef struct {
  GtkWidget *window;
  GPtrArray *controls;
  gboolean   showing; /* the dialog fills its controls now, nobody edits */
} Dialog;

/* A control on screen: what it edits, and which bit where it is one of a set. */
typedef struct {
  Dialog         *dialog;
  LapDocument    *document;
  const Row      *row;
  const LapField *field;
  GtkWidget      *control;
  guint           bit;
} Control;

static void
dialog_free (gpointer data)
{
  Dialog *dialog = data;

  g_ptr_array_unref (dialog->controls);
  g_free (dialog);
}

static void show_control (Control *self);

/* Whether a file with that value could be read again: what a file may say is told in one place only. */
static gboolean
is_allowed (Control *self, const GValue *value, GError **error)
{
  g_autoptr (LapSession) copy = lap_object_copy (lap_document_session (self->document)), back = NULL;
  g_autoptr (GBytes) bytes = NULL;

  g_object_set_property (G_OBJECT (copy), self->row->property, value);
  bytes = lap_session_to_bytes (copy);
  back = lap_session_from_bytes (bytes, error);
  return back != NULL;
}

static void
apply (Control *self, const GValue *value)
{
  g_autofree char *label = g_strdup_printf (_("Change: %s"), _(self->row->title));
  g_autoptr (GError) error = NULL;
  LapEdits *edits;

  if (self->dialog->showing)
    return;
  if (!is_allowed (self, value, &error)) {
    adw_preferences_window_add_toast (ADW_PREFERENCES_WINDOW (self->dialog->window), adw_toast_new (error->message));
    self->dialog->showing = TRUE;
    show_control (self);
    self->dialog->showing = FALSE;
    return;
  }
  edits = lap_edits_new (label);
  lap_edits_set (edits, lap_document_session (self->document), self->row->property, value);
  lap_document_apply (self->document, edits);
}

static void
get (Control *self, GValue *value)
{
  lap_field_get (self->field, lap_document_session (self->document), value);
}

static void
text_cb (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;

  g_value_init (&value, G_TYPE_STRING);
  g_value_set_string (&value, gtk_editable_get_text (GTK_EDITABLE (self->control)));
  apply (self, &value);
}

/* A band that isn't stated is the usual one. */
static double
shown_number (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT, number = G_VALUE_INIT;
  double low, high;

  get (self, &value);
  g_value_init (&number, G_TYPE_DOUBLE);
  g_value_transform (&value, &number);
  if (g_value_get_double (&number) >= 0)
    return g_value_get_double (&number) / self->row->unit;
  lap_session_band (lap_document_session (self->document), &low, &high);
  return (g_str_equal (self->row->property, "band-low") ? low : high) / self->row->unit;
}

static void
number_cb (Control *self)
{
  double typed = gtk_spin_button_get_value (GTK_SPIN_BUTTON (self->control));
  g_auto (GValue) value = G_VALUE_INIT;

  /* An adjustment tells late of what was set while it told of another value. */
  if (fabs (typed - shown_number (self)) < 1e-6)
    return;
  get (self, &value);
  if (G_VALUE_HOLDS_INT (&value))
    g_value_set_int (&value, (int) (typed * self->row->unit + 0.5));
  else
    g_value_set_double (&value, typed * self->row->unit);
  apply (self, &value);
}

static void
word_cb (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;

  g_value_init (&value, G_TYPE_INT);
  g_value_set_int (&value, adw_combo_row_get_selected (ADW_COMBO_ROW (self->control)));
  apply (self, &value);
}

static guint32
mask_of (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;

  get (self, &value);
  if (G_VALUE_HOLDS (&value, LAP_TYPE_KIT))
    return lap_kit_mask (g_value_get_boxed (&value));
  return lap_words_mask (self->field->words, g_value_get_boxed (&value));
}

static void
set_kit (Control *self, gboolean there)
{
  g_auto (GValue) value = G_VALUE_INIT;
  LapKit *kit;

  get (self, &value);
  kit = g_value_get_boxed (&value) != NULL ? lap_kit_copy (g_value_get_boxed (&value)) : lap_kit_new ();
  lap_kit_set (kit, self->bit, there ? MAX (lap_document_session (self->document)->count, 1) : 0);
  g_value_take_boxed (&value, kit);
  apply (self, &value);
}

static void
set_words (Control *self, gboolean there)
{
  guint32 mask = there ? mask_of (self) | LAP_BIT (self->bit) : mask_of (self) & ~LAP_BIT (self->bit);
  g_autoptr (GStrvBuilder) words = g_strv_builder_new ();
  g_auto (GValue) value = G_VALUE_INIT;

  for (guint i = 0; i < self->field->words->n; i++)
    if (mask & LAP_BIT (i))
      g_strv_builder_add (words, lap_words_id (self->field->words, i));
  g_value_init (&value, G_TYPE_STRV);
  g_value_take_boxed (&value, g_strv_builder_end (words));
  apply (self, &value);
}

static void
flag_cb (Control *self)
{
  gboolean on = gtk_switch_get_active (GTK_SWITCH (self->control));
  g_auto (GValue) value = G_VALUE_INIT;

  if (self->dialog->showing)
    return;
  if (self->field->kind == &lap_kind_kit)
    set_kit (self, on);
  else if (self->field->kind == &lap_kind_words)
    set_words (self, on);
  else {
    g_value_init (&value, G_TYPE_BOOLEAN);
    g_value_set_boolean (&value, on);
    apply (self, &value);
  }
}

static void
show_control (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;

  get (self, &value);
  if (self->field->kind == &lap_kind_text) {
    const char *text = g_value_get_string (&value);

    if (g_strcmp0 (gtk_editable_get_text (GTK_EDITABLE (self->control)), text != NULL ? text : "") != 0)
      gtk_editable_set_text (GTK_EDITABLE (self->control), text != NULL ? text : "");
  } else if (ADW_IS_COMBO_ROW (self->control))
    adw_combo_row_set_selected (ADW_COMBO_ROW (self->control), g_value_get_int (&value));
  else if (GTK_IS_SPIN_BUTTON (self->control))
    gtk_spin_button_set_value (GTK_SPIN_BUTTON (self->control), shown_number (self));
  else if (self->field->kind == &lap_kind_flag)
    gtk_switch_set_active (GTK_SWITCH (self->control), g_value_get_boolean (&value));
  else
    gtk_switch_set_active (GTK_SWITCH (self->control), (mask_of (self) & LAP_BIT (self->bit)) != 0);
}

static void
show_all (GtkWidget *window)
{
  Dialog *dialog = g_object_get_data (G_OBJECT (window), "dialog");

  dialog->showing = TRUE;
  for (guint i = 0; i < dialog->controls->len; i++)
    show_control (dialog->controls->pdata[i]);
  dialog->showing = FALSE;
}

static Control *
control_new (Dialog *dialog, LapDocument *document, const Row *row, GtkWidget *widget, guint bit)
{
  Control *control = g_new0 (Control, 1);

  control->dialog = dialog;
  control->document = document;
  control->row = row;
  control->field = lap_record_field (lap_object_record (lap_document_session (document)), row->property);
  control->control = widget;
  control->bit = bit;
  g_ptr_array_add (dialog->controls, control);
  return control;
}

static GtkWidget *
row_with (GtkWidget *row, const char *title, const char *hint, GtkWidget *control)
{
  gtk_widget_set_valign (control, GTK_ALIGN_CENTER);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), title);
  if (hint != NULL)
    adw_action_row_set_subtitle (ADW_ACTION_ROW (row), hint);
  adw_action_row_add_suffix (ADW_ACTION_ROW (row), control);
  adw_action_row_set_activatable_widget (ADW_ACTION_ROW (row), control);
  gtk_accessible_update_property (GTK_ACCESSIBLE (control), GTK_ACCESSIBLE_PROPERTY_LABEL, title, -1);
  return row;
}

static GtkWidget *
switch_row (Dialog *dialog, LapDocument *document, const Row *row, const char *title, const char *hint, guint bit)
{
  GtkWidget *toggle = gtk_switch_new ();

  g_signal_connect_swapped (toggle, "notify::active", G_CALLBACK (flag_cb),
                            control_new (dialog, document, row, toggle, bit));
  return row_with (adw_action_row_new (), title, hint, toggle);
}

static GtkWidget *
set_row (Dialog *dialog, LapDocument *document, const Row *row, const LapWords *words)
{
  GtkWidget *expander = adw_expander_row_new ();

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (expander), _(row->title));
  if (row->hint != NULL)
    adw_expander_row_set_subtitle (ADW_EXPANDER_ROW (expander), _(row->hint));
  for (guint i = 0; i < words->n; i++)
    adw_expander_row_add_row (ADW_EXPANDER_ROW (expander),
                              switch_row (dialog, document, row, lap_words_label (words, i), NULL, i));
  return expander;
}

static GtkWidget *
word_row (Dialog *dialog, LapDocument *document, const Row *row, const LapWords *words)
{
  g_autoptr (GtkStringList) labels = gtk_string_list_new (NULL);
  GtkWidget *combo = adw_combo_row_new ();

  for (guint i = 0; i < words->n; i++)
    gtk_string_list_append (labels, lap_words_label (words, i));
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (combo), _(row->title));
  adw_combo_row_set_model (ADW_COMBO_ROW (combo), G_LIST_MODEL (labels));
  g_signal_connect_swapped (combo, "notify::selected", G_CALLBACK (word_cb),
                            control_new (dialog, document, row, combo, 0));
  return combo;
}

static GtkWidget *
number_row (Dialog *dialog, LapDocument *document, const Row *row, const LapField *field)
{
  GtkWidget *spin = gtk_spin_button_new_with_range (field->low / row->unit, field->high / row->unit, row->step);

  gtk_spin_button_set_digits (GTK_SPIN_BUTTON (spin), row->digits);
  gtk_spin_button_set_numeric (GTK_SPIN_BUTTON (spin), TRUE);
  g_signal_connect_swapped (spin, "value-changed", G_CALLBACK (number_cb),
                            control_new (dialog, document, row, spin, 0));
  return row_with (adw_action_row_new (), _(row->title), row->hint != NULL ? _(row->hint) : NULL, spin);
}

static GtkWidget *
text_row (Dialog *dialog, LapDocument *document, const Row *row)
{
  GtkWidget *entry = adw_entry_row_new ();

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (entry), _(row->title));
  adw_entry_row_set_show_apply_button (ADW_ENTRY_ROW (entry), TRUE);
  g_signal_connect_swapped (entry, "apply", G_CALLBACK (text_cb), control_new (dialog, document, row, entry, 0));
  return entry;
}

static GtkWidget *
row_new (Dialog *dialog, LapDocument *document, const Row *row)
{
  const LapField *field = lap_record_field (lap_object_record (lap_document_session (document)), row->property);

  if (field->kind == &lap_kind_text)
    return text_row (dialog, document, row);
  if (field->kind == &lap_kind_word)
    return word_row (dialog, document, row, field->words);
  if (field->kind == &lap_kind_words)
    return set_row (dialog, document, row, field->words);
  if (field->kind == &lap_kind_kit)
    return set_row (dialog, document, row, &lap_kit_words);
  if (field->kind == &lap_kind_flag)
    return switch_row (dialog, document, row, _(row->title), row->hint != NULL ? _(row->hint) : NULL, 0);
  return number_row (dialog, document, row, field);
}

static void
fill (AdwPreferencesPage *page, Dialog *dialog, LapDocument *document)
{
  GtkWidget *group = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    if (rows[i].property == NULL) {
      group = adw_preferences_group_new ();
      adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _(rows[i].title));
      adw_preferences_page_add (page, ADW_PREFERENCES_GROUP (group));
    } else
      adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), row_new (dialog, document, &rows[i]));
  }
}

GtkWidget *
lap_properties_open (LapWindow *window)
{
  LapDocument *document = lap_window_document (window);
  GtkWidget *properties = adw_preferences_window_new (), *page = adw_preferences_page_new ();
  Dialog *dialog = g_new0 (Dialog, 1);

  dialog->window = properties;
  dialog->controls = g_ptr_array_new_with_free_func (g_free);
  g_object_set_data_full (G_OBJECT (properties), "document", g_object_ref (document), g_object_unref);
  g_object_set_data_full (G_OBJECT (properties), "dialog", dialog, dialog_free);
  dialog->showing = TRUE;
  fill (ADW_PREFERENCES_PAGE (page), dialog, document);
  adw_preferences_page_set_title (ADW_PREFERENCES_PAGE (page), _("Session"));
  adw_preferences_window_add (ADW_PREFERENCES_WINDOW (properties), ADW_PREFERENCES_PAGE (page));
  adw_preferences_window_set_search_enabled (ADW_PREFERENCES_WINDOW (properties), FALSE);
  gtk_widget_set_sensitive (page, lap_document_is_editable (document));
  gtk_window_set_title (GTK_WINDOW (properties), _("Properties of the session"));
  gtk_window_set_transient_for (GTK_WINDOW (properties), GTK_WINDOW (window));
  gtk_window_set_modal (GTK_WINDOW (properties), TRUE);
  gtk_window_set_default_size (GTK_WINDOW (properties), 560, 640);
  g_signal_connect_object (document, "changed", G_CALLBACK (show_all), properties, G_CONNECT_SWAPPED);
  show_all (properties);
  gtk_window_present (GTK_WINDOW (properties));
  return properties;
}

static void
properties_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_properties_open (LAP_WINDOW (widget));
}

void
lap_properties_install (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.properties", NULL, properties_action);
}
