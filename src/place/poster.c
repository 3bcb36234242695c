/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The grid is searched: columns and styles of a cell, each with the fewest pages that hold the least heights; among
 * those with the fewest, the one with the largest letters wins.
 */
#include "place/poster.h"

#include "place/poster-cell.h"
#include "place/poster-frame.h"

#include <glib/gi18n-lib.h>

#define MOST_SCALE   2.6
#define MOST_COLUMNS 5
#define SIZES_TRIED  4
#define GUTTER       8.0 /* units between columns, half of it on each side of the line */
#define ROW_GAP      6.0
#define WORTH_IT     1.3 /* how much larger figures make another style of cells worth it */

static const double shares[] = { 0.34, 0.38, 0.42, 0.46, 0.5 }; /* of a cell, for its figure */

typedef struct {
  const LapPoster *poster;
  GPtrArray       *cells;  /* LapPosterCell */
  double           room[2]; /* height of the exercises on the first page and on later ones, mm */
} Search;

typedef struct {
  guint       pages, columns;
  LapCellPlan plan;
  double      score;
} Grid;

/* The plan with room for the longest words of the row, so that its figures stand on one ground. */
static LapCellPlan
row_plan (GPtrArray *cells, guint from, guint to, const LapCellPlan *plan)
{
  LapCellPlan own = *plan;

  for (guint i = from; i < to; i++)
    own.below = MAX (own.below, lap_poster_cell_below (g_ptr_array_index (cells, i), plan));
  return own;
}

/* The height a row needs, -1 where a cell is too narrow. */
static double
row_need (GPtrArray *cells, guint from, guint to, const LapCellPlan *plan)
{
  LapCellPlan own = row_plan (cells, from, to, plan);
  double need = 0;

  for (guint i = from; i < to; i++) {
    double one = lap_poster_cell_need (g_ptr_array_index (cells, i), &own);

    if (one < 0)
      return -1;
    need = MAX (need, one);
  }
  return need;
}

/* Fills pages row by row, at most @most rows on each. Returns their number, 0 where a row is higher than a page or
 * a word wider than a cell; @starts, when wanted, gets the first exercise of each page. */
static guint
pack (const Search *search, const Grid *grid, guint most, GArray *starts)
{
  guint pages = 0, rows = 0;
  double gap = ROW_GAP * search->poster->unit, left = -1;

  for (guint i = 0; i < search->cells->len; i += grid->columns, rows++) {
    double need = row_need (search->cells, i, MIN (i + grid->columns, search->cells->len), &grid->plan);

    if (need < 0 || need > search->room[1])
      return 0;
    if (left < need || rows == most) {
      left = search->room[MIN (pages, 1)];
      rows = 0;
      pages++;
      if (left < need)
        return 0;
      if (starts != NULL)
        g_array_append_val (starts, i);
    }
    left -= need + gap;
  }
  return pages;
}

/* Whether @grid's scale holds with no more than its pages: smaller letters don't always take less room, a sign may
 * find no place any more behind a name that is now in one line. */
static gboolean
holds (const Search *search, const Grid *grid)
{
  guint pages = pack (search, grid, G_MAXUINT, NULL);

  return pages > 0 && pages <= grid->pages;
}

/* The largest scale from @least on that takes no more than grid.pages. */
static double
largest_scale (const Search *search, Grid grid, double least)
{
  double low = least, high = MAX (MOST_SCALE, least);

  for (int i = 0; i < 9; i++) {
    grid.plan.scale = (low + high) / 2;
    if (holds (search, &grid))
      low = grid.plan.scale;
    else
      high = grid.plan.scale;
  }
  return low;
}

/* Heights of the rows of a page, from the needs in @rows: all alike, but for rows that need more. */
static void
level_rows (double *rows, guint n, double height)
{
  double low = 0, high = height;

  for (int i = 0; i < 30; i++) {
    double level = (low + high) / 2, sum = 0;

    for (guint r = 0; r < n; r++)
      sum += MAX (rows[r], level);
    if (sum > height)
      high = level;
    else
      low = level;
  }
  for (guint r = 0; r < n; r++)
    rows[r] = MAX (rows[r], low);
}

static guint
n_rows (const Grid *grid, guint from, guint to)
{
  return (to - from + grid->columns - 1) / grid->columns;
}

/* The heights of the rows with exercises @from to @to on page @p. */
static void
row_heights (const Search *search, const Grid *grid, guint p, guint from, guint to, double *rows)
{
  guint n = n_rows (grid, from, to);
  double gap = ROW_GAP * search->poster->unit * (n - 1), most = gap;

  for (guint r = 0; r < n; r++) {
    rows[r] = row_need (search->cells, from + r * grid->columns, MIN (from + (r + 1) * grid->columns, to),
                        &grid->plan);
    most += rows[r] + lap_poster_cell_grows (&grid->plan);
  }
  level_rows (rows, n, MIN (most, search->room[MIN (p, 1)]) - gap);
}

