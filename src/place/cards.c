/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/cards.h"

#include "place/formula.h"
#include "place/poster-cell.h"
#include "place/safety.h"

#include <glib/gi18n-lib.h>

/* Cards on a sheet of each paper: two of A5 on A4, four of A5 on A3. */
static const guint cards_on[] = {
  [LAP_PAPER_A4] = 2, [LAP_PAPER_A3] = 4, [LAP_PAPER_A2] = 4, [LAP_PAPER_A5] = 1, [LAP_PAPER_LETTER] = 2,
  [LAP_PAPER_TABLOID] = 4,
};

/* A capital of 14 mm, of scale 1, reads from 3 m; the name of a card must from 2 m. */
#define LEAST_SCALE 0.8
#define MOST_SCALE  2.4
#define NUMBER_FROM 5.0 /* m */

typedef struct {
  LapPoster  poster;      /* its width and height are those of a card */
  GPtrArray *stations, *cells;
  LapPages  *pages;
  guint      columns, rows;
  double     foot;        /* height below the rule, mm */
  LapCellPlan plan;
} Deck;

static LapType
small_type (const Deck *deck)
{
  return (LapType) { 2.9 * deck->poster.unit, 1.25, LAP_ROLE_INK2, LAP_READ_OTHER };
}

static LapType
next_type (const Deck *deck)
{
  return (LapType) { 6.0 * deck->poster.unit, 1.1, LAP_ROLE_WORK, LAP_READ_OTHER };
}

/* What to spare: each joint that is really loaded, with how to. NULL for none. */
static char *
care_text (const LapStation *station)
{
  GString *text = g_string_new (NULL);

  for (guint word = 0; word < LAP_N_CARE; word++) {
    const LapCare *care = station->task->shown != NULL ? lap_exercise_care (station->task->shown, word) : NULL;

    if (care == NULL || care->load < 2)
      continue;
    g_string_append_printf (text, "%s%s", text->len > 0 ? " · " : _("Care: "),
                            lap_words_label (&lap_care_words, word));
    if (care->say != NULL)
      g_string_append_printf (text, " (%s)", care->say);
  }
  return g_string_free (text, text->len == 0);
}

/* How long, with how many, what to spare, and the safety words. */
static char *
foot_text (const Deck *deck, const LapStation *station)
{
  const LapPart *part = deck->poster.timeline->parts[deck->poster.part].part;
  g_autofree char *formula = lap_formula_text (deck->poster.timeline, deck->poster.part), *care = care_text (station);
  GString *text = g_string_new (formula);

  if (part->run == LAP_RUN_STATIONS)
    g_string_append_printf (text, " · %d %s", part->per_station,
                            g_dngettext (GETTEXT_PACKAGE, "person here", "people here", part->per_station));
  if (care != NULL)
    g_string_append_printf (text, " · %s", care);
  if ((deck->poster.options->hide & LAP_HIDE_SAFETY) == 0)
    g_string_append_printf (text, " · %s %s", lap_safety_first (), lap_safety_more ());
  return g_string_free (text, FALSE);
}

static char *
next_text (const Deck *deck, guint i)
{
  const LapStation *next = g_ptr_array_index (deck->stations, (i + 1) % deck->stations->len);

  const LapMeasure *measure = deck->poster.measure;
  const char *arrow = measure->rtl (measure->data, next->name) ? "←" : "→";

  return deck->stations->len > 1 ? g_strdup_printf ("%s %u %s", arrow, next->number, next->name) : NULL;
}

static double
foot_height (const Deck *deck, guint i)
{
  double inner = deck->poster.width - 2 * deck->poster.margin, u = deck->poster.unit;
  g_autofree char *next = next_text (deck, i), *text = foot_text (deck, g_ptr_array_index (deck->stations, i));
  g_autoptr (LapWrap) line = lap_wrap_new (deck->poster.measure, LAP_WEIGHT_STRONG, next);
  g_autoptr (LapWrap) words = lap_wrap_new (deck->poster.measure, LAP_WEIGHT_PLAIN, text);
  LapType large = next_type (deck), small = small_type (deck);

  return lap_wrap_fit (line, &large, inner).height + lap_wrap_fit (words, &small, inner).height + 5.5 * u;
}

/* Whether every card holds its exercise; @figure gets the smallest figure, mm. */
static gboolean
all_fit (const Deck *deck, const LapCellPlan *plan, double height, double *figure)
{
  *figure = G_MAXDOUBLE;
  for (guint i = 0; i < deck->cells->len; i++) {
    LapPosterCell *cell = g_ptr_array_index (deck->cells, i);
    double need = lap_poster_cell_need (cell, plan);

    if (need < 0 || need > height)
      return FALSE;
    *figure = MIN (*figure, lap_poster_cell_figure (cell, plan, height));
  }
  return TRUE;
}

