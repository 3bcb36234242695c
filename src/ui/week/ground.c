/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/ground.h"

#include "ui/palette.h"
#include "ui/score/paint.h"

#include <math.h>

#define DASH     2 /* px of a dash of a tie, and between two */
#define DASH_GAP 3

/* Shades the minutes @from to @to of @day between two heights. */
static void
shade (LapWeekScene *scene, GtkSnapshot *snapshot, int from, int to, int y, int height)
{
  const LapWeekScore *score = scene->score;
  GdkRGBA fold = lap_colour (LAP_COLOUR_HEADER), line = lap_colour (LAP_COLOUR_LINE2);
  double a = lap_week_score_x (score, scene->axis, MAX (from, score->first));
  double b = lap_week_score_x (score, scene->axis, MIN (to, score->last));

  if (from >= to || to <= score->first || from >= score->last)
    return;
  fold.alpha = 0.6;
  lap_paint_rect (snapshot, &fold, MIN (a, b), y, ABS (b - a), height);
  if (from > score->first)
    lap_paint_rect (snapshot, &line, round (a), y, 1, height);
  if (to < score->last)
    lap_paint_rect (snapshot, &line, round (b), y, 1, height);
}

/* Outside the hours of the house. */
static void
shade_closed (LapWeekScene *scene, GtkSnapshot *snapshot, const LapWeekBand *band)
{
  LapWeek *week = scene->score->week;
  LapSpan open = { 0, 0 };

  if (band->date != 0 && lap_week_is_closed (week, band->date))
    open = (LapSpan) { 0, 0 };
  else if (!lap_week_open (week, band->day, &open))
    open = (LapSpan) { 0, 0 };
  if (open.end == 0) {
    shade (scene, snapshot, 0, LAP_DAY_MINUTES, band->y, band->height);
    return;
  }
  shade (scene, snapshot, 0, open.start, band->y, band->height);
  shade (scene, snapshot, open.end, LAP_DAY_MINUTES, band->y, band->height);
}

static gboolean
has_hours (const LapCoach *coach)
{
  for (guint day = 0; day < LAP_N_DAYS; day++)
    if (coach->free_hours[day] != NULL)
      return TRUE;
  return FALSE;
}

/* Where lines are coaches: when one isn't free, or is away. */
static void
shade_coach (LapWeekScene *scene, GtkSnapshot *snapshot, const LapWeekBand *band, const LapWeekRow *row)
{
  LapCoach *coach = lap_week_coach (scene->score->week, row->id);
  const LapHours *hours;
  int until = 0;

  if (coach == NULL)
    return;
  if (band->date != 0 && lap_week_is_away (scene->score->week, coach->id, band->date)) {
    shade (scene, snapshot, 0, LAP_DAY_MINUTES, row->y, row->height);
    return;
  }
  if (!has_hours (coach))
    return;
  hours = coach->free_hours[band->day];
  for (guint i = 0; hours != NULL && i < hours->n; i++) {
    shade (scene, snapshot, until, hours->spans[i].start, row->y, row->height);
    until = MAX (until, hours->spans[i].end);
  }
  shade (scene, snapshot, until, LAP_DAY_MINUTES, row->y, row->height);
}

static void
draw_hours (LapWeekScene *scene, GtkSnapshot *snapshot, int width)
{
  const LapWeekScore *score = scene->score;
  int step = lap_week_scene_step (scene);
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE);

  for (int minute = (score->first + step - 1) / step * step; minute <= score->last; minute += step) {
    double x = round (lap_week_score_x (score, scene->axis, minute));

    if (x >= 0 && x <= width)
      lap_paint_rect (snapshot, &line, x, 0, 1, score->height);
  }
}

static void
draw_lines (LapWeekScene *scene, GtkSnapshot *snapshot, const LapWeekRow *row, int width)
{
  const LapWeekScore *score = scene->score;
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE2), more = lap_colour (LAP_COLOUR_LINE);

  for (int y = row->y; y < row->y + row->height; y += score->cell)
    lap_paint_rect (snapshot, y == row->y ? &line : &more, 0, y + score->crest + score->bar - 1, width, 1);
}

