/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/fields.h"

#include "base/customs.h"
#include "model/when.h"
#include "ui/field-row.h"
#include "ui/field-text.h"
#include "ui/number.h"
#include "ui/week-choices.h"

#include <glib/gi18n-lib.h>
#include <math.h>

struct _LapFields {
  GObject      parent_instance;
  LapDocument *document;
  const LapRecord *record;
  GPtrArray   *objects;  /* LapObject */
  GPtrArray   *controls; /* Control, not owned: their widgets own them */
  gboolean     showing;  /* the rows are being filled, nobody edits */
};

G_DEFINE_FINAL_TYPE (LapFields, lap_fields, G_TYPE_OBJECT)

/* What stands in a row. */
typedef struct {
  LapFields          *fields; /* weak: NULL once they have gone */
  const LapFieldSpec *spec;
  const LapField     *field;
  GtkWidget          *row, *control; /* the row itself, or what is in it */
  guint               bit;           /* of a set */
  GPtrArray          *ids;           /* of a choice that names something */
  char               *was;           /* of a line: what it showed */
} Control;

static void
control_free (gpointer data)
{
  Control *control = data;

  if (control->fields != NULL) {
    g_ptr_array_remove_fast (control->fields->controls, control);
    g_clear_weak_pointer (&control->fields);
  }
  g_clear_pointer (&control->ids, g_ptr_array_unref);
  g_free (control->was);
  g_free (control);
}

static gboolean
are_equal (const LapField *field, const GValue *a, const GValue *b)
{
  g_autofree char *one = NULL, *two = NULL;

  if (lap_field_switches (field) != NULL)
    return lap_field_mask (field, a) == lap_field_mask (field, b);
  one = lap_field_is_typed (field) ? lap_field_text (field, a) : g_strdup_value_contents (a);
  two = lap_field_is_typed (field) ? lap_field_text (field, b) : g_strdup_value_contents (b);
  return g_str_equal (one, two);
}

/* The value of the first object in @value. TRUE when the others have the same. */
static gboolean
get (Control *self, GValue *value)
{
  GPtrArray *objects = self->fields->objects;
  gboolean same = TRUE;

  lap_field_get (self->field, objects->pdata[0], value);
  for (guint i = 1; same && i < objects->len; i++) {
    g_auto (GValue) other = G_VALUE_INIT;

    lap_field_get (self->field, objects->pdata[i], &other);
    same = are_equal (self->field, value, &other);
  }
  return same;
}

static void
apply (Control *self, const GValue *value)
{
  g_autofree char *label = g_strdup_printf (_("Change: %s"), _(self->spec->title));
  LapEdits *edits = lap_edits_new (label);

  for (guint i = 0; i < self->fields->objects->len; i++) {
    LapObject *object = self->fields->objects->pdata[i];

    if (self->spec->set != NULL)
      self->spec->set (edits, object, value);
    else
      lap_edits_set (edits, object, self->spec->property, value);
  }
  lap_document_apply (self->fields->document, edits);
}

static gboolean
is_idle (Control *self)
{
  return self->fields == NULL || self->fields->showing || self->fields->objects->len == 0;
}

/* Lines */

/* A member that may be absent is absent when nothing is typed. */
static void
leave_out_empty (Control *self, GValue *value)
{
  if (G_VALUE_HOLDS_STRING (value) && *g_value_get_string (value) == '\0' &&
      (self->field->flags & LAP_FIELD_REQUIRED) == 0)
    g_value_set_string (value, NULL);
}

static void
line_cb (Control *self)
{
  const char *typed = gtk_editable_get_text (GTK_EDITABLE (self->control));
  g_auto (GValue) value = G_VALUE_INIT;

  if (is_idle (self) || g_strcmp0 (typed, self->was) == 0 || !lap_document_is_editable (self->fields->document))
    return;
  if (!lap_field_parse (self->field, typed, &value)) {
    lap_document_tell (self->fields->document, lap_field_hint (self->field));
    gtk_editable_set_text (GTK_EDITABLE (self->control), self->was);
    return;
  }
  g_free (self->was);
  self->was = g_strdup (typed);
  leave_out_empty (self, &value);
  apply (self, &value);
}

