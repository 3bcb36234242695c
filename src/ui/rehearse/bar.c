/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/bar.h"

#include "ui/palette.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define LABEL  2.4
#define BODY   1.8 /* units */
#define FLAG   2.0
#define LEAST  2.0 /* px of an interval that is drawn by itself */

static gint64
stamp (const LapScene *scene)
{
  return LAP_STAMP (scene->clock / LAP_SECOND, lap_takes_n (scene->takes), lap_rehearsal_repeat (scene->rehearsal));
}

static double
x_of (LapPanel *panel, const LapScene *scene, double second, int width)
{
  double x = second * width / MAX (scene->timeline->length, 1);

  return lap_panel_is_rtl (panel) ? width - x : x;
}

int
lap_bar_second (LapPanel *panel, const LapScene *scene, double x, int width)
{
  double share = CLAMP (x / MAX (width, 1), 0, 1);

  return (lap_panel_is_rtl (panel) ? 1 - share : share) * scene->timeline->length;
}

static void
draw_interval (cairo_t *cr, const LapInterval *interval, gboolean done, double x, double width, double y, double height)
{
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK), line = lap_colour (LAP_COLOUR_LINE2), talk = lap_colour (LAP_COLOUR_TALK);

  if (interval->kind == LAP_INTERVAL_WORK)
    lap_paint_box (cr, done ? NULL : &work, done ? &line : NULL, 1, 2, x, y, width - 1, height);
  else if (interval->kind == LAP_INTERVAL_TALK) {
    lap_paint_box (cr, NULL, &talk, 1, 2, x, y, width - 1, height);
    if (!done)
      lap_paint_hatch (cr, LAP_HATCH_WORDS, &talk, x + 2, y + 2, width - 5, height - 4);
  } else if (!done)
    lap_paint_hatch (cr, LAP_HATCH_REST, &line, x, y + height * 0.3, width - 1, height * 0.4);
}

static void
draw_intervals (LapPanel *panel, cairo_t *cr, const LapScene *scene, int width, double y, double height)
{
  double drawn = -1;

  for (guint i = 0; i < scene->timeline->n; i++) {
    const LapInterval *interval = &scene->timeline->intervals[i];
    double a = x_of (panel, scene, interval->start, width);
    double b = x_of (panel, scene, interval->start + interval->seconds, width), x = MIN (a, b), wide = ABS (b - a);

    /* What is finer than the screen is passed over, but for something every few px. */
    if (wide < LEAST && drawn >= 0 && ABS (x - drawn) < LEAST)
      continue;
    drawn = x;
    draw_interval (cr, interval, (interval->start + interval->seconds) * LAP_SECOND <= scene->clock, x,
                   MAX (wide, LEAST + 1), y, height);
  }
}

static void
draw_mark (cairo_t *cr, const LapTakeMark *mark, double x, double size)
{
  GdkRGBA fill = lap_colour (LAP_COLOUR_NOTE), ink = lap_colour (LAP_COLOUR_INK), talk = lap_colour (LAP_COLOUR_TALK);

  cairo_set_line_width (cr, MAX (size * 0.14, 1.5));
  if (mark->good) {
    cairo_move_to (cr, x - size * 0.35, size * 0.5);
    cairo_line_to (cr, x - size * 0.05, size * 0.85);
    cairo_line_to (cr, x + size * 0.5, size * 0.1);
    gdk_cairo_set_source_rgba (cr, &talk);
    cairo_stroke (cr);
    return;
  }
  cairo_move_to (cr, x, size);
  cairo_line_to (cr, x, 0);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_stroke (cr);
  cairo_move_to (cr, x, 0);
  cairo_line_to (cr, x + size * 0.8, size * 0.25);
  cairo_line_to (cr, x, size * 0.55);
  cairo_close_path (cr);
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill_preserve (cr);
  cairo_set_line_width (cr, 1);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_stroke (cr);
}

static void
draw_labels (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, double y, int width)
{
  double end = 0;

  for (guint i = 0; i < scene->timeline->n_parts; i++) {
    const LapStretch *part = &scene->timeline->parts[i];
    double x = part->start * (double) width / MAX (scene->timeline->length, 1);
    PangoLayout *layout;
    int w;

    if (x < end || part->end == part->start)
      continue;
    layout = lap_panel_text (panel, lap_part_title (part->part), PANGO_WEIGHT_BOLD, LABEL, LABEL, width, 100);
    pango_layout_set_width (layout, -1);
    pango_layout_get_pixel_size (layout, &w, NULL);
    if (x + w > width) {
      g_object_unref (layout);
      continue;
    }
    pango_layout_set_width (layout, w * PANGO_SCALE);
    lap_panel_put (panel, snapshot, layout, LAP_COLOUR_INK2, x, y, width);
    end = x + w + 2 * scene->unit;
  }
}

static void
draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  double flag = FLAG * scene->unit, body = BODY * scene->unit;
  double x = x_of (panel, scene, scene->clock / (double) LAP_SECOND, width);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));

  draw_intervals (panel, cr, scene, width, flag, body);
  for (guint i = 0; i < lap_takes_n (scene->takes); i++) {
    const LapTakeMark *mark = lap_takes_nth (scene->takes, i);

    draw_mark (cr, mark, x_of (panel, scene, mark->clock, width), flag * 0.95);
  }
  cairo_destroy (cr);
  lap_paint_rect (snapshot, &ink, CLAMP (x - 2, 0, width - 4), flag * 0.6, 4, body + flag * 0.8);
  draw_labels (panel, snapshot, scene, flag + body + scene->unit * 0.7, width);
}

static char *
tell (const LapScene *scene)
{
  g_autofree char *clock = lap_clock_text (scene->clock / LAP_SECOND);
  g_autofree char *length = lap_clock_text (scene->timeline->length);

  return g_strdup_printf (_("%s of %s"), clock, length);
}

const LapPanelKind lap_panel_bar = { stamp, draw, tell };

/* The edge of the screen, which tells of a boundary to who only sees it from the side. */

static gint64
edge_stamp (const LapScene *scene)
{
  return LAP_STAMP (lap_scene_edge (scene) * 16, lap_scene_works (scene), 0);
}

static void
edge_draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  GdkRGBA colour = lap_colour (lap_scene_works (scene) ? LAP_COLOUR_WORK : LAP_COLOUR_TALK);

  colour.alpha = (int) (lap_scene_edge (scene) * 16) / 16.0;
  if (colour.alpha > 0)
    lap_paint_rect (snapshot, &colour, 0, 0, width, height);
}

const LapPanelKind lap_panel_edge = { edge_stamp, edge_draw, NULL };

/* The flash at 0:00. */

static gint64
sync_stamp (const LapScene *scene)
{
  return lap_scene_sync (scene);
}

static void
sync_draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);

  if (lap_scene_sync (scene))
    lap_paint_rect (snapshot, &ink, 0, 0, width, height);
}

const LapPanelKind lap_panel_sync = { sync_stamp, sync_draw, NULL };
