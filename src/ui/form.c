/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/form.h"

#include "base/customs.h"
#include "ui/field-row.h"
#include "ui/field-text.h"
#include "ui/number.h"
#include "ui/tell.h"

#include <glib/gi18n-lib.h>
#include <math.h>

struct _LapForm {
  LapFormTarget target;
  gpointer      data;
  GPtrArray    *controls;
  gboolean      showing; /* it fills its controls now, nobody edits */
};

/* A control on screen: what it edits, and which bit where it is one of a set. */
typedef struct {
  LapForm          *form;
  const LapFormRow *row;
  const LapField   *field;
  GtkWidget        *control;
  guint             bit;
} Control;

static void show_control (Control *self);

/* Nobody edits, or what was edited has gone: a line that is left says so, too. */
static gboolean
is_idle (Control *self)
{
  return self->form->showing || self->form->target.get (self->form->data) == NULL;
}

/* Says why what was asked for can't be, and shows again what holds. */
static void
refuse (Control *self, const char *why)
{
  LapForm *form = self->form;
  GtkWidget *window = gtk_widget_get_ancestor (self->control, ADW_TYPE_PREFERENCES_WINDOW);

  if (window != NULL)
    lap_tell_in (ADW_PREFERENCES_WINDOW (window), why);
  form->showing = TRUE;
  show_control (self);
  form->showing = FALSE;
}

static void
apply (Control *self, const GValue *value)
{
  LapForm *form = self->form;
  g_autoptr (GError) error = NULL;

  if (!form->target.set (form->data, self->field, _(self->row->title), value, &error))
    refuse (self, error->message);
}

static void
get (Control *self, GValue *value)
{
  lap_field_get (self->field, self->form->target.get (self->form->data), value);
}

/* The texts of a list are typed with what is between them. */
static char *
typed_as (GStrv texts, const char *between)
{
  g_autofree char *wide = g_strconcat (between, " ", NULL);

  return texts != NULL ? g_strjoinv (wide, texts) : g_strdup ("");
}

static GStrv
texts_of (const char *typed, const char *between)
{
  g_auto (GStrv) pieces = g_strsplit (typed, between, -1);
  g_autoptr (GStrvBuilder) texts = g_strv_builder_new ();

  for (guint i = 0; pieces[i] != NULL; i++)
    if (*g_strstrip (pieces[i]) != '\0')
      g_strv_builder_add (texts, pieces[i]);
  return g_strv_builder_end (texts);
}

static const char *
between_of (Control *self)
{
  return self->row->between != NULL ? self->row->between : ",";
}

/* @value in one line. Transfer full. */
static char *
line_of (Control *self, const GValue *value)
{
  if (self->field->kind == &lap_kind_texts)
    return typed_as (g_value_get_boxed (value), between_of (self));
  return lap_field_text (self->field, value);
}

static char *
line_now (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;

  get (self, &value);
  return line_of (self, &value);
}

static gboolean
read_line (Control *self, const char *text, GValue *value)
{
  if (self->field->kind != &lap_kind_texts)
    return lap_field_parse (self->field, text, value);
  g_value_init (value, G_TYPE_STRV);
  g_value_take_boxed (value, texts_of (text, between_of (self)));
  return TRUE;
}

static void
text_cb (Control *self)
{
  const char *typed = gtk_editable_get_text (GTK_EDITABLE (self->control));
  g_autofree char *before = is_idle (self) ? NULL : line_now (self);
  g_auto (GValue) value = G_VALUE_INIT;

  if (before == NULL || g_str_equal (typed, before))
    return;
  if (read_line (self, typed, &value))
    apply (self, &value);
  else
    refuse (self, lap_field_hint (self->field));
}

static double
unit_of (const LapFormRow *row)
{
  return row->unit == LAP_UNIT_DISTANCE ? lap_distance_unit () : row->unit;
}

static double
shown_number (Control *self)
{
  const LapFormTarget *target = &self->form->target;
  g_auto (GValue) value = G_VALUE_INIT;
  double number;

  get (self, &value);
  number = lap_field_number (&value);
  if (number < 0 && target->usual != NULL)
    number = target->usual (self->form->data, self->field);
  return number / unit_of (self->row);
}

