/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/poster-frame.h"

#include "place/formula.h"
#include "place/safety.h"
#include "place/stations.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* In units. The number of the formula is read under 40 minutes of arc at 3 m, twice a comfortable text. */
#define FORMULA_CAP   35.0
#define LABEL_CAP      7.5
#define TITLE_CAP     20.0
#define SUB_CAP        5.5
#define SAFETY_CAP     5.0
#define MORE_CAP       4.0
#define PAD            4.0
#define HIGHEST_BAND   0.32 /* of the page: the exercises need room, too */
#define COUNT_PAD     14.0
#define GAP            6.0
#define TAIL           8.0 /* least width of the hatch */
#define CODE_WORDS    17.0
#define CODE_SIDE     22.0 /* scanned from an arm's length: a tenth of the distance (common practice) */
#define LATER_TITLE   11.0
#define LATER_LINE     7.0

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

struct _LapPosterFrame {
  const LapPoster *poster;
  LapWrap *title, *sub, *line, *safety, *more;
  GArray  *cells;
  double   formula_cap; /* mm */
  double   count_share;
  guint    rows;
  gboolean beside;      /* the formula stands beside the title */
  double   title_width, band_x, band_width;
  LapType  title_type, sub_type;
  double   title_height; /* with what stands under it, mm */
  double   head, later, foot; /* heights, mm; `later` of the head of later pages */
};

static LapType
type (double cap, double leading, LapRole role, LapRead read)
{
  return (LapType) { cap, leading, role, read };
}

static double
units (const LapPosterFrame *frame, double n)
{
  return n * frame->poster->unit;
}

/* A poster that is read from nearer by has room for more exercises under smaller numbers. */
static double
formula_cap (const LapPosterFrame *frame)
{
  return units (frame, FORMULA_CAP * MIN (frame->poster->least, 1));
}

/* Ground */

void
lap_ground_put (LapPage *page, double x, double y, double width, double thick, int work, int rest)
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

/* Words under the title */

static void
add_piece (GString *line, char *piece)
{
  if (piece != NULL && *piece != '\0')
    g_string_append_printf (line, "%s%s", line->len > 0 ? "\xc2\xa0· " : "", piece);
  g_free (piece);
}

static char *
also_for_text (const LapSession *session)
{
  g_autofree char *words = NULL;

  if (session->also_for == NULL)
    return NULL;
  words = lap_words_join (&lap_also_for_words,
                          lap_words_mask (&lap_also_for_words, (const char * const *) session->also_for));
  return *words != '\0' ? g_strdup_printf (_("also for: %s"), words) : NULL;
}

/* A talk or pause among the exercises, told by the exercise it follows. */
static void
add_breaks (GString *line, const LapPoster *poster)
{
  const LapPart *part = poster->timeline->parts[poster->part].part;
  guint before = 0;

  for (guint i = 0; i < lap_part_n (part); i++) {
    const LapBlock *block = lap_part_nth (part, i);

    if (block->kind == LAP_BLOCK_EXERCISE) {
      before++;
    } else if (block->kind == LAP_BLOCK_PAUSE && before > 0) {
      g_autofree char *length = lap_duration_text (block->seconds);
      const char *what = block->pause != NULL && *block->pause != '\0' ? block->pause : _("Pause");

      /* Translators: "water 60 s after 5". */
      add_piece (line, g_strdup_printf (_("%s %s after %u"), what, length, before));
    }
  }
  if (part->run != LAP_RUN_OWN_PACE && part->rounds > 1 && part->round_rest > 0) {
    g_autofree char *length = lap_duration_text (part->round_rest);

    add_piece (line, g_strdup_printf (_("%s between rounds"), length));
  }
}

