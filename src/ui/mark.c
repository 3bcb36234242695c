/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/mark.h"

#include "ui/palette.h"
#include "ui/score/paint.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

struct _LapMark {
  GtkWidget    parent_instance;
  LapSeverity  severity;
  PangoLayout *number;
};

G_DEFINE_FINAL_TYPE (LapMark, lap_mark, GTK_TYPE_WIDGET)

/* Of fill, rim and number. */
static const LapColour colours[][3] = {
  [LAP_SEVERITY_STOP] = { LAP_COLOUR_STOP, LAP_COLOUR_STOP, LAP_COLOUR_PAPER },
  [LAP_SEVERITY_WARNING] = { LAP_COLOUR_NOTE, LAP_COLOUR_INK, LAP_COLOUR_ON_NOTE },
  [LAP_SEVERITY_NOTE] = { LAP_COLOUR_CARD, LAP_COLOUR_INK2, LAP_COLOUR_INK },
};

void
lap_mark_paint (cairo_t *cr, LapSeverity severity, PangoLayout *number, double x, double y, double size)
{
  GdkRGBA fill = lap_colour (colours[severity][0]), rim = lap_colour (colours[severity][1]);
  GdkRGBA ink = lap_colour (colours[severity][2]);
  double r = size / 2 - 1;

  cairo_save (cr);
  cairo_translate (cr, x + size / 2, y + size / 2);
  cairo_new_path (cr);
  if (severity == LAP_SEVERITY_NOTE)
    cairo_arc (cr, 0, 0, r * 0.84, 0, 2 * G_PI);
  else {
    cairo_move_to (cr, 0, -r);
    cairo_line_to (cr, r, 0);
    cairo_line_to (cr, 0, r);
    cairo_line_to (cr, -r, 0);
    cairo_close_path (cr);
  }
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill_preserve (cr);
  cairo_set_line_width (cr, 1.5);
  gdk_cairo_set_source_rgba (cr, &rim);
  cairo_stroke (cr);
  cairo_restore (cr);
  lap_paint_small (cr, number, &ink, x + size / 2, y + size / 2);
}

static void
lap_mark_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapMark *self = LAP_MARK (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget), size = MIN (width, height);
  cairo_t *cr;

  if (self->number == NULL)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  lap_mark_paint (cr, self->severity, self->number, (width - size) / 2, (height - size) / 2, size);
  cairo_destroy (cr);
}

static void
lap_mark_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                  int *least_baseline, int *natural_baseline)
{
  LapMark *self = LAP_MARK (widget);
  int width = 0, height = 0;

  if (self->number != NULL)
    pango_layout_get_pixel_size (self->number, &width, &height);
  /* A lozenge holds a box half as wide and high as itself; figures fill less than a line. */
  *least = *natural = MAX (24, LAP_SMALL * MAX (width * 2, height * 1.5) + 2);
}

static void
lap_mark_dispose (GObject *object)
{
  g_clear_object (&LAP_MARK (object)->number);
  G_OBJECT_CLASS (lap_mark_parent_class)->dispose (object);
}

static void
lap_mark_class_init (LapMarkClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_mark_dispose;
  GTK_WIDGET_CLASS (klass)->snapshot = lap_mark_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = lap_mark_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_IMG);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "mark");
}

static void
lap_mark_init (LapMark *self)
{
  AdwStyleManager *manager = adw_style_manager_get_default ();

  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
}

void
lap_mark_set (LapMark *self, LapSeverity severity, guint number)
{
  g_autofree char *text = g_strdup_printf ("%u", number);
  /* Translators: the rank of a warning and its number in the list, "Note 3". */
  g_autofree char *label = g_strdup_printf (_("%1$s %2$u"), lap_words_label (&lap_severities, severity), number);
  g_autoptr (PangoAttrList) attrs = pango_attr_list_new ();

  self->severity = severity;
  g_clear_object (&self->number);
  self->number = gtk_widget_create_pango_layout (GTK_WIDGET (self), text);
  pango_attr_list_insert (attrs, pango_attr_weight_new (PANGO_WEIGHT_BOLD));
  pango_layout_set_attributes (self->number, attrs);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}
