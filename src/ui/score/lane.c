/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/lane.h"

#include "ui/palette.h"
#include "ui/score/landing-paint.h"
#include "ui/score/mark-list.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"
#include "ui/score/tiles.h"

#include <adwaita.h>
#include <math.h>

typedef struct {
  LapScoreContext *context;
  LapTiles        *tiles;
  guint            type; /* serial of the type they were painted in */
  GtkWidget       *list; /* of a mark, the last that was opened, a child, or NULL */
} LapLanePrivate;

/* The list of a mark: lines of text that it is wide, and px that the window is wider. */
#define LIST_LINES 22
#define LIST_ROOM  60

enum { PROP_0, PROP_CONTEXT, N_PROPS };
static GParamSpec *props[N_PROPS];

G_DEFINE_ABSTRACT_TYPE_WITH_PRIVATE (LapLane, lap_lane, GTK_TYPE_WIDGET)

#define PRIVATE(self) ((LapLanePrivate *) lap_lane_get_instance_private (self))

static void
context_cb (LapLane *self, guint change)
{
  if (change & LAP_SCORE_PLAN) {
    lap_tiles_clear (PRIVATE (self)->tiles);
    g_clear_pointer (&PRIVATE (self)->list, gtk_widget_unparent); /* its warnings are others now */
  }
  LAP_LANE_GET_CLASS (self)->update (self, change);
}

