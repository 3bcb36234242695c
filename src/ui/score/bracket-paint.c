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
#define SIGN   7   /* px of the sign of what is open or folded */
#define BESIDE 4   /* px between it and the text */

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

  if (room < LEAST)
    return NULL;
  layout = lap_lane_layout (lane, text, room);
  attrs = pango_attr_list_new ();
  pango_attr_list_insert (attrs, pango_attr_weight_new (PANGO_WEIGHT_BOLD));
  pango_layout_set_attributes (layout, attrs);
  pango_attr_list_unref (attrs);
  return pango_layout_is_ellipsized (layout) ? NULL : g_steal_pointer (&layout);
}

static gboolean
is_folded (const LapAxis *axis, const LapBracket *bracket)
{
  return axis->pieces[lap_axis_piece_at (axis, bracket->start)].folded &&
         axis->pieces[lap_axis_piece_at (axis, bracket->end - 1)].folded;
}

/* Points down where it is open, on in time where it is folded. */
static void
draw_sign (GtkSnapshot *snapshot, const LapAxis *axis, gboolean folded, double x, double middle, const GdkRGBA *ink)
{
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (x, middle - SIGN / 2.0, SIGN, SIGN));

  cairo_translate (cr, x + SIGN / 2.0, middle);
  if (axis->mirrored)
    cairo_scale (cr, -1, 1);
  if (!folded)
    cairo_rotate (cr, G_PI_2);
  cairo_move_to (cr, -SIGN / 2.0 + 1, -SIGN / 2.0);
  cairo_line_to (cr, SIGN / 2.0, 0);
  cairo_line_to (cr, -SIGN / 2.0 + 1, SIGN / 2.0);
  gdk_cairo_set_source_rgba (cr, ink);
  cairo_fill (cr);
  cairo_destroy (cr);
}

/* A bracket over @from to @to in a row at @y, broken for a sign of whether it is folded and for its text, both of which
 * stay in view. What there is no room for is left out, whole. */
static void
draw_bracket (LapLane *lane, GtkSnapshot *snapshot, const LapBracket *bracket, double from, double to, int y,
              const char *text, LapColour colour)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  double left = round (MIN (from, to)) + GAP, right = round (MAX (from, to)) - GAP;
  double seen_left = MAX (left, 0), seen_right = MIN (right, axis->view), room = seen_right - seen_left - 2 * (PAD + BEFORE), x;
  int middle = y + lap_text_line (GTK_WIDGET (lane)) / 2 + 1, width = 0, all = axis->n > 1 ? SIGN : 0;
  GdkRGBA ink = lap_colour (colour);
  g_autoptr (PangoLayout) layout = NULL;

  if (right <= left || seen_right <= seen_left)
    return;
  lap_paint_rect (snapshot, &ink, left, middle, LINE, FOOT + 1);
  lap_paint_rect (snapshot, &ink, right - LINE, middle, LINE, FOOT + 1);
  layout = bracket_layout (lane, text, room - all - (all > 0 ? BESIDE : 0));
  if (layout != NULL) {
    pango_layout_get_pixel_size (layout, &width, NULL);
    all += width + (all > 0 ? BESIDE : 0);
  }
  if (all == 0 || all > room) {
    lap_paint_rect (snapshot, &ink, left, middle, right - left, LINE);
    return;
  }
  x = axis->mirrored ? seen_right - BEFORE - PAD - all : seen_left + BEFORE + PAD;
  lap_paint_rect (snapshot, &ink, left, middle, x - PAD - left, LINE);
  lap_paint_rect (snapshot, &ink, x + all + PAD, middle, right - x - all - PAD, LINE);
  if (axis->n > 1)
    draw_sign (snapshot, axis, is_folded (axis, bracket), axis->mirrored ? x + all - SIGN : x, middle, &ink);
  if (layout == NULL)
    return;
  pango_layout_set_width (layout, width * PANGO_SCALE);
  lap_paint_text (snapshot, layout, &ink, axis->mirrored ? x : x + all - width, y);
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
  int line = lap_text_line (GTK_WIDGET (lane)), y = lap_bracket_is_upper (bracket) ? 4 : lap_brackets_row (line) + 4, width;
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

  draw_bracket (lane, snapshot, bracket, from, to, 4, text, LAP_COLOUR_INK);
}

static void
draw_round (LapLane *lane, GtkSnapshot *snapshot, const LapBracket *bracket, double from, double to)
{
  const char *format = ABS (to - from) > 120 ? _("Round %d") : "%d";
  g_autofree char *text = g_strdup_printf (format, bracket->round);

  draw_bracket (lane, snapshot, bracket, from, to, lap_brackets_row (lap_text_line (GTK_WIDGET (lane))) + 4, text,
                LAP_COLOUR_WORK);
}

void
lap_brackets_draw (LapLane *lane, const LapBrackets *brackets, GtkSnapshot *snapshot)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  guint first, end;

  lap_brackets_visible (brackets, axis, &first, &end);
  for (guint i = first; i < end; i++) {
    const LapBracket *bracket = &brackets->all[i];
    double from, to;

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
