/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/poster-band.h"

#include "place/formula.h"

/* In units. The number of the formula is read under 40 minutes of arc at 3 m, twice a comfortable text. */
#define FORMULA_CAP  35.0
#define LABEL_CAP     7.5
#define PAD           4.0
#define COUNT_PAD    14.0
#define GAP           6.0
#define TAIL          8.0 /* least width of the hatch */
#define HIGHEST_BAND  0.32 /* of the page: the exercises need room, too */

/* In turn, how large the counts are against work and rest, when a row has no room for them. */
static const double count_shares[] = { 1, 0.8, 0.65 };

/* One cell of the formula with where it stands. */
typedef struct {
  LapCellKind kind;
  LapWrap    *big, *small;
  int         seconds;
  double      x, width; /* mm, from the left of the band */
  guint       row;
} Cell;

struct _LapPosterBand {
  const LapPoster *poster;
  GArray *cells;       /* Cell */
  double  cap;         /* of the numbers, mm */
  double  count_share; /* of it, for counts */
  guint   rows;
};

/* The size wanted. A poster that is read from nearer by has room for more exercises under smaller numbers. */
static double
wanted_cap (const LapPosterBand *band)
{
  return FORMULA_CAP * MIN (band->poster->least, 1) * band->poster->unit;
}

static void
cell_clear (gpointer data)
{
  Cell *cell = data;

  g_clear_pointer (&cell->big, lap_wrap_free);
  g_clear_pointer (&cell->small, lap_wrap_free);
}

static GArray *
cells_new (const LapPoster *poster)
{
  g_autoptr (GArray) formula = lap_formula_of (poster->timeline, poster->part);
  GArray *cells = g_array_new (FALSE, TRUE, sizeof (Cell));

  g_array_set_clear_func (cells, cell_clear);
  for (guint i = 0; i < formula->len; i++) {
    const LapCell *from = &g_array_index (formula, LapCell, i);
    Cell cell = { .kind = from->kind, .seconds = from->seconds };

    cell.small = lap_wrap_new (poster->measure, LAP_WEIGHT_STRONG, from->small);
    if (from->big != NULL)
      cell.big = lap_wrap_new (poster->measure, LAP_WEIGHT_HEAVY, from->big);
    g_array_append_val (cells, cell);
  }
  return cells;
}

/* The least width of a cell with numbers of @cap. */
static double
cell_width (LapPosterBand *band, const Cell *cell, double cap)
{
  double u = band->poster->unit;
  LapType big = { cap * (cell->kind == LAP_CELL_COUNT ? band->count_share : 1), 1, LAP_ROLE_INK, 0 };
  LapType small = { LABEL_CAP * u, 1.1, LAP_ROLE_INK, 0 };
  double width;

  if (cell->kind == LAP_CELL_WORDS)
    return MAX (42 * u, lap_wrap_fit (cell->small, &small, 42 * u).width) + 2 * GAP * u;
  width = MAX (lap_wrap_fit (cell->big, &big, 1e6).width, lap_wrap_fit (cell->small, &small, 1e6).width);
  return width + (cell->kind == LAP_CELL_COUNT ? COUNT_PAD * u : 2 * PAD * u) +
         (cell->kind == LAP_CELL_REST ? TAIL * u : 0);
}

/* Puts the cells in rows no wider than @width. FALSE when one alone is wider. */
static gboolean
arrange (LapPosterBand *band, double cap, double width)
{
  double x = 0;

  band->rows = 0;
  for (guint i = 0; i < band->cells->len; i++) {
    Cell *cell = &g_array_index (band->cells, Cell, i);

    cell->width = cell_width (band, cell, cap);
    if (cell->width > width)
      return FALSE;
    if (x + cell->width > width || i == 0) {
      band->rows++;
      x = 0;
    }
    cell->row = band->rows - 1;
    cell->x = x;
    x += cell->width;
  }
  return TRUE;
}

static double
row_height (const LapPosterBand *band)
{
  double u = band->poster->unit;

  return band->cap + (2 * PAD + 5 + LABEL_CAP * 1.3) * u;
}

double
lap_poster_band_height (const LapPosterBand *band)
{
  return band->rows * row_height (band) + (band->rows - 1) * 4 * band->poster->unit;
}

double
lap_poster_band_fit (LapPosterBand *band, double width)
{
  double cap = wanted_cap (band), used = 0;

  for (guint i = 0; i < G_N_ELEMENTS (count_shares); i++) {
    band->count_share = count_shares[i];
    if (arrange (band, cap, width) && band->rows == 1)
      break;
  }
  band->cap = cap;
  while ((!arrange (band, cap, width) || lap_poster_band_height (band) > band->poster->height * HIGHEST_BAND) &&
         cap > band->poster->unit) {
    cap *= 0.92;
    band->cap = cap;
  }
  for (guint i = 0; i < band->cells->len; i++) {
    const Cell *cell = &g_array_index (band->cells, Cell, i);

    used = MAX (used, cell->x + cell->width);
  }
  return used;
}

