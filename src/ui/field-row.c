/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/field-row.h"

#include "model/kit.h"

#include <glib/gi18n-lib.h>
#include <math.h>

GtkWidget *
lap_field_row (const char *title, const char *hint, GtkWidget *control)
{
  GtkWidget *row = adw_action_row_new ();

  gtk_widget_set_valign (control, GTK_ALIGN_CENTER);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), title);
  adw_action_row_set_subtitle (ADW_ACTION_ROW (row), hint != NULL ? hint : "");
  adw_action_row_add_suffix (ADW_ACTION_ROW (row), control);
  adw_action_row_set_activatable_widget (ADW_ACTION_ROW (row), control);
  gtk_accessible_update_property (GTK_ACCESSIBLE (control), GTK_ACCESSIBLE_PROPERTY_LABEL, title, -1);
  return row;
}

void
lap_field_when_typed (GtkWidget *row, GCallback typed, gpointer data)
{
  GtkEventController *focus = gtk_event_controller_focus_new ();

  g_signal_connect_swapped (row, "entry-activated", typed, data);
  g_signal_connect_swapped (focus, "leave", typed, data);
  gtk_widget_add_controller (row, focus);
}

GtkStringList *
lap_field_labels (const LapWords *words, gboolean none)
{
  GtkStringList *labels = gtk_string_list_new (NULL);

  if (none)
    gtk_string_list_append (labels, _("None"));
  for (guint i = 0; i < words->n; i++)
    gtk_string_list_append (labels, lap_words_label (words, i));
  return labels;
}

static void
tip_cb (AdwComboRow *row)
{
  GObject *chosen = adw_combo_row_get_selected_item (row);

  /* One that can't be used says why. */
  if (GTK_IS_STRING_OBJECT (chosen) && gtk_widget_get_sensitive (GTK_WIDGET (row)))
    gtk_widget_set_tooltip_text (GTK_WIDGET (row), gtk_string_object_get_string (GTK_STRING_OBJECT (chosen)));
}

void
lap_field_choice_tip (GtkWidget *row)
{
  /* The first item of a model is chosen without being told. */
  g_signal_connect (row, "notify::model", G_CALLBACK (tip_cb), NULL);
  g_signal_connect (row, "notify::selected-item", G_CALLBACK (tip_cb), NULL);
  tip_cb (ADW_COMBO_ROW (row));
}

const LapWords *
lap_field_switches (const LapField *field)
{
  return field->kind == &lap_kind_kit ? &lap_kit_words : field->kind == &lap_kind_words ? field->words : NULL;
}

guint32
lap_field_mask (const LapField *field, const GValue *value)
{
  if (field->kind == &lap_kind_kit)
    return lap_kit_mask (g_value_get_boxed (value));
  return lap_words_mask (field->words, g_value_get_boxed (value));
}

gboolean
lap_field_is_on (const LapField *field, const GValue *value, guint bit)
{
  return field->kind == &lap_kind_flag ? g_value_get_boolean (value) : (lap_field_mask (field, value) & LAP_BIT (bit)) != 0;
}

static void
turn_kit (GValue *value, guint bit, guint pieces)
{
  LapKit *kit = g_value_get_boxed (value) != NULL ? lap_kit_copy (g_value_get_boxed (value)) : lap_kit_new ();

  lap_kit_set (kit, bit, pieces);
  g_value_take_boxed (value, kit);
}

static void
turn_word (const LapField *field, GValue *value, guint bit, gboolean on)
{
  guint32 mask = lap_field_mask (field, value);
  g_autoptr (GStrvBuilder) words = g_strv_builder_new ();

  mask = on ? mask | LAP_BIT (bit) : mask & ~LAP_BIT (bit);
  for (guint i = 0; i < field->words->n; i++)
    if (mask & LAP_BIT (i))
      g_strv_builder_add (words, lap_words_id (field->words, i));
  g_value_take_boxed (value, mask != 0 ? g_strv_builder_end (words) : NULL);
}

void
lap_field_turn (const LapField *field, GValue *value, guint bit, guint pieces)
{
  if (field->kind == &lap_kind_kit)
    turn_kit (value, bit, pieces);
  else if (field->kind == &lap_kind_words)
    turn_word (field, value, bit, pieces > 0);
  else
    g_value_set_boolean (value, pieces > 0);
}

double
lap_field_number (const GValue *value)
{
  return G_VALUE_HOLDS_INT (value) ? g_value_get_int (value) : g_value_get_double (value);
}

void
lap_field_set_number (GValue *value, double number)
{
  if (G_VALUE_HOLDS_INT (value))
    g_value_set_int (value, lround (number));
  else
    g_value_set_double (value, number);
}
