/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/cards.h"

#include "place/formula.h"
#include "place/loads.h"
#include "place/poster-cell.h"
#include "place/safety.h"

#include <glib/gi18n-lib.h>

/* Cards on a sheet of each paper, where nothing else is asked for: two of A5 on A4, four of A5 on A3. Smaller ones than
 * A6, twice as many, can't be read. */
static const guint cards_on[] = {
  [LAP_PAPER_A4] = 2, [LAP_PAPER_A3] = 4, [LAP_PAPER_A2] = 4, [LAP_PAPER_A5] = 1, [LAP_PAPER_LETTER] = 2,
  [LAP_PAPER_TABLOID] = 4,
};

#define MOST_SCALE  2.4
#define NAME_FROM   2.0 /* m */
#define NUMBER_FROM 5.0
#define A5_WIDTH    148.0 /* units are millimetres on a card of A5 and grow with it */
#define LOADS_HIGH  9.0 /* units */
#define LOADS_GAP   3.0

typedef struct {
  LapPoster  poster;      /* its width and height are those of a card */
  GPtrArray *stations, *cells;
  LapPages  *pages;
  guint      columns, rows;
  double     foot;        /* height below the rule, mm */
  gboolean   loads;       /* a station has weights to choose from: room is kept for them on each card */
  double     least;       /* scale at which the name reads from NAME_FROM */
  LapCellPlan plan;
} Deck;

static LapType
small_type (const Deck *deck)
{
  return (LapType) { 2.4 * deck->poster.unit, 1.25, LAP_ROLE_INK2, LAP_READ_OTHER };
}

static LapType
care_type (const Deck *deck)
{
  return (LapType) { 3.0 * deck->poster.unit, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };
}