gboolean
lap_poster_band_is_large (const LapPosterBand *band)
{
  return band->rows == 1 && band->cap >= wanted_cap (band) * 0.999;
}

void
lap_poster_band_spread (LapPosterBand *band, double width)
{
  for (guint row = 0; row < band->rows; row++) {
    double used = 0, seconds = 0, shift = 0, room;

    for (guint i = 0; i < band->cells->len; i++) {
      const Cell *cell = &g_array_index (band->cells, Cell, i);

      used += cell->row == row ? cell->width : 0;
      seconds += cell->row == row ? cell->seconds : 0;
    }
    room = width - used;
    for (guint i = 0; i < band->cells->len; i++) {
      Cell *cell = &g_array_index (band->cells, Cell, i);

      if (cell->row != row)
        continue;
      cell->x += shift;
      if (seconds > 0 && cell->seconds > 0) {
        cell->width += room * cell->seconds / seconds;
        shift += room * cell->seconds / seconds;
      }
    }
  }
}

/* The words on paper, the hatch as the tail behind them. */
static void
put_rest (LapPosterBand *band, LapPage *page, const Cell *cell, double x, double y, double height)
{
  double u = band->poster->unit, thick = 1.2 * u;
  double words = cell_width (band, cell, band->cap) - TAIL * u;
  LapMark *box = lap_page_box (page, x, y + 3 * u, cell->width, height - 6 * u, LAP_ROLE_PAPER);

  box->line = LAP_ROLE_WORK;
  box->thick = thick;
  lap_page_hatch (page, x + words, y + 3 * u - thick / 2, cell->width - words + thick / 2,
                  height - 6 * u + thick)->thick = thick;
}

static void
put_cell (LapPosterBand *band, LapPage *page, const Cell *cell, double x, double y)
{
  double u = band->poster->unit, height = row_height (band);
  double pad = cell->kind == LAP_CELL_COUNT ? COUNT_PAD * u : PAD * u;
  LapRole role = cell->kind == LAP_CELL_WORK ? LAP_ROLE_ON_WORK : cell->kind == LAP_CELL_REST ? LAP_ROLE_WORK
                                                                                              : LAP_ROLE_INK;
  double share = cell->kind == LAP_CELL_COUNT ? band->count_share : 1, cap = band->cap * share;
  LapType big = { cap, 1, role, LAP_READ_FORMULA };
  LapType small = { LABEL_CAP * u, 1.1, role, LAP_READ_OTHER };
  double inner = cell->width - pad - (cell->kind == LAP_CELL_COUNT ? 0 : pad) + 0.1;
  double label = y + PAD * u + band->cap + 5 * u, top = label - 5 * u - cap;

  if (cell->kind == LAP_CELL_WORDS) {
    double words = lap_wrap_fit (cell->small, &small, cell->width - 2 * GAP * u).height;

    lap_wrap_put (cell->small, &small, page, x + GAP * u, y + (height - words) / 2, cell->width - 2 * GAP * u, 0);
    return;
  }
  if (cell->kind == LAP_CELL_WORK)
    lap_page_box (page, x, y, cell->width, height, LAP_ROLE_WORK)->radius = 2.5 * u;
  if (cell->kind == LAP_CELL_REST)
    put_rest (band, page, cell, x, y, height);
  if (cell->kind == LAP_CELL_COUNT)
    lap_page_sign (page, LAP_SIGN_TIMES, x, top + cap * 0.5 - 4.5 * u, 12.6 * u, 9 * u, LAP_ROLE_INK2);
  lap_wrap_put (cell->big, &big, page, x + pad, top, inner, 0);
  lap_wrap_put (cell->small, &small, page, x + pad, label, inner, 0);
}

void
lap_poster_band_put (LapPosterBand *band, LapPage *page, double x, double y)
{
  double step = row_height (band) + 4 * band->poster->unit;

  for (guint i = 0; i < band->cells->len; i++) {
    const Cell *cell = &g_array_index (band->cells, Cell, i);

    put_cell (band, page, cell, x + cell->x, y + cell->row * step);
  }
}

LapPosterBand *
lap_poster_band_new (const LapPoster *poster)
{
  LapPosterBand *band = g_new0 (LapPosterBand, 1);

  band->poster = poster;
  band->cells = cells_new (poster);
  return band;
}

void
lap_poster_band_free (LapPosterBand *band)
{
  g_array_unref (band->cells);
  g_free (band);
}
