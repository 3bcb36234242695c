/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The talk lane: a vessel for each time to say something, as wide as it lasts, filled as far as its words need. Where
 * they need more, what spills over stands on the rim in the colour of notes, outlined.
 */
#include "ui/palette.h"
#include "ui/score/lane.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>
#include <math.h>

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

static int
lap_talk_lane_more (LapLane *lane, int line)
{
  return 2 * line;
}

/* The lane is drawn in three passes over all rooms, each one path in one colour: clipping room by room would be most of
 * its cost. */
typedef enum { PASS_WORDS, PASS_RIM, PASS_SPILL, N_PASSES } Pass;

#define PITCH 4 /* px from line to line of the words: whole, since rectangles on whole px cost a fraction of others */
#define LINE  2

static void
trace_room (cairo_t *cr, Pass pass, const LapAxis *axis, const LapTalkRoom *room, int height)
{
  double a, b, x, width, top = PAD + SPILL, foot = height - PAD, filled;

  /* Nothing is wider than at the zoom: most of what is too small is told without looking for its place. */
  if ((room->span.end - room->span.start) * axis->zoom < LEAST || room->seconds <= 0)
    return;
  a = lap_axis_x (axis, room->span.start);
  b = lap_axis_x (axis, room->span.end);
  x = round (MIN (a, b));
  width = round (MAX (a, b)) - x;
  if (width < LEAST || x > axis->view || x + width < 0)
    return;
  filled = (foot - top) * CLAMP (room->need / room->seconds, 0, 1);
  if (pass == PASS_WORDS)
    for (int y = foot - PITCH; y > foot - filled - LINE; y -= PITCH)
      cairo_rectangle (cr, x + 1, y, width - 2, LINE);
  else if (pass == PASS_RIM) {
    cairo_rectangle (cr, x, top, 1, foot - top);
    cairo_rectangle (cr, x + width - 1, top, 1, foot - top);
    cairo_rectangle (cr, x, foot, width, 1);
  } else if (room->need > room->seconds)
    cairo_rectangle (cr, x + 0.5, PAD + 0.5, width - 1, SPILL - 2);
}

/* A talk before a block is part of that block's gap, which shows it with what else is to be said. */
static gboolean
is_in_gap (const LapTalk *talk, guint first, guint end, const LapTalkOwn *own)
{
  for (guint i = first; i < end; i++)
    if (own->room.span.start >= talk->turns[i].gap.span.start && own->room.span.end <= talk->turns[i].gap.span.end)
      return TRUE;
  return FALSE;
}

static void
trace_rooms (cairo_t *cr, Pass pass, const LapScore *score, const LapAxis *axis, const LapTalk *talk, int height)
{
  guint first, end;

  lap_score_turns (score, axis, &first, &end);
  for (guint i = first; i < MIN (end, talk->n); i++) {
    trace_room (cr, pass, axis, &talk->turns[i].gap, height);
    trace_room (cr, pass, axis, &talk->turns[i].work, height);
  }
  for (guint i = 0; i < talk->n_own; i++)
    if (!is_in_gap (talk, first, MIN (end, talk->n), &talk->own[i]))
      trace_room (cr, pass, axis, &talk->own[i].room, height);
}

static void
lap_talk_lane_paint (LapLane *lane, cairo_t *cr, const LapAxis *axis, int height)
{
  static const LapColour colours[N_PASSES] = { LAP_COLOUR_TALK, LAP_COLOUR_LINE2, LAP_COLOUR_NOTE };
  LapScoreContext *context = lap_lane_context (lane);
  const LapTalk *talk = lap_checkup_talk (lap_document_checkup (context->document));
  GdkRGBA ink = lap_colour (LAP_COLOUR_ON_NOTE);

  if (talk == NULL)
    return;
  for (Pass pass = 0; pass < N_PASSES; pass++) {
    GdkRGBA colour = lap_colour (colours[pass]);

    trace_rooms (cr, pass, context->score, axis, talk, height);
    gdk_cairo_set_source_rgba (cr, &colour);
    cairo_fill_preserve (cr);
    if (pass == PASS_SPILL) {
      gdk_cairo_set_source_rgba (cr, &ink);
      cairo_set_line_width (cr, 1);
      cairo_stroke (cr);
    }
    cairo_new_path (cr);
  }
}

static gboolean
is_same (const LapTalkRoom *a, const LapTalkRoom *b)
{
  return a->span.start == b->span.start && a->span.end == b->span.end && a->seconds == b->seconds && a->need == b->need;
}

/* What a vessel would hold, where that is another: as far as it would be filled, and beyond the rim what spills over. */
static void
preview_room (cairo_t *cr, const LapAxis *axis, const LapTalkRoom *room, int height)
{
  double a = lap_axis_x (axis, room->span.start), b = lap_axis_x (axis, room->span.end), top = PAD + SPILL;
  double foot = height - PAD, x = round (MIN (a, b)), width = round (MAX (a, b)) - x, filled;
  gboolean over = room->need > room->seconds;

  if (room->seconds <= 0 || width < LEAST || x > axis->view || x + width < 0)
    return;
  filled = over ? foot - PAD : (foot - top) * room->need / room->seconds;
  cairo_rectangle (cr, x + 1, foot - filled, width - 2, filled);
}

/* Both go by time, so that one look at each is enough. */
static void
lap_talk_lane_preview (LapLane *lane, cairo_t *cr, const LapScore *score, const LapCheckup *checkup, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  const LapTalk *now = lap_checkup_talk (lap_document_checkup (context->document)), *then = lap_checkup_talk (checkup);
  guint first, end, at = 0;

  if (now == NULL || then == NULL)
    return;
  lap_score_turns (score, context->axis, &first, &end);
  for (guint i = first; i < MIN (end, then->n); i++) {
    const LapTalkTurn *turn = &then->turns[i];

    while (at + 1 < now->n && now->turns[at].work.span.start < turn->work.span.start)
      at++;
    if (now->n == 0 || !is_same (&now->turns[at].gap, &turn->gap))
      preview_room (cr, context->axis, &turn->gap, height);
    if (now->n == 0 || !is_same (&now->turns[at].work, &turn->work))
      preview_room (cr, context->axis, &turn->work, height);
  }
  cairo_stroke (cr);
}

static int
lap_talk_lane_mark_y (LapLane *lane, const LapWarning *warning, int height)
{
  return lap_marks_size (lap_text_line (GTK_WIDGET (lane))) / 2 + 1;
}

static void
lap_talk_lane_class_init (LapTalkLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_talk_lane_height;
  lane_class->more = lap_talk_lane_more;
  lane_class->paint = lap_talk_lane_paint;
  lane_class->preview = lap_talk_lane_preview;
  lane_class->marks = &lap_lane_talk;
  lane_class->mark_y = lap_talk_lane_mark_y;
}

static void
lap_talk_lane_init (LapTalkLane *self)
{
}

const LapLaneKind lap_lane_talk = {
  "talk", N_("Talk"), N_("words against seconds"), lap_talk_lane_get_type,
};
