/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/bracket-paint.h"

#include "ui/palette.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define LINE   1.5 /* px of a bracket */
#define FOOT   5   /* px its ends reach down */
#define GAP    2   /* px on either side */
#define PAD    5   /* px round its text */
#define BEFORE 8   /* px of bracket before its text */
#define LEAST  14  /* px that a text needs at least */

int
lap_brackets_row (int line)
{
  return line + 7;
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

static void
hatch (GtkSnapshot *snapshot, double x, int y, double width, int height)
{
  GdkRGBA stroke = lap_colour (LAP_COLOUR_LINE2);
  cairo_t *cr;

  if (width < 1)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (x, y, width, height));
  lap_paint_hatch (cr, LAP_HATCH_REST, &stroke, x, y, width, height);
  cairo_destroy (cr);
}

/* A rest is hatched like the tail of a block, on either side of its seconds where there is room for them. */
static void
draw_rest (LapLane *lane, GtkSnapshot *snapshot, const LapBracket *bracket, double a, double b)
{
  int line = lap_lane_line (lane), y = lap_bracket_is_upper (bracket) ? 4 : lap_brackets_row (line) + 4, width;
  double left = MAX (round (MIN (a, b)), 0), right = MIN (round (MAX (a, b)), lap_lane_context (lane)->axis->view);
  int middle = y + line / 2, height = FOOT + 3;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK2);
  g_autoptr (PangoLayout) layout = NULL;
  g_autofree char *text = NULL;
  double x;

  if (right - left < 1)
    return;
  text = g_strdup_printf ("%d", bracket->end - bracket->start);
  layout = lap_lane_layout (lane, text, -1);
  pango_layout_get_pixel_size (layout, &width, NULL);
  x = left + (right - left - width) / 2;
  if (x < left + GAP) {
    hatch (snapshot, left, middle - height / 2, right - left, height);
    return;
  }
  hatch (snapshot, left, middle - height / 2, x - GAP - left, height);
  lap_paint_text (snapshot, layout, &ink, x, y);
  hatch (snapshot, x + width + GAP, middle - height / 2, right - x - width - GAP, height);
}

static void
draw_part (LapLane *lane, GtkSnapshot *snapshot, const LapBracket *bracket, double from, double to)
{
  const LapPart *part = lap_lane_context (lane)->score->timeline->parts[bracket->part].part;
  g_autofree char *text = part_text (part);

  draw_bracket (lane, snapshot, from, to, 4, text, LAP_COLOUR_INK);
}

static void
draw_round (LapLane *lane, GtkSnapshot *snapshot, const LapBracket *bracket, double from, double to)
{
  const char *format = ABS (to - from) > 120 ? _("Round %d") : "%d";
  g_autofree char *text = g_strdup_printf (format, bracket->round);

  draw_bracket (lane, snapshot, from, to, lap_brackets_row (lap_lane_line (lane)) + 4, text, LAP_COLOUR_WORK);
}

void
lap_brackets_draw (LapLane *lane, const LapBrackets *brackets, GtkSnapshot *snapshot)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  double first = lap_axis_second (axis, axis->mirrored ? axis->view : 0);
  double last = lap_axis_second (axis, axis->mirrored ? 0 : axis->view);

  for (guint i = 0; i < brackets->n; i++) {
    const LapBracket *bracket = &brackets->all[i];
    double from, to;

    if (bracket->end < first || bracket->start > last)
      continue;
    from = lap_axis_x (axis, bracket->start);
    to = lap_axis_x (axis, bracket->end);
    if (bracket->kind == LAP_BRACKET_PART)
      draw_part (lane, snapshot, bracket, from, to);
    else if (bracket->kind == LAP_BRACKET_ROUND)
      draw_round (lane, snapshot, bracket, from, to);
    else
      draw_rest (lane, snapshot, bracket, from, to);
  }
}
