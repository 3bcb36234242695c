/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ruler: a clock over a line with ticks.
 */
#include "ui/score/ruler.h"

#include "ui/palette.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"
#include "ui/score/ruler-walk.h"

#include "place/ticks.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Labels are shaped once and kept: shaping them anew is most of the work of a frame that scrolls. */
struct _LapRulerLane {
  LapLane     parent_instance;
  GHashTable *labels; /* second -> PangoLayout */
  gboolean    film;   /* the film clock, else the session's */
  guint       serial; /* of the type they were shaped in */
};

G_DEFINE_FINAL_TYPE (LapRulerLane, lap_ruler_lane, LAP_TYPE_LANE)

#define LONG_TICK  7
#define SHORT_TICK 4
#define PLEAT      3
/* The widest label, and the room between two. */
#define WIDEST       (50 * 60)
#define WIDEST_HOURS (10 * 3600)
#define BETWEEN 14

#define MOST_KEPT 400

static PangoLayout *
label_of (LapLane *lane, int second)
{
  LapRulerLane *self = LAP_RULER_LANE (lane);
  guint serial = pango_context_get_serial (gtk_widget_get_pango_context (GTK_WIDGET (lane)));
  PangoLayout *layout;
  g_autofree char *text = NULL;

  if (serial != self->serial || g_hash_table_size (self->labels) > MOST_KEPT)
    g_hash_table_remove_all (self->labels);
  self->serial = serial;
  layout = g_hash_table_lookup (self->labels, GINT_TO_POINTER (second));
  if (layout != NULL)
    return layout;
  text = lap_clock_text (second);
  layout = lap_lane_layout (lane, text, -1);
  g_hash_table_insert (self->labels, GINT_TO_POINTER (second), layout);
  return layout;
}

/* Where the line ends; below it there is room for marks. */
static int
line_y (int line)
{
  return line + LONG_TICK + 4;
}

static int
lap_ruler_lane_height (LapLane *lane, int line)
{
  return line_y (line) + lap_marks_size (line) / 2;
}

/* On the line, where all lanes begin. */
static int
lap_ruler_lane_mark_y (LapLane *lane, const LapWarning *warning, int height)
{
  return line_y (lap_text_line (GTK_WIDGET (lane))) - 1;
}

static double
label_room (LapLane *lane)
{
  int end = lap_lane_context (lane)->axis->length + lap_ruler_lane_lead (LAP_RULER_LANE (lane));
  PangoLayout *layout = label_of (lane, end >= 3600 ? WIDEST_HOURS : WIDEST);
  int width;

  pango_layout_get_pixel_size (layout, &width, NULL);
  return width + BETWEEN;
}

/* Centred over its tick, but for the ones at the ends of the session, which stay whole. */
static void
paint_label (LapLane *lane, cairo_t *cr, const LapAxis *axis, const LapTick *tick)
{
  PangoLayout *layout = label_of (lane, tick->second + lap_ruler_lane_lead (LAP_RULER_LANE (lane)));
  double from = lap_axis_x (axis, 0), to = lap_axis_x (axis, axis->length), x;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK2);
  int width;

  pango_layout_get_pixel_size (layout, &width, NULL);
  x = MIN (tick->x - width / 2, MAX (from, to) - width);
  lap_paint_layout (cr, layout, &ink, round (MAX (x, MIN (from, to))), 0);
}

static void
paint_ticks (cairo_t *cr, const GArray *ticks, gboolean labelled, int height)
{
  GdkRGBA colour = lap_colour (labelled ? LAP_COLOUR_INK : LAP_COLOUR_LINE2);
  int size = labelled ? LONG_TICK : SHORT_TICK;

  gdk_cairo_set_source_rgba (cr, &colour);
  for (guint i = 0; i < ticks->len; i++) {
    const LapTick *tick = &g_array_index (ticks, LapTick, i);

    if (tick->labelled != labelled)
      continue;
    cairo_rectangle (cr, floor (tick->x), height - size - 1, 1, size);
  }
  cairo_fill (cr);
}

