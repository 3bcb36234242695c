/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/poster-cell.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* In units at scale 1. 14 mm is a capital under 16 minutes of arc at 3 m, 9 mm one at 1.9 m. */
#define NAME_CAP    14.0
#define NUMBER_CAP  18.0
#define OPTION_CAP   9.0
#define GROUND       4.0
#define FIGURE_LEAST 28.0 /* high */
#define GAP          4.0

/* A line of words behind its sign. */
typedef struct {
  LapWrap *words;
  gboolean signed_; /* has a sign */
  LapSign  sign;
  LapRole  role;
} Row;

struct _LapPosterCell {
  const LapPoster  *poster;
  const LapStation *station;
  LapWrap *number, *name;
  GArray  *rows;
};

/* Lengths in millimetres. */
typedef struct {
  double number, name, option; /* capitals */
  double gap, ground, sign, figure;
} Sizes;

static void
row_clear (gpointer data)
{
  lap_wrap_free (((Row *) data)->words);
}

static void
add_row (LapPosterCell *cell, const char *words, LapSign sign, LapRole role, gboolean has_sign)
{
  Row row = { .sign = sign, .role = role, .signed_ = has_sign };

  if (words == NULL)
    return;
  row.words = lap_wrap_new (cell->poster->measure, LAP_WEIGHT_STRONG, words);
  g_array_append_val (cell->rows, row);
}

LapPosterCell *
lap_poster_cell_new (const LapPoster *poster, const LapStation *station)
{
  LapPosterCell *cell = g_new0 (LapPosterCell, 1);
  LapHide hide = poster->options->hide;
  g_autofree char *number = g_strdup_printf ("%u", station->number);

  cell->poster = poster;
  cell->station = station;
  cell->number = lap_wrap_new (poster->measure, LAP_WEIGHT_HEAVY, number);
  cell->name = lap_wrap_new (poster->measure, LAP_WEIGHT_HEAVY, station->name);
  cell->rows = g_array_new (FALSE, TRUE, sizeof (Row));
  g_array_set_clear_func (cell->rows, row_clear);
  if ((hide & LAP_HIDE_DETAILS) == 0)
    add_row (cell, station->detail, 0, LAP_ROLE_INK, FALSE);
  if ((hide & LAP_HIDE_OPTIONS) == 0) {
    add_row (cell, station->easier, LAP_SIGN_EASIER, LAP_ROLE_TALK, TRUE);
    add_row (cell, station->harder, LAP_SIGN_HARDER, LAP_ROLE_EFFORT, TRUE);
  }
  if ((hide & LAP_HIDE_DETAILS) == 0)
    add_row (cell, station->later, LAP_SIGN_ROUND, LAP_ROLE_WORK, TRUE);
  return cell;
}

void
lap_poster_cell_free (LapPosterCell *cell)
{
  lap_wrap_free (cell->number);
  lap_wrap_free (cell->name);
  g_array_unref (cell->rows);
  g_free (cell);
}

guint32
lap_poster_cell_signs (const LapPosterCell *cell)
{
  gboolean details = (cell->poster->options->hide & LAP_HIDE_DETAILS) == 0;
  guint32 signs = 0;

  for (guint i = 0; i < cell->rows->len; i++) {
    const Row *row = &g_array_index (cell->rows, Row, i);

    signs |= row->signed_ ? LAP_BIT (row->sign) : 0;
  }
  signs |= details && cell->station->breathless ? LAP_BIT (LAP_SIGN_BREATHLESS) : 0;
  return signs | (details && cell->station->swaps ? LAP_BIT (LAP_SIGN_SWAP) : 0);
}

static Sizes
sizes_of (const LapPosterCell *cell, const LapCellPlan *plan)
{
  double k = cell->poster->unit * plan->scale;

  return (Sizes) { .number = MAX (NUMBER_CAP * k, plan->number), .name = NAME_CAP * k, .option = OPTION_CAP * k, .gap = GAP * k,
                   .ground = GROUND * k, .sign = OPTION_CAP * 1.1 * k, .figure = FIGURE_LEAST * k };
}

static LapType
name_type (const Sizes *sizes)
{
  return (LapType) { sizes->name, 1.02, LAP_ROLE_INK, LAP_READ_NAME };
}

static LapType
number_type (const Sizes *sizes)
{
  return (LapType) { sizes->number, 1, LAP_ROLE_WORK, LAP_READ_NUMBER };
}

static LapType
row_type (const Sizes *sizes)
{
  return (LapType) { sizes->option, 1.12, LAP_ROLE_INK, LAP_READ_OPTION };
}

