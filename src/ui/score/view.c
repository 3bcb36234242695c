/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The view gives the axis its width before it gives the lanes theirs, so that all are laid out for one and the same
 * axis in one pass.
 */
#include "ui/score/view.h"

#include "ui/invitation.h"
#include "ui/later.h"
#include "ui/score/lanes-menu.h"
#include "ui/score/strip.h"
#include "ui/settings.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include <math.h>

typedef struct {
  const LapLaneKind *kind;
  GtkWidget *label; /* a box with title and hint */
  GtkWidget *hint;  /* in it, or NULL */
  GtkWidget *lane;
} Row;

struct _LapScoreView {
  GtkWidget        parent_instance;
  LapScoreContext *context;
  GArray          *rows; /* Row */
  GtkWidget       *strip, *menu, *invitation;
  AdwAnimation    *glide; /* of the axis */
  gboolean         empty; /* nothing is planned: only the blocks are there, and how to begin */
  double           x;    /* of the pointer */
  GdkSurface      *surface; /* of the window, while there is one */
  int              high;    /* px of it */
};

G_DEFINE_FINAL_TYPE (LapScoreView, lap_score_view, GTK_TYPE_WIDGET)

#define LABEL_GAP   8
#define GLIDE       200 /* ms */
#define FOOT_GAP    10
/* px of a line of text at the usual size. */
#define USUAL_LINE  14.0
/* px of lanes beside which there is room for a pane. */
#define COMFORTABLE 520
#define ZOOM_STEP   1.25
#define LABELS_MOST 150
/* px of a window, for each of a line of text, above which the lanes share half of what it is higher. */
#define USUAL_HIGH  64

static Row *
nth (LapScoreView *self, guint i)
{
  return &g_array_index (self->rows, Row, i);
}

static gboolean
is_there (LapScoreView *self, guint i)
{
  return gtk_widget_get_visible (nth (self, i)->lane) && (!self->empty || nth (self, i)->kind == &lap_lane_blocks);
}

static int
label_width (LapScoreView *self)
{
  int width, natural;

  gtk_widget_measure (self->menu, GTK_ORIENTATION_HORIZONTAL, -1, &width, NULL, NULL, NULL);
  for (guint i = 0; i < self->rows->len; i++) {
    gtk_widget_measure (nth (self, i)->label, GTK_ORIENTATION_HORIZONTAL, -1, NULL, &natural, NULL, NULL);
    width = MAX (width, natural);
  }
  return MIN (width, LABELS_MOST);
}

/* px of what is below the lanes: the overview, and the menu of lanes below their labels; or how to begin. */
static int
foot_height (LapScoreView *self, int width)
{
  int strip, menu, invitation;

  if (self->empty) {
    gtk_widget_measure (self->invitation, GTK_ORIENTATION_VERTICAL, width, &invitation, NULL, NULL, NULL);
    return invitation + FOOT_GAP;
  }
  gtk_widget_measure (self->strip, GTK_ORIENTATION_VERTICAL, -1, &strip, NULL, NULL, NULL);
  gtk_widget_measure (self->menu, GTK_ORIENTATION_VERTICAL, -1, &menu, NULL, NULL, NULL);
  return MAX (strip, menu) + FOOT_GAP;
}

static int
row_height (LapScoreView *self, guint i, int labels)
{
  Row *row = nth (self, i);
  int lane, label;

  if (!is_there (self, i))
    return 0;
  gtk_widget_measure (row->lane, GTK_ORIENTATION_VERTICAL, -1, &lane, NULL, NULL, NULL);
  gtk_widget_measure (row->label, GTK_ORIENTATION_VERTICAL, labels, &label, NULL, NULL, NULL);
  return MAX (lane, label);
}

static int
most_more (LapScoreView *self, guint i)
{
  LapLane *lane = LAP_LANE (nth (self, i)->lane);
  LapLaneClass *klass = LAP_LANE_GET_CLASS (lane);

  return is_there (self, i) && klass->more != NULL ? klass->more (lane, lap_text_line (GTK_WIDGET (lane))) : 0;
}