static void
lap_lane_real_update (LapLane *self, LapScoreChange change)
{
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static LapPart *
lap_lane_real_part (LapLane *self, guint *index)
{
  LapScoreContext *context = PRIVATE (self)->context;
  LapPart *part = context->block != NULL ? LAP_PART (LAP_OBJECT (context->block)->owner) : NULL;

  if (part != NULL)
    *index = lap_list_find (lap_document_session (context->document)->parts, part);
  return part;
}

/* What is folded lies a little lower. */
static void
draw_folds (LapLane *self, GtkSnapshot *snapshot, int height)
{
  const LapAxis *axis = PRIVATE (self)->context->axis;
  GdkRGBA fold = lap_colour (LAP_COLOUR_FOLD), crease = lap_colour (LAP_COLOUR_LINE);

  for (guint i = 0; i < axis->n; i++) {
    double a = round (lap_axis_x (axis, axis->pieces[i].start)), b = round (lap_axis_x (axis, axis->pieces[i].end));

    if (!axis->pieces[i].folded || MAX (a, b) <= 0 || MIN (a, b) >= axis->view)
      continue;
    lap_paint_rect (snapshot, &fold, MIN (a, b), 0, ABS (b - a), height);
    lap_paint_rect (snapshot, &crease, MIN (a, b), 0, 1, height);
    lap_paint_rect (snapshot, &crease, MAX (a, b) - 1, 0, 1, height);
  }
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

static LapCheckup *
checkup_of (LapLane *self)
{
  return lap_document_checkup (PRIVATE (self)->context->document);
}

static int
mark_y (LapLane *self, guint warning, int height)
{
  LapLaneClass *klass = LAP_LANE_GET_CLASS (self);

  return klass->mark_y != NULL ? klass->mark_y (self, lap_checkup_nth (checkup_of (self), warning), height) : height / 2;
}

/* Marks are part of the content: they scroll with it, and a frame that scrolls doesn't paint them again. */
static void
paint_marks (LapLane *self, cairo_t *cr, const LapAxis *axis, int height)
{
  int line = lap_text_line (GTK_WIDGET (self)), size = lap_marks_size (line);
  g_autoptr (LapMarks) marks = lap_marks_of (checkup_of (self), axis, line, LAP_LANE_GET_CLASS (self)->marks->id);
  g_autoptr (PangoLayout) layout = lap_lane_layout (self, NULL, -1);
  g_autoptr (PangoAttrList) attrs = pango_attr_list_new ();

  pango_attr_list_insert (attrs, pango_attr_weight_new (PANGO_WEIGHT_BOLD));
  pango_layout_set_attributes (layout, attrs);
  for (guint i = marks->places->len; i-- > 0;) {
    const LapMarkPlace *mark = &g_array_index (marks->places, LapMarkPlace, i);

    if (mark->x > -mark->width && mark->x < axis->view + mark->width)
      lap_marks_paint (cr, checkup_of (self), mark, size, mark_y (self, mark->first, height), layout, axis->mirrored);
  }
}

static void
paint_cb (gpointer lane, cairo_t *cr, const LapAxis *axis, int height)
{
  LapLaneClass *klass = LAP_LANE_GET_CLASS (lane);

  if (klass->paint != NULL)
    klass->paint (lane, cr, axis, height);
  if (klass->marks != NULL)
    paint_marks (lane, cr, axis, height);
}

/* The mark at a place in @marks, or LAP_NO_WARNING. */
static guint
mark_at (LapLane *self, LapMarks *marks, double x, double y)
{
  int size = lap_marks_size (lap_text_line (GTK_WIDGET (self)));
  guint mark = lap_marks_at (marks, x);

  if (mark != LAP_NO_WARNING &&
      ABS (lap_lane_mark_y (self, g_array_index (marks->places, LapMarkPlace, mark).first) - y) <= size / 2)
    return mark;
  return LAP_NO_WARNING;
}

LapMarks *
lap_lane_marks (LapLane *self)
{
  return lap_marks_of (checkup_of (self), PRIVATE (self)->context->axis, lap_text_line (GTK_WIDGET (self)),
                       LAP_LANE_GET_CLASS (self)->marks->id);
}

int
lap_lane_mark_y (LapLane *self, guint warning)
{
  return mark_y (self, warning, gtk_widget_get_height (GTK_WIDGET (self)));
}

gboolean
lap_lane_is_on_mark (LapLane *self, double x, double y)
{
  g_autoptr (LapMarks) marks = lap_lane_marks (self);

  return mark_at (self, marks, x, y) != LAP_NO_WARNING;
}

void
lap_lane_open_mark (LapLane *self, const LapMarks *marks, guint mark)
{
  LapLanePrivate *priv = PRIVATE (self);
  const LapMarkPlace *place = &g_array_index (marks->places, LapMarkPlace, mark);
  int line = lap_text_line (GTK_WIDGET (self)), size = lap_marks_size (line);
  int room = gtk_widget_get_width (GTK_WIDGET (gtk_widget_get_root (GTK_WIDGET (self)))) - LIST_ROOM;

  if (place->n == 1) {
    lap_score_choose_warning (priv->context, place->first);
    return;
  }
  priv->context->warning = place->first; /* where keys go on from */
  g_clear_pointer (&priv->list, gtk_widget_unparent);
  priv->list = lap_mark_list_new (priv->context, marks, mark, MIN (LIST_LINES * line, room));
  gtk_widget_set_parent (priv->list, GTK_WIDGET (self));
  gtk_popover_set_pointing_to (GTK_POPOVER (priv->list),
                               &(GdkRectangle) { place->x - place->width / 2, lap_lane_mark_y (self, place->first) - size / 2,
                                                 place->width, size });
  gtk_popover_popup (GTK_POPOVER (priv->list));
  gtk_widget_trigger_tooltip_query (GTK_WIDGET (self)); /* the list says it all */
}

static gboolean
tooltip_cb (LapLane *self, int x, int y, gboolean by_keyboard, GtkTooltip *tooltip)
{
  g_autoptr (LapMarks) marks = lap_lane_marks (self);
  guint mark = by_keyboard ? LAP_NO_WARNING : mark_at (self, marks, x, y);
  g_autofree char *words = mark != LAP_NO_WARNING ? lap_marks_words (checkup_of (self), marks, mark) : NULL;

  gtk_tooltip_set_text (tooltip, words);
  return words != NULL && (PRIVATE (self)->list == NULL || !gtk_widget_get_mapped (PRIVATE (self)->list));
}

/* When the button is released, so that an end under the mark can be dragged: a press that becomes a drag is the drag's. */
static void
released_cb (LapLane *self, int n, double x, double y)
{
  g_autoptr (LapMarks) marks = LAP_LANE_GET_CLASS (self)->marks != NULL ? lap_lane_marks (self) : NULL;
  guint mark = marks != NULL ? mark_at (self, marks, x, y) : LAP_NO_WARNING;

  if (mark != LAP_NO_WARNING)
    lap_lane_open_mark (self, marks, mark);
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
draw_preview (LapLane *self, GtkSnapshot *snapshot, int width, int height)
{
  LapScoreContext *context = PRIVATE (self)->context;
  GdkRGBA accent = lap_colour (LAP_COLOUR_WORK);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));

  gdk_cairo_set_source_rgba (cr, &accent);
  cairo_set_line_width (cr, 2);
  cairo_set_dash (cr, (double[]) { 5, 3 }, 2, 0);
  LAP_LANE_GET_CLASS (self)->preview (self, cr, context->preview, context->preview_checkup, height);
  cairo_destroy (cr);
}

static void
lap_lane_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapLane *self = LAP_LANE (widget);
  LapLaneClass *klass = LAP_LANE_GET_CLASS (self);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);

  draw_folds (self, snapshot, height);
  draw_selection (self, snapshot, width, height);
  if (klass->paint != NULL)
    draw_content (self, snapshot, height);
  if (klass->draw != NULL)
    klass->draw (self, snapshot, width, height);
  GTK_WIDGET_CLASS (lap_lane_parent_class)->snapshot (widget, snapshot);
  if (klass->paint == NULL && klass->marks != NULL)
    draw_content (self, snapshot, height); /* marks over the children */
  if (klass->preview != NULL && PRIVATE (self)->context->preview != NULL)
    draw_preview (self, snapshot, width, height);
  if (PRIVATE (self)->context->landing != NULL && !klass->lands)
    lap_landing_draw (self, snapshot, height);
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
    *least = *natural = LAP_LANE_GET_CLASS (self)->height (self, lap_text_line (GTK_WIDGET (self)));
}