static void
show_line (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;
  gboolean same = get (self, &value);
  g_autofree char *text = same ? lap_field_text (self->field, &value) : g_strdup ("");
  g_autofree char *title = NULL;

  if (!same)
    /* Translators: the name of a field that several selected things have different values of. */
    title = g_strdup_printf (_("%s (different)"), _(self->spec->title));
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->row), title != NULL ? title : _(self->spec->title));
  /* What is being typed isn't lost to a change elsewhere. */
  if (g_strcmp0 (text, self->was) == 0)
    return;
  g_free (self->was);
  self->was = g_steal_pointer (&text);
  gtk_editable_set_text (GTK_EDITABLE (self->control), self->was);
}

/* Numbers */

/* What is shown with one decimal and was not counted in what it is shown in: no more than that was typed. */
#define ROUNDED 0.0501

/* What one of the shown is in the file. */
static double
unit_of (const LapFieldSpec *spec)
{
  return spec->in_feet != NULL ? lap_distance_unit () * lap_distance_unit () : 1;
}

static const char *
hint_of (const LapFieldSpec *spec)
{
  const char *hint = spec->in_feet != NULL && lap_customs ().feet ? spec->in_feet : spec->hint;

  return hint != NULL ? _(hint) : "";
}

static double
number_of (Control *self, gboolean *same)
{
  g_auto (GValue) value = G_VALUE_INIT;

  *same = get (self, &value);
  return lap_field_number (&value) / unit_of (self->spec);
}

static void
number_cb (Control *self)
{
  double typed = gtk_spin_button_get_value (GTK_SPIN_BUTTON (self->control));
  g_auto (GValue) value = G_VALUE_INIT;
  gboolean same;

  /* An adjustment tells late of what was set while it told of another value. */
  if (is_idle (self) || (fabs (typed - number_of (self, &same)) < (unit_of (self->spec) != 1 ? ROUNDED : 1e-6) && same))
    return;
  get (self, &value);
  lap_field_set_number (&value, typed * unit_of (self->spec));
  apply (self, &value);
}

/* The hint of a set stands once, in the row that holds its words. */
static void
say_different (Control *self, gboolean same)
{
  const char *hint = lap_field_switches (self->field) != NULL ? "" : hint_of (self->spec);

  adw_action_row_set_subtitle (ADW_ACTION_ROW (self->row), same ? hint : _("Different"));
}

static void
show_number (Control *self)
{
  gboolean same;
  double number = number_of (self, &same);

  gtk_spin_button_set_value (GTK_SPIN_BUTTON (self->control), number);
  say_different (self, same);
}

/* Choices: of words, the first of which is "none" where that may be; of what has an id */

static guint
offset_of (Control *self)
{
  return self->field->preset < 0;
}

static void
choice_cb (Control *self)
{
  guint chosen = adw_combo_row_get_selected (ADW_COMBO_ROW (self->control));
  g_auto (GValue) value = G_VALUE_INIT;

  if (is_idle (self) || chosen == GTK_INVALID_LIST_POSITION)
    return;
  if (self->ids != NULL) {
    g_value_init (&value, G_TYPE_STRING);
    g_value_set_string (&value, self->ids->pdata[chosen]);
  } else {
    g_value_init (&value, G_TYPE_INT);
    g_value_set_int (&value, (int) chosen - (int) offset_of (self));
  }
  apply (self, &value);
}

/* Rooms and coaches come and go. */
static void
renew_choices (Control *self)
{
  g_autoptr (GPtrArray) titles = g_ptr_array_new ();

  g_clear_pointer (&self->ids, g_ptr_array_unref);
  self->ids = g_ptr_array_new_with_free_func (g_free);
  g_ptr_array_add (self->ids, NULL);
  g_ptr_array_add (titles, (gpointer) _("None"));
  self->spec->choices (self->fields->document, self->ids, titles);
  lap_combo_set_titles (ADW_COMBO_ROW (self->control), titles);
}

