/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ruler: the session clock under a line with ticks.
 */
#include "ui/palette.h"
#include "ui/score/lane.h"
#include "ui/score/paint.h"

#include "place/ticks.h"

#include <glib/gi18n-lib.h>

#define LAP_TYPE_RULER_LANE (lap_ruler_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapRulerLane, lap_ruler_lane, LAP, RULER_LANE, LapLane)

struct _LapRulerLane {
  LapLane parent_instance;
};

G_DEFINE_FINAL_TYPE (LapRulerLane, lap_ruler_lane, LAP_TYPE_LANE)

#define LONG_TICK  7
#define SHORT_TICK 4
/* The widest label, and the room between two. */
#define WIDEST "0:00:00"
#define BETWEEN 14

static int
lap_ruler_lane_height (LapLane *lane, int line)
{
  return line + LONG_TICK + 4;
}

static double
label_room (LapLane *lane)
{
  gboolean hours = lap_lane_context (lane)->axis->length >= 3600;
  g_autoptr (PangoLayout) layout = lap_lane_layout (lane, hours ? WIDEST : "00:00", -1);
  int width;

  pango_layout_get_pixel_size (layout, &width, NULL);
  return width + BETWEEN;
}

static void
draw_label (LapLane *lane, GtkSnapshot *snapshot, const LapTick *tick, int lane_width)
{
  g_autofree char *text = lap_clock_text (tick->second);
  g_autoptr (PangoLayout) layout = lap_lane_layout (lane, text, -1);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK2);
  int width;
  double x;

  pango_layout_get_pixel_size (layout, &width, NULL);
  /* Centred over its tick, but for the ones at the edges of the view, which stay whole. */
  x = tick->x - width / 2;
  if (x < 0 && tick->x >= 0)
    x = 0;
  else if (x + width > lane_width && tick->x <= lane_width)
    x = lane_width - width;
  lap_paint_text (snapshot, layout, &ink, (int) x, 0);
}

static void
lap_ruler_lane_draw (LapLane *lane, GtkSnapshot *snapshot, int width, int height)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  g_autoptr (GArray) ticks = lap_ticks (axis, label_room (lane));
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK), line = lap_colour (LAP_COLOUR_LINE2);
  double from = lap_axis_x (axis, 0), to = lap_axis_x (axis, axis->length);

  for (guint i = 0; i < ticks->len; i++) {
    const LapTick *tick = &g_array_index (ticks, LapTick, i);
    int size = tick->labelled ? LONG_TICK : SHORT_TICK;

    lap_paint_rect (snapshot, tick->labelled ? &ink : &line, (int) tick->x, height - size - 1, 1, size);
    if (tick->labelled)
      draw_label (lane, snapshot, tick, width);
  }
  from = CLAMP (from, 0, width);
  to = CLAMP (to, 0, width);
  lap_paint_rect (snapshot, &ink, MIN (from, to), height - 1.5, ABS (to - from), 1.5);
}

static void
lap_ruler_lane_class_init (LapRulerLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_ruler_lane_height;
  lane_class->draw = lap_ruler_lane_draw;
}

static void
lap_ruler_lane_init (LapRulerLane *self)
{
}

const LapLaneKind lap_lane_ruler = { "ruler", N_("Session clock"), NULL, lap_ruler_lane_get_type };
