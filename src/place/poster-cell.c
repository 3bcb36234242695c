/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/poster-cell.h"

#include "place/body-marks.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* In units at scale 1; a capital of 9 mm is one under 16 minutes of arc at 1.9 m. */
#define NUMBER_CAP  18.0
#define OPTION_CAP   9.0
#define GROUND       4.0
#define FIGURE_LEAST 28.0 /* high */
#define BODY        30.0 /* high */
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

  return (Sizes) { .number = MAX (NUMBER_CAP * k, plan->number), .name = LAP_NAME_CAP * k, .option = OPTION_CAP * k, .gap = GAP * k,
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

/* One cell being asked for its height, or put on a page. */
typedef struct {
  LapPosterCell     *cell;
  const LapCellPlan *plan;
  Sizes              s;
  LapPage           *page; /* NULL: only asked */
  double             x, y, height;
  double             figure; /* the lesser side of the figure's place, mm */
} Pen;

/* A word may be broken inside only when it is too long for half a poster. */
static gboolean
is_whole (const Pen *pen, const LapWrap *words, const LapFit *fit, double cap)
{
  return fit->broken == 0 || lap_wrap_longest (words) * cap > 120 * pen->cell->poster->unit;
}

/* What is worked, above the rows where it is asked for. Returns the height, or -1. */
static double
lay_body (Pen *pen, double width, double x, double y)
{
  const LapTask *task = pen->cell->station->task;
  double height = BODY * pen->cell->poster->unit * pen->plan->scale;

  if (!pen->cell->poster->options->body || task->shown == NULL)
    return 0;
  if (width < height * LAP_BODY_WIDTH)
    return -1;
  if (pen->page != NULL)
    lap_body_put (pen->page, task->primary, task->secondary, x, y, height);
  return height;
}

/* The rows, one below the other from @y on. Returns their height, or -1 when they are too narrow. */
static double
lay_rows (Pen *pen, double width, double x, double y)
{
  const Sizes *s = &pen->s;
  LapType type = row_type (s);
  double height = lay_body (pen, width, x, y), indent = s->sign * 1.4 + s->option * 0.45;

  if (height < 0)
    return -1;
  for (guint i = 0; i < pen->cell->rows->len; i++) {
    const Row *row = &g_array_index (pen->cell->rows, Row, i);
    double left = row->signed_ ? indent : 0;
    LapFit fit = lap_wrap_fit (row->words, &type, MAX (width - left, 0.1));

    if (width <= left || fit.width > width - left + 0.01 || !is_whole (pen, row->words, &fit, s->option))
      return -1;
    height += height > 0 ? s->option * 0.42 : 0;
    if (pen->page != NULL) {
      lap_page_begin (pen->page, "P");
      if (row->signed_)
        lap_page_sign (pen->page, row->sign, x, y + height - (s->sign - s->option) / 2, s->sign * 1.4, s->sign,
                       row->role);
      lap_wrap_put (row->words, &type, pen->page, x + left, y + height, width - left, 0);
      lap_page_end (pen->page);
    }
    height += fit.height;
  }
  return height;
}

/* What is to be known before one looks at the figure; from @x on. Returns the width. */
static double
lay_signs (Pen *pen, LapPage *page, double x, double y)
{
  const LapStation *station = pen->cell->station;
  double width = pen->s.sign * 1.4, used = 0;

  if (pen->cell->poster->options->hide & LAP_HIDE_DETAILS)
    return 0;
  if (station->breathless) {
    if (page != NULL)
      lap_page_sign (page, LAP_SIGN_BREATHLESS, x, y, width, pen->s.sign, LAP_ROLE_EFFORT);
    used += width + pen->s.gap;
  }
  if (station->swaps) {
    if (page != NULL)
      lap_page_sign (page, LAP_SIGN_SWAP, x + used, y, width, pen->s.sign, LAP_ROLE_WORK);
    used += width + pen->s.gap;
  }
  return used;
}

/* The name with the signs behind its last word, or in a line of their own. Returns the height, or -1. */
static double
lay_name (Pen *pen, double width, double x, double y)
{
  LapType type = name_type (&pen->s);
  LapFit fit = lap_wrap_fit (pen->cell->name, &type, MAX (width, 0.1));
  double signs = lay_signs (pen, NULL, 0, 0), line = lap_wrap_pitch (pen->cell->name, &type), baseline;
  gboolean inside = fit.last + pen->s.gap + signs <= width + pen->s.gap;

  if (width <= 0 || fit.width > width + 0.01 || signs > width + pen->s.gap ||
      !is_whole (pen, pen->cell->name, &fit, pen->s.name))
    return -1;
  if (pen->page != NULL)
    lap_wrap_put (pen->cell->name, &type, pen->page, x, y, width, 0);
  baseline = y + pen->s.name + (fit.lines - (inside ? 1 : 0)) * line;
  if (pen->page != NULL && signs > 0)
    lay_signs (pen, pen->page, x + (inside ? fit.last + pen->s.gap : 0), baseline - (pen->s.name + pen->s.sign) / 2);
  return fit.height + (inside || signs == 0 ? 0 : line);
}

/* The number and the name beside it, or below it where a word would be too wide. Returns the height, or -1. A single
 * line shares the number's baseline. */
static double
lay_head (Pen *pen)
{
  LapType number = number_type (&pen->s), name = name_type (&pen->s);
  LapFit digits = lap_wrap_fit (pen->cell->number, &number, 1e6);
  double beside = digits.width + pen->s.gap, longest = lap_wrap_longest (pen->cell->name) * name.cap;
  gboolean below = longest > pen->plan->width - beside && longest <= pen->plan->width;
  double left = below ? 0 : beside, width = pen->plan->width - left, shift = 0, height;

  if (below)
    shift = digits.height + pen->s.gap;
  else if (width > 0 && lap_wrap_fit (pen->cell->name, &name, width).lines == 1)
    shift = pen->s.number - pen->s.name;
  if (pen->page != NULL) {
    lap_page_begin (pen->page, "H2");
    lap_wrap_put (pen->cell->number, &number, pen->page, pen->x, pen->y, digits.width + 1, 0);
  }
  height = lay_name (pen, width, pen->x + left, pen->y + shift);
  if (pen->page != NULL)
    lap_page_end (pen->page);
  return height < 0 ? -1 : MAX (digits.height, shift + height);
}

/* The ground: the work solid, the rest a thinner hatched tail, to scale along @width. */
static void
put_ground (LapPage *page, double x, double y, double width, double thick, int work, int rest)
{
  double solid = rest > 0 && work > 0 ? width * work / (work + rest) : width;
  LapMark *mark = lap_page_box (page, x, y, solid, thick, LAP_ROLE_WORK);

  mark->radius = thick * 0.17;
  mark->line = LAP_ROLE_WORK;
  mark->thick = thick * 0.08;
  if (solid < width) {
    mark = lap_page_hatch (page, x + solid, y + thick * 0.2, width - solid, thick * 0.6);
    mark->thick = thick * 0.08;
    mark->radius = thick * 0.5;
  }
}

/* The ground and, on it, the figure. */
static void
lay_picture (Pen *pen, double x, double top, double width, double ground, double ground_x, double ground_width)
{
  const LapStation *station = pen->cell->station;

  pen->figure = pen->plan->figures ? MIN (width, ground - top) : 0;
  if (pen->page == NULL)
    return;
  if (pen->plan->figures && station->task->shown != NULL)
    lap_page_figure (pen->page, station->task->shown, x, top, width, ground - top);
  put_ground (pen->page, ground_x, ground, ground_width, pen->s.ground, station->work, station->rest);
}

/* The three styles. Each returns the height it needs, or -1. */

static double
lay_side (Pen *pen)
{
  const Sizes *s = &pen->s;
  LapType number = number_type (s);
  LapFit digits = lap_wrap_fit (pen->cell->number, &number, 1e6);
  gboolean figures = pen->plan->figures;
  double left = figures ? pen->plan->width * pen->plan->share : digits.width, column = digits.width + s->gap / 2;
  double width = pen->plan->width - left - s->gap, foot = figures ? 0 : s->ground + s->gap, name, below;

  if (figures && left < column + s->figure)
    return -1;
  if (pen->page != NULL) {
    lap_page_begin (pen->page, "H2");
    lap_wrap_put (pen->cell->number, &number, pen->page, pen->x, pen->y, digits.width + 1, 0);
  }
  name = lay_name (pen, width, pen->x + left + s->gap, pen->y);
  if (pen->page != NULL)
    lap_page_end (pen->page);
  below = name < 0 ? -1 : lay_rows (pen, width, pen->x + left + s->gap, pen->y + name + s->gap);
  if (below < 0)
    return -1;
  lay_picture (pen, pen->x + column, pen->y, left - column, pen->y + pen->height - s->ground, pen->x,
               figures ? left : pen->plan->width);
  return MAX (name + s->gap * (below > 0) + below + foot, MAX (digits.height, figures ? s->figure : 0) + s->gap +
                                                          s->ground);
}

static double
lay_stack (Pen *pen)
{
  const Sizes *s = &pen->s;
  gboolean figures = pen->plan->figures;
  double head = lay_head (pen), left = figures ? pen->plan->width * pen->plan->share : 0;
  double width = pen->plan->width - left - (figures ? s->gap : 0), foot = figures ? 0 : s->ground + s->gap;
  double x = pen->x + pen->plan->width - width, bottom = pen->y + pen->height - foot, below;
  Pen asked = *pen;

  asked.page = NULL;
  below = lay_rows (&asked, width, 0, 0);
  if (head < 0 || below < 0 || (figures && left < s->figure))
    return -1;
  lay_rows (pen, width, x, bottom - below);
  lay_picture (pen, pen->x, pen->y + head + s->gap / 2, left, pen->y + pen->height - s->ground, pen->x,
               figures ? left : pen->plan->width);
  return head + s->gap + MAX (below + foot, (figures ? s->figure : 0) + s->ground);
}

static double
lay_tall (Pen *pen)
{
  const Sizes *s = &pen->s;
  double head = lay_head (pen), width = pen->plan->width, below, ground;
  Pen asked = *pen;

  asked.page = NULL;
  below = lay_rows (&asked, width, 0, 0);
  if (head < 0 || below < 0 || !pen->plan->figures)
    return -1;
  below = MAX (below, pen->plan->below);
  lay_rows (pen, width, pen->x, pen->y + pen->height - below);
  ground = pen->y + pen->height - below - s->gap * (below > 0) - s->ground;
  lay_picture (pen, pen->x, pen->y + head + s->gap / 2, width, ground, pen->x, width);
  return head + s->gap + s->figure + s->ground + s->gap * (below > 0) + below;
}

static double
lay (Pen *pen)
{
  static double (* const styles[]) (Pen *) = {
    [LAP_CELL_SIDE] = lay_side, [LAP_CELL_STACK] = lay_stack, [LAP_CELL_TALL] = lay_tall,
  };

  pen->s = sizes_of (pen->cell, pen->plan);
  return styles[pen->plan->style] (pen);
}

double
lap_poster_cell_need (LapPosterCell *cell, const LapCellPlan *plan)
{
  return lay (&(Pen) { .cell = cell, .plan = plan });
}

double
lap_poster_cell_below (LapPosterCell *cell, const LapCellPlan *plan)
{
  Pen pen = { .cell = cell, .plan = plan, .s = sizes_of (cell, plan) };

  return plan->style == LAP_CELL_TALL ? lay_rows (&pen, plan->width, 0, 0) : 0;
}

double
lap_poster_cell_figure (LapPosterCell *cell, const LapCellPlan *plan, double height)
{
  Pen pen = { .cell = cell, .plan = plan, .height = height };

  lay (&pen);
  return pen.figure;
}

double
lap_poster_cell_grows (const LapCellPlan *plan)
{
  return plan->figures ? plan->width * (plan->style == LAP_CELL_TALL ? 0.6 : plan->share) : 0;
}

void
lap_poster_cell_put (LapPosterCell *cell, const LapCellPlan *plan, LapPage *page, double x, double y, double height)
{
  lay (&(Pen) { .cell = cell, .plan = plan, .page = page, .x = x, .y = y, .height = height });
}