/* px of row @i beyond what it needs. That follows from the window alone: an edit, which may bring warnings and so take
 * room, never moves the lanes. */
static int
more_height (LapScoreView *self, guint i)
{
  int all = 0, room = (self->high - USUAL_HIGH * lap_text_line (GTK_WIDGET (nth (self, 0)->lane))) / 2;

  if (room <= 0 || self->empty)
    return 0;
  for (guint k = 0; k < self->rows->len; k++)
    all += most_more (self, k);
  return all > 0 ? MIN (room, all) * most_more (self, i) / all : 0;
}

static void
lap_score_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                        int *least_baseline, int *natural_baseline)
{
  LapScoreView *self = LAP_SCORE_VIEW (widget);
  int labels = label_width (self), height = 0;

  if (orientation == GTK_ORIENTATION_HORIZONTAL) {
    *least = labels + LABEL_GAP + 80;
    *natural = *least + COMFORTABLE;
    return;
  }
  for (guint i = 0; i < self->rows->len; i++)
    height += row_height (self, i, labels) + more_height (self, i);
  *least = *natural = height + foot_height (self, for_size);
}

static void
lap_score_view_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapScoreView *self = LAP_SCORE_VIEW (widget);
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  int labels = label_width (self), left = mirrored ? 0 : labels + LABEL_GAP, y = 0, foot;
  int view = MAX (1, width - labels - LABEL_GAP);

  lap_score_set_view (self->context, view, mirrored, lap_text_line (GTK_WIDGET (nth (self, 0)->lane)) / USUAL_LINE);
  for (guint i = 0; i < self->rows->len; i++) {
    Row *row = nth (self, i);
    int room = row_height (self, i, labels) + more_height (self, i);

    gtk_widget_set_child_visible (row->label, is_there (self, i));
    gtk_widget_set_child_visible (row->lane, is_there (self, i));
    if (!is_there (self, i))
      continue;
    gtk_widget_size_allocate (row->label, &(GtkAllocation) { mirrored ? width - labels : 0, y, labels, room }, -1);
    gtk_widget_size_allocate (row->lane, &(GtkAllocation) { left, y, view, room }, -1);
    y += room;
  }
  foot = foot_height (self, width) - FOOT_GAP;
  y += FOOT_GAP;
  gtk_widget_set_child_visible (self->strip, !self->empty);
  gtk_widget_set_child_visible (self->menu, !self->empty);
  gtk_widget_set_child_visible (self->invitation, self->empty);
  if (self->empty) {
    gtk_widget_size_allocate (self->invitation, &(GtkAllocation) { 0, y, width, foot }, -1);
    return;
  }
  gtk_widget_size_allocate (self->strip, &(GtkAllocation) { left, y, view, foot }, -1);
  gtk_widget_size_allocate (self->menu, &(GtkAllocation) { mirrored ? width - labels : 0, y, labels, foot }, -1);
}

static GtkSizeRequestMode
lap_score_view_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
glide_cb (double t, gpointer view)
{
  lap_score_glide_at (LAP_SCORE_VIEW (view)->context, t);
}

