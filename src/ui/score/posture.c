/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The posture lane: a line that stands, kneels and lies as people do, one step a height. It is level in work and
 * slopes in the time there is to change; where that is shorter than the change takes, the slope is filled and the
 * seconds that are needed stand beside it.
 */
#include "ui/palette.h"
#include "ui/score/lane.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define LAP_TYPE_POSTURE_LANE (lap_posture_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapPostureLane, lap_posture_lane, LAP, POSTURE_LANE, LapLane)

struct _LapPostureLane {
  LapLane parent_instance;
};

G_DEFINE_FINAL_TYPE (LapPostureLane, lap_posture_lane, LAP_TYPE_LANE)

#define PAD     5
#define HEIGHTS 3 /* the highest; 0 is lying */

static int
lap_posture_lane_height (LapLane *lane, int line)
{
  return 3 * line + 2 * PAD;
}

static double
level (int posture, int height)
{
  return PAD + (HEIGHTS - lap_posture_height (posture)) * (height - 2.0 * PAD) / HEIGHTS;
}

/* The seconds the change from one turn to the next takes, or 0 where it fits. */
static int
lacking (const LapTimeline *t, guint i)
{
  const LapTurn *a = &t->turns[i - 1], *b = &t->turns[i];
  const LapExercise *from = t->tasks[a->task].shown, *to = t->tasks[b->task].shown;
  LapChangeRule rule = lap_session_rule (t->session);
  gboolean stations = a->part == b->part && t->parts[b->part].part->run == LAP_RUN_STATIONS;
  int needs;

  if (from == NULL || to == NULL || (from == to && t->tasks[a->task].block == t->tasks[b->task].block))
    return 0;
  needs = lap_change_seconds (&rule, from, to, stations);
  return needs > b->start - a->end ? needs : 0;
}

/* Where the last of each was drawn. */
typedef struct {
  double mark, label;
} Drawn;

/* Marks a change that takes longer than there is, and says how long where the label before leaves room. */
static void
draw_lacking (LapLane *lane, GtkSnapshot *snapshot, double from, double to, int seconds, int height, Drawn *drawn)
{
  GdkRGBA fill = lap_colour (LAP_COLOUR_NOTE), ink = lap_colour (LAP_COLOUR_INK);
  double left = MIN (from, to), width = MAX (ABS (to - from), 3);
  g_autofree char *text = NULL;
  g_autoptr (PangoLayout) layout = NULL;

  if (ABS (left - drawn->mark) < width)
    return;
  drawn->mark = left;
  fill.alpha = 0.6;
  gtk_snapshot_append_color (snapshot, &fill, &GRAPHENE_RECT_INIT (left, 0, width, height));
  if (ABS (left - drawn->label) < 3 * lap_lane_line (lane))
    return;
  drawn->label = left;
  text = g_strdup_printf (_("%d s"), seconds);
  layout = lap_lane_layout (lane, text, -1);
  lap_paint_text (snapshot, layout, &ink, left + width + 3, (height - lap_lane_line (lane)) / 2);
}

static gboolean
is_seen (const LapAxis *axis, const LapTurn *before, const LapTurn *turn)
{
  double from = lap_axis_x (axis, before != NULL ? before->end : turn->start), to = lap_axis_x (axis, turn->end);

  return MAX (from, to) >= 0 && MIN (from, to) <= axis->view;
}

static void
draw_line (cairo_t *cr, const LapTimeline *t, const LapAxis *axis, guint first, guint end, int height)
{
  const LapTurn *before = NULL;
  double drawn = -G_MAXDOUBLE;

  for (guint i = first; i < end; i++) {
    const LapTurn *turn = &t->turns[i];
    const LapExercise *e = t->tasks[turn->task].shown;
    double y;

    if (e == NULL || turn->work == 0)
      continue;
    y = level (e->posture, height);
    /* What is less than a pixel further on can't be told from what is there. */
    if (is_seen (axis, before, turn) && ABS (lap_axis_x (axis, turn->end) - drawn) >= 1) {
      drawn = lap_axis_x (axis, turn->end);
      if (before != NULL)
        cairo_line_to (cr, lap_axis_x (axis, before->end), level (t->tasks[before->task].shown->posture, height));
      cairo_line_to (cr, lap_axis_x (axis, turn->start), y);
      cairo_line_to (cr, lap_axis_x (axis, turn->end), y);
    }
    before = turn;
  }
}

static void
lap_posture_lane_draw (LapLane *lane, GtkSnapshot *snapshot, int width, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  const LapTimeline *t = context->score->timeline;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK), rule = lap_colour (LAP_COLOUR_LINE);
  Drawn drawn = { -G_MAXDOUBLE, -G_MAXDOUBLE };
  guint first, end;
  cairo_t *cr;

  lap_score_turns (context->score, context->axis, &first, &end);
  for (int h = 0; h <= HEIGHTS; h++)
    lap_paint_rect (snapshot, &rule, 0, (int) (PAD + h * (height - 2.0 * PAD) / HEIGHTS), width, 1);
  for (guint i = first + 1; i < end; i++) {
    int seconds = is_seen (context->axis, &t->turns[i - 1], &t->turns[i]) ? lacking (t, i) : 0;

    if (seconds > 0)
      draw_lacking (lane, snapshot, lap_axis_x (context->axis, t->turns[i - 1].end),
                    lap_axis_x (context->axis, t->turns[i].start), seconds, height, &drawn);
  }
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  draw_line (cr, t, context->axis, first, end, height);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 2);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_stroke (cr);
  cairo_destroy (cr);
}

static void
lap_posture_lane_class_init (LapPostureLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_posture_lane_height;
  lane_class->draw = lap_posture_lane_draw;
}

static void
lap_posture_lane_init (LapPostureLane *self)
{
}

const LapLaneKind lap_lane_posture = {
  "posture", N_("Posture"), N_("standing above, lying below"), lap_posture_lane_get_type,
};
