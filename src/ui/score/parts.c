/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The parts: a bracket and title for each, and under it a bracket and number for each round.
 */
#include "ui/palette.h"
#include "ui/score/folds.h"
#include "ui/score/lane.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define LAP_TYPE_PARTS_LANE (lap_parts_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapPartsLane, lap_parts_lane, LAP, PARTS_LANE, LapLane)

struct _LapPartsLane {
  LapLane parent_instance;
  guint   at; /* the piece whose bracket the keys are at */
};

G_DEFINE_FINAL_TYPE (LapPartsLane, lap_parts_lane, LAP_TYPE_LANE)

#define LINE   1.5 /* px of a bracket */
#define FOOT   5   /* px its ends reach down */
#define GAP    2   /* px on either side */
#define PAD    5   /* px round its text */
#define BEFORE 8   /* px of bracket before its text */
#define LEAST  14  /* px that a text needs at least */

static int
row_height (int line)
{
  return line + 7;
}

static int
lap_parts_lane_height (LapLane *lane, int line)
{
  return 2 * row_height (line) + 8;
}

static PangoLayout *
bracket_layout (LapLane *lane, const char *text, double room)
{
  g_autoptr (PangoLayout) layout = NULL;
  PangoAttrList *attrs;
  int width;

  if (room < LEAST)
    return NULL;
  layout = lap_lane_layout (lane, text, room);
  attrs = pango_attr_list_new ();
  pango_attr_list_insert (attrs, pango_attr_weight_new (PANGO_WEIGHT_BOLD));
  pango_layout_set_attributes (layout, attrs);
  pango_attr_list_unref (attrs);
  pango_layout_get_pixel_size (layout, &width, NULL);
  return pango_layout_is_ellipsized (layout) && width < 2 * LEAST ? NULL : g_steal_pointer (&layout);
}

/* A bracket over @from to @to in a row at @y, broken for its text, which stays in view as long as there is room. */
static void
draw_bracket (LapLane *lane, GtkSnapshot *snapshot, double from, double to, int y, const char *text, LapColour colour)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  double left = round (MIN (from, to)) + GAP, right = round (MAX (from, to)) - GAP;
  double seen_left = MAX (left, 0), seen_right = MIN (right, axis->view), x;
  int middle = y + lap_lane_line (lane) / 2 + 1, width;
  GdkRGBA ink = lap_colour (colour);
  g_autoptr (PangoLayout) layout = NULL;

  if (right <= left || seen_right <= seen_left)
    return;
  lap_paint_rect (snapshot, &ink, left, middle, LINE, FOOT + 1);
  lap_paint_rect (snapshot, &ink, right - LINE, middle, LINE, FOOT + 1);
  layout = bracket_layout (lane, text, seen_right - seen_left - 2 * (PAD + BEFORE));
  if (layout == NULL) {
    lap_paint_rect (snapshot, &ink, left, middle, right - left, LINE);
    return;
  }
  pango_layout_get_pixel_size (layout, &width, NULL);
  x = axis->mirrored ? seen_right - BEFORE - PAD - width : seen_left + BEFORE + PAD;
  lap_paint_rect (snapshot, &ink, left, middle, x - PAD - left, LINE);
  lap_paint_rect (snapshot, &ink, x + width + PAD, middle, right - x - width - PAD, LINE);
  pango_layout_set_width (layout, width * PANGO_SCALE);
  lap_paint_text (snapshot, layout, &ink, x, y);
}

static char *
part_text (const LapPart *part)
{
  /* Translators: the title of a part and how often it is gone through. */
  return part->rounds > 1 ? g_strdup_printf (_("%1$s × %2$d"), lap_part_title (part), part->rounds)
                          : g_strdup (lap_part_title (part));
}

static gboolean
is_seen (const LapAxis *axis, double from, double to)
{
  return MAX (from, to) > 0 && MIN (from, to) < axis->view;
}

/* A ring round the bracket that the keys are at. */
static void
draw_focus (LapPartsLane *self, GtkSnapshot *snapshot, int height)
{
  const LapAxis *axis = lap_lane_context (LAP_LANE (self))->axis;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  double a, b;
  cairo_t *cr;

  if (!gtk_widget_has_visible_focus (GTK_WIDGET (self)) || self->at >= axis->n)
    return;
  a = lap_axis_x (axis, axis->pieces[self->at].start);
  b = lap_axis_x (axis, axis->pieces[self->at].end);
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (MIN (a, b), 0, ABS (b - a), height));
  lap_paint_box (cr, NULL, &ink, 2, 4, MIN (a, b), 0, ABS (b - a), height);
  cairo_destroy (cr);
}