/* A difference that isn't typed: metres that are shown as feet have more decimals than are shown. */
static double
unseen (const LapFormRow *row)
{
  return row->unit == LAP_UNIT_DISTANCE && lap_customs ().feet ? 0.501 / pow (10, row->digits) : 1e-6;
}

static void
number_cb (Control *self)
{
  double typed = gtk_spin_button_get_value (GTK_SPIN_BUTTON (self->control));
  g_auto (GValue) value = G_VALUE_INIT;

  /* An adjustment tells late of what was set while it told of another value. */
  if (is_idle (self) || fabs (typed - shown_number (self)) < unseen (self->row))
    return;
  get (self, &value);
  lap_field_set_number (&value, typed * unit_of (self->row));
  apply (self, &value);
}

static void
word_cb (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;

  if (is_idle (self))
    return;
  g_value_init (&value, G_TYPE_INT);
  g_value_set_int (&value, adw_combo_row_get_selected (ADW_COMBO_ROW (self->control)));
  apply (self, &value);
}

static void
flag_cb (Control *self)
{
  LapForm *form = self->form;
  gboolean on = gtk_switch_get_active (GTK_SWITCH (self->control));
  guint pieces = form->target.pieces != NULL ? form->target.pieces (form->data) : 1;
  g_auto (GValue) value = G_VALUE_INIT;

  if (is_idle (self))
    return;
  get (self, &value);
  lap_field_turn (self->field, &value, self->bit, on ? pieces : 0);
  apply (self, &value);
}

static void
show_control (Control *self)
{
  g_auto (GValue) value = G_VALUE_INIT;

  get (self, &value);
  if (GTK_IS_EDITABLE (self->control) && !GTK_IS_SPIN_BUTTON (self->control)) {
    g_autofree char *text = line_of (self, &value);

    if (!g_str_equal (gtk_editable_get_text (GTK_EDITABLE (self->control)), text))
      gtk_editable_set_text (GTK_EDITABLE (self->control), text);
  } else if (ADW_IS_COMBO_ROW (self->control))
    adw_combo_row_set_selected (ADW_COMBO_ROW (self->control), g_value_get_int (&value));
  else if (GTK_IS_SPIN_BUTTON (self->control))
    gtk_spin_button_set_value (GTK_SPIN_BUTTON (self->control), shown_number (self));
  else
    gtk_switch_set_active (GTK_SWITCH (self->control), lap_field_is_on (self->field, &value, self->bit));
}

void
lap_form_show (LapForm *self)
{
  self->showing = TRUE;
  for (guint i = 0; i < self->controls->len; i++)
    show_control (self->controls->pdata[i]);
  self->showing = FALSE;
}

static Control *
control_new (LapForm *form, const LapFormRow *row, GtkWidget *widget, guint bit)
{
  Control *control = g_new0 (Control, 1);

  control->form = form;
  control->row = row;
  control->field = lap_record_field (form->target.record, row->property);
  control->control = widget;
  control->bit = bit;
  g_ptr_array_add (form->controls, control);
  return control;
}

static GtkWidget *
switch_row (LapForm *form, const LapFormRow *row, const char *title, const char *hint, guint bit)
{
  GtkWidget *toggle = gtk_switch_new ();

  g_signal_connect_swapped (toggle, "notify::active", G_CALLBACK (flag_cb),
                            control_new (form, row, toggle, bit));
  return lap_field_row (title, hint, toggle);
}

static GtkWidget *
set_row (LapForm *form, const LapFormRow *row, const LapWords *words)
{
  GtkWidget *expander = adw_expander_row_new ();

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (expander), _(row->title));
  if (row->hint != NULL)
    adw_expander_row_set_subtitle (ADW_EXPANDER_ROW (expander), _(row->hint));
  for (guint i = 0; i < words->n; i++)
    adw_expander_row_add_row (ADW_EXPANDER_ROW (expander),
                              switch_row (form, row, lap_words_label (words, i), NULL, i));
  return expander;
}