static void
context_cb (LapScoreView *self, guint change)
{
  gboolean empty = self->context->score->n == 0;

  if (change & LAP_SCORE_GLIDE) {
    lap_score_glide_at (self->context, 0);
    adw_animation_play (self->glide);
  }
  if (self->empty == empty)
    return;
  self->empty = empty;
  /* A plan that is emptied before people's eyes: how high the invitation is has to be known when it is given room. */
  if (empty && gtk_widget_get_mapped (GTK_WIDGET (self)))
    lap_later_get (LAP_LATER (self->invitation));
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

/* px of the lanes, from px of the view. */
static double
lane_x (LapScoreView *self, double x)
{
  graphene_point_t point;

  if (self->rows->len == 0 ||
      !gtk_widget_compute_point (GTK_WIDGET (self), nth (self, 0)->lane, &GRAPHENE_POINT_INIT (x, 0), &point))
    return 0;
  return CLAMP (point.x, 0, self->context->axis->view);
}

static void
motion_cb (LapScoreView *self, double x, double y)
{
  self->x = x;
}

static gboolean
scroll_cb (LapScoreView *self, double dx, double dy, GtkEventController *controller)
{
  GdkModifierType state = gtk_event_controller_get_current_event_state (controller);
  double sign = self->context->axis->mirrored ? -1 : 1;

  if (state & GDK_CONTROL_MASK) {
    lap_score_zoom (self->context, self->context->axis->zoom * pow (ZOOM_STEP, -dy), lane_x (self, self->x));
    return TRUE;
  }
  if (state & GDK_SHIFT_MASK && dx == 0)
    dx = dy;
  else if (dx == 0)
    return FALSE; /* up and down belongs to the page */
  lap_score_scroll_by (self->context, sign * dx * 60);
  return TRUE;
}

static void
pinch_cb (LapScoreView *self, double scale, GtkGesture *gesture)
{
  double *start = g_object_get_data (G_OBJECT (gesture), "start"), x, y;

  if (start != NULL && gtk_gesture_get_bounding_box_center (gesture, &x, &y))
    lap_score_zoom (self->context, *start * scale, lane_x (self, x));
}

static void
pinch_begin_cb (LapScoreView *self, GdkEventSequence *sequence, GtkGesture *gesture)
{
  double *start = g_new (double, 1);

  *start = self->context->axis->zoom;
  g_object_set_data_full (G_OBJECT (gesture), "start", start, g_free);
}

static void
add_controllers (LapScoreView *self)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkEventController *scroll = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);
  GtkGesture *pinch = gtk_gesture_zoom_new ();

  g_signal_connect_swapped (motion, "enter", G_CALLBACK (motion_cb), self);
  g_signal_connect_swapped (motion, "motion", G_CALLBACK (motion_cb), self);
  g_signal_connect_swapped (scroll, "scroll", G_CALLBACK (scroll_cb), self);
  g_signal_connect_swapped (pinch, "begin", G_CALLBACK (pinch_begin_cb), self);
  g_signal_connect_swapped (pinch, "scale-changed", G_CALLBACK (pinch_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (pinch));
}

static void
layout_cb (LapScoreView *self, int width, int height)
{
  if (self->high == height)
    return;
  self->high = height;
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

static void
lap_score_view_realize (GtkWidget *widget)
{
  LapScoreView *self = LAP_SCORE_VIEW (widget);

  GTK_WIDGET_CLASS (lap_score_view_parent_class)->realize (widget);
  self->surface = g_object_ref (gtk_native_get_surface (gtk_widget_get_native (widget)));
  g_signal_connect_object (self->surface, "layout", G_CALLBACK (layout_cb), self, G_CONNECT_SWAPPED);
}

static void
lap_score_view_unrealize (GtkWidget *widget)
{
  LapScoreView *self = LAP_SCORE_VIEW (widget);

  g_signal_handlers_disconnect_by_func (self->surface, layout_cb, self);
  g_clear_object (&self->surface);
  GTK_WIDGET_CLASS (lap_score_view_parent_class)->unrealize (widget);
}

static void
lap_score_view_dispose (GObject *object)
{
  LapScoreView *self = LAP_SCORE_VIEW (object);

  for (guint i = 0; i < self->rows->len; i++) {
    gtk_widget_unparent (nth (self, i)->label);
    gtk_widget_unparent (nth (self, i)->lane);
  }
  g_array_set_size (self->rows, 0);
  g_clear_pointer (&self->strip, gtk_widget_unparent);
  g_clear_pointer (&self->menu, gtk_widget_unparent);
  g_clear_pointer (&self->invitation, gtk_widget_unparent);
  g_clear_object (&self->glide);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_score_view_parent_class)->dispose (object);
}

static void
lap_score_view_finalize (GObject *object)
{
  g_array_unref (LAP_SCORE_VIEW (object)->rows);
  G_OBJECT_CLASS (lap_score_view_parent_class)->finalize (object);
}

