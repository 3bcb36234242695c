/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/output-row.h"

#include "ui/field-row.h"
#include "ui/settings.h"

struct _LapOutputRow {
  AdwComboRow parent_instance;
  LapOutputs *outputs;
  const char *key;
  char       *chosen;
  gulong      changed; /* handler of the setting */
  gboolean    showing; /* nobody chooses, the row is filled */
};

G_DEFINE_FINAL_TYPE (LapOutputRow, lap_output_row, ADW_TYPE_COMBO_ROW)

static guint chosen_signal;

static void
show (LapOutputRow *self)
{
  self->showing = TRUE;
  adw_combo_row_set_selected (ADW_COMBO_ROW (self), lap_outputs_find (self->outputs, lap_output_row_chosen (self)));
  self->showing = FALSE;
}

/* The row chooses something else when an output goes; nobody did. */
static void
before_change (LapOutputRow *self)
{
  self->showing = TRUE;
}

static void
selected_cb (LapOutputRow *self)
{
  guint n = adw_combo_row_get_selected (ADW_COMBO_ROW (self));
  g_autoptr (GtkStringObject) name = NULL;

  if (self->showing || self->key == NULL || n == GTK_INVALID_LIST_POSITION)
    return;
  name = g_list_model_get_item (lap_outputs_names (self->outputs), n);
  g_free (self->chosen);
  self->chosen = g_strdup (n > 0 ? gtk_string_object_get_string (name) : "");
  lap_settings_keep (self->key, g_variant_new_string (self->chosen));
  g_signal_emit (self, chosen_signal, 0);
}

static void
read_chosen (LapOutputRow *self)
{
  g_autoptr (GVariant) name = lap_settings_value (self->key, g_variant_new_string (""));

  g_free (self->chosen);
  self->chosen = g_variant_dup_string (name, NULL);
  show (self);
}

void
lap_output_row_set (LapOutputRow *self, const char *key, const char *none)
{
  lap_outputs_set_none (self->outputs, none);
  if (g_strcmp0 (self->key, key) != 0) {
    g_autofree char *signal = g_strconcat ("changed::", key, NULL);

    if (self->changed != 0)
      g_signal_handler_disconnect (lap_settings (), self->changed);
    self->key = key;
    if (lap_settings () != NULL)
      self->changed = g_signal_connect_object (lap_settings (), signal, G_CALLBACK (read_chosen), self,
                                               G_CONNECT_SWAPPED);
    read_chosen (self);
  }
  show (self);
}

const char *
lap_output_row_chosen (LapOutputRow *self)
{
  return self->chosen != NULL ? self->chosen : "";
}

GstElement *
lap_output_row_sink (LapOutputRow *self)
{
  return lap_outputs_sink (self->outputs, lap_outputs_find (self->outputs, lap_output_row_chosen (self)));
}

static void
lap_output_row_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (lap_output_row_parent_class)->map (widget);
  lap_outputs_listen (LAP_OUTPUT_ROW (widget)->outputs, TRUE);
}

static void
lap_output_row_unmap (GtkWidget *widget)
{
  lap_outputs_listen (LAP_OUTPUT_ROW (widget)->outputs, FALSE);
  GTK_WIDGET_CLASS (lap_output_row_parent_class)->unmap (widget);
}

static void
lap_output_row_finalize (GObject *object)
{
  LapOutputRow *self = LAP_OUTPUT_ROW (object);

  lap_outputs_free (self->outputs);
  g_free (self->chosen);
  G_OBJECT_CLASS (lap_output_row_parent_class)->finalize (object);
}

static void
lap_output_row_class_init (LapOutputRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = lap_output_row_finalize;
  widget_class->map = lap_output_row_map;
  widget_class->unmap = lap_output_row_unmap;
  chosen_signal = g_signal_new ("chosen", LAP_TYPE_OUTPUT_ROW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
lap_output_row_init (LapOutputRow *self)
{
  GListModel *names;

  self->outputs = lap_outputs_new ();
  names = lap_outputs_names (self->outputs);
  self->showing = TRUE;
  /* Before the row hears of it and after. */
  g_signal_connect_object (names, "items-changed", G_CALLBACK (before_change), self, G_CONNECT_SWAPPED);
  adw_combo_row_set_model (ADW_COMBO_ROW (self), names);
  g_signal_connect_object (names, "items-changed", G_CALLBACK (show), self, G_CONNECT_SWAPPED | G_CONNECT_AFTER);
  self->showing = FALSE;
  lap_field_choice_tip (GTK_WIDGET (self));
  g_signal_connect (self, "notify::selected", G_CALLBACK (selected_cb), NULL);
}
