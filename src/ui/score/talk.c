/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The talk lane: a vessel for each time to say something, as wide as it lasts, filled as far as its words need. Where
 * they need more, what spills over stands on the rim in the colour of notes, outlined.
 */
#include "ui/palette.h"
#include "ui/score/lane.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define LAP_TYPE_TALK_LANE (lap_talk_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapTalkLane, lap_talk_lane, LAP, TALK_LANE, LapLane)

struct _LapTalkLane {
  LapLane parent_instance;
};

G_DEFINE_FINAL_TYPE (LapTalkLane, lap_talk_lane, LAP_TYPE_LANE)

#define PAD   2
#define SPILL 7 /* px of what doesn't fit */
#define LEAST 3 /* px of a vessel that is drawn */

static int
lap_talk_lane_height (LapLane *lane, int line)
{
  return 2 * line + SPILL + 2 * PAD;
}

static void
draw_room (cairo_t *cr, const LapAxis *axis, const LapRoom *room, int height)
{
  GdkRGBA talk = lap_colour (LAP_COLOUR_TALK), rim = lap_colour (LAP_COLOUR_LINE2);
  GdkRGBA note = lap_colour (LAP_COLOUR_NOTE), ink = lap_colour (LAP_COLOUR_ON_NOTE);
  double a = lap_axis_x (axis, room->span.start), b = lap_axis_x (axis, room->span.end);
  double x = MIN (a, b), width = ABS (b - a), top = PAD + SPILL, whole = height - PAD - top, filled;

  if (width < LEAST || room->seconds <= 0 || x > axis->view || x + width < 0)
    return;
  filled = whole * CLAMP (room->need / room->seconds, 0, 1);
  lap_paint_hatch (cr, LAP_HATCH_WORDS, &talk, x + 1, top + whole - filled, width - 2, filled);
  gdk_cairo_set_source_rgba (cr, &rim);
  cairo_rectangle (cr, x, top, 1, whole);
  cairo_rectangle (cr, x + width - 1, top, 1, whole);
  cairo_rectangle (cr, x, top + whole, width, 1);
  cairo_fill (cr);
  if (room->need > room->seconds)
    lap_paint_box (cr, &note, &ink, 1, 2, x, PAD, width, SPILL - 1);
}

/* A talk before a block is part of that block's gap, which shows it with what else is to be said. */
static gboolean
is_in_gap (const LapTalk *talk, const LapTalkOwn *own)
{
  for (guint i = 0; i < talk->n; i++)
    if (own->room.span.start >= talk->turns[i].gap.span.start && own->room.span.end <= talk->turns[i].gap.span.end)
      return TRUE;
  return FALSE;
}

static void
lap_talk_lane_draw (LapLane *lane, GtkSnapshot *snapshot, int width, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  const LapTalk *talk = lap_checkup_talk (lap_document_checkup (context->document));
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));

  for (guint i = 0; talk != NULL && i < talk->n; i++) {
    draw_room (cr, context->axis, &talk->turns[i].gap, height);
    draw_room (cr, context->axis, &talk->turns[i].work, height);
  }
  for (guint i = 0; talk != NULL && i < talk->n_own; i++)
    if (!is_in_gap (talk, &talk->own[i]))
      draw_room (cr, context->axis, &talk->own[i].room, height);
  cairo_destroy (cr);
}

static void
lap_talk_lane_class_init (LapTalkLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_talk_lane_height;
  lane_class->draw = lap_talk_lane_draw;
}

static void
lap_talk_lane_init (LapTalkLane *self)
{
}

const LapLaneKind lap_lane_talk = {
  "talk", N_("Talk"), N_("words against seconds"), lap_talk_lane_get_type,
};
