/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * GTK 4.8 doesn't tell assistive technology the value of a widget that isn't its own range, so the label says it too.
 */
#include "ui/score/strip.h"

#include "place/marks.h"
#include "place/overview.h"
#include "ui/letters.h"
#include "ui/mark.h"
#include "ui/palette.h"
#include "ui/score/paint.h"
#include "ui/score/tiles.h"
#include "ui/shortcuts.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>
#include <math.h>

#define MARK     9    /* px of a warning */
#define BODY     10   /* px of work and rest */
#define GAP      2
#define TICK     6    /* px of where a round begins; closer ones are left out */
#define PAD      4    /* px on either side of a part's title */
#define STEP     0.1  /* of the view, that a key or a turn of the wheel travels */
#define PAGE     0.9
#define FAR      1e9  /* px: to either end */

struct _LapStrip {
  GtkWidget        parent_instance;
  LapScoreContext *context;
  LapAxis         *axis;  /* of the strip, NULL until it is drawn anew */
  LapTiles        *tiles;
  guint            type;  /* serial of the type they were painted in */
  double           grab;  /* px of the strip where the view began at the press */
  int              start, end, length; /* seconds that were told */
  char            *words;
};

G_DEFINE_FINAL_TYPE (LapStrip, lap_strip, GTK_TYPE_WIDGET)

static LapAxis *
axis_of (LapStrip *self)
{
  int width = gtk_widget_get_width (GTK_WIDGET (self));
  gboolean mirrored = self->context->axis->mirrored;

  if (self->axis != NULL && self->axis->view == width && self->axis->mirrored == mirrored)
    return self->axis;
  g_clear_pointer (&self->axis, lap_axis_free);
  lap_tiles_clear (self->tiles);
  return self->axis = lap_overview_axis (self->context->score, width, mirrored);
}

static gboolean
is_whole (LapStrip *self)
{
  return self->context->axis->width <= self->context->axis->view;
}

static void
paint_streaks (LapStrip *self, cairo_t *cr, const LapAxis *axis)
{
  static const LapColour colours[LAP_N_STREAKS] = {
    [LAP_STREAK_WORK] = LAP_COLOUR_WORK, [LAP_STREAK_REST] = LAP_COLOUR_LINE,
    [LAP_STREAK_TALK] = LAP_COLOUR_TALK, [LAP_STREAK_PAUSE] = LAP_COLOUR_LINE2,
  };
  g_autoptr (GArray) streaks = lap_score_streaks (self->context->score, axis, G_MAXINT);

  for (guint i = 0; i < streaks->len; i++) {
    const LapStreak *streak = &g_array_index (streaks, LapStreak, i);
    GdkRGBA colour = lap_colour (colours[streak->kind]);
    int low = streak->kind == LAP_STREAK_REST || streak->kind == LAP_STREAK_PAUSE ? BODY / 2 : 0;

    gdk_cairo_set_source_rgba (cr, &colour);
    cairo_rectangle (cr, streak->x, MARK + GAP + low, streak->width, BODY - low);
    cairo_fill (cr);
  }
}

/* Its title where there is room for all of it, after a line where it begins. */
static void
paint_part (LapStrip *self, cairo_t *cr, const LapAxis *axis, const LapStretch *part, PangoLayout *layout, int height)
{
  double a = round (lap_axis_x (axis, part->start)), b = round (lap_axis_x (axis, part->end));
  int width, top = MARK + GAP + BODY;
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE2), ink = lap_colour (LAP_COLOUR_INK2);

  if (MAX (a, b) < 0 || MIN (a, b) > axis->view)
    return;
  gdk_cairo_set_source_rgba (cr, &line);
  cairo_rectangle (cr, axis->mirrored ? a - 1 : a, top, 1, height - top);
  cairo_fill (cr);
  pango_layout_set_text (layout, lap_part_title (part->part), -1);
  pango_layout_get_pixel_size (layout, &width, NULL);
  if (width + 2 * PAD <= ABS (b - a))
    lap_paint_layout (cr, layout, &ink, axis->mirrored ? a - PAD - width : a + PAD, top + GAP);
}

/* A short line where a later round begins, as long as they can be told apart. */
static void
paint_rounds (LapStrip *self, cairo_t *cr, const LapAxis *axis)
{
  const LapScore *score = self->context->score;
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE2);
  double last = -FAR;

  gdk_cairo_set_source_rgba (cr, &line);
  for (guint i = 0; i < score->n_rounds; i++) {
    double x = round (lap_axis_x (axis, score->rounds[i].start));

    if (score->rounds[i].round == 1 || ABS (x - last) < TICK)
      continue;
    cairo_rectangle (cr, axis->mirrored ? x - 1 : x, MARK + GAP + BODY, 1, TICK);
    last = x;
  }
  cairo_fill (cr);
}

