/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The parts: a bracket and title for each, and under it a bracket and number for each round.
 */
#include "ui/palette.h"
#include "ui/score/lane.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define LAP_TYPE_PARTS_LANE (lap_parts_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapPartsLane, lap_parts_lane, LAP, PARTS_LANE, LapLane)

struct _LapPartsLane {
  LapLane parent_instance;
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
}

static void
lap_parts_lane_class_init (LapPartsLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_parts_lane_height;
  lane_class->draw = lap_parts_lane_draw;
}

static void
lap_parts_lane_init (LapPartsLane *self)
{
}

const LapLaneKind lap_lane_parts = { "parts", N_("Parts"), N_("and their rounds"), lap_parts_lane_get_type };