/* Tries a style in many sizes and keeps what is better to read: letters and figures count alike. */
static void
try_plan (Deck *deck, LapCellPlan plan, double height, double *best)
{
  for (plan.scale = MOST_SCALE; plan.scale > 0.01; plan.scale *= 0.94) {
    double figure, score;

    if (!all_fit (deck, &plan, height, &figure))
      continue;
    score = plan.scale * (plan.figures ? MAX (figure, 0.001) : 1);
    if (*best == 0 || (score > *best && (plan.scale >= LEAST_SCALE || plan.scale >= deck->plan.scale))) {
      *best = score;
      deck->plan = plan;
    }
    if (plan.scale < LEAST_SCALE)
      break;
  }
}

/* One style for all cards. */
static void
fit_plan (Deck *deck, double height)
{
  static const double shares[] = { 0.34, 0.42, 0.5, 0.6 };
  double best = 0;

  for (guint style = 0; style < LAP_N_CELL_STYLES; style++)
    for (guint i = 0; i < G_N_ELEMENTS (shares); i++)
      try_plan (deck, (LapCellPlan) { .style = style, .share = shares[i],
                                      .width = deck->poster.width - 2 * deck->poster.margin,
                                      .figures = (deck->poster.options->hide & LAP_HIDE_FIGURES) == 0,
                                      .number = lap_cap_height (NUMBER_FROM, LAP_ARC_READABLE) }, height, &best);
}

static void
put_card (Deck *deck, LapPage *page, guint i, double x, double y)
{
  const LapPoster *poster = &deck->poster;
  double u = poster->unit, m = poster->margin, inner = poster->width - 2 * m, rule = y + poster->height - m - deck->foot;
  g_autofree char *next = next_text (deck, i), *text = foot_text (deck, g_ptr_array_index (deck->stations, i));
  LapType large = next_type (deck), small = small_type (deck);

  lap_poster_cell_put (g_ptr_array_index (deck->cells, i), &deck->plan, page, x + m, y + m, rule - y - m - 3 * u);
  lap_page_rule (page, x + m, rule, inner, 0.6 * u, LAP_ROLE_INK);
  rule += 3 * u;
  lap_page_begin (page, "P");
  if (next != NULL)
    rule += lap_text_put (poster->measure, LAP_WEIGHT_STRONG, next, &large, page, x + m, rule, inner, 1) + 2 * u;
  lap_text_put (poster->measure, LAP_WEIGHT_PLAIN, text, &small, page, x + m, rule, inner, 0);
  lap_page_end (page);
}

static void
put_cuts (const Deck *deck, LapPage *page)
{
  for (guint c = 1; c < deck->columns; c++)
    lap_page_rule (page, c * deck->poster.width, 0, 0.2, page->height, LAP_ROLE_LINE);
  for (guint r = 1; r < deck->rows; r++)
    lap_page_rule (page, 0, r * deck->poster.height, page->width, 0.2, LAP_ROLE_LINE);
}

static void
put_part (Deck *deck, double width, double height)
{
  guint on_page = deck->columns * deck->rows;
  LapPage *page = NULL;

  deck->foot = 0;
  for (guint i = 0; i < deck->stations->len; i++) {
    g_ptr_array_add (deck->cells, lap_poster_cell_new (&deck->poster, g_ptr_array_index (deck->stations, i)));
    deck->foot = MAX (deck->foot, foot_height (deck, i));
  }
  fit_plan (deck, deck->poster.height - 2 * deck->poster.margin - deck->foot - 3 * deck->poster.unit);
  for (guint i = 0; i < deck->stations->len; i++) {
    guint place = i % on_page;

    if (place == 0) {
      page = lap_pages_add (deck->pages, width, height);
      put_cuts (deck, page);
    }
    if (i == 0)
      lap_pages_outline (deck->pages, 0, lap_part_title (deck->poster.timeline->parts[deck->poster.part].part), 0);
    lap_page_begin (page, "Sect");
    put_card (deck, page, i, place % deck->columns * deck->poster.width, place / deck->columns * deck->poster.height);
    lap_page_end (page);
  }
}

LapPages *
lap_cards_build (const LapTimeline *timeline, const LapSheetOptions *options, const LapMeasure *measure)
{
  Deck deck = { .poster = { .timeline = timeline, .options = options, .measure = measure } };
  double width, height;

  lap_paper_size (options, &width, &height);
  deck.pages = lap_pages_new (timeline->session->title, timeline->session->coach, timeline->catalogue);
  deck.columns = cards_on[options->paper] == 4 || (cards_on[options->paper] == 2 && width > height) ? 2 : 1;
  deck.rows = cards_on[options->paper] / deck.columns;
  deck.poster.width = width / deck.columns;
  deck.poster.height = height / deck.rows;
  deck.poster.unit = 1;
  deck.poster.margin = 10;
  for (deck.poster.part = 0; deck.poster.part < timeline->n_parts; deck.poster.part++) {
    g_autoptr (GPtrArray) stations = lap_stations_of (timeline, deck.poster.part);
    g_autoptr (GPtrArray) cells = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_poster_cell_free);

    deck.stations = stations;
    deck.cells = cells;
    if (lap_part_is_shown (timeline, deck.poster.part))
      put_part (&deck, width, height);
  }
  if (lap_pages_n (deck.pages) == 0)
    lap_pages_add (deck.pages, width, height);
  return deck.pages;
}
