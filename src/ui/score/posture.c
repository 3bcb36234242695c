/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The posture lane: a line that stands, kneels and lies as people do, one step a height. It is level in work and
 * slopes in the time there is to change; where that is shorter than the change takes, the slope is filled and the
 * seconds that are needed stand beside it.
 */
#include "ui/palette.h"
#include "ui/score/lane.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define LAP_TYPE_POSTURE_LANE (lap_posture_lane_get_type ())
G_DECLARE_FINAL_TYPE (LapPostureLane, lap_posture_lane, LAP, POSTURE_LANE, LapLane)

struct _LapPostureLane {
  LapLane parent_instance;
};

G_DEFINE_FINAL_TYPE (LapPostureLane, lap_posture_lane, LAP_TYPE_LANE)

#define PAD     5
#define HEIGHTS 3 /* the highest; 0 is lying */
#define LEAST   3 /* px of a change that takes longer than there is, and between two of them */
#define DENSE   4 /* px that a turn needs for a line */
#define BESIDE 7
#define LABEL_LINES 4 /* lines of text that are as high as a label and a mark are wide */

static int
lap_posture_lane_height (LapLane *lane, int line)
{
  return 3 * line + 2 * PAD;
}

static int
lap_posture_lane_more (LapLane *lane, int line)
{
  return 3 * line;
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

/* Whether the label of the change to @turn has room before the next one that wants a label. It looks at the plan rather
 * than at what was drawn before, so that a label is there or not wherever the view begins. */
static gboolean
has_room (LapLane *lane, const LapAxis *axis, guint turn)
{
  const LapTimeline *t = lap_lane_context (lane)->score->timeline;
  double seconds = LABEL_LINES * lap_text_line (GTK_WIDGET (lane)) / axis->zoom;

  for (guint i = turn + 1; i < t->n_turns && t->turns[i - 1].end - t->turns[turn - 1].end < seconds; i++)
    if (lacking (t, i) > 0)
      return FALSE;
  return TRUE;
}

/* The mark that would lie on a label of @width px at @x, or NULL. */
static const LapMarkPlace *
mark_on (const LapMarks *marks, double x, int width)
{
  for (guint i = 0; i < marks->places->len; i++) {
    const LapMarkPlace *mark = &g_array_index (marks->places, LapMarkPlace, i);

    if (mark->x - mark->width / 2.0 < x + width && mark->x + mark->width / 2.0 > x)
      return mark;
  }
  return NULL;
}

/* Beside the mark of its own change, or of the several that this is one of; not where another would hide it. */
static void
paint_label (LapLane *lane, cairo_t *cr, const LapAxis *axis, guint turn, const LapMarks *marks, int height)
{
  const LapTimeline *t = lap_lane_context (lane)->score->timeline;
  double middle = round ((lap_axis_x (axis, t->turns[turn - 1].end) + lap_axis_x (axis, t->turns[turn].start)) / 2), x;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  g_autofree char *text = g_strdup_printf (_("%d s"), lacking (t, turn));
  g_autoptr (PangoLayout) layout = lap_lane_layout (lane, text, -1);
  int line = lap_text_line (GTK_WIDGET (lane)), beside = lap_marks_size (line) / 2 + BESIDE, width;
  const LapMarkPlace *mark;

  pango_layout_get_pixel_size (layout, &width, NULL);
  x = axis->mirrored ? middle - beside - width : middle + beside;
  mark = mark_on (marks, x, width);
  if (mark != NULL)
    x = axis->mirrored ? mark->x - mark->width / 2 - BESIDE - width : mark->x + mark->width / 2 + BESIDE;
  if (mark_on (marks, x, width) == NULL)
    lap_paint_layout (cr, layout, &ink, x, (height - line) / 2);
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
  int drawn = -LAP_MOST_SECONDS;

  for (guint i = first; i < end; i++) {
    const LapTurn *turn = &t->turns[i];
    const LapExercise *e = t->tasks[turn->task].shown;
    double y;

    if (e == NULL || turn->work == 0)
      continue;
    y = level (e->posture, height);
    /* What is less than a pixel further on can't be told from what is there. */
    if ((turn->end - drawn) * axis->zoom >= 1 && is_seen (axis, before, turn)) {
      drawn = turn->end;
      if (before != NULL)
        cairo_line_to (cr, lap_axis_x (axis, before->end), level (t->tasks[before->task].shown->posture, height));
      cairo_line_to (cr, lap_axis_x (axis, turn->start), y);
      cairo_line_to (cr, lap_axis_x (axis, turn->end), y);
    }
    before = turn;
  }
}

/* Where turns are this dense a line would be a tangle, and dear: each px shows from where to where it runs. */
static gboolean
is_dense (const LapTimeline *t, const LapAxis *axis)
{
  return t->n_turns * DENSE > t->length * axis->zoom;
}

static void
add_column (cairo_t *cr, int x, double top, double foot)
{
  if (foot >= top)
    cairo_rectangle (cr, x, floor (top) - 1, 1, floor (foot) - floor (top) + 2);
}

static void
paint_columns (cairo_t *cr, const LapTimeline *t, const LapAxis *axis, guint first, guint end, int height)
{
  double top = height, foot = 0, before = -1;
  int x = G_MININT;

  for (guint i = first; i < end; i++) {
    const LapTurn *turn = &t->turns[i];
    const LapExercise *e = t->tasks[turn->task].shown;
    int at = floor (lap_axis_x (axis, turn->start)), step = axis->mirrored ? -1 : 1;
    double y;

    if (e == NULL || turn->work == 0)
      continue;
    y = level (e->posture, height);
    for (; x != G_MININT && x != at; x += step, top = foot = before)
      add_column (cr, x, top, foot);
    x = at;
    top = MIN (top, before >= 0 ? MIN (before, y) : y);
    foot = MAX (foot, MAX (before, y));
    before = y;
  }
  add_column (cr, x, top, foot);
}

static void
paint_rules (cairo_t *cr, const LapAxis *axis, int height)
{
  GdkRGBA rule = lap_colour (LAP_COLOUR_LINE);

  gdk_cairo_set_source_rgba (cr, &rule);
  for (int h = 0; h <= HEIGHTS; h++)
    cairo_rectangle (cr, 0, (int) (PAD + h * (height - 2.0 * PAD) / HEIGHTS), axis->view, 1);
  cairo_fill (cr);
}

/* All changes that take longer than there is: at once as a path, and their labels after it. */
static void
paint_lacking (LapLane *lane, cairo_t *cr, const LapAxis *axis, guint first, guint end, int height)
{
  const LapTimeline *t = lap_lane_context (lane)->score->timeline;
  GdkRGBA fill = lap_colour (LAP_COLOUR_NOTE);
  g_autoptr (GArray) labels = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (LapMarks) marks = NULL;
  int drawn = -LAP_MOST_SECONDS;

  for (guint i = first + 1; i < end; i++) {
    const LapTurn *turn = &t->turns[i];
    double a, b;

    if ((turn->start - drawn) * axis->zoom < LEAST || !is_seen (axis, turn - 1, turn) || lacking (t, i) == 0)
      continue;
    drawn = turn->start;
    a = round (lap_axis_x (axis, turn[-1].end));
    b = round (lap_axis_x (axis, turn->start));
    cairo_rectangle (cr, MIN (a, b), 0, MAX (ABS (b - a), LEAST), height);
    if (has_room (lane, axis, i))
      g_array_append_val (labels, i);
  }
  fill.alpha = 0.35; /* the label in ink may lie on it, which is light where the colours are dark */
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill (cr);
  if (labels->len == 0)
    return;
  marks = lap_marks_of (lap_document_checkup (lap_lane_context (lane)->document), axis, lap_text_line (GTK_WIDGET (lane)),
                        lap_lane_posture.id);
  for (guint i = 0; i < labels->len; i++)
    paint_label (lane, cr, axis, g_array_index (labels, guint, i), marks, height);
}

static void
lap_posture_lane_paint (LapLane *lane, cairo_t *cr, const LapAxis *axis, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  guint first, end;

  lap_score_turns (context->score, axis, &first, &end);
  paint_rules (cr, axis, height);
  paint_lacking (lane, cr, axis, first, end, height);
  gdk_cairo_set_source_rgba (cr, &ink);
  if (is_dense (context->score->timeline, axis)) {
    paint_columns (cr, context->score->timeline, axis, first, end, height);
    cairo_fill (cr);
    return;
  }
  draw_line (cr, context->score->timeline, axis, first, end, height);
  cairo_set_line_width (cr, 2);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_BEVEL);
  cairo_stroke (cr);
}

static void
lap_posture_lane_preview (LapLane *lane, cairo_t *cr, const LapScore *score, const LapCheckup *checkup, int height)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  guint first, end;

  lap_score_turns (score, axis, &first, &end);
  if (!is_dense (score->timeline, axis))
    draw_line (cr, score->timeline, axis, first, end, height);
  cairo_stroke (cr);
}

static void
lap_posture_lane_class_init (LapPostureLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_posture_lane_height;
  lane_class->more = lap_posture_lane_more;
  lane_class->paint = lap_posture_lane_paint;
  lane_class->preview = lap_posture_lane_preview;
  lane_class->marks = &lap_lane_posture;
}

static void
lap_posture_lane_init (LapPostureLane *self)
{
}

const LapLaneKind lap_lane_posture = {
  "posture", N_("Posture"), N_("standing above, lying below"), lap_posture_lane_get_type,
};