/* The first exercise of each page, with the pages as evenly filled as their number allows, and behind it their
 * count. */
static GArray *
balance (const Search *search, const Grid *grid)
{
  GArray *starts = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint most = 1; pack (search, grid, most, starts) > grid->pages; most++)
    g_array_set_size (starts, 0);
  g_array_append_val (starts, search->cells->len);
  return starts;
}

/* The smallest figure on page @p with exercises @from to @to, mm. */
static double
page_figure (const Search *search, const Grid *grid, guint p, guint from, guint to)
{
  g_autofree double *rows = g_new (double, n_rows (grid, from, to));
  double least = G_MAXDOUBLE;

  row_heights (search, grid, p, from, to, rows);
  for (guint i = from; i < to; i++)
    least = MIN (least, lap_poster_cell_figure (g_ptr_array_index (search->cells, i), &grid->plan,
                                                rows[(i - from) / grid->columns]));
  return least;
}

/* The smallest figure, mm. */
static double
least_figure (const Search *search, const Grid *grid)
{
  g_autoptr (GArray) starts = balance (search, grid);
  double least = G_MAXDOUBLE;

  for (guint p = 0; p + 1 < starts->len; p++)
    least = MIN (least, page_figure (search, grid, p, g_array_index (starts, guint, p),
                                     g_array_index (starts, guint, p + 1)));
  return least;
}

/* Whether the exercises @from to @to stand on page @p. */
static gboolean
page_holds (const Search *search, const Grid *grid, guint p, guint from, guint to)
{
  double left = search->room[MIN (p, 1)], gap = ROW_GAP * search->poster->unit;

  for (guint i = from; i < to; i += grid->columns) {
    double need = row_need (search->cells, i, MIN (i + grid->columns, to), &grid->plan);

    if (need < 0)
      return FALSE;
    left -= need + (i > from ? gap : 0);
  }
  return left >= 0;
}

/* @grid with the cells laid out as this page alone has room for it: letters and columns stay, but a page with fewer or
 * shorter words than the fullest may have much larger figures. */
static Grid
restyle (const Search *search, const Grid *grid, guint p, guint from, guint to)
{
  Grid best = *grid, other = *grid;
  double least = grid->plan.figures ? page_figure (search, grid, p, from, to) * WORTH_IT : 0;

  for (guint style = 0; grid->plan.figures && style < LAP_N_CELL_STYLES; style++)
    for (guint i = 0; i < G_N_ELEMENTS (shares); i++) {
      double figure;

      other.plan.style = style;
      other.plan.share = shares[i];
      figure = page_holds (search, &other, p, from, to) ? page_figure (search, &other, p, from, to) : 0;
      if (figure > least) {
        least = figure;
        best = other;
      }
    }
  return best;
}

/* Letters and figures both count; a tenth more of one is worth a tenth of the other. */
static double
score_of (const Search *search, const Grid *grid)
{
  if (!grid->plan.figures)
    return grid->plan.scale;
  return grid->plan.scale * MAX (least_figure (search, grid), 0.001);
}

/* Takes @grid for the best where it needs fewer pages, or as many and is better to read. Between the least letters
 * and the largest a few sizes are tried: smaller ones leave more room for the figures. */
static void
judge (const Search *search, Grid grid, double least, Grid *best)
{
  double most;

  grid.plan.scale = least;
  grid.pages = pack (search, &grid, G_MAXUINT, NULL);
  if (grid.pages == 0 || (best->pages != 0 && grid.pages > best->pages))
    return;
  most = largest_scale (search, grid, least);
  for (int i = 0; i <= SIZES_TRIED; i++) {
    grid.plan.scale = most + (least - most) * i / SIZES_TRIED;
    if (!holds (search, &grid))
      continue;
    grid.score = score_of (search, &grid);
    if (best->pages == 0 || grid.pages < best->pages || grid.score > best->score)
      *best = grid;
    if (!grid.plan.figures)
      break;
  }
}

static Grid
find_grid (const Search *search, double least)
{
  const LapPoster *poster = search->poster;
  double inner = poster->width - 2 * poster->margin, u = poster->unit;
  Grid best = { 0 }, grid = { 0 };

  grid.plan.figures = (poster->options->hide & LAP_HIDE_FIGURES) == 0;
  for (grid.columns = 1; grid.columns <= MIN (MOST_COLUMNS, search->cells->len); grid.columns++) {
    grid.plan.width = (inner - (grid.columns - 1) * GUTTER * u) / grid.columns;
    for (guint style = 0; style < LAP_N_CELL_STYLES; style++)
      for (guint i = 0; i < G_N_ELEMENTS (shares); i++) {
        grid.plan.style = style;
        grid.plan.share = shares[i];
        judge (search, grid, least, &best);
      }
  }
  return best.pages > 0 ? best : find_grid (search, least * 0.8);
}