/* The rows, one below the other. Returns their height, or -1 when a word had to be broken. With a page they are put
 * with the first capital at @y. */
static double
rows (LapPosterCell *cell, const Sizes *sizes, double width, LapPage *page, double x, double y)
{
  LapType type = row_type (sizes);
  double height = 0, indent = sizes->sign * 1.4 + sizes->option * 0.45;

  for (guint i = 0; i < cell->rows->len; i++) {
    const Row *row = &g_array_index (cell->rows, Row, i);
    double left = row->signed_ ? indent : 0;
    LapFit fit = lap_wrap_fit (row->words, &type, MAX (width - left, 0.1));

    if (width <= left || fit.width > width - left + 0.01)
      return -1;
    height += i > 0 ? sizes->option * 0.42 : 0;
    if (page != NULL) {
      lap_page_begin (page, "P");
      if (row->signed_)
        lap_page_sign (page, row->sign, x, y + height - (sizes->sign - sizes->option) / 2, sizes->sign * 1.4,
                       sizes->sign, row->role);
      lap_wrap_put (row->words, &type, page, x + left, y + height, width - left, 0);
      lap_page_end (page);
    }
    height += fit.height;
    if (fit.broken > 0 && lap_wrap_longest (row->words) * type.cap < 110 * cell->poster->unit)
      return -1;
  }
  return height;
}

/* A word may be broken inside only when it is too long for half a poster. */
static gboolean
name_is_whole (const LapPosterCell *cell, const LapFit *fit, const Sizes *sizes)
{
  return fit->broken == 0 || lap_wrap_longest (cell->name) * sizes->name > 130 * cell->poster->unit;
}

static void
put_figure (LapPosterCell *cell, LapPage *page, double x, double y, double width, double height)
{
  const LapStation *station = cell->station;

  if (station->task->shown != NULL)
    lap_page_figure (page, station->task->shown, x, y, width, height);
}

/* The number and the name beside it; returns the height. A single line shares the number's baseline. */
static double
put_name (LapPosterCell *cell, const Sizes *sizes, LapPage *page, double x, double y, double width)
{
  LapType number = number_type (sizes), name = name_type (sizes);
  LapFit digits = lap_wrap_fit (cell->number, &number, 1e6);
  double left = digits.width + sizes->gap;
  LapFit fit = lap_wrap_fit (cell->name, &name, MAX (width - left, 0.1));
  double shift = fit.lines == 1 ? sizes->number - sizes->name : 0;

  if (width <= left || fit.width > width - left + 0.01 || !name_is_whole (cell, &fit, sizes))
    return -1;
  if (page != NULL) {
    lap_page_begin (page, "H2");
    lap_wrap_put (cell->number, &number, page, x, y, digits.width + 1, 0);
    lap_wrap_put (cell->name, &name, page, x + left, y + shift, width - left, 0);
    lap_page_end (page);
  }
  return MAX (digits.height, shift + fit.height);
}

static void
put_ground (LapPosterCell *cell, const Sizes *sizes, LapPage *page, double x, double y, double width)
{
  lap_ground_put (page, x, y, width, sizes->ground, cell->station->work, cell->station->rest);
}

static gboolean
has_signs (const LapPosterCell *cell)
{
  return (cell->station->breathless || cell->station->swaps) &&
         (cell->poster->options->hide & LAP_HIDE_DETAILS) == 0;
}

/* Left of the figure: what is to be known before one looks at it. */
static void
put_signs (LapPosterCell *cell, const Sizes *sizes, LapPage *page, double x, double y)
{
  double width = sizes->sign * 1.4;

  if (!has_signs (cell))
    return;
  if (cell->station->breathless) {
    lap_page_sign (page, LAP_SIGN_BREATHLESS, x, y, width, sizes->sign, LAP_ROLE_EFFORT);
    y += sizes->sign * 1.25;
  }
  if (cell->station->swaps)
    lap_page_sign (page, LAP_SIGN_SWAP, x, y, width, sizes->sign, LAP_ROLE_WORK);
}

/* The signs below @top, the figure beside them on the ground at @ground. */
static void
put_picture (LapPosterCell *cell, const LapCellPlan *plan, const Sizes *s, LapPage *page, double x, double top,
             double width, double ground)
{
  double signs = has_signs (cell) ? s->sign * 1.4 + s->gap / 2 : 0;

  put_signs (cell, s, page, x, top + s->gap / 2);
  if (plan->figures)
    put_figure (cell, page, x + signs, top, width - signs, ground - top);
}

/* The three styles. Each returns the height it needs, or -1; with a page it is put, @height high. */

