/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * GtkSpinButton can't be derived from, so what is done to each stands in its class: when one comes into a window.
 */
#include "ui/number.h"

#include "base/customs.h"

#include <glib/gi18n-lib.h>

static void (*root_before) (GtkWidget *widget);

static void
root (GtkWidget *widget)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (widget);

  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GtkEventController) controller = g_list_model_get_item (controllers, i);

    if (GTK_IS_EVENT_CONTROLLER_SCROLL (controller))
      gtk_event_controller_set_propagation_phase (controller, GTK_PHASE_NONE);
  }
  root_before (widget);
}

void
lap_numbers_let_scroll (void)
{
  GtkWidgetClass *klass = g_type_class_ref (GTK_TYPE_SPIN_BUTTON);

  if (klass->root == root)
    return;
  root_before = klass->root;
  klass->root = root;
}

/* Whether nobody typed anything: a number may have more decimals than are shown, and keeps them. */
static gboolean
is_as_shown (GtkSpinButton *spin, const char *text)
{
  g_autofree char *shown = g_strdup_printf ("%.*f", gtk_spin_button_get_digits (spin), gtk_spin_button_get_value (spin));

  return g_str_equal (text, shown);
}

static int
input (GtkSpinButton *spin, double *value, gboolean (*parse) (const char *, double *), double unit)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (spin));
  double typed;

  *value = gtk_spin_button_get_value (spin);
  if (is_as_shown (spin, text))
    return TRUE;
  if (!parse (text, &typed)) {
    gtk_widget_error_bell (GTK_WIDGET (spin));
    return GTK_INPUT_ERROR;
  }
  *value = typed / unit;
  return TRUE;
}

static int
distance_cb (GtkSpinButton *spin, double *value)
{
  return input (spin, value, lap_distance_parse, lap_distance_unit ());
}

static int
area_cb (GtkSpinButton *spin, double *value)
{
  return input (spin, value, lap_area_parse, lap_distance_unit () * lap_distance_unit ());
}

void
lap_number_take_distance (GtkSpinButton *spin)
{
  gtk_spin_button_set_numeric (spin, FALSE);
  gtk_widget_set_tooltip_text (GTK_WIDGET (spin), _("A distance, also as 1.8 m or 6 ft"));
  g_signal_connect (spin, "input", G_CALLBACK (distance_cb), NULL);
}

void
lap_number_take_area (GtkSpinButton *spin)
{
  gtk_spin_button_set_numeric (spin, FALSE);
  gtk_widget_set_tooltip_text (GTK_WIDGET (spin), _("An area, also as 40 m² or 400 sq ft"));
  g_signal_connect (spin, "input", G_CALLBACK (area_cb), NULL);
}
