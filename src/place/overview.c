/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/overview.h"

#include <math.h>

LapAxis *
lap_overview_axis (const LapScore *score, double width, gboolean mirrored)
{
  const LapTimeline *timeline = score->timeline;
  LapAxis *axis = lap_axis_new ();
  g_autoptr (GArray) ends = g_array_new (FALSE, FALSE, sizeof (int));

  for (guint i = 0; i < timeline->n_parts; i++)
    if (timeline->parts[i].end > timeline->parts[i].start)
      g_array_append_val (ends, timeline->parts[i].end);
  lap_axis_set_pieces (axis, (const int *) ends->data, ends->len);
  lap_axis_set_view (axis, width, mirrored);
  lap_axis_zoom_at (axis, lap_axis_fit (axis), mirrored ? width : 0);
  return axis;
}

LapOverviewWindow
lap_overview_window (const LapAxis *strip, const LapAxis *axis)
{
  double a = lap_axis_x (strip, lap_axis_first (axis)), b = lap_axis_x (strip, lap_axis_last (axis));
  int left = lround (MIN (a, b)), right = lround (MAX (a, b)), view = strip->view;
  int width = MIN (MAX (right - left, LAP_WINDOW_LEAST), view);

  return (LapOverviewWindow) { CLAMP (left - (width - (right - left)) / 2, 0, view - width), width };
}

LapOverviewHit
lap_overview_hit (const LapAxis *strip, const LapAxis *axis, double x)
{
  LapOverviewWindow window = lap_overview_window (strip, axis);

  if (x < window.x)
    return strip->mirrored ? LAP_OVERVIEW_AFTER : LAP_OVERVIEW_BEFORE;
  if (x >= window.x + window.width)
    return strip->mirrored ? LAP_OVERVIEW_BEFORE : LAP_OVERVIEW_AFTER;
  return LAP_OVERVIEW_WINDOW;
}

/* @offset, as far as there is content. */
static double
held (const LapAxis *axis, double offset)
{
  return CLAMP (offset, 0, MAX (0, axis->width - axis->view));
}

/* px of the content of @axis before what is at @x of the strip. */
static double
content_at (const LapAxis *strip, const LapAxis *axis, double x)
{
  double place = lap_axis_x (axis, lap_axis_second (strip, x));

  return (axis->mirrored ? axis->view - place : place) + axis->offset;
}

double
lap_overview_offset (const LapAxis *strip, const LapAxis *axis, double x)
{
  return held (axis, content_at (strip, axis, x));
}

double
lap_overview_centre (const LapAxis *strip, const LapAxis *axis, double x)
{
  return held (axis, content_at (strip, axis, x) - axis->view / 2);
}