static void
paint_warnings (LapStrip *self, cairo_t *cr, const LapAxis *axis)
{
  LapCheckup *checkup = lap_document_checkup (self->context->document);
  g_autoptr (LapMarks) marks = lap_marks_new (checkup, axis, MARK, MARK, 0.5, NULL, NULL);
  g_autoptr (PangoLayout) none = gtk_widget_create_pango_layout (GTK_WIDGET (self), NULL);

  for (guint i = marks->places->len; i-- > 0;) {
    const LapMarkPlace *mark = &g_array_index (marks->places, LapMarkPlace, i);

    lap_mark_paint (cr, lap_checkup_nth (checkup, mark->first)->severity, none, mark->x - MARK / 2.0, 0, MARK);
  }
}

static void
paint_cb (gpointer strip, cairo_t *cr, const LapAxis *axis, int height)
{
  LapStrip *self = strip;
  const LapTimeline *timeline = self->context->score->timeline;
  g_autoptr (PangoLayout) layout = gtk_widget_create_pango_layout (GTK_WIDGET (self), NULL);

  paint_streaks (self, cr, axis);
  for (guint i = 0; i < timeline->n_parts; i++)
    if (timeline->parts[i].end > timeline->parts[i].start)
      paint_part (self, cr, axis, &timeline->parts[i], layout, height);
  paint_rounds (self, cr, axis);
  paint_warnings (self, cr, axis);
}

/* What isn't in view is paler, but for the titles, which are read; what is has a frame. */
static void
draw_window (LapStrip *self, GtkSnapshot *snapshot, int width, int height)
{
  LapOverviewWindow window = lap_overview_window (axis_of (self), self->context->axis);
  GdkRGBA shade = lap_colour (LAP_COLOUR_PAPER), frame = lap_colour (LAP_COLOUR_WORK);
  GskRoundedRect box;

  shade.alpha = 0.55;
  lap_paint_rect (snapshot, &shade, 0, 0, window.x, MARK + GAP + BODY);
  lap_paint_rect (snapshot, &shade, window.x + window.width, 0, width - window.x - window.width, MARK + GAP + BODY);
  gsk_rounded_rect_init_from_rect (&box, &GRAPHENE_RECT_INIT (window.x, 0, window.width, height), 4);
  gtk_snapshot_append_border (snapshot, &box, (float[]) { 2, 2, 2, 2 }, (GdkRGBA[]) { frame, frame, frame, frame });
}

static void
lap_strip_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapStrip *self = LAP_STRIP (widget);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  guint type = pango_context_get_serial (gtk_widget_get_pango_context (widget));

  if (type != self->type)
    lap_tiles_clear (self->tiles);
  self->type = type;
  lap_tiles_draw (self->tiles, snapshot, axis_of (self), height, gtk_widget_get_scale_factor (widget), paint_cb, self);
  if (!is_whole (self))
    draw_window (self, snapshot, width, height);
}

static void
lap_strip_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                   int *least_baseline, int *natural_baseline)
{
  *least = *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 0 : MARK + GAP + BODY + lap_text_line (widget) + 2 * GAP;
}

static void
tell_value (LapStrip *self)
{
  const LapAxis *axis = self->context->axis;
  int start = lround (lap_axis_first (axis));
  int end = lround (lap_axis_last (axis));
  g_autofree char *from = lap_clock_text (start), *to = lap_clock_text (end), *all = lap_clock_text (axis->length);
  g_autofree char *label = NULL;

  if (self->words != NULL && start == self->start && end == self->end && axis->length == self->length)
    return;
  self->start = start;
  self->end = end;
  self->length = axis->length;
  g_free (self->words);
  /* Translators: what is in view, and the length of the session: "5:00 to 12:30 of 30:10". */
  self->words = g_strdup_printf (_("%1$s to %2$s of %3$s"), from, to, all);
  label = g_strdup_printf (_("Overview, %s"), self->words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label,
                                  GTK_ACCESSIBLE_PROPERTY_VALUE_MIN, 0.0,
                                  GTK_ACCESSIBLE_PROPERTY_VALUE_MAX, (double) axis->length,
                                  GTK_ACCESSIBLE_PROPERTY_VALUE_NOW, (double) start,
                                  GTK_ACCESSIBLE_PROPERTY_VALUE_TEXT, self->words, -1);
}

static void
travel_to (LapStrip *self, double offset)
{
  lap_score_scroll_by (self->context, offset - self->context->axis->offset);
}

static void
drag_begin_cb (LapStrip *self, double x, double y, GtkGesture *drag)
{
  const LapAxis *strip = axis_of (self), *axis = self->context->axis;

  if (is_whole (self)) {
    gtk_gesture_set_state (drag, GTK_EVENT_SEQUENCE_DENIED);
    return;
  }
  gtk_gesture_set_state (drag, GTK_EVENT_SEQUENCE_CLAIMED);
  gtk_widget_grab_focus (GTK_WIDGET (self));
  if (lap_overview_hit (strip, axis, x) != LAP_OVERVIEW_WINDOW)
    travel_to (self, lap_overview_centre (strip, axis, x));
  self->grab = lap_axis_x (strip, lap_axis_first (axis));
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), "grabbing");
}

static void
drag_update_cb (LapStrip *self, double dx, double dy, GtkGestureDrag *drag)
{
  travel_to (self, lap_overview_offset (axis_of (self), self->context->axis, self->grab + dx));
}