static void
lap_lane_constructed (GObject *object)
{
  LapLane *self = LAP_LANE (object);
  AdwStyleManager *manager = adw_style_manager_get_default ();

  G_OBJECT_CLASS (lap_lane_parent_class)->constructed (object);
  if (LAP_LANE_GET_CLASS (self)->marks != NULL) {
    gtk_widget_set_has_tooltip (GTK_WIDGET (self), TRUE);
    g_signal_connect (self, "query-tooltip", G_CALLBACK (tooltip_cb), NULL);
  }
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
lap_lane_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  GtkWidget *list = PRIVATE (LAP_LANE (widget))->list;

  if (list != NULL)
    gtk_popover_present (GTK_POPOVER (list));
}

static void
lap_lane_dispose (GObject *object)
{
  g_clear_pointer (&PRIVATE (LAP_LANE (object))->list, gtk_widget_unparent);
  G_OBJECT_CLASS (lap_lane_parent_class)->dispose (object);
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
  object_class->dispose = lap_lane_dispose;
  object_class->finalize = lap_lane_finalize;
  widget_class->snapshot = lap_lane_snapshot;
  widget_class->measure = lap_lane_measure;
  widget_class->size_allocate = lap_lane_size_allocate;
  klass->update = lap_lane_real_update;
  klass->part = lap_lane_real_part;
  props[PROP_CONTEXT] = g_param_spec_object ("context", NULL, NULL, LAP_TYPE_SCORE_CONTEXT,
                                             G_PARAM_WRITABLE | G_PARAM_CONSTRUCT_ONLY | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);
  gtk_widget_class_set_css_name (widget_class, "lane");
}

static void
lap_lane_init (LapLane *self)
{
  GtkGesture *click = gtk_gesture_click_new ();

  g_signal_connect_swapped (click, "released", G_CALLBACK (released_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
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
