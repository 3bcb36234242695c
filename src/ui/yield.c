/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/yield.h"

struct _LapYield {
  GtkLayoutManager parent_instance;
};

G_DEFINE_FINAL_TYPE (LapYield, lap_yield, GTK_TYPE_LAYOUT_MANAGER)

static void
lap_yield_measure (GtkLayoutManager *manager, GtkWidget *widget, GtkOrientation orientation, int for_size, int *least,
                   int *natural, int *least_baseline, int *natural_baseline)
{
  GtkWidget *child = gtk_widget_get_first_child (widget);

  *least = *natural = 0;
  if (child != NULL)
    gtk_widget_measure (child, orientation, -1, least, natural, NULL, NULL);
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    *least = 0;
}

static void
lap_yield_allocate (GtkLayoutManager *manager, GtkWidget *widget, int width, int height, int baseline)
{
  GtkWidget *child = gtk_widget_get_first_child (widget);
  int least;

  if (child == NULL)
    return;
  gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
  gtk_widget_set_child_visible (child, least <= width);
  gtk_widget_size_allocate (child, &(GtkAllocation) { 0, 0, MAX (least, width), height }, baseline);
}

static GtkSizeRequestMode
lap_yield_get_request_mode (GtkLayoutManager *manager, GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_CONSTANT_SIZE;
}

static void
lap_yield_class_init (LapYieldClass *klass)
{
  GtkLayoutManagerClass *manager_class = GTK_LAYOUT_MANAGER_CLASS (klass);

  manager_class->measure = lap_yield_measure;
  manager_class->allocate = lap_yield_allocate;
  manager_class->get_request_mode = lap_yield_get_request_mode;
}

static void
lap_yield_init (LapYield *self)
{
}

GtkLayoutManager *
lap_yield_new (void)
{
  return g_object_new (LAP_TYPE_YIELD, NULL);
}