static guint
find_id (Control *self, const char *id)
{
  for (guint i = 0; i < self->ids->len; i++)
    if (g_strcmp0 (self->ids->pdata[i], id) == 0)
      return i;
  return 0;
}

static void
show_choice (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;
  gboolean same = get (self, &value);
  guint chosen;

  if (self->spec->choices != NULL)
    renew_choices (self);
  chosen = self->ids != NULL ? find_id (self, g_value_get_string (&value)) : g_value_get_int (&value) + offset_of (self);
  adw_combo_row_set_selected (ADW_COMBO_ROW (self->control), same ? chosen : GTK_INVALID_LIST_POSITION);
  say_different (self, same);
}

/* Switches */

static void
switch_cb (Control *self)
{
  gboolean on = gtk_switch_get_active (GTK_SWITCH (self->control));
  g_auto (GValue) value = G_VALUE_INIT;

  if (is_idle (self))
    return;
  get (self, &value);
  lap_field_turn (self->field, &value, self->bit, on);
  apply (self, &value);
}

static void
show_switch (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;
  gboolean same = get (self, &value);

  gtk_switch_set_active (GTK_SWITCH (self->control), lap_field_is_on (self->field, &value, self->bit));
  say_different (self, same);
}

/* Any of them */

static void
show_control (Control *self)
{
  if (GTK_IS_EDITABLE (self->control) && !GTK_IS_SPIN_BUTTON (self->control))
    show_line (self);
  else if (GTK_IS_SPIN_BUTTON (self->control))
    show_number (self);
  else if (ADW_IS_COMBO_ROW (self->control))
    show_choice (self);
  else
    show_switch (self);
}

static void
show_all (LapFields *self)
{
  if (self->objects->len == 0)
    return;
  self->showing = TRUE;
  for (guint i = 0; i < self->controls->len; i++)
    show_control (self->controls->pdata[i]);
  self->showing = FALSE;
}

static Control *
control_new (LapFields *self, const LapFieldSpec *spec, GtkWidget *row, GtkWidget *widget, guint bit)
{
  Control *control = g_new0 (Control, 1);

  g_set_weak_pointer (&control->fields, self);
  control->spec = spec;
  control->field = lap_record_field (self->record, spec->property);
  control->row = row;
  control->control = widget;
  control->bit = bit;
  g_object_set_data_full (G_OBJECT (widget), "control", control, control_free);
  g_ptr_array_add (self->controls, control);
  return control;
}

static GtkWidget *
line_row (LapFields *self, const LapFieldSpec *spec)
{
  GtkWidget *row = adw_entry_row_new ();
  Control *control = control_new (self, spec, row, row, 0);
  const char *hint = spec->hint != NULL ? _(spec->hint) : lap_field_hint (control->field);

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), _(spec->title));
  gtk_widget_set_tooltip_text (row, hint != NULL ? hint : _(spec->title));
  if (spec->helper != NULL)
    adw_entry_row_add_suffix (ADW_ENTRY_ROW (row), spec->helper (ADW_ENTRY_ROW (row)));
  lap_field_when_typed (row, G_CALLBACK (line_cb), control);
  return row;
}

static GtkWidget *
choice_row (LapFields *self, const LapFieldSpec *spec, const LapField *field)
{
  GtkWidget *row = adw_combo_row_new ();
  Control *control = control_new (self, spec, row, row, 0);

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), _(spec->title));
  if (spec->choices == NULL) {
    g_autoptr (GtkStringList) labels = lap_field_labels (field->words, offset_of (control) > 0);

    adw_combo_row_set_model (ADW_COMBO_ROW (row), G_LIST_MODEL (labels));
  }
  lap_field_choice_tip (row);
  g_signal_connect_swapped (row, "notify::selected", G_CALLBACK (choice_cb), control);
  return row;
}

static GtkWidget *
switch_row (LapFields *self, const LapFieldSpec *spec, const char *title, const char *hint, guint bit)
{
  GtkWidget *toggle = gtk_switch_new (), *row = lap_field_row (title, hint, toggle);

  g_signal_connect_swapped (toggle, "notify::active", G_CALLBACK (switch_cb), control_new (self, spec, row, toggle, bit));
  return row;
}