static void
put_row (const LapPoster *poster, LapPage *page, GPtrArray *cells, const Grid *grid, guint from, guint to, double y,
         double height)
{
  double u = poster->unit, step = grid->plan.width + GUTTER * u, thick = 0.4 * u;
  LapCellPlan plan = row_plan (cells, from, to, &grid->plan);

  for (guint i = from; i < to; i++) {
    double x = poster->margin + (i - from) * step;

    lap_poster_cell_put (g_ptr_array_index (cells, i), &plan, page, x, y, height);
    if (i > from)
      lap_page_rule (page, x - (GUTTER * u + thick) / 2, y, thick, height, LAP_ROLE_LINE);
  }
}

static void
put_rows (const Search *search, LapPage *page, const Grid *grid, guint p, guint from, guint to, double top)
{
  const LapPoster *poster = search->poster;
  guint n = n_rows (grid, from, to);
  g_autofree double *rows = g_new (double, n);
  double gap = ROW_GAP * poster->unit, thick = 0.4 * poster->unit, y = top;

  row_heights (search, grid, p, from, to, rows);
  for (guint r = 0; r < n; r++) {
    if (r > 0)
      lap_page_rule (page, poster->margin, y - (gap + thick) / 2, poster->width - 2 * poster->margin, thick,
                     LAP_ROLE_LINE);
    put_row (poster, page, search->cells, grid, from + r * grid->columns, MIN (from + (r + 1) * grid->columns, to), y,
             rows[r]);
    y += rows[r] + gap;
  }
}

static void
put_pages (const Search *search, LapPosterFrame *frame, LapPages *pages)
{
  const LapPoster *poster = search->poster;
  Grid grid = find_grid (search, poster->least);
  g_autoptr (GArray) starts = balance (search, &grid);
  guint n = starts->len - 1;

  for (guint p = 0; p < n; p++) {
    LapPage *page = lap_pages_add (pages, poster->width, poster->height);
    guint from = g_array_index (starts, guint, p), to = g_array_index (starts, guint, p + 1);
    Grid own = restyle (search, &grid, p, from, to);

    if (n > 1)
      page->label = g_strdup_printf (_("%u of %u"), p + 1, n);
    if (p == 0)
      lap_pages_outline (pages, 0, lap_part_title (poster->timeline->parts[poster->part].part), poster->margin);
    lap_page_begin (page, "Sect");
    lap_poster_frame_head (frame, page, p == 0);
    put_rows (search, page, &own, p, from, to, lap_poster_frame_top (frame, p == 0));
    lap_poster_frame_foot (frame, page, page->label);
    lap_page_end (page);
  }
}

static void
put_part (LapPoster *poster, LapPages *pages)
{
  g_autoptr (GPtrArray) stations = lap_stations_of (poster->timeline, poster->part);
  g_autoptr (GPtrArray) cells = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_poster_cell_free);
  g_autoptr (LapPosterFrame) frame = NULL;
  Search search = { poster, cells, { 0 } };

  poster->signs = 0;
  for (guint i = 0; i < stations->len; i++) {
    g_ptr_array_add (cells, lap_poster_cell_new (poster, g_ptr_array_index (stations, i)));
    poster->signs |= lap_poster_cell_signs (g_ptr_array_index (cells, i));
  }
  frame = lap_poster_frame_new (poster);
  for (guint i = 0; i < 2; i++)
    search.room[i] = lap_poster_frame_bottom (frame) - lap_poster_frame_top (frame, i == 0);
  put_pages (&search, frame, pages);
}

LapPages *
lap_poster_build (const LapTimeline *timeline, const LapSheetOptions *options, const LapMeasure *measure)
{
  LapPages *pages = lap_pages_new (timeline->session->title, timeline->session->coach, timeline->catalogue);
  LapPoster poster = { .timeline = timeline, .options = options, .measure = measure };

  lap_paper_size (options, &poster.width, &poster.height);
  poster.unit = MIN (1, MIN (poster.width, poster.height) / 297);
  poster.margin = 12 * poster.unit;
  poster.least = options->distance > 0 ? lap_cap_height (options->distance, LAP_ARC_READABLE) /
                                         (LAP_NAME_CAP * poster.unit) : 1;
  for (poster.part = 0; poster.part < timeline->n_parts; poster.part++)
    if (lap_part_is_shown (timeline, poster.part))
      put_part (&poster, pages);
  if (lap_pages_n (pages) == 0)
    lap_pages_add (pages, poster.width, poster.height);
  return pages;
}