static double
lay_side (LapPosterCell *cell, const LapCellPlan *plan, LapPage *page, double x, double y, double height)
{
  Sizes s = sizes_of (cell, plan);
  LapType number = number_type (&s), name = name_type (&s);
  LapFit digits = lap_wrap_fit (cell->number, &number, 1e6), fit;
  double left = plan->figures ? plan->width * plan->share : MAX (digits.width, s.sign * 1.4);
  double width = plan->width - left - s.gap, below = rows (cell, &s, width, NULL, 0, 0);
  double foot = plan->figures ? 0 : s.ground + s.gap, ground = y + height - s.ground;
  double column = MAX (digits.width, s.sign * 1.4) + s.gap / 2, side;

  fit = lap_wrap_fit (cell->name, &name, MAX (width, 0.1));
  side = MAX (digits.height + 3 * s.sign * has_signs (cell), plan->figures ? s.figure : 0) + s.gap + s.ground;
  if (width <= 0 || below < 0 || fit.width > width + 0.01 ||
      (plan->figures && left < column + s.figure) || !name_is_whole (cell, &fit, &s))
    return -1;
  if (page != NULL) {
    lap_page_begin (page, "H2");
    lap_wrap_put (cell->number, &number, page, x, y, digits.width + 1, 0);
    lap_wrap_put (cell->name, &name, page, x + left + s.gap, y, width, 0);
    lap_page_end (page);
    if (plan->figures)
      put_figure (cell, page, x + column, y, left - column, ground - y);
    put_ground (cell, &s, page, x, ground, plan->figures ? left : plan->width);
    put_signs (cell, &s, page, x, y + digits.height + s.gap);
    rows (cell, &s, width, page, x + left + s.gap, y + fit.height + s.gap);
  }
  return MAX (fit.height + s.gap * (below > 0) + below + foot, side);
}

static double
lay_stack (LapPosterCell *cell, const LapCellPlan *plan, LapPage *page, double x, double y, double height)
{
  Sizes s = sizes_of (cell, plan);
  double head = put_name (cell, &s, page, x, y, plan->width);
  double left = plan->figures ? plan->width * plan->share : has_signs (cell) ? s.sign * 1.4 : 0;
  double width = plan->width - left - (left > 0 ? s.gap : 0), ground = y + height - s.ground;
  double below = rows (cell, &s, width, NULL, 0, 0);
  double foot = plan->figures ? 0 : s.ground + s.gap;

  if (head < 0 || below < 0 || (plan->figures && left < s.figure + s.sign * 1.4))
    return -1;
  if (page != NULL) {
    put_picture (cell, plan, &s, page, x, y + head, left, ground);
    put_ground (cell, &s, page, x, ground, plan->figures ? left : plan->width);
    rows (cell, &s, width, page, x + plan->width - width, y + height - foot - below);
  }
  return head + s.gap + MAX (below + foot, MAX (plan->figures ? s.figure : 0, has_signs (cell) * 2.5 * s.sign) + s.ground);
}

static double
lay_tall (LapPosterCell *cell, const LapCellPlan *plan, LapPage *page, double x, double y, double height)
{
  Sizes s = sizes_of (cell, plan);
  double head = put_name (cell, &s, page, x, y, plan->width), below = rows (cell, &s, plan->width, NULL, 0, 0);
  double ground = y + height - below - s.gap * (below > 0) - s.ground;

  if (head < 0 || below < 0 || !plan->figures)
    return -1;
  if (page != NULL) {
    put_picture (cell, plan, &s, page, x, y + head, plan->width, ground);
    put_ground (cell, &s, page, x, ground, plan->width);
    rows (cell, &s, plan->width, page, x, y + height - below);
  }
  return head + s.gap / 2 + s.figure + s.ground + s.gap * (below > 0) + below;
}

static double (* const styles[]) (LapPosterCell *, const LapCellPlan *, LapPage *, double, double, double) = {
  [LAP_CELL_SIDE] = lay_side, [LAP_CELL_STACK] = lay_stack, [LAP_CELL_TALL] = lay_tall,
};

double
lap_poster_cell_need (LapPosterCell *cell, const LapCellPlan *plan)
{
  return styles[plan->style] (cell, plan, NULL, 0, 0, 0);
}

double
lap_poster_cell_grows (const LapCellPlan *plan)
{
  return plan->figures ? plan->width * (plan->style == LAP_CELL_TALL ? 0.6 : plan->share) : 0;
}

void
lap_poster_cell_put (LapPosterCell *cell, const LapCellPlan *plan, LapPage *page, double x, double y, double height)
{
  styles[plan->style] (cell, plan, page, x, y, height);
}
