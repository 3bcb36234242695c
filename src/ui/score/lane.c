/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/lane.h"

#include "ui/palette.h"
#include "ui/score/tiles.h"

#include <adwaita.h>

typedef struct {
  LapScoreContext *context;
  LapTiles        *tiles;
  guint            type; /* serial of the type they were painted in */
} LapLanePrivate;

enum { PROP_0, PROP_CONTEXT, N_PROPS };
static GParamSpec *props[N_PROPS];

G_DEFINE_ABSTRACT_TYPE_WITH_PRIVATE (LapLane, lap_lane, GTK_TYPE_WIDGET)

#define PRIVATE(self) ((LapLanePrivate *) lap_lane_get_instance_private (self))

static void
context_cb (LapLane *self, guint change)
{
  if (change & LAP_SCORE_PLAN)
    lap_tiles_clear (PRIVATE (self)->tiles);
  LAP_LANE_GET_CLASS (self)->update (self, change);
}

static void
lap_lane_real_update (LapLane *self, LapScoreChange change)
{
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* The columns of the selected blocks run through every lane. */
static void
draw_selection (LapLane *self, GtkSnapshot *snapshot, int width, int height)
{
  LapScoreContext *context = PRIVATE (self)->context;
  GdkRGBA tint = lap_colour (LAP_COLOUR_WORK);

  if (adw_style_manager_get_high_contrast (adw_style_manager_get_default ()))
    return;
  tint.alpha = 0.10;
  for (guint i = 0; i < context->marked->len; i++) {
    LapPlaced placed = lap_score_place (context->score, context->axis, g_array_index (context->marked, guint, i));

    if (placed.x < width && placed.x + placed.width > 0)
      gtk_snapshot_append_color (snapshot, &tint, &GRAPHENE_RECT_INIT (placed.x, 0, placed.width, height));
  }
}

static void
paint_cb (gpointer lane, cairo_t *cr, const LapAxis *axis, int height)
{
  LAP_LANE_GET_CLASS (lane)->paint (lane, cr, axis, height);
}

static void
draw_content (LapLane *self, GtkSnapshot *snapshot, int height)
{
  LapLanePrivate *priv = PRIVATE (self);
  GtkWidget *widget = GTK_WIDGET (self);
  guint type = pango_context_get_serial (gtk_widget_get_pango_context (widget));

  if (type != priv->type)
    lap_tiles_clear (priv->tiles);
  priv->type = type;
  lap_tiles_draw (priv->tiles, snapshot, priv->context->axis, height, gtk_widget_get_scale_factor (widget), paint_cb,
                  self);
}

static void
lap_lane_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapLane *self = LAP_LANE (widget);
  LapLaneClass *klass = LAP_LANE_GET_CLASS (self);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);

  draw_selection (self, snapshot, width, height);
  if (klass->paint != NULL)
    draw_content (self, snapshot, height);
  if (klass->draw != NULL)
    klass->draw (self, snapshot, width, height);
  GTK_WIDGET_CLASS (lap_lane_parent_class)->snapshot (widget, snapshot);
}

/* Other colours, the same places. */
static void
style_cb (LapLane *self)
{
  lap_tiles_clear (PRIVATE (self)->tiles);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
lap_lane_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                  int *least_baseline, int *natural_baseline)
{
  LapLane *self = LAP_LANE (widget);

  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    *least = *natural = 0;
  else
    *least = *natural = LAP_LANE_GET_CLASS (self)->height (self, lap_lane_line (self));
}

static void
lap_lane_constructed (GObject *object)
{
  LapLane *self = LAP_LANE (object);
  AdwStyleManager *manager = adw_style_manager_get_default ();

  G_OBJECT_CLASS (lap_lane_parent_class)->constructed (object);
  g_signal_connect_object (PRIVATE (self)->context, "changed", G_CALLBACK (context_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (style_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (manager, "notify::high-contrast", G_CALLBACK (style_cb), self, G_CONNECT_SWAPPED);
}

static void
lap_lane_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_CONTEXT)
    PRIVATE (LAP_LANE (object))->context = g_value_dup_object (value);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
lap_lane_finalize (GObject *object)
{
  g_clear_object (&PRIVATE (LAP_LANE (object))->context);
  lap_tiles_free (PRIVATE (LAP_LANE (object))->tiles);
  G_OBJECT_CLASS (lap_lane_parent_class)->finalize (object);
}

static void
lap_lane_class_init (LapLaneClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->constructed = lap_lane_constructed;
  object_class->set_property = lap_lane_set_property;
  object_class->finalize = lap_lane_finalize;
  widget_class->snapshot = lap_lane_snapshot;
  widget_class->measure = lap_lane_measure;
  klass->update = lap_lane_real_update;
  props[PROP_CONTEXT] = g_param_spec_object ("context", NULL, NULL, LAP_TYPE_SCORE_CONTEXT,
                                             G_PARAM_WRITABLE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);
  gtk_widget_class_set_css_name (widget_class, "lane");
}

static void
lap_lane_init (LapLane *self)
{
  PRIVATE (self)->tiles = lap_tiles_new ();
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
}

LapScoreContext *
lap_lane_context (LapLane *self)
{
  return PRIVATE (self)->context;
}

void
lap_lane_refresh (LapLane *self)
{
  style_cb (self);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

guint
lap_lane_n_painted (LapLane *self)
{
  return lap_tiles_n_painted (PRIVATE (self)->tiles);
}

int
lap_lane_line (LapLane *self)
{
  PangoContext *pango = gtk_widget_get_pango_context (GTK_WIDGET (self));
  PangoFontMetrics *metrics = pango_context_get_metrics (pango, NULL, NULL);
  int line = PANGO_PIXELS_CEIL (pango_font_metrics_get_height (metrics));

  pango_font_metrics_unref (metrics);
  return line;
}

PangoLayout *
lap_lane_layout (LapLane *self, const char *text, int width)
{
  PangoLayout *layout = gtk_widget_create_pango_layout (GTK_WIDGET (self), text);

  if (width >= 0) {
    pango_layout_set_width (layout, width * PANGO_SCALE);
    pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  }
  return layout;
}
