/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The title is a button that opens the lane; the names of the rows are drawn where the lane has its rows.
 */
#include "ui/score/muscles.h"

#include "place/muscles.h"
#include "ui/palette.h"
#include "ui/score/paint.h"
#include "ui/settings.h"

#include <glib/gi18n-lib.h>

#define LAP_TYPE_MUSCLES_LABEL (lap_muscles_label_get_type ())
G_DECLARE_FINAL_TYPE (LapMusclesLabel, lap_muscles_label, LAP, MUSCLES_LABEL, GtkWidget)

struct _LapMusclesLabel {
  GtkWidget       parent_instance;
  LapMusclesLane *lane;
  GtkWidget      *title, *arrow;
};

G_DEFINE_FINAL_TYPE (LapMusclesLabel, lap_muscles_label, GTK_TYPE_WIDGET)

static PangoLayout *
name_layout (LapMusclesLabel *self, guint row)
{
  return lap_lane_layout (LAP_LANE (self->lane), lap_load_row_label (row), -1);
}

static int
names_width (LapMusclesLabel *self)
{
  int widest = 0;

  for (guint row = 0; row < LAP_N_ROWS && lap_muscles_lane_is_open (self->lane); row++) {
    g_autoptr (PangoLayout) layout = name_layout (self, row);
    int width;

    pango_layout_get_pixel_size (layout, &width, NULL);
    widest = MAX (widest, width);
  }
  return widest;
}

static void
lap_muscles_label_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                           int *least_baseline, int *natural_baseline)
{
  LapMusclesLabel *self = LAP_MUSCLES_LABEL (widget);

  gtk_widget_measure (self->title, orientation, -1, least, natural, NULL, NULL);
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    *natural = MAX (*natural, names_width (self));
  else
    *natural = *least;
}

static void
lap_muscles_label_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapMusclesLabel *self = LAP_MUSCLES_LABEL (widget);
  int wide, high;

  gtk_widget_measure (self->title, GTK_ORIENTATION_HORIZONTAL, -1, &wide, NULL, NULL, NULL);
  gtk_widget_measure (self->title, GTK_ORIENTATION_VERTICAL, -1, &high, NULL, NULL, NULL);
  gtk_widget_size_allocate (self->title, &(GtkAllocation) {
    gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL ? MAX (0, width - wide) : 0, 0, MIN (wide, width), high }, -1);
}

static void
lap_muscles_label_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapMusclesLabel *self = LAP_MUSCLES_LABEL (widget);
  int line = lap_text_line (GTK_WIDGET (self->lane)), head = lap_muscles_lane_head (self->lane), room;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);

  room = gtk_widget_get_width (widget);
  for (guint row = 0; row < LAP_N_ROWS && lap_muscles_lane_is_open (self->lane); row++) {
    g_autoptr (PangoLayout) layout = name_layout (self, row);
    int top, height;

    lap_load_rows_place (line, TRUE, row, &top, &height);
    pango_layout_set_width (layout, room * PANGO_SCALE);
    pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
    lap_paint_text (snapshot, layout, &ink, 0, head + top);
  }
  GTK_WIDGET_CLASS (lap_muscles_label_parent_class)->snapshot (widget, snapshot);
}

static void
lap_muscles_label_dispose (GObject *object)
{
  LapMusclesLabel *self = LAP_MUSCLES_LABEL (object);

  g_clear_pointer (&self->title, gtk_widget_unparent);
  g_clear_object (&self->lane);
  G_OBJECT_CLASS (lap_muscles_label_parent_class)->dispose (object);
}

static void
lap_muscles_label_class_init (LapMusclesLabelClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_muscles_label_dispose;
  widget_class->measure = lap_muscles_label_measure;
  widget_class->size_allocate = lap_muscles_label_size_allocate;
  widget_class->snapshot = lap_muscles_label_snapshot;
}

static void
toggled_cb (LapMusclesLabel *self)
{
  gboolean open = gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (self->title));

  gtk_image_set_from_icon_name (GTK_IMAGE (self->arrow), open ? "pan-down-symbolic" : "pan-end-symbolic");
  gtk_widget_set_tooltip_text (self->title, open ? _("Show only where neighbours work the same muscles")
                                                 : _("Show a row for each region"));
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->title), GTK_ACCESSIBLE_STATE_EXPANDED, open, -1);
  lap_muscles_lane_set_open (self->lane, open);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

static void
lap_muscles_label_init (LapMusclesLabel *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 2), *label = gtk_label_new (_("Muscles"));

  self->title = gtk_toggle_button_new ();
  self->arrow = gtk_image_new_from_icon_name ("pan-end-symbolic");
  gtk_widget_add_css_class (label, "lane-title");
  gtk_widget_add_css_class (self->title, "flat");
  gtk_widget_add_css_class (self->title, "lane-button");
  gtk_box_append (GTK_BOX (box), label);
  gtk_box_append (GTK_BOX (box), self->arrow);
  gtk_button_set_child (GTK_BUTTON (self->title), box);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->title), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Muscles"), -1);
  gtk_widget_set_parent (self->title, GTK_WIDGET (self));
}

GtkWidget *
lap_muscles_label_new (LapLane *lane)
{
  LapMusclesLabel *self = g_object_new (LAP_TYPE_MUSCLES_LABEL, NULL);

  self->lane = g_object_ref (LAP_MUSCLES_LANE (lane));
  g_signal_connect_swapped (self->title, "notify::active", G_CALLBACK (toggled_cb), self);
  toggled_cb (self);
  lap_settings_bind ("muscles-open", self->title, "active");
  return GTK_WIDGET (self);
}