static void
lap_score_view_class_init (LapScoreViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_score_view_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_score_view_finalize;
  widget_class->realize = lap_score_view_realize;
  widget_class->unrealize = lap_score_view_unrealize;
  widget_class->measure = lap_score_view_measure;
  widget_class->size_allocate = lap_score_view_size_allocate;
  widget_class->get_request_mode = lap_score_view_get_request_mode;
  gtk_widget_class_set_css_name (widget_class, "score");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static GtkWidget *
build_invitation (gpointer owner)
{
  GtkWidget *invitation = lap_invitation_new ();

  lap_invitation_set_document (LAP_INVITATION (invitation), LAP_SCORE_VIEW (owner)->context->document);
  return invitation;
}

static void
lap_score_view_init (LapScoreView *self)
{
  self->rows = g_array_new (FALSE, FALSE, sizeof (Row));
  self->strip = lap_strip_new ();
  gtk_widget_set_parent (self->strip, GTK_WIDGET (self));
  self->menu = lap_lanes_menu_new (self);
  gtk_widget_set_parent (self->menu, GTK_WIDGET (self));
  /* Where animations are off it is at its end at once. */
  self->glide = adw_timed_animation_new (GTK_WIDGET (self), 0, 1, GLIDE, adw_callback_animation_target_new (glide_cb, self, NULL));
  self->invitation = g_object_new (LAP_TYPE_LATER, NULL);
  lap_later_set (LAP_LATER (self->invitation), build_invitation, self);
  gtk_widget_set_parent (self->invitation, GTK_WIDGET (self));
  add_controllers (self);
}

static GtkWidget *
label_new (const LapLaneKind *kind, GtkWidget **hint)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *title = gtk_label_new (_(kind->title));

  gtk_label_set_xalign (GTK_LABEL (title), 0);
  gtk_label_set_wrap (GTK_LABEL (title), TRUE);
  gtk_widget_add_css_class (title, "lane-title");
  gtk_box_append (GTK_BOX (box), title);
  *hint = NULL;
  if (kind->hint == NULL)
    return box;
  *hint = gtk_label_new (_(kind->hint));
  gtk_label_set_xalign (GTK_LABEL (*hint), 0);
  gtk_label_set_wrap (GTK_LABEL (*hint), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (*hint), 14);
  gtk_widget_add_css_class (*hint, "lane-hint");
  gtk_box_append (GTK_BOX (box), *hint);
  return box;
}

static guint
find (LapScoreView *self, const char *id)
{
  for (guint i = 0; i < self->rows->len; i++)
    if (g_str_equal (nth (self, i)->kind->id, id))
      return i;
  return G_MAXUINT;
}

/* Moves a row; the children go along, so that Tab goes from above to below. */
static void
put (LapScoreView *self, guint from, guint to)
{
  Row row = *nth (self, from);

  g_array_remove_index (self->rows, from);
  g_array_insert_val (self->rows, to, row);
  for (guint i = 0; i < self->rows->len; i++) {
    gtk_widget_insert_before (nth (self, i)->label, GTK_WIDGET (self), self->strip);
    gtk_widget_insert_before (nth (self, i)->lane, GTK_WIDGET (self), self->strip);
  }
}

static void
set_shown (LapScoreView *self, guint i, gboolean shown)
{
  gtk_widget_set_visible (nth (self, i)->label, shown);
  gtk_widget_set_visible (nth (self, i)->lane, shown);
}

static void
remember (LapScoreView *self)
{
  g_autoptr (GVariantBuilder) order = g_variant_builder_new (G_VARIANT_TYPE_STRING_ARRAY);
  g_autoptr (GVariantBuilder) hidden = g_variant_builder_new (G_VARIANT_TYPE_STRING_ARRAY);

  for (guint i = 0; i < self->rows->len; i++) {
    g_variant_builder_add (order, "s", nth (self, i)->kind->id);
    if (!gtk_widget_get_visible (nth (self, i)->lane))
      g_variant_builder_add (hidden, "s", nth (self, i)->kind->id);
  }
  lap_settings_keep ("lanes", g_variant_builder_end (order));
  lap_settings_keep ("lanes-hidden", g_variant_builder_end (hidden));
}

