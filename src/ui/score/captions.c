/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/captions.h"

#include "ui/palette.h"
#include "ui/score/folds.h"
#include "ui/score/paint.h"

#define PAD   3  /* px on either side */
#define NAMED 40 /* px from which a block has its name, and needs no caption */
#define LINES 2

static gboolean
has_names (LapScoreContext *context, const LapAxisPiece *piece)
{
  guint first = lap_score_at (context->score, piece->start), end = lap_score_at (context->score, piece->end - 0.5);

  for (guint i = first; i <= end; i++)
    if (lap_score_place (context->score, context->axis, i).width >= NAMED)
      return TRUE;
  return FALSE;
}

static void
draw_caption (LapLane *lane, GtkSnapshot *snapshot, guint index, double x, double width, int top)
{
  g_autofree char *words = lap_folds_words (lap_lane_context (lane), index);
  g_autoptr (PangoLayout) layout = lap_lane_layout (lane, words, MAX (1, width - 2 * PAD));
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK2);

  pango_layout_set_height (layout, -LINES);
  pango_layout_set_wrap (layout, PANGO_WRAP_WORD);
  pango_layout_set_alignment (layout, PANGO_ALIGN_CENTER);
  if (!pango_layout_is_ellipsized (layout))
    lap_paint_text (snapshot, layout, &ink, x + PAD, top);
}

void
lap_captions_draw (LapLane *lane, GtkSnapshot *snapshot, int top)
{
  LapScoreContext *context = lap_lane_context (lane);
  const LapAxis *axis = context->axis;

  for (guint i = 0; i < axis->n; i++) {
    const LapAxisPiece *piece = &axis->pieces[i];
    double a = lap_axis_x (axis, piece->start), b = lap_axis_x (axis, piece->end);

    if (piece->folded && MAX (a, b) > 0 && MIN (a, b) < axis->view && !has_names (context, piece))
      draw_caption (lane, snapshot, i, MIN (a, b), ABS (b - a), top);
  }
}