static GtkWidget *
set_row (LapFields *self, const LapFieldSpec *spec, const LapWords *words)
{
  GtkWidget *row = adw_expander_row_new ();

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), _(spec->title));
  if (spec->hint != NULL)
    adw_expander_row_set_subtitle (ADW_EXPANDER_ROW (row), _(spec->hint));
  for (guint i = 0; i < words->n; i++) {
    guint word = words == &lap_days ? lap_day_nth (lap_customs ().first_day, i) : i;

    adw_expander_row_add_row (ADW_EXPANDER_ROW (row), switch_row (self, spec, lap_words_label (words, word), NULL, word));
  }
  return row;
}

static GtkWidget *
number_row (LapFields *self, const LapFieldSpec *spec, const LapField *field)
{
  GtkWidget *spin = gtk_spin_button_new_with_range (field->low / unit_of (spec), field->high / unit_of (spec),
                                                    MAX (spec->step, 1));
  GtkWidget *row = lap_field_row (_(spec->title), hint_of (spec), spin);

  gtk_spin_button_set_numeric (GTK_SPIN_BUTTON (spin), TRUE);
  gtk_spin_button_set_digits (GTK_SPIN_BUTTON (spin), field->kind == &lap_kind_number);
  if (spec->in_feet != NULL)
    lap_number_take_area (GTK_SPIN_BUTTON (spin));
  gtk_editable_set_width_chars (GTK_EDITABLE (spin), 4);
  g_signal_connect_swapped (spin, "value-changed", G_CALLBACK (number_cb), control_new (self, spec, row, spin, 0));
  return row;
}

GtkWidget *
lap_fields_row (LapFields *self, const LapFieldSpec *spec)
{
  const LapField *field = lap_record_field (self->record, spec->property);

  if (spec->choices != NULL || field->kind == &lap_kind_word)
    return choice_row (self, spec, field);
  if (lap_field_is_typed (field))
    return line_row (self, spec);
  if (lap_field_switches (field) != NULL)
    return set_row (self, spec, lap_field_switches (field));
  if (field->kind == &lap_kind_flag)
    return switch_row (self, spec, _(spec->title), spec->hint != NULL ? _(spec->hint) : NULL, 0);
  return number_row (self, spec, field);
}

static void
lap_fields_finalize (GObject *object)
{
  LapFields *self = LAP_FIELDS (object);

  g_ptr_array_unref (self->controls);
  g_ptr_array_unref (self->objects);
  g_object_unref (self->document);
  G_OBJECT_CLASS (lap_fields_parent_class)->finalize (object);
}

static void
lap_fields_class_init (LapFieldsClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_fields_finalize;
}

static void
lap_fields_init (LapFields *self)
{
  self->objects = g_ptr_array_new_with_free_func (g_object_unref);
  self->controls = g_ptr_array_new ();
}

LapFields *
lap_fields_new (LapDocument *document, GType type)
{
  LapFields *self = g_object_new (LAP_TYPE_FIELDS, NULL);
  g_autoptr (GTypeClass) klass = g_type_class_ref (type);

  self->document = g_object_ref (document);
  self->record = ((LapObjectClass *) klass)->record;
  g_signal_connect_object (document, "changed", G_CALLBACK (show_all), self, G_CONNECT_SWAPPED);
  return self;
}

void
lap_fields_show (LapFields *self, GPtrArray *objects)
{
  g_ptr_array_set_size (self->objects, 0);
  for (guint i = 0; objects != NULL && i < objects->len; i++)
    g_ptr_array_add (self->objects, g_object_ref (objects->pdata[i]));
  show_all (self);
}

void
lap_fields_commit (LapFields *self)
{
  for (guint i = 0; i < self->controls->len; i++) {
    Control *control = self->controls->pdata[i];

    if (GTK_IS_EDITABLE (control->control) && !GTK_IS_SPIN_BUTTON (control->control))
      line_cb (control);
  }
}
