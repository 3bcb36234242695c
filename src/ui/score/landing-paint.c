/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/landing-paint.h"

#include "ui/figures.h"
#include "ui/mark.h"
#include "ui/picture.h"
#include "ui/score/block.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define CARET 3  /* px */
#define NAMED 40 /* px from which a ghost has its name */
#define FIGURED 44 /* px from which it has its figure */
#define BESIDE 5 /* px from the caret to a mark */
#define PAD    5 /* px about its words */
#define MARGIN 8 /* px about a figure */

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

void
lap_landing_dashes (cairo_t *cr, LapColour fill)
{
  GdkRGBA colour = lap_colour (fill), accent = lap_colour (LAP_COLOUR_WORK);

  colour.alpha = 0.85;
  cairo_save (cr);
  gdk_cairo_set_source_rgba (cr, &colour);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &accent);
  cairo_set_line_width (cr, 2);
  cairo_set_dash (cr, (double[]) { 5, 3 }, 2, 0);
  cairo_stroke (cr);
  cairo_restore (cr);
}

static void
dashed (cairo_t *cr, LapColour fill, double x, double y, double width, double height)
{
  cairo_rectangle (cr, x + 1, y + 1, MAX (width - 2, 1), height - 2);
  lap_landing_dashes (cr, fill);
}

/* The figure stands on the body, pale as what isn't there yet. */
static void
draw_figure (LapLane *lane, GtkSnapshot *snapshot, const LapGhost *ghost, double x, int height)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  double width = ghost->seconds * axis->zoom, body = ghost->body * axis->zoom, left = axis->mirrored ? x - body : x;
  int top, ground, wide, high;
  GskRenderNode *picture;

  if (ghost->shown == NULL || width < FIGURED)
    return;
  lap_block_widget_ground (lap_text_line (GTK_WIDGET (lane)), height, &top, &ground);
  high = top - MARGIN;
  wide = (int) MIN (width - MARGIN, 2 * high) / 8 * 8;
  picture = lap_figure_picture (lap_document_catalogue (lap_lane_context (lane)->document), ghost->shown, wide, high,
                                gtk_widget_get_scale_factor (GTK_WIDGET (lane)), TRUE);
  if (picture != NULL)
    lap_picture_draw (picture, snapshot, MAX (left + (body - wide) / 2, (axis->mirrored ? x - width : x) + 2), MARGIN);
}

static void
draw_ghost (LapLane *lane, cairo_t *cr, const LapGhost *ghost, double x, int height)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  double width = MAX (ghost->seconds * axis->zoom, 4), body = MAX (ghost->body * axis->zoom, 2);
  double left = axis->mirrored ? x - width : x;
  GdkRGBA accent = lap_colour (LAP_COLOUR_WORK);
  g_autoptr (PangoLayout) layout = NULL;
  int top, ground;

  lap_block_widget_ground (lap_text_line (GTK_WIDGET (lane)), height, &top, &ground);
  dashed (cr, LAP_COLOUR_PAPER, left, 0, width, height);
  dashed (cr, LAP_COLOUR_WORK2, axis->mirrored ? x - body : x, top, body, ground);
  lap_paint_hatch (cr, LAP_HATCH_REST, &accent, axis->mirrored ? left : x + body, top + ground / 4, width - body,
                   ground / 2);
  if (width < NAMED)
    return;
  layout = lap_lane_layout (lane, ghost->name, width - 12);
  pango_layout_set_height (layout, -3);
  pango_layout_set_wrap (layout, PANGO_WRAP_WORD_CHAR);
  lap_paint_layout (cr, layout, &accent, left + 6, top + ground + 3);
}

void
lap_landing_draw_ghosts (LapLane *lane, GtkSnapshot *snapshot, int height)
{
  const LapLanding *landing = lap_lane_context (lane)->landing;
  const LapAxis *axis = lap_lane_context (lane)->axis;
  double x, width;

  span_of (lane, &x, &width);
  for (guint i = 0; i < landing->ghosts->len; i++) {
    const LapGhost *ghost = &g_array_index (landing->ghosts, LapGhost, i);
    cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, axis->view, height));

    draw_ghost (lane, cr, ghost, x, height);
    cairo_destroy (cr);
    draw_figure (lane, snapshot, ghost, x, height);
    x += (axis->mirrored ? -1 : 1) * ghost->seconds * axis->zoom;
  }
}

/* Whether @lane would tell of @warning: on the ruler, which marks them all, what no other lane does. */
static gboolean
tells (LapLane *lane, const LapWarning *warning)
{
  const LapLaneKind *marks = LAP_LANE_GET_CLASS (lane)->marks;

  return marks == &lap_lane_ruler ? lap_marks_only_ruler (warning->check->id)
                                  : marks != NULL && lap_marks_shows (marks->id, warning->check->id);
}

