/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * GtkSpinButton can't be derived from, so what is done to each stands in its class: when one comes into a window.
 */
#include "ui/number.h"

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
