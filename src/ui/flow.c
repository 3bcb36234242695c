/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/flow.h"

struct _LapFlow {
  GtkLayoutManager parent_instance;
};

G_DEFINE_FINAL_TYPE (LapFlow, lap_flow, GTK_TYPE_LAYOUT_MANAGER)

#define GAP 6

GtkWidget *
lap_flow_next (GtkWidget *child)
{
  while (child != NULL && !gtk_widget_should_layout (child))
    child = gtk_widget_get_next_sibling (child);
  return child;
}

static void
child_size (GtkWidget *child, int most, int *width, int *height)
{
  int least, natural;

  gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, &least, &natural, NULL, NULL);
  *width = MAX (least, MIN (natural, most));
  gtk_widget_measure (child, GTK_ORIENTATION_VERTICAL, *width, NULL, height, NULL, NULL);
}

/* The child that begins the next line after the one that @first begins, or NULL; *@height is the line's. */
static GtkWidget *
line_after (GtkWidget *first, int width, int *height)
{
  GtkWidget *child = first;
  int x = 0;

  *height = 0;
  while (child != NULL) {
    int w, h;

    child_size (child, width, &w, &h);
    if (x > 0 && x + w > width)
      break;
    x += w + GAP;
    *height = MAX (*height, h);
    child = lap_flow_next (gtk_widget_get_next_sibling (child));
  }
  return child;
}

/* px of @width that the children from @first to @end leave. */
static int
rest_of_line (GtkWidget *first, GtkWidget *end, int width)
{
  int rest = width + GAP;

  for (GtkWidget *child = first; child != end; child = lap_flow_next (gtk_widget_get_next_sibling (child))) {
    int w, h;

    child_size (child, width, &w, &h);
    rest -= w + GAP;
  }
  return MAX (rest, 0);
}

/* All of a line are as high as it is, so that what is lower stands in its middle. */
static void
allocate_line (GtkWidget *first, GtkWidget *end, int width, int y, int height, gboolean mirrored)
{
  int x = 0, rest = rest_of_line (first, end, width);

  for (GtkWidget *child = first; child != end; child = lap_flow_next (gtk_widget_get_next_sibling (child))) {
    int w, h;

    child_size (child, width, &w, &h);
    if (gtk_widget_get_hexpand (child)) {
      w += rest;
      rest = 0;
    }
    gtk_widget_size_allocate (child, &(GtkAllocation) { mirrored ? width - x - w : x, y, w, height }, -1);
    x += w + GAP;
  }
}

/* Lays the children out in @width px, allocates them where asked to, and returns the height. */
static int
flow (GtkWidget *widget, int width, gboolean allocate)
{
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  GtkWidget *first = lap_flow_next (gtk_widget_get_first_child (widget));
  int y = 0;

  while (first != NULL) {
    int height;
    GtkWidget *end = line_after (first, width, &height);

    if (allocate)
      allocate_line (first, end, width, y, height, mirrored);
    y += height + (end != NULL ? GAP : 0);
    first = end;
  }
  return y;
}

static void
lap_flow_measure (GtkLayoutManager *manager, GtkWidget *widget, GtkOrientation orientation, int for_size, int *least,
                  int *natural, int *least_baseline, int *natural_baseline)
{
  *least = *natural = 0;
  if (orientation == GTK_ORIENTATION_VERTICAL) {
    *least = *natural = flow (widget, for_size < 0 ? G_MAXINT / 2 : for_size, FALSE);
    return;
  }
  for (GtkWidget *child = lap_flow_next (gtk_widget_get_first_child (widget)); child != NULL;
       child = lap_flow_next (gtk_widget_get_next_sibling (child))) {
    int child_least, child_natural;

    gtk_widget_measure (child, orientation, -1, &child_least, &child_natural, NULL, NULL);
    *least = MAX (*least, child_least);
    *natural += child_natural + (*natural > 0 ? GAP : 0);
  }
}

static void
lap_flow_allocate (GtkLayoutManager *manager, GtkWidget *widget, int width, int height, int baseline)
{
  flow (widget, width, TRUE);
}

static GtkSizeRequestMode
lap_flow_get_request_mode (GtkLayoutManager *manager, GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
lap_flow_class_init (LapFlowClass *klass)
{
  GtkLayoutManagerClass *manager_class = GTK_LAYOUT_MANAGER_CLASS (klass);

  manager_class->measure = lap_flow_measure;
  manager_class->allocate = lap_flow_allocate;
  manager_class->get_request_mode = lap_flow_get_request_mode;
}

static void
lap_flow_init (LapFlow *self)
{
}