static char *
sub_text (const LapPoster *poster)
{
  const LapSession *session = poster->timeline->session;
  const LapPart *part = poster->timeline->parts[poster->part].part;
  int minutes = (poster->timeline->length + 30) / 60;
  GString *line = g_string_new (NULL);

  if (part->title != NULL && *part->title != '\0')
    add_piece (line, g_strdup (part->title));
  if (minutes > 0)
    add_piece (line, g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%d minute", "%d minutes", minutes), minutes));
  add_piece (line, lap_words_join (&lap_kit_words, lap_kit_mask (session->kit)));
  if (part->run == LAP_RUN_STATIONS && part->per_station > 1)
    add_piece (line, g_strdup_printf (_("%d people at each station"), part->per_station));
  add_breaks (line, poster);
  add_piece (line, also_for_text (session));
  if (session->coach != NULL && *session->coach != '\0')
    add_piece (line, g_strdup_printf (_("with %s"), session->coach));
  return g_string_free (line, FALSE);
}

/* The band of the formula */

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
cell_width (LapPosterFrame *frame, const Cell *cell, double cap)
{
  double u = frame->poster->unit;
  LapType big = type (cap * (cell->kind == LAP_CELL_COUNT ? frame->count_share : 1), 1, LAP_ROLE_INK, 0);
  LapType small = type (LABEL_CAP * u, 1.1, LAP_ROLE_INK, 0);
  double width;

  if (cell->kind == LAP_CELL_WORDS)
    return MAX (42 * u, lap_wrap_fit (cell->small, &small, 42 * u).width) + 2 * GAP * u;
  width = MAX (lap_wrap_fit (cell->big, &big, 1e6).width, lap_wrap_fit (cell->small, &small, 1e6).width);
  return width + (cell->kind == LAP_CELL_COUNT ? COUNT_PAD * u : 2 * PAD * u) +
         (cell->kind == LAP_CELL_REST ? TAIL * u : 0);
}

/* Puts the cells in rows no wider than @width. FALSE when one alone is wider. */
static gboolean
arrange (LapPosterFrame *frame, double cap, double width)
{
  double x = 0;

  frame->rows = 0;
  for (guint i = 0; i < frame->cells->len; i++) {
    Cell *cell = &g_array_index (frame->cells, Cell, i);

    cell->width = cell_width (frame, cell, cap);
    if (cell->width > width)
      return FALSE;
    if (x + cell->width > width || i == 0) {
      frame->rows++;
      x = 0;
    }
    cell->row = frame->rows - 1;
    cell->x = x;
    x += cell->width;
  }
  return TRUE;
}

/* What is left of a row goes to work and rest, so that the ground comes near its true proportion. */
static void
spread (LapPosterFrame *frame)
{
  for (guint row = 0; row < frame->rows; row++) {
    double used = 0, seconds = 0, shift = 0, room;

    for (guint i = 0; i < frame->cells->len; i++) {
      const Cell *cell = &g_array_index (frame->cells, Cell, i);

      used += cell->row == row ? cell->width : 0;
      seconds += cell->row == row ? cell->seconds : 0;
    }
    room = frame->band_width - used;
    for (guint i = 0; i < frame->cells->len; i++) {
      Cell *cell = &g_array_index (frame->cells, Cell, i);

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

static double
row_height (const LapPosterFrame *frame)
{
  double u = frame->poster->unit;

  return frame->formula_cap + (2 * PAD + 5 + LABEL_CAP * 1.3) * u;
}

static double
band_height (const LapPosterFrame *frame)
{
  return frame->rows * row_height (frame) + (frame->rows - 1) * units (frame, 4);
}

/* Returns the width it takes. */
static double
fit_band (LapPosterFrame *frame, double width)
{
  double cap = formula_cap (frame), used = 0;

  for (guint i = 0; i < G_N_ELEMENTS (count_shares); i++) {
    frame->count_share = count_shares[i];
    if (arrange (frame, cap, width) && frame->rows == 1)
      break;
  }
  frame->formula_cap = cap;
  while ((!arrange (frame, cap, width) || band_height (frame) > frame->poster->height * HIGHEST_BAND) &&
         cap > units (frame, 1)) {
    cap *= 0.92;
    frame->formula_cap = cap;
  }
  for (guint i = 0; i < frame->cells->len; i++) {
    const Cell *cell = &g_array_index (frame->cells, Cell, i);

    used = MAX (used, cell->x + cell->width);
  }
  return used;
}

static LapType
sub_type (const LapPosterFrame *frame)
{
  return type (units (frame, SUB_CAP), 1.25, LAP_ROLE_INK2, LAP_READ_OTHER);
}

/* The title and the words under it, within @height. */
static void
fit_title (LapPosterFrame *frame, double height)
{
  LapType title = type (units (frame, TITLE_CAP * MIN (frame->poster->least, 1)), 1.02, LAP_ROLE_INK, LAP_READ_TITLE);
  double sub;

  frame->sub_type = lap_wrap_largest (frame->sub, sub_type (frame), frame->title_width, height * 0.4, 0.01);
  sub = lap_wrap_fit (frame->sub, &frame->sub_type, frame->title_width).height;
  frame->title_type = lap_wrap_largest (frame->title, title, frame->title_width, height - sub - units (frame, 3), 0.01);
  frame->title_height = lap_wrap_fit (frame->title, &frame->title_type, frame->title_width).height +
                        units (frame, 3) + sub;
}

/* The title above the formula, or beside it where that is lower and both have room. */
static void
fit_head (LapPosterFrame *frame)
{
  const LapPoster *poster = frame->poster;
  double inner = poster->width - 2 * poster->margin, u = poster->unit;

  frame->title_width = fit_band (frame, inner * 0.75);
  frame->title_width = inner - frame->title_width - 10 * u;
  fit_title (frame, band_height (frame));
  if (frame->rows == 1 && frame->formula_cap >= formula_cap (frame) * 0.999 && frame->title_type.cap >= 10 * u) {
    frame->beside = TRUE;
    frame->head = band_height (frame);
  } else {
    fit_band (frame, inner);
    frame->title_width = inner;
    fit_title (frame, 40 * u);
    frame->head = frame->title_height + 4 * u + band_height (frame);
  }
  frame->band_width = frame->beside ? inner - frame->title_width - 10 * u : inner;
  frame->band_x = inner - frame->band_width;
}

/* Footer */

static const struct {
  LapSign sign;
  const char *words;
  LapRole role;
} signs_told[] = {
  { LAP_SIGN_EASIER, N_("easier"), LAP_ROLE_TALK },
  { LAP_SIGN_HARDER, N_("harder"), LAP_ROLE_EFFORT },
  { LAP_SIGN_BREATHLESS, N_("out of breath"), LAP_ROLE_EFFORT },
  { LAP_SIGN_SWAP, N_("swap sides half way"), LAP_ROLE_WORK },
  { LAP_SIGN_ROUND, N_("in that round"), LAP_ROLE_WORK },
};

/* The address of the square code, or NULL where there is none. */
static const char *
code_address (const LapPosterFrame *frame)
{
  const char *link = frame->poster->timeline->session->link;

  return link != NULL && *link != '\0' && (frame->poster->options->hide & LAP_HIDE_CODE) == 0 ? link : NULL;
}

/* The width that words have in the foot, beside the code. */
static double
foot_width (const LapPosterFrame *frame)
{
  return frame->poster->width - 2 * frame->poster->margin -
         (code_address (frame) != NULL ? units (frame, CODE_SIDE + 8 + CODE_WORDS) : 0);
}

typedef struct {
  LapPosterFrame *frame;
  LapPage        *page; /* NULL: only asked for its height */
  LapType         words;
  double          x, y, left, right;
} Legend;

/* A mark — a sign, or a box filled with @role — and what it means behind it. */
static void
explain (Legend *legend, const LapSign *sign, LapRole role, const char *text)
{
  double u = legend->frame->poster->unit, cap = legend->words.cap, size = cap * 1.5, mark = size * 1.4;
  g_autoptr (LapWrap) wrap = lap_wrap_new (legend->frame->poster->measure, LAP_WEIGHT_STRONG, text);
  double width = lap_wrap_fit (wrap, &legend->words, 1e6).width + mark + 1.5 * u;

  if (legend->x > legend->left && legend->x + width > legend->right) {
    legend->x = legend->left;
    legend->y += cap * 2;
  }
  if (legend->page != NULL && sign != NULL) {
    lap_page_sign (legend->page, *sign, legend->x, legend->y - (size - cap) / 2, mark, size, role);
  } else if (legend->page != NULL) {
    LapMark *box = lap_page_box (legend->page, legend->x + mark - size, legend->y, size, cap, role);

    box->line = LAP_ROLE_WORK;
    box->thick = 0.4 * u;
    box->radius = cap * 0.25;
  }
  if (legend->page != NULL)
    lap_wrap_put (wrap, &legend->words, legend->page, legend->x + mark + 1.5 * u, legend->y, width, 0);
  legend->x += width + 8 * u;
}

/* The version, and which page it is. */
static char *
end_text (const LapPoster *poster, const char *where)
{
  g_autofree char *version = lap_version_text (poster->options);

  if (version == NULL || where == NULL)
    return g_strdup (version != NULL ? version : where);
  return g_strdup_printf ("%s\xc2\xa0· %s", version, where);
}

/* What the signs of this poster mean, in as many lines as it takes, and at the end which version and page it is.
 * Returns the height. */
static double
lay_legend (LapPosterFrame *frame, LapPage *page, double y, const char *where)
{
  const LapPoster *poster = frame->poster;
  double u = poster->unit, cap = MORE_CAP * u, end = (poster->options->date != NULL ? 80 : 22) * u;
  double width = foot_width (frame) - end; /* beside the words at the end */
  g_autofree char *text = end_text (poster, where);
  Legend legend = { frame, page, type (cap, 1.2, LAP_ROLE_INK2, LAP_READ_OTHER), poster->margin, y, poster->margin,
                    poster->margin + width };

  for (guint i = 0; i < G_N_ELEMENTS (signs_told); i++)
    if (poster->signs & LAP_BIT (signs_told[i].sign))
      explain (&legend, &signs_told[i].sign, signs_told[i].role, _(signs_told[i].words));
  if (poster->options->body) {
    explain (&legend, NULL, LAP_ROLE_HARD, _("works hard"));
    explain (&legend, NULL, LAP_ROLE_WORK2, _("helps"));
  }
  if (page != NULL && text != NULL) {
    g_autoptr (LapWrap) wrap = lap_wrap_new (poster->measure, LAP_WEIGHT_STRONG, text);
    LapType line = lap_wrap_largest (wrap, legend.words, end, cap * 1.6, 0.01);

    lap_wrap_put (wrap, &line, page, legend.right, y, end, 1);
  }
  return legend.y - y + cap * 1.5;
}

static void
foot_types (const LapPosterFrame *frame, LapType *first, LapType *more)
{
  double u = frame->poster->unit;

  *first = type (SAFETY_CAP * u, 1.15, LAP_ROLE_INK, LAP_READ_SAFETY);
  *more = type (MORE_CAP * u, 1.2, LAP_ROLE_INK, LAP_READ_OTHER);
}

static void
fit_foot (LapPosterFrame *frame)
{
  double inner = foot_width (frame), u = frame->poster->unit;
  LapType first, more;

  foot_types (frame, &first, &more);
  frame->foot = 3 * u + lay_legend (frame, NULL, 0, NULL);
  frame->foot += lap_wrap_fit (frame->safety, &first, inner).height +
                 lap_wrap_fit (frame->more, &more, inner).height + 4 * u;
  if (code_address (frame) != NULL)
    frame->foot = MAX (frame->foot, (CODE_SIDE + 5) * u);
}

/* At the end of the foot, with a word beside it. */
static void
put_code (LapPosterFrame *frame, LapPage *page, double y)
{
  const LapPoster *poster = frame->poster;
  double u = poster->unit, side = CODE_SIDE * u, x = poster->width - poster->margin - side;
  LapType words = type (MORE_CAP * u, 1.2, LAP_ROLE_INK, LAP_READ_OTHER);

  lap_page_link (page, code_address (frame));
  lap_text_put (poster->measure, LAP_WEIGHT_STRONG, _("See it move"), &words, page, x - (CODE_WORDS + 4) * u, y,
                CODE_WORDS * u, 1);
  lap_page_code (page, code_address (frame), x, y + 2 * u, side);
  lap_page_end (page);
}

void
lap_poster_frame_foot (LapPosterFrame *frame, LapPage *page, const char *where)
{
  const LapPoster *poster = frame->poster;
  double u = poster->unit, inner = foot_width (frame);
  double y = poster->height - poster->margin - frame->foot;
  LapType first, more;

  foot_types (frame, &first, &more);
  lap_page_rule (page, poster->margin, y, poster->width - 2 * poster->margin, 0.8 * u, LAP_ROLE_INK);
  y += 3 * u;
  if (code_address (frame) != NULL)
    put_code (frame, page, y);
  lap_page_begin (page, "P");
  y += lap_wrap_put (frame->safety, &first, page, poster->margin, y, inner, 0) + 1.5 * u;
  y += lap_wrap_put (frame->more, &more, page, poster->margin, y, inner, 0) + 2.5 * u;
  lap_page_end (page);
  lap_page_begin (page, "P");
  lay_legend (frame, page, y, where);
  lap_page_end (page);
}

/* Putting the head */

/* The words on paper, the hatch as the tail behind them. */
static void
put_rest (LapPosterFrame *frame, LapPage *page, const Cell *cell, double x, double y, double height)
{
  double u = frame->poster->unit, thick = 1.2 * u;
  double words = cell_width (frame, cell, frame->formula_cap) - TAIL * u;
  LapMark *box = lap_page_box (page, x, y + 3 * u, cell->width, height - 6 * u, LAP_ROLE_PAPER);

  box->line = LAP_ROLE_WORK;
  box->thick = thick;
  lap_page_hatch (page, x + words, y + 3 * u - thick / 2, cell->width - words + thick / 2,
                  height - 6 * u + thick)->thick = thick;
}

static void
put_cell (LapPosterFrame *frame, LapPage *page, const Cell *cell, double y)
{
  double u = frame->poster->unit, height = row_height (frame), x = frame->poster->margin + frame->band_x + cell->x;
  double pad = cell->kind == LAP_CELL_COUNT ? COUNT_PAD * u : PAD * u;
  LapRole role = cell->kind == LAP_CELL_WORK ? LAP_ROLE_ON_WORK : cell->kind == LAP_CELL_REST ? LAP_ROLE_WORK
                                                                                              : LAP_ROLE_INK;
  double share = cell->kind == LAP_CELL_COUNT ? frame->count_share : 1, cap = frame->formula_cap * share;
  LapType big = type (cap, 1, role, LAP_READ_FORMULA);
  LapType small = type (LABEL_CAP * u, 1.1, role, LAP_READ_OTHER);
  double inner = cell->width - pad - (cell->kind == LAP_CELL_COUNT ? 0 : pad) + 0.1;
  double label = y + PAD * u + frame->formula_cap + 5 * u, top = label - 5 * u - cap;

  if (cell->kind == LAP_CELL_WORDS) {
    double words = lap_wrap_fit (cell->small, &small, cell->width - 2 * GAP * u).height;

    lap_wrap_put (cell->small, &small, page, x + GAP * u, y + (height - words) / 2, cell->width - 2 * GAP * u, 0);
    return;
  }
  if (cell->kind == LAP_CELL_WORK)
    lap_page_box (page, x, y, cell->width, height, LAP_ROLE_WORK)->radius = 2.5 * u;
  if (cell->kind == LAP_CELL_REST)
    put_rest (frame, page, cell, x, y, height);
  if (cell->kind == LAP_CELL_COUNT)
    lap_page_sign (page, LAP_SIGN_TIMES, x, top + cap * 0.5 - 4.5 * u, 12.6 * u, 9 * u, LAP_ROLE_INK2);
  lap_wrap_put (cell->big, &big, page, x + pad, top, inner, 0);
  lap_wrap_put (cell->small, &small, page, x + pad, label, inner, 0);
}

/* The head of a page that hangs beside the first. */
static void
put_later_head (LapPosterFrame *frame, LapPage *page)
{
  const LapPoster *poster = frame->poster;
  double u = poster->unit, inner = poster->width - 2 * poster->margin, y = poster->margin;
  LapType title = lap_wrap_largest (frame->title, type (LATER_TITLE * u, 1.02, LAP_ROLE_INK, LAP_READ_OTHER), inner,
                                    LATER_TITLE * 1.4 * u, 0.01);
  LapType line = lap_wrap_largest (frame->line, type (LATER_LINE * u, 1.1, LAP_ROLE_WORK, LAP_READ_OTHER), inner,
                                   LATER_LINE * 1.4 * u, 0.01);

  lap_page_begin (page, "P");
  lap_wrap_put (frame->title, &title, page, poster->margin, y, inner, 0);
  lap_wrap_put (frame->line, &line, page, poster->margin, y + (LATER_TITLE * 1.4 + 2.5) * u, inner, 0);
  lap_page_end (page);
}

static void
put_head (LapPosterFrame *frame, LapPage *page)
{
  const LapPoster *poster = frame->poster;
  double u = poster->unit, y = poster->margin;

  lap_page_begin (page, "H1");
  y += lap_wrap_put (frame->title, &frame->title_type, page, poster->margin, y, frame->title_width, 0) + 3 * u;
  lap_page_end (page);
  lap_page_begin (page, "P");
  y += lap_wrap_put (frame->sub, &frame->sub_type, page, poster->margin, y, frame->title_width, 0) + 4 * u;
  lap_page_end (page);
  if (frame->beside)
    y = poster->margin;
  lap_page_begin (page, "P");
  for (guint i = 0; i < frame->cells->len; i++) {
    const Cell *cell = &g_array_index (frame->cells, Cell, i);

    put_cell (frame, page, cell, y + cell->row * (row_height (frame) + 4 * u));
  }
  lap_page_end (page);
}

LapPosterFrame *
lap_poster_frame_new (const LapPoster *poster)
{
  LapPosterFrame *frame = g_new0 (LapPosterFrame, 1);
  g_autofree char *sub = sub_text (poster), *line = lap_formula_text (poster->timeline, poster->part);
  const char *title = poster->timeline->session->title;

  frame->poster = poster;
  frame->title = lap_wrap_new (poster->measure, LAP_WEIGHT_HEAVY, title);
  frame->sub = lap_wrap_new (poster->measure, LAP_WEIGHT_STRONG, sub);
  frame->line = lap_wrap_new (poster->measure, LAP_WEIGHT_STRONG, line);
  frame->safety = lap_wrap_new (poster->measure, LAP_WEIGHT_HEAVY, lap_safety_first ());
  frame->more = lap_wrap_new (poster->measure, LAP_WEIGHT_PLAIN, lap_safety_more ());
  frame->cells = cells_new (poster);
  fit_head (frame);
  spread (frame);
  frame->later = units (frame, LATER_TITLE * 1.4 + 2.5 + LATER_LINE * 1.4);
  fit_foot (frame);
  return frame;
}

void
lap_poster_frame_free (LapPosterFrame *frame)
{
  lap_wrap_free (frame->title);
  lap_wrap_free (frame->sub);
  lap_wrap_free (frame->line);
  lap_wrap_free (frame->safety);
  lap_wrap_free (frame->more);
  g_array_unref (frame->cells);
  g_free (frame);
}

double
lap_poster_frame_top (const LapPosterFrame *frame, gboolean first)
{
  return frame->poster->margin + (first ? frame->head : frame->later) + units (frame, 5.5);
}

double
lap_poster_frame_bottom (const LapPosterFrame *frame)
{
  return frame->poster->height - frame->poster->margin - frame->foot - units (frame, 3.5);
}

void
lap_poster_frame_head (LapPosterFrame *frame, LapPage *page, gboolean first)
{
  if (first)
    put_head (frame, page);
  else
    put_later_head (frame, page);
}