/* Over what is folded the line is pleated: no distance is read there. */
static void
paint_pleats (cairo_t *cr, const LapAxis *axis, const LapAxisPiece *piece, int height)
{
  double a = round (lap_axis_x (axis, piece->start)), b = round (lap_axis_x (axis, piece->end)), x = MIN (a, b);
  gboolean up = TRUE;

  if (x > axis->view || MAX (a, b) < 0)
    return;
  cairo_move_to (cr, x, height - 1);
  for (; x < MAX (a, b); x += PLEAT, up = !up)
    cairo_line_to (cr, MIN (x + PLEAT, MAX (a, b)), up ? height - 1 - PLEAT : height - 1);
  cairo_set_line_width (cr, 1.5);
  cairo_stroke (cr);
}

static void
lap_ruler_lane_paint (LapLane *lane, cairo_t *cr, const LapAxis *axis, int whole)
{
  int height = line_y (lap_text_line (GTK_WIDGET (lane)));
  g_autoptr (GArray) ticks = lap_ticks (axis, lap_ruler_lane_lead (LAP_RULER_LANE (lane)), label_room (lane));
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  double from = lap_axis_x (axis, 0), to = lap_axis_x (axis, axis->length);

  paint_ticks (cr, ticks, FALSE, height);
  paint_ticks (cr, ticks, TRUE, height);
  for (guint i = 0; i < ticks->len; i++)
    if (g_array_index (ticks, LapTick, i).labelled)
      paint_label (lane, cr, axis, &g_array_index (ticks, LapTick, i));
  from = CLAMP (from, 0, axis->view);
  to = CLAMP (to, 0, axis->view);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_rectangle (cr, MIN (from, to), height - 1.5, ABS (to - from), 1.5);
  cairo_fill (cr);
  for (guint i = 0; i < axis->n; i++)
    if (axis->pieces[i].folded)
      paint_pleats (cr, axis, &axis->pieces[i], height);
}

static void
lap_ruler_lane_update (LapLane *lane, LapScoreChange change)
{
  if (change & (LAP_SCORE_PLAN | LAP_SCORE_AXIS))
    lap_ruler_walk_update (lane);
  LAP_LANE_CLASS (lap_ruler_lane_parent_class)->update (lane, change);
}

static void
lap_ruler_lane_draw (LapLane *lane, GtkSnapshot *snapshot, int width, int height)
{
  lap_ruler_walk_draw (lane, snapshot);
}

static void
focus_cb (LapLane *lane)
{
  lap_ruler_walk_update (lane);
  gtk_widget_queue_draw (GTK_WIDGET (lane));
}

static void
lap_ruler_lane_finalize (GObject *object)
{
  g_hash_table_unref (LAP_RULER_LANE (object)->labels);
  G_OBJECT_CLASS (lap_ruler_lane_parent_class)->finalize (object);
}

static void
lap_ruler_lane_class_init (LapRulerLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = lap_ruler_lane_finalize;

  lane_class->height = lap_ruler_lane_height;
  lane_class->paint = lap_ruler_lane_paint;
  lane_class->marks = &lap_lane_ruler;
  lane_class->update = lap_ruler_lane_update;
  lane_class->draw = lap_ruler_lane_draw;
  lap_ruler_walk_install (GTK_WIDGET_CLASS (klass));
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
  lane_class->mark_y = lap_ruler_lane_mark_y;
}

static void
lap_ruler_lane_init (LapRulerLane *self)
{
  self->labels = g_hash_table_new_full (NULL, NULL, NULL, g_object_unref);
  g_signal_connect (self, "notify::has-focus", G_CALLBACK (focus_cb), NULL);
}

void
lap_ruler_lane_set_film (LapRulerLane *self, gboolean film)
{
  if (self->film == film)
    return;
  self->film = film;
  lap_lane_refresh (LAP_LANE (self));
}

int
lap_ruler_lane_lead (LapRulerLane *self)
{
  return self->film ? lround (lap_document_session (lap_lane_context (LAP_LANE (self))->document)->lead) : 0;
}

const LapLaneKind lap_lane_ruler = {
  "ruler", N_("Session clock"), NULL, lap_ruler_lane_get_type, lap_ruler_label_new,
};
