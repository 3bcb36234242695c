/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/landing-paint.h"

#include "ui/mark.h"
#include "ui/palette.h"
#include "ui/score/block.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"

#define CARET 3  /* px */
#define NAMED 40 /* px from which a ghost has its name */

/* px of the view: where it begins in time, and how wide it is there. */
static void
span_of (LapLane *lane, double *x, double *width)
{
  LapScoreContext *context = lap_lane_context (lane);
  const LapAxis *axis = context->axis;

  if (context->landing->place.onto != LAP_NO_BOX) {
    LapPlaced placed = lap_score_place (context->score, axis, context->landing->place.onto);

    *x = axis->mirrored ? placed.x + placed.width : placed.x;
    *width = placed.width;
    return;
  }
  *x = lap_axis_x (axis, context->landing->place.second);
  *width = lap_landing_seconds (context->landing) * axis->zoom;
}

static void
dashed (cairo_t *cr, const GdkRGBA *fill, const GdkRGBA *stroke, double x, double y, double width, double height)
{
  gdk_cairo_set_source_rgba (cr, fill);
  cairo_rectangle (cr, x, y, width, height);
  cairo_fill (cr);
  gdk_cairo_set_source_rgba (cr, stroke);
  cairo_set_line_width (cr, 2);
  cairo_set_dash (cr, (double[]) { 5, 3 }, 2, 0);
  cairo_rectangle (cr, x + 1, y + 1, MAX (width - 2, 1), height - 2);
  cairo_stroke (cr);
}

static void
draw_ghost (LapLane *lane, cairo_t *cr, const LapGhost *ghost, double x, int height)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  double width = MAX (ghost->seconds * axis->zoom, 4), body = MAX (ghost->body * axis->zoom, 2);
  double left = axis->mirrored ? x - width : x;
  GdkRGBA paper = lap_colour (LAP_COLOUR_PAPER), accent = lap_colour (LAP_COLOUR_WORK), tint = lap_colour (LAP_COLOUR_WORK2);
  g_autoptr (PangoLayout) layout = NULL;
  int top, ground;

  paper.alpha = 0.85;
  lap_block_widget_ground (lap_lane_line (lane), height, &top, &ground);
  dashed (cr, &paper, &accent, left, 0, width, height);
  dashed (cr, &tint, &accent, axis->mirrored ? x - body : x, top, body, ground);
  lap_paint_hatch (cr, LAP_HATCH_REST, &accent, axis->mirrored ? left : x + body, top + ground / 4, width - body,
                   ground / 2);
  if (width < NAMED)
    return;
  layout = lap_lane_layout (lane, ghost->name, width - 12);
  pango_layout_set_height (layout, -2);
  pango_layout_set_wrap (layout, PANGO_WRAP_WORD_CHAR);
  lap_paint_layout (cr, layout, &accent, left + 6, top + ground + 3);
}

void
lap_landing_draw_ghosts (LapLane *lane, GtkSnapshot *snapshot, int height)
{
  const LapLanding *landing = lap_lane_context (lane)->landing;
  const LapAxis *axis = lap_lane_context (lane)->axis;
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, axis->view, height));
  double x, width;

  span_of (lane, &x, &width);
  for (guint i = 0; i < landing->ghosts->len; i++) {
    const LapGhost *ghost = &g_array_index (landing->ghosts, LapGhost, i);

    draw_ghost (lane, cr, ghost, x, height);
    x += (axis->mirrored ? -1 : 1) * ghost->seconds * axis->zoom;
  }
  cairo_destroy (cr);
}

/* The most severe of the new warnings that @lane shows, or NULL. */
static const LapWarning *
fresh_in (LapLane *lane, const LapLanding *landing)
{
  const LapLaneKind *marks = LAP_LANE_GET_CLASS (lane)->marks;

  for (guint i = 0; marks != NULL && i < landing->fresh->len; i++) {
    const LapWarning *warning = lap_checkup_nth (landing->checkup, g_array_index (landing->fresh, guint, i));

    if (lap_marks_shows (marks->id, warning->check->id))
      return warning;
  }
  return NULL;
}

static void
draw_fresh (LapLane *lane, cairo_t *cr, const LapWarning *warning, double middle, int height)
{
  int size = lap_marks_size (lap_lane_line (lane));
  g_autoptr (PangoLayout) layout = lap_lane_layout (lane, "?", -1);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  int y = height / 2;

  lap_mark_paint (cr, warning->severity, layout, middle - size / 2.0, y - size / 2.0, size);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 1.5);
  cairo_set_dash (cr, (double[]) { 3, 3 }, 2, 0);
  cairo_rectangle (cr, middle - size / 2.0 - 2, y - size / 2.0 - 2, size + 4, size + 4);
  cairo_stroke (cr);
}

void
lap_landing_draw (LapLane *lane, GtkSnapshot *snapshot, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  GdkRGBA accent = lap_colour (LAP_COLOUR_WORK);
  const LapWarning *warning = fresh_in (lane, context->landing);
  double x, width;
  cairo_t *cr;

  if (context->landing->checkup == NULL)
    return;
  span_of (lane, &x, &width);
  if (context->landing->place.onto == LAP_NO_BOX)
    lap_paint_rect (snapshot, &accent, x - CARET / 2.0, 0, CARET, height);
  if (warning == NULL)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, context->axis->view, height));
  draw_fresh (lane, cr, warning, context->axis->mirrored ? x - width / 2 : x + width / 2, height);
  cairo_destroy (cr);
}