/* A dashed line from bar to bar, in the middle of the time that both claim. A picture as small as it can be: another
 * one is a place to be painted again. */
static void
draw_tie (LapWeekScene *scene, GtkSnapshot *snapshot, const LapWeekClash *clash)
{
  const LapWeekScore *score = scene->score;
  const LapWeekBox *a = &score->boxes[clash->a], *b = &score->boxes[clash->b];
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  double x = round (lap_week_score_x (score, scene->axis, (clash->start + clash->end) / 2.0));
  int top = MIN (a->y, b->y) + score->crest + score->bar, bottom = MAX (a->y, b->y) + score->crest;

  for (int y = top; y < bottom; y += DASH + DASH_GAP)
    lap_paint_rect (snapshot, &ink, x, y, 1, MIN (DASH, bottom - y));
}

/* Where a class would be. Lines stay as they are until it is there. */
static void
draw_ghost (LapWeekScene *scene, GtkSnapshot *snapshot, const LapWeekGhost *ghost)
{
  const LapWeekScore *score = scene->score;
  GdkRGBA paper = lap_colour (LAP_COLOUR_PAPER), accent = lap_colour (LAP_COLOUR_WORK);
  guint index = lap_week_score_row (score, ghost->day, ghost->line);
  double a = lap_week_score_x (score, scene->axis, ghost->start), b = lap_week_score_x (score, scene->axis, ghost->end);
  g_autoptr (PangoLayout) text = NULL;
  const LapWeekRow *row;
  double left, width;
  cairo_t *cr;
  int y, wide;

  if (index == G_MAXUINT || scene->pango == NULL)
    return;
  text = pango_layout_new (scene->pango);
  pango_layout_set_text (text, ghost->text, -1);
  pango_layout_get_pixel_size (text, &wide, NULL);
  width = MAX (ABS (b - a), wide);
  left = scene->axis->mirrored ? a - width : a;
  row = &score->rows[index];
  y = row->y + MIN ((int) ghost->lane * score->cell, row->height - score->cell);
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (left - 4, y, width + 8, score->cell));
  paper.alpha = 0.85;
  cairo_save (cr);
  cairo_set_dash (cr, (double[]) { 4, 3 }, 2, 0);
  lap_paint_box (cr, &paper, &accent, 2, 4, left - 3, y + 1, width + 6, score->cell - 2);
  cairo_restore (cr);
  lap_paint_box (cr, &accent, NULL, 0, 2.5, MIN (a, b), y + score->crest, ABS (b - a), score->bar);
  lap_paint_layout (cr, text, &accent, scene->axis->mirrored ? a - wide : a, y + score->crest + score->bar);
  cairo_destroy (cr);
}

void
lap_week_ground_draw (LapWeekScene *scene, GtkSnapshot *snapshot, int width)
{
  const LapWeekScore *score = scene->score;
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE);

  for (guint b = 0; b < score->n_bands; b++) {
    const LapWeekBand *band = &score->bands[b];

    shade_closed (scene, snapshot, band);
    for (guint r = band->first_row; score->look.by_coach && r < band->first_row + band->n_rows; r++)
      shade_coach (scene, snapshot, band, &score->rows[r]);
    if (b > 0)
      lap_paint_rect (snapshot, &line, 0, band->y, width, 1);
  }
  draw_hours (scene, snapshot, width);
  for (guint r = 0; r < score->n_rows; r++)
    draw_lines (scene, snapshot, &score->rows[r], width);
  for (guint i = 0; i < score->clashes->len; i++)
    draw_tie (scene, snapshot, &g_array_index (score->clashes, LapWeekClash, i));
}

void
lap_week_ghosts_draw (LapWeekScene *scene, GtkSnapshot *snapshot)
{
  for (guint i = 0; scene->ghosts != NULL && i < scene->ghosts->len; i++)
    draw_ghost (scene, snapshot, &g_array_index (scene->ghosts, LapWeekGhost, i));
}
