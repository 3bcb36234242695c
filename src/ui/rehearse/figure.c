/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The figure at the pace of its repetitions: of the work at hand, in a rest of what comes. Below it the
 * ground it stands on, the work as a body and the rests as hatched tails to scale, eaten from the side where
 * reading begins; and the name.
 */
#include "ui/figures.h"
#include "ui/palette.h"
#include "ui/rehearse/panel.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define NAME    9
#define FRAMES  30 /* pictures a second at most */
#define BODY    0.62 /* of the panel's height */
#define MARKER  3

static gint64
figure_stamp (const LapScene *scene)
{
  gint64 turn = scene->moment.turn != NULL ? scene->moment.turn - scene->timeline->turns : -1;
  gboolean moves = !scene->still && scene->state == LAP_REHEARSAL_RUNNING;

  return LAP_STAMP (turn + 2, moves ? scene->clock * FRAMES / LAP_SECOND + 1 : 0, lap_scene_layout (scene));
}

static void
figure_draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  const LapTask *task = lap_scene_task (scene, scene->moment.turn);
  double seconds;
  cairo_t *cr;

  if (task == NULL || task->shown == NULL)
    return;
  seconds = (scene->clock - scene->moment.interval->start * LAP_SECOND) / (double) LAP_SECOND;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  lap_figure_play (cr, scene->timeline->catalogue, task->shown, seconds,
                   lap_figure_rep_seconds (task->block, task->shown), scene->still, width, height);
  cairo_destroy (cr);
}

const LapPanelKind lap_panel_figure = { figure_stamp, figure_draw, NULL };

/* The ground */

/* What the ground shows: from the interval at hand, or the first of its work, to the end of the rest behind
 * it or of the work that it leads to. */
static LapSpan
span_now (const LapScene *scene)
{
  const LapInterval *interval = scene->moment.interval, *after;
  const LapTurn *turn = scene->moment.turn;
  LapSpan span = { interval->start, interval->start + interval->seconds };

  if (turn != NULL && interval->start >= turn->start) {
    span = (LapSpan) { turn->start, turn->end };
    after = lap_timeline_at (scene->timeline, turn->end);
    if (after != NULL && after->kind != LAP_INTERVAL_WORK && after->kind != LAP_INTERVAL_TALK)
      span.end += after->seconds;
  } else if (turn != NULL && span.end == turn->start)
    span.end = turn->end;
  return span;
}

static gint64
ground_stamp (const LapScene *scene)
{
  const LapInterval *interval = scene->moment.interval;
  LapSpan span;

  if (interval == NULL)
    return -1;
  span = span_now (scene);
  return LAP_STAMP (interval->start, (scene->clock - span.start * LAP_SECOND) * 300 /
                    MAX (1, (span.end - span.start) * LAP_SECOND), 1);
}

/* "work 40" in a body or "rest 20" in a tail, where there is room. */
static void
draw_label (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, const LapInterval *interval, double x,
            double width, double height, int whole)
{
  gboolean work = interval->kind == LAP_INTERVAL_WORK;
  g_autofree char *text = g_strdup_printf (work ? _("work %d") : _("rest %d"), interval->seconds);
  PangoLayout *layout = lap_panel_text (panel, text, PANGO_WEIGHT_BOLD, 3.8, 3.8, whole, height);
  GdkRGBA paper = lap_colour (LAP_COLOUR_WINDOW);
  int w, h;

  pango_layout_set_width (layout, -1);
  pango_layout_get_pixel_size (layout, &w, &h);
  if (w + 2 * scene->unit > width || h > height * BODY * 1.3 || interval->kind > LAP_INTERVAL_REST) {
    g_object_unref (layout);
    return;
  }
  pango_layout_set_width (layout, w * PANGO_SCALE);
  x += work ? width - w - scene->unit : (width - w) / 2;
  if (!work)
    lap_paint_rect (snapshot, &paper, (lap_panel_is_rtl (panel) ? whole - x - w : x) - scene->unit, 0,
                    w + 2 * scene->unit, height);
  lap_panel_put (panel, snapshot, layout, work ? LAP_COLOUR_ON_WORK : LAP_COLOUR_WORK, x, (height - h) / 2, whole);
}