/* The most severe of the new warnings that @lane tells of, or NULL; how many there are in *@n. */
static const LapWarning *
fresh_in (LapLane *lane, const LapLanding *landing, guint *n)
{
  const LapWarning *first = NULL;

  *n = 0;
  for (guint i = 0; i < landing->fresh->len; i++) {
    const LapWarning *warning = lap_checkup_nth (landing->checkup, g_array_index (landing->fresh, guint, i));

    if (!tells (lane, warning))
      continue;
    first = first != NULL ? first : warning;
    ++*n;
  }
  return first;
}

char *
lap_landing_words (LapLane *lane)
{
  const LapLanding *landing = lap_lane_context (lane)->landing;
  guint n = 0;
  const LapWarning *warning = landing != NULL && landing->checkup != NULL ? fresh_in (lane, landing, &n) : NULL;
  const char *title = warning != NULL ? _(warning->check->title) : NULL;
  g_autofree char *more = NULL;

  if (n < 2)
    return g_strdup (title);
  more = g_strdup_printf (ngettext ("and %u more", "and %u more", n - 1), n - 1);
  return g_strdup_printf ("%s, %s", title, more);
}

/* On a strip of paper, dashed as what isn't there yet, that begins under the mark at @middle: where time goes to, or on
 * the other side where that has more room and it needs it. */
static void
draw_words (LapLane *lane, cairo_t *cr, double middle, int y, int size)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  GdkRGBA paper = lap_colour (LAP_COLOUR_CARD), ink = lap_colour (LAP_COLOUR_INK);
  g_autofree char *words = lap_landing_words (lane);
  g_autoptr (PangoLayout) layout = lap_lane_layout (lane, words, -1);
  double rooms[] = { middle, axis->view - middle }; /* on the left, on the right */
  gboolean right = !axis->mirrored;
  int width, height, wide;

  pango_layout_get_pixel_size (layout, &width, &height);
  wide = size / 2 + width + 2 * PAD;
  if (2 * wide > 3 * rooms[right] && rooms[!right] > rooms[right])
    right = !right;
  wide = MIN (wide, rooms[right]);
  pango_layout_set_width (layout, MAX (1, wide - size / 2 - 2 * PAD) * PANGO_SCALE);
  pango_layout_set_alignment (layout, right ? PANGO_ALIGN_LEFT : PANGO_ALIGN_RIGHT);
  pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  cairo_save (cr);
  cairo_set_dash (cr, (double[]) { 3, 3 }, 2, 0);
  lap_paint_box (cr, &paper, &ink, 1, 4, right ? middle : middle - wide, y - (height + 4) / 2, wide, height + 4);
  cairo_restore (cr);
  lap_paint_layout (cr, layout, &ink, (right ? middle + size / 2 : middle - wide) + PAD, y - height / 2);
}

/* Its middle stands beside the caret: where time goes to, and at the end of the view before it. */
static void
draw_fresh (LapLane *lane, cairo_t *cr, const LapWarning *warning, double caret, int height)
{
  LapLaneClass *klass = LAP_LANE_GET_CLASS (lane);
  int size = lap_marks_size (lap_text_line (GTK_WIDGET (lane))), beside = size / 2 + BESIDE;
  int y = klass->mark_y != NULL ? klass->mark_y (lane, warning, height) : height / 2;
  const LapAxis *axis = lap_lane_context (lane)->axis;
  gboolean right = axis->mirrored ? caret < 2 * beside : caret + 2 * beside <= axis->view;
  double middle = right ? caret + beside : caret - beside;
  g_autoptr (PangoLayout) layout = lap_lane_layout (lane, "?", -1);

  draw_words (lane, cr, middle, y, size);
  lap_mark_paint (cr, warning->severity, layout, middle - size / 2.0, y - size / 2.0, size);
}

/* What each block that would land does in the lane. */
static void
draw_loads (LapLane *lane, cairo_t *cr, double x, int height)
{
  const LapLanding *landing = lap_lane_context (lane)->landing;
  const LapAxis *axis = lap_lane_context (lane)->axis;

  for (guint i = 0; i < landing->ghosts->len; i++) {
    const LapGhost *ghost = &g_array_index (landing->ghosts, LapGhost, i);

    LAP_LANE_GET_CLASS (lane)->landing (lane, cr, ghost, x, height);
    x += (axis->mirrored ? -1 : 1) * ghost->seconds * axis->zoom;
  }
}

void
lap_landing_draw (LapLane *lane, GtkSnapshot *snapshot, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  GdkRGBA accent = lap_colour (LAP_COLOUR_WORK);
  const LapWarning *warning;
  double x, width;
  cairo_t *cr;
  guint n;

  if (context->landing->checkup == NULL)
    return;
  span_of (lane, &x, &width);
  if (context->landing->place.onto == LAP_NO_BOX)
    lap_paint_rect (snapshot, &accent, x - CARET / 2.0, 0, CARET, height);
  warning = fresh_in (lane, context->landing, &n);
  if (warning == NULL && LAP_LANE_GET_CLASS (lane)->landing == NULL)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, context->axis->view, height));
  if (LAP_LANE_GET_CLASS (lane)->landing != NULL)
    draw_loads (lane, cr, x, height);
  if (warning != NULL)
    draw_fresh (lane, cr, warning, x, height);
  cairo_destroy (cr);
}
