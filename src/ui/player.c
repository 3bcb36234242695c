/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/player.h"

#include "figure/draw.h"
#include "ui/figures.h"
#include "ui/palette.h"
#include "ui/score/paint.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include <math.h>

#define HEIGHT 132
#define BELOW  4 /* px below what the figure is drawn in */

struct _LapPlayer {
  GtkWidget     parent_instance;
  LapCatalogue *catalogue;
  LapExercise  *exercise; /* of the catalogue */
  double        per_rep, seconds;
  gint64        last; /* microseconds of the frame before, 0 before the first */
  guint         tick;
  GtkWidget    *button;
};

G_DEFINE_FINAL_TYPE (LapPlayer, lap_player, GTK_TYPE_WIDGET)

static gboolean
tick_cb (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  LapPlayer *self = LAP_PLAYER (widget);
  gint64 now = gdk_frame_clock_get_frame_time (clock);

  if (self->last != 0)
    self->seconds += (now - self->last) / (double) G_USEC_PER_SEC;
  self->last = now;
  gtk_widget_queue_draw (widget);
  return G_SOURCE_CONTINUE;
}

static void
show_button (LapPlayer *self)
{
  gboolean moves = self->tick != 0, calm = FALSE;
  const char *label = moves ? _("Stop the figure") : _("Let the figure move");

  g_object_get (gtk_widget_get_settings (GTK_WIDGET (self)), "gtk-enable-animations", &calm, NULL);
  gtk_widget_set_visible (self->button, calm && self->exercise != NULL && self->exercise->figure != NULL);
  gtk_button_set_icon_name (GTK_BUTTON (self->button),
                            moves ? "media-playback-pause-symbolic" : "media-playback-start-symbolic");
  gtk_widget_set_tooltip_text (self->button, label);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->button), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
}

static void
stop (LapPlayer *self)
{
  if (self->tick != 0)
    gtk_widget_remove_tick_callback (GTK_WIDGET (self), self->tick);
  self->tick = 0;
  gtk_widget_queue_draw (GTK_WIDGET (self));
  show_button (self);
}

static void
clicked_cb (LapPlayer *self)
{
  if (self->tick != 0) {
    stop (self);
    return;
  }
  self->last = 0;
  self->tick = gtk_widget_add_tick_callback (GTK_WIDGET (self), tick_cb, NULL, NULL);
  show_button (self);
}

static void
lap_player_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapPlayer *self = LAP_PLAYER (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE2);
  cairo_t *cr;

  if (self->exercise != NULL && self->exercise->figure != NULL) {
    lap_paint_rect (snapshot, &line, 12, ceil ((height - BELOW) * (1 - LAP_FIGURE_PADDING)), MAX (width - 24, 0), 2);
    cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height - BELOW));
    lap_figure_play (cr, self->catalogue, self->exercise, self->seconds, self->per_rep, self->tick == 0, width,
                     height - BELOW);
    cairo_destroy (cr);
  }
  GTK_WIDGET_CLASS (lap_player_parent_class)->snapshot (widget, snapshot);
}

static void
lap_player_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                    int *least_baseline, int *natural_baseline)
{
  *least = *natural = orientation == GTK_ORIENTATION_VERTICAL ? HEIGHT : 120;
}

/* The button stands in the upper corner where reading ends; a figure is widest below. */
static void
lap_player_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  GtkWidget *button = LAP_PLAYER (widget)->button;
  GtkRequisition size;
  int x;

  gtk_widget_get_preferred_size (button, NULL, &size);
  x = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL ? 6 : width - size.width - 6;
  gtk_widget_size_allocate (button, &(GtkAllocation) { x, 6, size.width, size.height }, -1);
}

static void
lap_player_unmap (GtkWidget *widget)
{
  stop (LAP_PLAYER (widget));
  GTK_WIDGET_CLASS (lap_player_parent_class)->unmap (widget);
}

static void
lap_player_dispose (GObject *object)
{
  LapPlayer *self = LAP_PLAYER (object);

  g_clear_pointer (&self->button, gtk_widget_unparent);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  G_OBJECT_CLASS (lap_player_parent_class)->dispose (object);
}

static void
lap_player_class_init (LapPlayerClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_player_dispose;
  widget_class->snapshot = lap_player_snapshot;
  widget_class->measure = lap_player_measure;
  widget_class->size_allocate = lap_player_size_allocate;
  widget_class->unmap = lap_player_unmap;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_css_name (widget_class, "player");
}

static void
lap_player_init (LapPlayer *self)
{
  AdwStyleManager *manager = adw_style_manager_get_default ();

  self->button = gtk_button_new ();
  gtk_widget_add_css_class (self->button, "flat");
  gtk_widget_set_parent (self->button, GTK_WIDGET (self));
  g_signal_connect_swapped (self->button, "clicked", G_CALLBACK (clicked_cb), self);
  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  show_button (self);
}

void
lap_player_show (LapPlayer *self, LapCatalogue *catalogue, LapExercise *exercise, double per_rep)
{
  if (self->catalogue == catalogue && self->exercise == exercise && self->per_rep == per_rep)
    return;
  lap_catalogue_ref (catalogue);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  self->catalogue = catalogue;
  self->exercise = exercise;
  self->per_rep = per_rep;
  self->seconds = 0;
  stop (self);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  exercise != NULL ? exercise->name : "", -1);
}

gboolean
lap_player_is_moving (LapPlayer *self)
{
  return self->tick != 0;
}

double
lap_player_seconds (LapPlayer *self)
{
  return self->seconds;
}
