/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/around.h"

#include "ui/flow.h"

struct _LapAround {
  GtkLayoutManager parent_instance;
};

G_DEFINE_FINAL_TYPE (LapAround, lap_around, GTK_TYPE_LAYOUT_MANAGER)

#define GAP 10

static GtkWidget *
first_of (GtkWidget *widget)
{
  return lap_flow_next (gtk_widget_get_first_child (widget));
}

static GtkWidget *
after (GtkWidget *child)
{
  return lap_flow_next (gtk_widget_get_next_sibling (child));
}

static int
natural_width (GtkWidget *child)
{
  int natural;

  gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, NULL, &natural, NULL, NULL);
  return natural;
}

/* px that are left to the one that expands. */
static int
rest_of (GtkWidget *widget, int width)
{
  for (GtkWidget *child = first_of (widget); child != NULL; child = after (child)) {
    if (!gtk_widget_get_hexpand (child))
      width -= natural_width (child);
    if (after (child) != NULL)
      width -= GAP;
  }
  return width;
}

static void
measure_width (GtkWidget *widget, int *least, int *natural)
{
  for (GtkWidget *child = first_of (widget); child != NULL; child = after (child)) {
    int child_least, child_natural;

    gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, &child_least, &child_natural, NULL, NULL);
    *least += gtk_widget_get_hexpand (child) ? child_least : child_natural;
    *natural += child_natural;
    if (after (child) != NULL) {
      *least += GAP;
      *natural += GAP;
    }
  }
}

/* As high as the highest at @width; without one as high as it would like to be in one line. */
static int
height_at (GtkWidget *widget, int width)
{
  int height = 0, rest = width < 0 ? -1 : rest_of (widget, width);

  for (GtkWidget *child = first_of (widget); child != NULL; child = after (child)) {
    int wide = rest < 0 || gtk_widget_get_hexpand (child) ? rest : natural_width (child), least;

    gtk_widget_measure (child, GTK_ORIENTATION_VERTICAL, wide, &least, NULL, NULL, NULL);
    height = MAX (height, least);
  }
  return height;
}

static void
lap_around_measure (GtkLayoutManager *manager, GtkWidget *widget, GtkOrientation orientation, int for_size, int *least,
                    int *natural, int *least_baseline, int *natural_baseline)
{
  *least = *natural = 0;
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    measure_width (widget, least, natural);
  else
    *least = *natural = height_at (widget, for_size);
}

static void
lap_around_allocate (GtkLayoutManager *manager, GtkWidget *widget, int width, int height, int baseline)
{
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  int rest = rest_of (widget, width), x = 0;

  for (GtkWidget *child = first_of (widget); child != NULL; child = after (child)) {
    int wide = gtk_widget_get_hexpand (child) ? rest : natural_width (child);

    gtk_widget_size_allocate (child, &(GtkAllocation) { mirrored ? width - x - wide : x, 0, wide, height }, -1);
    x += wide + GAP;
  }
}

static GtkSizeRequestMode
lap_around_get_request_mode (GtkLayoutManager *manager, GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
lap_around_class_init (LapAroundClass *klass)
{
  GtkLayoutManagerClass *manager_class = GTK_LAYOUT_MANAGER_CLASS (klass);

  manager_class->measure = lap_around_measure;
  manager_class->allocate = lap_around_allocate;
  manager_class->get_request_mode = lap_around_get_request_mode;
}

static void
lap_around_init (LapAround *self)
{
}