static void
drag_end_cb (LapStrip *self)
{
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), "grab");
}

static gboolean
scroll_cb (LapStrip *self, double dx, double dy, GtkEventController *controller)
{
  double sign = self->context->axis->mirrored && dx != 0 ? -1 : 1;

  if (gtk_event_controller_get_current_event_state (controller) & GDK_CONTROL_MASK || is_whole (self))
    return FALSE;
  lap_score_scroll_by (self->context, (dx != 0 ? sign * dx : dy) * STEP * self->context->axis->view);
  return TRUE;
}

/* By a key: how far, in views, and whether that is meant from left to right rather than in time. */
static const struct { const char *action; double views; gboolean sideways; } travels[] = {
  { "overview.left", -STEP, TRUE },   { "overview.right", STEP, TRUE }, { "overview.back", -PAGE, FALSE },
  { "overview.on", PAGE, FALSE },     { "overview.first", -FAR, FALSE }, { "overview.last", FAR, FALSE },
};

static void
travel_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapStrip *self = LAP_STRIP (widget);
  guint i = 0;

  while (!g_str_equal (travels[i].action, name))
    i++;
  lap_score_scroll_by (self->context, (travels[i].sideways && self->context->axis->mirrored ? -1 : 1) *
                                        travels[i].views * self->context->axis->view);
}

static gboolean
tooltip_cb (LapStrip *self, int x, int y, gboolean by_keyboard, GtkTooltip *tooltip)
{
  const LapTimeline *timeline = self->context->score->timeline;
  int second = floor (lap_axis_second (axis_of (self), x));
  g_autofree char *clock = lap_clock_text (second), *words = NULL;
  guint part = 0;

  if (by_keyboard || timeline->length == 0)
    return FALSE;
  while (part + 1 < timeline->n_parts && timeline->parts[part].end <= second)
    part++;
  /* Translators: a time on the session's clock and the part it is in. */
  words = g_strdup_printf (_("%1$s, %2$s"), clock, lap_part_title (timeline->parts[part].part));
  gtk_tooltip_set_text (tooltip, words);
  return TRUE;
}

static void
style_cb (LapStrip *self)
{
  lap_tiles_clear (self->tiles);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
context_cb (LapStrip *self, guint change)
{
  if (!(change & (LAP_SCORE_PLAN | LAP_SCORE_AXIS)))
    return;
  if (change & LAP_SCORE_PLAN)
    g_clear_pointer (&self->axis, lap_axis_free);
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), is_whole (self) ? NULL : "grab");
  tell_value (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
lap_strip_finalize (GObject *object)
{
  LapStrip *self = LAP_STRIP (object);

  g_clear_object (&self->context);
  g_clear_pointer (&self->axis, lap_axis_free);
  lap_tiles_free (self->tiles);
  g_free (self->words);
  G_OBJECT_CLASS (lap_strip_parent_class)->finalize (object);
}

static void
lap_strip_class_init (LapStripClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = lap_strip_finalize;
  widget_class->snapshot = lap_strip_snapshot;
  widget_class->measure = lap_strip_measure;
  for (guint i = 0; i < G_N_ELEMENTS (travels); i++)
    gtk_widget_class_install_action (widget_class, travels[i].action, NULL, travel_action);
  lap_shortcuts_bind_class (widget_class, LAP_SCOPE_OVERVIEW);
  gtk_widget_class_set_css_name (widget_class, "strip");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_SCROLLBAR);
}

static void
lap_strip_init (LapStrip *self)
{
  GtkGesture *drag = gtk_gesture_drag_new ();
  GtkEventController *scroll = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);

  self->tiles = lap_tiles_new ();
  g_signal_connect_swapped (drag, "drag-begin", G_CALLBACK (drag_begin_cb), self);
  g_signal_connect_swapped (drag, "drag-update", G_CALLBACK (drag_update_cb), self);
  g_signal_connect_swapped (drag, "drag-end", G_CALLBACK (drag_end_cb), self);
  g_signal_connect_swapped (scroll, "scroll", G_CALLBACK (scroll_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));
  gtk_widget_add_controller (GTK_WIDGET (self), scroll);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_widget_set_has_tooltip (GTK_WIDGET (self), TRUE);
  g_signal_connect (self, "query-tooltip", G_CALLBACK (tooltip_cb), NULL);
}

GtkWidget *
lap_strip_new (void)
{
  return g_object_new (LAP_TYPE_STRIP, NULL);
}

void
lap_strip_set_context (LapStrip *self, LapScoreContext *context)
{
  AdwStyleManager *manager = adw_style_manager_get_default ();

  g_return_if_fail (self->context == NULL);
  self->context = g_object_ref (context);
  g_signal_connect_object (context, "changed", G_CALLBACK (context_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (style_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (manager, "notify::high-contrast", G_CALLBACK (style_cb), self, G_CONNECT_SWAPPED);
  context_cb (self, LAP_SCORE_PLAN);
}

const char *
lap_strip_words (LapStrip *self)
{
  return self->words;
}

guint
lap_strip_n_painted (LapStrip *self)
{
  return lap_tiles_n_painted (self->tiles);
}
