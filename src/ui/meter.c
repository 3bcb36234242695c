/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/meter.h"

#include "ui/palette.h"
#include "ui/score/paint.h"

#include <adwaita.h>

struct _LapMeter {
  GtkWidget parent_instance;
  int       length, target;
};

G_DEFINE_FINAL_TYPE (LapMeter, lap_meter, GTK_TYPE_WIDGET)

#define WIDTH  84
#define HEIGHT 12
#define BAR    6

static void
lap_meter_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapMeter *self = LAP_METER (widget);
  int width = gtk_widget_get_width (widget), y = (gtk_widget_get_height (widget) - BAR) / 2;
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  GdkRGBA ink2 = lap_colour (LAP_COLOUR_INK2), line = lap_colour (LAP_COLOUR_LINE), ink = lap_colour (LAP_COLOUR_INK);
  GdkRGBA over = lap_colour (LAP_COLOUR_NOTE);
  int most = MAX (self->length, self->target), mark, end;
  cairo_t *cr;

  if (self->target == 0 || most == 0)
    return;
  if (mirrored) {
    gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (width, 0));
    gtk_snapshot_scale (snapshot, -1, 1);
  }
  mark = (width - 2) * self->target / most;
  end = width * self->length / most;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, y - 2, width, BAR + 4));
  lap_paint_box (cr, &line, NULL, 0, BAR / 2, 0, y, width, BAR);
  lap_paint_box (cr, &ink2, NULL, 0, BAR / 2, 0, y, MIN (end, mark), BAR);
  if (self->length > self->target) {
    lap_paint_box (cr, &over, &ink, 1, 1, mark, y - 2, end - mark, BAR + 4);
    lap_paint_hatch (cr, LAP_HATCH_REST, &ink, mark + 1, y - 1, end - mark - 2, BAR + 2);
  }
  cairo_destroy (cr);
  lap_paint_rect (snapshot, &ink, mark, y - 3, 2, BAR + 6);
}

static void
lap_meter_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                   int *least_baseline, int *natural_baseline)
{
  *least = *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? WIDTH : HEIGHT;
}

static void
lap_meter_class_init (LapMeterClass *klass)
{
  GTK_WIDGET_CLASS (klass)->snapshot = lap_meter_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = lap_meter_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_IMG);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "meter");
}

static void
lap_meter_init (LapMeter *self)
{
  AdwStyleManager *manager = adw_style_manager_get_default ();

  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
}

void
lap_meter_set (LapMeter *self, int length, int target, const char *words)
{
  self->length = length;
  self->target = target;
  gtk_widget_set_visible (GTK_WIDGET (self), target > 0);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self), words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
