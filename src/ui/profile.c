/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/profile.h"

#include "ui/glance.h"
#include "ui/palette.h"
#include "ui/score/paint.h"

#include <adwaita.h>
#include <string.h>

#define WIDTH  108
#define HEIGHT 30
#define FOOT   2 /* px that even nothing is high */
#define GAP    1

struct _LapProfile {
  GtkWidget parent_instance;
  char     *shape;
};

G_DEFINE_FINAL_TYPE (LapProfile, lap_profile, GTK_TYPE_WIDGET)

static void
lap_profile_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapProfile *self = LAP_PROFILE (widget);
  const GdkRGBA work = lap_colour (LAP_COLOUR_WORK), other = lap_colour (LAP_COLOUR_LINE2);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget), n = strlen (self->shape);

  if (gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL) {
    gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (width, 0));
    gtk_snapshot_scale (snapshot, -1, 1);
  }
  for (int i = 0; i < n; i++) {
    int x = width * i / n, end = width * (i + 1) / n - GAP, level = g_ascii_tolower (self->shape[i]) - 'a';
    int high = FOOT + (height - FOOT) * CLAMP (level, 0, LAP_SHAPE_HEIGHTS - 1) / (LAP_SHAPE_HEIGHTS - 1);

    lap_paint_rect (snapshot, g_ascii_isupper (self->shape[i]) ? &work : &other, x, height - high, end - x, high);
  }
}

static void
lap_profile_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                     int *least_baseline, int *natural_baseline)
{
  *least = *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? WIDTH : HEIGHT;
}

static void
lap_profile_finalize (GObject *object)
{
  g_free (LAP_PROFILE (object)->shape);
  G_OBJECT_CLASS (lap_profile_parent_class)->finalize (object);
}

static void
lap_profile_class_init (LapProfileClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_profile_finalize;
  GTK_WIDGET_CLASS (klass)->snapshot = lap_profile_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = lap_profile_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_PRESENTATION);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "profile");
}

static void
lap_profile_init (LapProfile *self)
{
  self->shape = g_strdup ("");
  g_signal_connect_object (adw_style_manager_get_default (), "notify::dark", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
}

GtkWidget *
lap_profile_new (void)
{
  return g_object_new (LAP_TYPE_PROFILE, NULL);
}

void
lap_profile_set_shape (LapProfile *self, const char *shape)
{
  g_free (self->shape);
  self->shape = g_strdup (shape != NULL ? shape : "");
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
