/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/column.h"

#include "ui/letters.h"

#define NARROW 340 /* px: what a pane can do with when letters are large and the screen is small */

struct _LapColumn {
  GtkLayoutManager parent_instance;
  double           lines;
};

G_DEFINE_FINAL_TYPE (LapColumn, lap_column, GTK_TYPE_LAYOUT_MANAGER)

static void
lap_column_measure (GtkLayoutManager *manager, GtkWidget *widget, GtkOrientation orientation, int for_size, int *least,
                    int *natural, int *least_baseline, int *natural_baseline)
{
  GtkWidget *child = gtk_widget_get_first_child (widget);

  *least = *natural = 0;
  if (child != NULL)
    gtk_widget_measure (child, orientation, for_size, least, natural, NULL, NULL);
  if (orientation == GTK_ORIENTATION_HORIZONTAL) {
    *natural = MAX (*least, (int) (LAP_COLUMN (manager)->lines * lap_usual_line (widget)));
    *least = MAX (*least, MIN (*natural, NARROW));
  }
}

static void
lap_column_allocate (GtkLayoutManager *manager, GtkWidget *widget, int width, int height, int baseline)
{
  GtkWidget *child = gtk_widget_get_first_child (widget);

  if (child != NULL)
    gtk_widget_size_allocate (child, &(GtkAllocation) { 0, 0, width, height }, baseline);
}

static GtkSizeRequestMode
lap_column_get_request_mode (GtkLayoutManager *manager, GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
lap_column_class_init (LapColumnClass *klass)
{
  GtkLayoutManagerClass *manager_class = GTK_LAYOUT_MANAGER_CLASS (klass);

  manager_class->measure = lap_column_measure;
  manager_class->allocate = lap_column_allocate;
  manager_class->get_request_mode = lap_column_get_request_mode;
}

static void
lap_column_init (LapColumn *self)
{
}

GtkLayoutManager *
lap_column_new (double lines)
{
  LapColumn *self = g_object_new (LAP_TYPE_COLUMN, NULL);

  self->lines = lines;
  return GTK_LAYOUT_MANAGER (self);
}
