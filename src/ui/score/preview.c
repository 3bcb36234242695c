/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/preview.h"

#include "ui/palette.h"
#include "ui/score/block.h"
#include "ui/score/paint.h"
#include "ui/score/words.h"

#define NAMED 40 /* px from which a box has its name */

gboolean
lap_preview_is_same (const LapScore *score, guint index, const LapScore *now)
{
  const LapBox *box = &score->boxes[index];
  guint at = lap_score_at (now, box->start);
  g_autofree char *name = NULL, *there = NULL;

  if (at == LAP_NO_BOX || now->boxes[at].start != box->start || now->boxes[at].body != box->body ||
      now->boxes[at].end != box->end || now->boxes[at].kind != box->kind)
    return FALSE;
  name = lap_box_name (score, index);
  there = lap_box_name (now, at);
  return g_str_equal (name, there);
}

static void
draw_box (LapLane *lane, cairo_t *cr, const LapScore *score, guint index, const LapPlaced *placed, int height)
{
  GdkRGBA paper = lap_colour (LAP_COLOUR_PAPER), accent = lap_colour (LAP_COLOUR_WORK);
  g_autofree char *name = lap_box_name (score, index);
  g_autoptr (PangoLayout) layout = NULL;
  int top, ground;

  paper.alpha = 0.9;
  gdk_cairo_set_source_rgba (cr, &paper);
  cairo_rectangle (cr, placed->x, 0, placed->width, height);
  cairo_fill (cr);
  gdk_cairo_set_source_rgba (cr, &accent);
  cairo_rectangle (cr, placed->x + 2, 1, MAX (placed->width - 4, 2), height - 2);
  cairo_stroke (cr);
  if (placed->width < NAMED)
    return;
  lap_block_widget_ground (lap_text_line (GTK_WIDGET (lane)), height, &top, &ground);
  layout = lap_lane_layout (lane, name, placed->width - 12);
  pango_layout_set_height (layout, -3);
  pango_layout_set_wrap (layout, PANGO_WRAP_WORD_CHAR);
  lap_paint_layout (cr, layout, &accent, placed->x + 6, top - ground);
}

void
lap_preview_blocks (LapLane *lane, cairo_t *cr, const LapScore *score, const LapCheckup *checkup, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  guint first, end;

  lap_score_visible (score, context->axis, &first, &end);
  for (guint i = first; i < end; i++) {
    LapPlaced placed = lap_score_place (score, context->axis, i);

    if (placed.width >= LAP_MERGE_BELOW && score->boxes[i].kind != LAP_BOX_GAP &&
        !lap_preview_is_same (score, i, context->score))
      draw_box (lane, cr, score, i, &placed, height);
  }
}