/* Settings may be older than a lane, or newer: unknown ids are passed over, lanes that aren't listed follow. */
static void
recall (LapScoreView *self)
{
  g_autoptr (GVariant) order = lap_settings_value ("lanes", g_variant_new_strv (NULL, 0));
  g_autoptr (GVariant) hidden = lap_settings_value ("lanes-hidden", g_variant_new_strv (NULL, 0));
  g_autofree const char **ids = g_variant_get_strv (order, NULL), **not = g_variant_get_strv (hidden, NULL);
  guint to = 1;

  for (guint i = 0; ids[i] != NULL; i++) {
    guint from = find (self, ids[i]);

    if (from != G_MAXUINT && from >= to)
      put (self, from, to++);
  }
  for (guint i = 0; not[i] != NULL; i++)
    lap_score_view_show (self, not[i], FALSE);
}

const LapLaneKind *
lap_score_view_nth (LapScoreView *self, guint n)
{
  return n < self->rows->len ? nth (self, n)->kind : NULL;
}

gboolean
lap_score_view_is_shown (LapScoreView *self, const char *id)
{
  guint i = find (self, id);

  return i != G_MAXUINT && gtk_widget_get_visible (nth (self, i)->lane);
}

void
lap_score_view_show (LapScoreView *self, const char *id, gboolean shown)
{
  guint i = find (self, id);

  /* Without clock or blocks there would be nothing to work on. */
  if (i == G_MAXUINT || i == 0 || nth (self, i)->kind == &lap_lane_blocks || lap_score_view_is_shown (self, id) == shown)
    return;
  set_shown (self, i, shown);
  remember (self);
}

void
lap_score_view_move (LapScoreView *self, const char *id, int by)
{
  guint from = find (self, id);
  int to = (int) from + by;

  if (from == G_MAXUINT || from == 0 || to < 1 || to >= (int) self->rows->len)
    return;
  put (self, from, to);
  remember (self);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

void
lap_score_view_set_context (LapScoreView *self, LapScoreContext *context)
{
  g_return_if_fail (self->context == NULL);
  self->context = g_object_ref (context);
  lap_strip_set_context (LAP_STRIP (self->strip), context);
  for (guint i = 0; i < lap_lanes_n (); i++) {
    const LapLaneKind *kind = lap_lanes_nth (i);
    Row row = { kind };

    row.lane = g_object_new (kind->type (), "context", context, NULL);
    row.label = kind->label != NULL ? kind->label (LAP_LANE (row.lane)) : label_new (kind, &row.hint);
    gtk_widget_insert_before (row.label, GTK_WIDGET (self), self->strip);
    gtk_widget_insert_before (row.lane, GTK_WIDGET (self), self->strip);
    g_array_append_val (self->rows, row);
  }
  recall (self);
  g_signal_connect_object (context, "changed", G_CALLBACK (context_cb), self, G_CONNECT_SWAPPED);
  context_cb (self, LAP_SCORE_PLAN);
}

LapBlocksLane *
lap_score_view_blocks (LapScoreView *self)
{
  for (guint i = 0; i < self->rows->len; i++)
    if (LAP_IS_BLOCKS_LANE (nth (self, i)->lane))
      return LAP_BLOCKS_LANE (nth (self, i)->lane);
  return NULL;
}

void
lap_score_view_set_narrow (LapScoreView *self, gboolean narrow)
{
  for (guint i = 0; i < self->rows->len; i++)
    if (nth (self, i)->hint != NULL)
      gtk_widget_set_visible (nth (self, i)->hint, !narrow);
}

void
lap_score_view_zoom (LapScoreView *self, double factor)
{
  LapScoreContext *context = self->context;
  guint selected = lap_score_selected (context);
  double x = context->axis->view / 2;

  if (selected != LAP_NO_BOX) {
    LapPlaced placed = lap_score_place (context->score, context->axis, selected);

    x = CLAMP (placed.x + placed.width / 2.0, 0, context->axis->view);
  }
  lap_score_zoom (context, context->axis->zoom * factor, x);
}