static LapType
next_type (const Deck *deck)
{
  return (LapType) { 5.5 * deck->poster.unit, 1.05, LAP_ROLE_WORK, LAP_READ_OTHER };
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

/* How long and how often, the safety words, and the version. */
static char *
small_text (const Deck *deck)
{
  g_autofree char *formula = lap_formula_text (deck->poster.timeline, deck->poster.part);
  g_autofree char *version = lap_version_text (deck->poster.options);

  return g_strdup_printf ("%s · %s %s%s%s", formula, lap_safety_first (), lap_safety_more (),
                          version != NULL ? " · " : "", version != NULL ? version : "");
}

/* How many share the station; NULL where people don't rotate. */
static char *
people_text (const Deck *deck)
{
  const LapPart *part = deck->poster.timeline->parts[deck->poster.part].part;

  if (part->run != LAP_RUN_STATIONS)
    return NULL;
  return g_strdup_printf ("%d\xc2\xa0%s", part->per_station,
                          g_dngettext (GETTEXT_PACKAGE, "person here", "people here", part->per_station));
}

/* Where to go on to, with an arrow in the direction the words run; NULL where there is nowhere else. */
static char *
next_text (const Deck *deck, guint i)
{
  const LapStation *next = g_ptr_array_index (deck->stations, (i + 1) % deck->stations->len);
  const LapMeasure *measure = deck->poster.measure;
  const char *arrow = measure->rtl (measure->data, next->name) ? "←" : "→";

  return deck->stations->len > 1 ? g_strdup_printf ("%s\xc2\xa0%u %s", arrow, next->number, next->name) : NULL;
}

/* Loads */

/* A way with its weight, or with a line to write it on. */
static void
put_load (const Deck *deck, LapPage *page, const LapLoads *loads, guint i, double x, double y, double width)
{
  static const struct {
    const char *label;
    LapSign sign;
    LapRole role;
  } ways[LAP_N_LOADS] = {
    [LAP_LOAD_EASIER] = { N_("easier"), LAP_SIGN_EASIER, LAP_ROLE_TALK },
    [LAP_LOAD_AS_SHOWN] = { N_("as shown"), 0, LAP_ROLE_NONE },
    [LAP_LOAD_HARDER] = { N_("harder"), LAP_SIGN_HARDER, LAP_ROLE_EFFORT },
  };
  const LapMeasure *measure = deck->poster.measure;
  double u = deck->poster.unit, height = LOADS_HIGH * u, pad = 1.5 * u, sign = ways[i].role != LAP_ROLE_NONE ? 7 * u : 0;
  LapType type = { 3.0 * u, 1.1, LAP_ROLE_INK2, LAP_READ_OTHER };
  LapType large = { 5.0 * u, 1.1, LAP_ROLE_INK, LAP_READ_OTHER };
  const char *text = loads->texts[i] != NULL ? loads->texts[i] : loads->unit;
  g_autoptr (LapWrap) words = lap_wrap_new (measure, LAP_WEIGHT_STRONG, text);
  g_autoptr (LapWrap) way = lap_wrap_new (measure, LAP_WEIGHT_PLAIN, _(ways[i].label));
  LapType label = lap_wrap_largest (way, type, width * 0.45 - sign - pad, height, 0.01);
  double left = pad + sign + lap_wrap_fit (way, &label, width).width + pad, room = width - left - pad;
  LapType fitted = lap_wrap_largest (words, large, room, height - 2 * pad, 0.01);
  LapMark *box = lap_page_box (page, x, y, width, height, LAP_ROLE_NONE);

  box->line = LAP_ROLE_LINE2;
  box->thick = 0.3 * u;
  box->radius = 1.5 * u;
  if (sign > 0)
    lap_page_sign (page, ways[i].sign, x + pad, y + (height - 3.5 * u) / 2, 4.9 * u, 3.5 * u, ways[i].role);
  lap_wrap_put (way, &label, page, x + pad + sign, y + (height - label.cap) / 2, width, 0);
  lap_wrap_put (words, &fitted, page, x + left, y + (height - fitted.cap) / 2, room, 1);
  if (loads->texts[i] == NULL)
    lap_page_rule (page, x + left, y + height - 2.2 * u,
                   MAX (room - lap_wrap_fit (words, &fitted, room).width - u, 0), 0.3 * u, LAP_ROLE_INK2);
}

/* The three levels side by side at @y; nothing where the station has none. */
static void
put_loads (const Deck *deck, LapPage *page, const LapStation *station, double x, double y, double width)
{
  double gap = LOADS_GAP * deck->poster.unit, one = (width - (LAP_N_LOADS - 1) * gap) / LAP_N_LOADS;
  g_auto (LapLoads) loads = { { NULL } };

  if (!lap_loads_of (station->task, &loads))
    return;
  lap_page_begin (page, "P");
  for (guint i = 0; i < LAP_N_LOADS; i++)
    put_load (deck, page, &loads, i, x + i * (one + gap), y, one);
  lap_page_end (page);
}

/* The foot: where to go on to and how many share the place; care; how long, and the safety words. With @page NULL
 * nothing is put. Returns the height. */
static double
lay_foot (const Deck *deck, guint i, LapPage *page, double x, double top)
{
  const LapPoster *poster = &deck->poster;
  double u = poster->unit, inner = poster->width - 2 * poster->margin, y = top + 3 * u, beside = 0;
  g_autofree char *next = next_text (deck, i), *people = people_text (deck), *small = small_text (deck);
  g_autofree char *care = care_text (g_ptr_array_index (deck->stations, i));
  const struct {
    const char *text;
    LapWeight weight;
    LapType type;
    double width, align;
    gboolean beside; /* the next stands on its other side */
  } lines[] = {
    { people, LAP_WEIGHT_STRONG, next_type (deck), inner * 0.35, 0, next != NULL },
    { next, LAP_WEIGHT_STRONG, next_type (deck), people != NULL ? inner * 0.62 : inner, 1, FALSE },
    { care, LAP_WEIGHT_STRONG, care_type (deck), inner, 0, FALSE },
    { small, LAP_WEIGHT_PLAIN, small_type (deck), inner, 0, FALSE },
  };

  for (guint k = 0; k < G_N_ELEMENTS (lines); k++) {
    g_autoptr (LapWrap) wrap = NULL;
    LapType type;
    double height;

    if (lines[k].text == NULL)
      continue;
    wrap = lap_wrap_new (poster->measure, lines[k].weight, lines[k].text);
    type = lap_wrap_largest (wrap, lines[k].type, lines[k].width, k < 2 ? lines[k].type.cap * 3 : 1e6, 0.01);
    if (page != NULL)
      lap_wrap_put (wrap, &type, page, x + (inner - lines[k].width) * lines[k].align, y, lines[k].width,
                    lines[k].align);
    height = MAX (lap_wrap_fit (wrap, &type, lines[k].width).height, beside);
    beside = lines[k].beside ? height : 0;
    y += lines[k].beside ? 0 : height + 1.6 * u;
  }
  return y - top;
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

/* Names that are read from as far as they must come first; then letters and figures count alike. */
static gboolean
is_better (const Deck *deck, const LapCellPlan *plan, double score, double best)
{
  gboolean reads = plan->scale >= deck->least, read_before = deck->plan.scale >= deck->least;

  if (best == 0 || reads != read_before)
    return best == 0 || reads;
  return reads ? score > best : plan->scale > deck->plan.scale;
}

/* Tries a style in many sizes, among them the least that will do. */
static void
try_plan (Deck *deck, LapCellPlan plan, double height, double *best)
{
  double next;

  for (plan.scale = MOST_SCALE; plan.scale > 0.01; plan.scale = next) {
    double figure, score;

    next = plan.scale * 0.94;
    next = plan.scale > deck->least ? MAX (next, deck->least) : next;
    if (!all_fit (deck, &plan, height, &figure))
      continue;
    score = plan.scale * (plan.figures ? MAX (figure, 0.001) : 1);
    if (is_better (deck, &plan, score, *best)) {
      *best = score;
      deck->plan = plan;
    }
    if (plan.scale < deck->least)
      break;
  }
}

/* One style for all cards. Where the number leaves no room, it is as small as the rest. */
static void
fit_plan (Deck *deck, double height)
{
  static const double shares[] = { 0.34, 0.42, 0.5, 0.6 };
  double numbers[] = { lap_cap_height (NUMBER_FROM, LAP_ARC_READABLE), 0 }, best = 0;

  for (guint n = 0; n < G_N_ELEMENTS (numbers) && best == 0; n++)
    for (guint style = 0; style < LAP_N_CELL_STYLES; style++)
      for (guint i = 0; i < G_N_ELEMENTS (shares); i++)
        try_plan (deck, (LapCellPlan) { .style = style, .share = shares[i],
                                        .width = deck->poster.width - 2 * deck->poster.margin,
                                        .figures = (deck->poster.options->hide & LAP_HIDE_FIGURES) == 0,
                                        .number = numbers[n] }, height, &best);
}

static void
put_card (Deck *deck, LapPage *page, guint i, double x, double y)
{
  const LapPoster *poster = &deck->poster;
  double u = poster->unit, m = poster->margin, inner = poster->width - 2 * m, rule = y + poster->height - m - deck->foot;
  double loads = deck->loads ? (LOADS_HIGH + 3) * u : 0;

  lap_poster_cell_put (g_ptr_array_index (deck->cells, i), &deck->plan, page, x + m, y + m,
                       rule - y - m - 3 * u - loads);
  put_loads (deck, page, g_ptr_array_index (deck->stations, i), x + m, rule - loads, inner);
  lap_page_rule (page, x + m, rule, inner, 0.6 * u, LAP_ROLE_INK);
  lap_page_begin (page, "P");
  lay_foot (deck, i, page, x + m, rule);
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
  deck->loads = FALSE;
  for (guint i = 0; i < deck->stations->len; i++) {
    LapStation *station = g_ptr_array_index (deck->stations, i);
    g_auto (LapLoads) loads = { { NULL } };

    if (lap_loads_of (station->task, &loads)) {
      lap_station_without_load (station);
      deck->loads = TRUE;
    }
    g_ptr_array_add (deck->cells, lap_poster_cell_new (&deck->poster, station));
    deck->foot = MAX (deck->foot, lay_foot (deck, i, NULL, 0, 0));
  }
  fit_plan (deck, deck->poster.height - 2 * deck->poster.margin - deck->foot -
                  (deck->loads ? LOADS_HIGH + 6 : 3) * deck->poster.unit);
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
  guint n = options->cards != 0 ? MIN (options->cards, 2 * cards_on[options->paper]) : cards_on[options->paper];
  double width, height;

  lap_paper_size (options, &width, &height);
  deck.pages = lap_pages_new (timeline->session->title, timeline->session->coach, timeline->catalogue);
  deck.rows = n == 1 ? 1 : n == 2 && width > height ? 1 : 2;
  deck.columns = n / deck.rows;
  deck.poster.width = width / deck.columns;
  deck.poster.height = height / deck.rows;
  deck.poster.unit = CLAMP (MIN (deck.poster.width, deck.poster.height) / A5_WIDTH, 0.7, 2);
  deck.poster.margin = 10 * MIN (deck.poster.unit, 1.2);
  deck.poster.least = 1;
  deck.least = lap_cap_height (NAME_FROM, LAP_ARC_READABLE) / (LAP_NAME_CAP * deck.poster.unit);
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