typedef struct {
  double x, width; /* px on the panel, as if read from left to right */
  double eaten;    /* px of it that are gone */
} Piece;

static void
draw_piece (cairo_t *cr, const LapInterval *interval, Piece piece, double height, int whole, gboolean rtl)
{
  double body = height * BODY, tail = body * 0.6, left = piece.x + piece.eaten, width = piece.width - piece.eaten;
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK), line = lap_colour (LAP_COLOUR_LINE2), talk = lap_colour (LAP_COLOUR_TALK);
  double outer = rtl ? whole - piece.x - piece.width : piece.x, inner = rtl ? whole - left - width : left;

  if (interval->kind == LAP_INTERVAL_WORK) {
    lap_paint_box (cr, NULL, &line, 1.5, 4, outer, (height - body) / 2, piece.width, body);
    lap_paint_box (cr, &work, NULL, 0, 4, inner, (height - body) / 2, width, body);
  } else if (interval->kind == LAP_INTERVAL_TALK) {
    lap_paint_box (cr, NULL, &talk, 1.5, 4, outer, (height - tail) / 2, piece.width, tail);
    lap_paint_hatch (cr, LAP_HATCH_WORDS, &talk, inner, (height - tail) / 2 + 3, width, tail - 6);
  } else {
    lap_paint_box (cr, NULL, &line, 1.5, 1, outer, (height - tail) / 2, piece.width, tail);
    lap_paint_hatch (cr, LAP_HATCH_REST, &work, inner, (height - tail) / 2, width, tail);
  }
}

static void
ground_draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  double now = scene->clock / (double) LAP_SECOND, scale, x;
  gboolean rtl = lap_panel_is_rtl (panel);
  LapSpan span;
  cairo_t *cr;

  if (scene->moment.interval == NULL)
    return;
  span = span_now (scene);
  scale = (width - 2.0 * MARKER) / MAX (span.end - span.start, 1);
  for (const LapInterval *i = lap_timeline_at (scene->timeline, span.start); i != NULL && i->start < span.end;
       i = lap_timeline_at (scene->timeline, i->start + i->seconds)) {
    Piece piece = { MARKER + (i->start - span.start) * scale, i->seconds * scale,
                    CLAMP (now - i->start, 0, i->seconds) * scale };

    cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
    draw_piece (cr, i, piece, height, width, rtl);
    cairo_destroy (cr);
    draw_label (panel, snapshot, scene, i, piece.x + piece.eaten, piece.width - piece.eaten, height, width);
  }
  x = MARKER + (now - span.start) * scale;
  lap_paint_rect (snapshot, &ink, (rtl ? width - x : x) - MARKER / 2.0, 0, MARKER, height);
}

const LapPanelKind lap_panel_ground = { ground_stamp, ground_draw, NULL };

/* The name */

static gint64
name_stamp (const LapScene *scene)
{
  return LAP_STAMP (scene->moment.turn != NULL ? scene->moment.turn->interval + 1 : 0,
                    scene->moment.interval != NULL ? scene->moment.interval->start + 1 : 0, 0);
}

static char *
name_text (const LapScene *scene)
{
  g_autofree char *name = NULL;

  if (scene->moment.turn == NULL)
    return g_strdup (scene->moment.interval != NULL ? lap_words_label (&lap_interval_kinds, scene->moment.interval->kind)
                                                    : _("The end"));
  name = lap_scene_name (scene, scene->moment.turn);
  return lap_scene_works (scene) ? g_steal_pointer (&name) : g_strdup_printf (_("Next: %s"), name);
}

static void
name_draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  g_autofree char *text = name_text (scene);

  lap_panel_put (panel, snapshot, lap_panel_text (panel, text, PANGO_WEIGHT_ULTRABOLD, NAME, 4, width, height),
                 LAP_COLOUR_INK, 0, 0, width);
}

const LapPanelKind lap_panel_name = { name_stamp, name_draw, name_text };