static void
lap_parts_lane_draw (LapLane *lane, GtkSnapshot *snapshot, int width, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  const LapTimeline *timeline = context->score->timeline;
  int row = row_height (lap_lane_line (lane));

  for (guint i = 0; i < timeline->n_parts; i++) {
    const LapStretch *part = &timeline->parts[i];
    double from = lap_axis_x (context->axis, part->start), to = lap_axis_x (context->axis, part->end);
    g_autofree char *text = NULL;

    if (!is_seen (context->axis, from, to))
      continue;
    text = part_text (part->part);
    draw_bracket (lane, snapshot, from, to, 4, text, LAP_COLOUR_INK);
  }
  for (guint i = 0; i < context->score->n_rounds; i++) {
    const LapRoundBox *round = &context->score->rounds[i];
    double from = lap_axis_x (context->axis, round->start), to = lap_axis_x (context->axis, round->end);
    g_autofree char *text = NULL;

    if (!is_seen (context->axis, from, to))
      continue;
    text = ABS (to - from) > 120 ? g_strdup_printf (_("Round %d"), round->round)
                                 : g_strdup_printf ("%d", round->round);
    draw_bracket (lane, snapshot, from, to, row + 4, text, LAP_COLOUR_WORK);
  }
  draw_focus (LAP_PARTS_LANE (lane), snapshot, height);
}

static void
open_at (LapPartsLane *self, guint index, gboolean whole, gboolean keep)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  const LapPiece *piece = lap_folds_nth (context, index);

  if (piece != NULL)
    lap_folds_open (context, piece->part, whole ? 0 : piece->round, keep);
}

/* The upper row has the parts, the lower one their rounds. */
static void
pressed_cb (LapPartsLane *self, int n, double x, double y, GtkGesture *click)
{
  const LapAxis *axis = lap_lane_context (LAP_LANE (self))->axis;
  GdkModifierType state = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (click));
  gboolean upper = y < row_height (lap_lane_line (LAP_LANE (self))) + 4;

  if (axis->n == 0)
    return;
  self->at = lap_axis_piece_at (axis, lap_axis_second (axis, x));
  open_at (self, self->at, upper, (state & GDK_SHIFT_MASK) != 0);
}

static void
tell_place (LapPartsLane *self)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  const LapPiece *piece = lap_folds_nth (context, self->at);
  g_autofree char *label = NULL;
  const char *title;

  if (piece == NULL)
    return;
  title = lap_part_title (context->score->timeline->parts[piece->part].part);
  /* Translators: a part and one of its rounds, as they are spoken. */
  label = piece->round > 0 ? g_strdup_printf (_("%1$s, round %2$d"), title, piece->round) : g_strdup (title);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  gtk_accessible_update_state (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_STATE_EXPANDED,
                               !context->axis->pieces[self->at].folded, -1);
}

static void
walk (LapPartsLane *self, int by)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  gint64 to = (gint64) self->at + by;

  if (to < 0 || to >= context->axis->n) {
    gtk_widget_error_bell (GTK_WIDGET (self));
    return;
  }
  self->at = to;
  lap_score_reveal (context, context->axis->pieces[to].start, context->axis->pieces[to].start + 1);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static gboolean
key_cb (LapPartsLane *self, guint key, guint code, GdkModifierType state)
{
  int forward = lap_lane_context (LAP_LANE (self))->axis->mirrored ? -1 : 1;

  if (key == GDK_KEY_Left)
    walk (self, -forward);
  else if (key == GDK_KEY_Right)
    walk (self, forward);
  else if (key == GDK_KEY_Return || key == GDK_KEY_KP_Enter || key == GDK_KEY_space)
    open_at (self, self->at, FALSE, (state & GDK_SHIFT_MASK) != 0);
  else
    return FALSE;
  tell_place (self);
  return TRUE;
}

static gboolean
tooltip_cb (LapPartsLane *self, int x, int y, gboolean by_keyboard, GtkTooltip *tooltip)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  guint piece = context->axis->n > 0 ? lap_axis_piece_at (context->axis, lap_axis_second (context->axis, x)) : 0;
  g_autofree char *words = NULL;

  if (by_keyboard || context->axis->n == 0)
    return FALSE;
  words = context->axis->pieces[piece].folded ? lap_folds_words (context, piece) : NULL;
  gtk_tooltip_set_text (tooltip, words != NULL ? words : _("Click to open it and fold the rest, with Shift to fold it"));
  return TRUE;
}

static void
lap_parts_lane_class_init (LapPartsLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_parts_lane_height;
  lane_class->draw = lap_parts_lane_draw;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
lap_parts_lane_init (LapPartsLane *self)
{
  GtkGesture *click = gtk_gesture_click_new ();
  GtkEventController *keys = gtk_event_controller_key_new ();

  g_signal_connect_swapped (click, "pressed", G_CALLBACK (pressed_cb), self);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (key_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_has_tooltip (GTK_WIDGET (self), TRUE);
  g_signal_connect (self, "query-tooltip", G_CALLBACK (tooltip_cb), NULL);
  g_signal_connect (self, "notify::has-focus", G_CALLBACK (gtk_widget_queue_draw), NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Parts"), -1);
}

const LapLaneKind lap_lane_parts = { "parts", N_("Parts"), N_("and their rounds"), lap_parts_lane_get_type };