static GtkWidget *
word_row (LapForm *form, const LapFormRow *row, const LapWords *words)
{
  g_autoptr (GtkStringList) labels = lap_field_labels (words, FALSE);
  GtkWidget *combo = adw_combo_row_new ();

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (combo), _(row->title));
  adw_combo_row_set_model (ADW_COMBO_ROW (combo), G_LIST_MODEL (labels));
  lap_field_choice_tip (combo);
  g_signal_connect_swapped (combo, "notify::selected", G_CALLBACK (word_cb),
                            control_new (form, row, combo, 0));
  return combo;
}

/* The hint below a number, with what it is counted in where that isn't the same everywhere. Transfer full. */
static char *
number_hint (const LapFormRow *row)
{
  const char *unit = lap_customs ().feet ? _("Feet") : _("Metres");

  if (row->unit != LAP_UNIT_DISTANCE)
    return row->hint != NULL ? g_strdup (_(row->hint)) : NULL;
  /* Translators: "Metres, for all people together". */
  return row->hint != NULL ? g_strdup_printf (_("%1$s, %2$s"), unit, _(row->hint)) : g_strdup (unit);
}

static GtkWidget *
number_row (LapForm *form, const LapFormRow *row, const LapField *field)
{
  GtkWidget *spin = gtk_spin_button_new_with_range (field->low / unit_of (row), field->high / unit_of (row), row->step);
  g_autofree char *hint = number_hint (row);

  gtk_spin_button_set_digits (GTK_SPIN_BUTTON (spin), row->digits);
  gtk_spin_button_set_numeric (GTK_SPIN_BUTTON (spin), TRUE);
  if (row->unit == LAP_UNIT_DISTANCE)
    lap_number_take_distance (GTK_SPIN_BUTTON (spin));
  g_signal_connect_swapped (spin, "value-changed", G_CALLBACK (number_cb),
                            control_new (form, row, spin, 0));
  return lap_field_row (_(row->title), hint, spin);
}

static GtkWidget *
text_row (LapForm *form, const LapFormRow *row)
{
  GtkWidget *entry = adw_entry_row_new ();
  Control *control = control_new (form, row, entry, 0);

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (entry), _(row->title));
  gtk_widget_set_tooltip_text (entry, _(row->title));
  adw_entry_row_set_show_apply_button (ADW_ENTRY_ROW (entry), TRUE);
  if (row->hint != NULL)
    gtk_widget_set_tooltip_text (entry, _(row->hint));
  if (row->helper != NULL)
    adw_entry_row_add_suffix (ADW_ENTRY_ROW (entry), row->helper (ADW_ENTRY_ROW (entry)));
  g_signal_connect_swapped (entry, "apply", G_CALLBACK (text_cb), control);
  lap_field_when_typed (entry, G_CALLBACK (text_cb), control);
  return entry;
}

static GtkWidget *
row_new (LapForm *form, const LapFormRow *row)
{
  const LapField *field = lap_record_field (form->target.record, row->property);

  if (lap_field_is_typed (field))
    return text_row (form, row);
  if (field->kind == &lap_kind_word)
    return word_row (form, row, field->words);
  if (lap_field_switches (field) != NULL)
    return set_row (form, row, lap_field_switches (field));
  if (field->kind == &lap_kind_flag)
    return switch_row (form, row, _(row->title), row->hint != NULL ? _(row->hint) : NULL, 0);
  return number_row (form, row, field);
}

LapForm *
lap_form_new (const LapFormTarget *target, gpointer data)
{
  LapForm *self = g_new0 (LapForm, 1);

  self->target = *target;
  self->data = data;
  self->controls = g_ptr_array_new_with_free_func (g_free);
  return self;
}

void
lap_form_free (LapForm *self)
{
  g_ptr_array_unref (self->controls);
  g_free (self);
}

void
lap_form_fill (LapForm *self, AdwPreferencesPage *page, const LapFormRow *rows, guint n)
{
  GtkWidget *group = NULL;

  /* A control that is made tells of its first value. */
  self->showing = TRUE;
  for (guint i = 0; i < n; i++) {
    if (rows[i].property == NULL) {
      group = adw_preferences_group_new ();
      adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _(rows[i].title));
      if (rows[i].hint != NULL)
        adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (group), _(rows[i].hint));
      adw_preferences_page_add (page, ADW_PREFERENCES_GROUP (group));
    } else
      adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), row_new (self, &rows[i]));
  }
  self->showing = FALSE;
}
