/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/later.h"

#include "ui/column.h"
#include "ui/moment.h"

struct _LapLater {
  GtkWidget     parent_instance;
  LapLaterBuild build;
  gpointer      owner;
  GtkWidget    *part; /* NULL while it isn't built */
  LapMoment     moment;
};

enum { PROP_0, PROP_LINES, N_PROPS };
static GParamSpec *props[N_PROPS];

G_DEFINE_FINAL_TYPE (LapLater, lap_later, GTK_TYPE_WIDGET)

static void
build_cb (gpointer later)
{
  lap_later_get (later);
}

static void
lap_later_map (GtkWidget *widget)
{
  LapLater *self = LAP_LATER (widget);
  GdkFrameClock *clock = gtk_widget_get_frame_clock (widget);

  GTK_WIDGET_CLASS (lap_later_parent_class)->map (widget);
  if (self->part != NULL)
    return;
  if (gdk_frame_clock_get_frame_counter (clock) > 0)
    lap_later_get (self);
  else
    lap_moment_wait (&self->moment, widget, build_cb);
}

static void
lap_later_unmap (GtkWidget *widget)
{
  lap_moment_forget (&LAP_LATER (widget)->moment);
  GTK_WIDGET_CLASS (lap_later_parent_class)->unmap (widget);
}

static void
lap_later_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_LINES)
    gtk_widget_set_layout_manager (GTK_WIDGET (object), lap_column_new (g_value_get_double (value)));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
lap_later_dispose (GObject *object)
{
  g_clear_pointer (&LAP_LATER (object)->part, gtk_widget_unparent);
  G_OBJECT_CLASS (lap_later_parent_class)->dispose (object);
}

static void
lap_later_class_init (LapLaterClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->dispose = lap_later_dispose;
  object_class->set_property = lap_later_set_property;
  widget_class->map = lap_later_map;
  widget_class->unmap = lap_later_unmap;
  props[PROP_LINES] = g_param_spec_double ("lines", NULL, NULL, 0, 100, 0, G_PARAM_WRITABLE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
lap_later_init (LapLater *self)
{
}

void
lap_later_set (LapLater *self, LapLaterBuild build, gpointer owner)
{
  self->build = build;
  self->owner = owner;
}

GtkWidget *
lap_later_get (LapLater *self)
{
  if (self->part == NULL) {
    self->part = self->build (self->owner);
    gtk_widget_set_parent (self->part, GTK_WIDGET (self));
  }
  return self->part;
}

GtkWidget *
lap_later_peek (LapLater *self)
{
  return self->part;
}

typedef struct {
  LapLaterBuild build; /* of a popover; NULL with a menu */
  gpointer      owner; /* GMenuModel of a menu */
} Popup;

static void
open_cb (GtkMenuButton *button, gpointer data)
{
  Popup popup = *(Popup *) data;

  gtk_menu_button_set_create_popup_func (button, NULL, NULL, NULL);
  if (popup.build != NULL)
    gtk_menu_button_set_popover (button, popup.build (popup.owner));
  else
    gtk_menu_button_set_menu_model (button, popup.owner);
}

void
lap_later_popover (GtkMenuButton *button, LapLaterBuild build, gpointer owner)
{
  Popup *popup = g_new (Popup, 1);

  *popup = (Popup) { build, owner };
  gtk_menu_button_set_create_popup_func (button, open_cb, popup, g_free);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_HAS_POPUP, TRUE, -1);
}

void
lap_later_menu (GtkMenuButton *button, GMenuModel *menu)
{
  g_object_set_data_full (G_OBJECT (button), "menu", g_object_ref (menu), g_object_unref);
  lap_later_popover (button, NULL, menu);
}
