/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The effort lane: the curve over the session, and over main parts the wanted band as dots between two lines. Where
 * the curve stays below the band, upright lines fill what is missing. An estimate for the group, and it says so.
 */
#include "ui/palette.h"
#include "ui/score/lane.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define LAP_TYPE_EFFORT_LANE (lap_effort_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapEffortLane, lap_effort_lane, LAP, EFFORT_LANE, LapLane)

struct _LapEffortLane {
  LapLane parent_instance;
};

G_DEFINE_FINAL_TYPE (LapEffortLane, lap_effort_lane, LAP_TYPE_LANE)

#define PAD  4    /* px above and below */
#define STEP 2.0  /* px from one point of the curve to the next */
#define DOTS 6    /* px from dot to dot */
#define MISS 4.0  /* px between the lines of what is missing */

static int
lap_effort_lane_height (LapLane *lane, int line)
{
  return 4 * line + 2 * PAD;
}

static int
lap_effort_lane_more (LapLane *lane, int line)
{
  return 6 * line;
}

/* px from the top for a share of the reserve. */
static double
level (double x, int height)
{
  return PAD + (1 - x) * (height - 2 * PAD);
}

static void
draw_band (cairo_t *cr, const LapAxis *axis, const LapEffort *effort, const LapStretch *part, int height)
{
  GdkRGBA ink = lap_colour (LAP_COLOUR_EFFORT);
  double a = lap_axis_x (axis, part->start), b = lap_axis_x (axis, part->end);
  double from = MAX (MIN (a, b), 0), to = MIN (MAX (a, b), axis->view);
  double top = level (effort->high, height), foot = level (effort->low, height);

  if (to <= from)
    return;
  ink.alpha = 0.08;
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_rectangle (cr, from, top, to - from, foot - top);
  cairo_fill (cr);
  ink.alpha = 0.45;
  /* Dots hang on whole steps of the content, so that they scroll with it. */
  lap_paint_dots (cr, &ink, DOTS, round (MIN (a, b)), round (top), from, round (top), to - from, foot - top);
}

static double
effort_under (const LapAxis *axis, const LapEffort *effort, double x)
{
  return lap_effort_at (effort, CLAMP (lap_axis_second (axis, x), 0, effort->timeline->length));
}

/* Upright lines from the curve up to the band, wherever a main part stays below it. */
static void
draw_missing (cairo_t *cr, const LapAxis *axis, const LapEffort *effort, const LapStretch *part, int height)
{
  GdkRGBA ink = lap_colour (LAP_COLOUR_EFFORT);
  double a = lap_axis_x (axis, part->start), b = lap_axis_x (axis, part->end);
  double from = MAX (MIN (a, b), 0), to = MIN (MAX (a, b), axis->view);

  gdk_cairo_set_source_rgba (cr, &ink);
  /* They stand on whole steps of the content, so that they scroll with it. */
  for (double x = from + MISS - fmod (from - MIN (a, b), MISS); x < to; x += MISS) {
    double now = effort_under (axis, effort, x);

    if (now < effort->low)
      cairo_rectangle (cr, (int) x, level (effort->low, height), 1, level (now, height) - level (effort->low, height));
  }
  cairo_fill (cr);
}

static void
draw_curve (cairo_t *cr, const LapAxis *axis, const LapEffort *effort, int height)
{
  double a = lap_axis_x (axis, 0), b = lap_axis_x (axis, axis->length);
  double from = MAX (MIN (a, b), 0), to = MIN (MAX (a, b), axis->view);

  for (double x = from; x <= to; x += STEP)
    cairo_line_to (cr, x, level (effort_under (axis, effort, x), height));
  cairo_set_line_width (cr, 2);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_BEVEL);
  cairo_stroke (cr);
}

static void
lap_effort_lane_paint (LapLane *lane, cairo_t *cr, const LapAxis *axis, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  const LapEffort *effort = lap_checkup_effort (lap_document_checkup (context->document));
  const LapTimeline *timeline = context->score->timeline;
  GdkRGBA ink = lap_colour (LAP_COLOUR_EFFORT);

  if (effort == NULL || timeline->length == 0)
    return;
  for (guint i = 0; i < timeline->n_parts; i++)
    if (timeline->parts[i].part->kind == LAP_PART_MAIN) {
      draw_band (cr, axis, effort, &timeline->parts[i], height);
      draw_missing (cr, axis, effort, &timeline->parts[i], height);
    }
  gdk_cairo_set_source_rgba (cr, &ink);
  draw_curve (cr, axis, effort, height);
}

static void
lap_effort_lane_preview (LapLane *lane, cairo_t *cr, const LapScore *score, const LapCheckup *checkup, int height)
{
  if (score->timeline->length > 0)
    draw_curve (cr, lap_lane_context (lane)->axis, lap_checkup_effort (checkup), height);
}

static int
lap_effort_lane_mark_y (LapLane *lane, const LapWarning *warning, int height)
{
  return height - lap_marks_size (lap_text_line (GTK_WIDGET (lane))) / 2 - 1;
}

static void
lap_effort_lane_class_init (LapEffortLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_effort_lane_height;
  lane_class->more = lap_effort_lane_more;
  lane_class->paint = lap_effort_lane_paint;
  lane_class->preview = lap_effort_lane_preview;
  lane_class->marks = &lap_lane_effort;
  lane_class->mark_y = lap_effort_lane_mark_y;
}

static void
lap_effort_lane_init (LapEffortLane *self)
{
}

const LapLaneKind lap_lane_effort = {
  "effort", N_("Effort"), N_("an estimate, and the band that is wanted"), lap_effort_lane_get_type,
};
