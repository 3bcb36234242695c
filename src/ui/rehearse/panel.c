/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/panel.h"

#include "ui/palette.h"
#include "ui/score/paint.h"

#include <adwaita.h>

struct _LapPanel {
  GtkWidget           parent_instance;
  const LapPanelKind *kind;
  const LapScene     *scene;
  gint64              stamp;
};

G_DEFINE_FINAL_TYPE (LapPanel, lap_panel, GTK_TYPE_WIDGET)

#define SHRINK 0.93

static void
lap_panel_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapPanel *self = LAP_PANEL (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);

  if (width > 0 && height > 0)
    self->kind->draw (self, snapshot, self->scene, width, height);
}

static void
lap_panel_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                   int *least_baseline, int *natural_baseline)
{
  *least = *natural = 0;
}

static void
lap_panel_class_init (LapPanelClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->snapshot = lap_panel_snapshot;
  widget_class->measure = lap_panel_measure;
  gtk_widget_class_set_css_name (widget_class, "rehearse-panel");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
lap_panel_init (LapPanel *self)
{
  AdwStyleManager *manager = adw_style_manager_get_default ();

  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_widget_set_can_target (GTK_WIDGET (self), FALSE);
  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (manager, "notify::high-contrast", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
}

GtkWidget *
lap_panel_new (const LapPanelKind *kind, const LapScene *scene)
{
  LapPanel *self = g_object_new (LAP_TYPE_PANEL, NULL);

  self->kind = kind;
  self->scene = scene;
  self->stamp = G_MININT64;
  lap_panel_look (self);
  return GTK_WIDGET (self);
}

void
lap_panel_look (LapPanel *self)
{
  gint64 stamp = self->kind->stamp (self->scene);

  if (stamp == self->stamp)
    return;
  self->stamp = stamp;
  if (self->kind->tell != NULL) {
    g_autofree char *text = self->kind->tell (self->scene);

    gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, text, -1);
  }
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

gboolean
lap_panel_is_rtl (LapPanel *self)
{
  return gtk_widget_get_direction (GTK_WIDGET (self)) == GTK_TEXT_DIR_RTL;
}

PangoLayout *
lap_panel_text (LapPanel *self, const char *text, PangoWeight weight, double most, double least, double width,
                double height)
{
  PangoLayout *layout = gtk_widget_create_pango_layout (GTK_WIDGET (self), text);
  PangoContext *context = pango_layout_get_context (layout);
  PangoFontDescription *font = pango_font_description_copy (pango_context_get_font_description (context));
  g_autoptr (PangoAttrList) attributes = pango_attr_list_new ();
  int w, h;

  pango_attr_list_insert (attributes, pango_attr_font_features_new ("tnum"));
  pango_layout_set_attributes (layout, attributes);
  pango_font_description_set_weight (font, weight);
  pango_layout_set_width (layout, MAX (width, 1) * PANGO_SCALE);
  pango_layout_set_wrap (layout, PANGO_WRAP_WORD);
  for (double size = most; ; size = MAX (size * SHRINK, least)) {
    pango_font_description_set_absolute_size (font, MAX (size * self->scene->unit, 1) * PANGO_SCALE);
    pango_layout_set_font_description (layout, font);
    pango_layout_get_pixel_size (layout, &w, &h);
    if ((w <= width && h <= height) || size <= least)
      break;
  }
  /* Pango turns left and right over where a text runs against the window: this sets every text on the side where
   * reading the window begins. */
  if (pango_layout_get_direction (layout, 0) == PANGO_DIRECTION_RTL)
    pango_layout_set_alignment (layout, PANGO_ALIGN_RIGHT);
  if (h > height) {
    pango_layout_set_height (layout, MAX (height, 1) * PANGO_SCALE);
    pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  }
  if (w > width)
    pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  pango_font_description_free (font);
  return layout;
}

void
lap_panel_put (LapPanel *self, GtkSnapshot *snapshot, PangoLayout *layout, guint colour, double x, double y,
               double width)
{
  GdkRGBA rgba = lap_colour (colour);

  if (lap_panel_is_rtl (self))
    x = width - x - pango_layout_get_width (layout) / (double) PANGO_SCALE;
  lap_paint_text (snapshot, layout, &rgba, x, y);
  g_object_unref (layout);
}
