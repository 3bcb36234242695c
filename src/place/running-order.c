/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/running-order.h"

#include "place/balance.h"
#include "place/formula.h"
#include "place/safety.h"
#include "place/stations.h"
#include "place/table.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* A row is never higher than a page: longer texts go on in rows of their own. */
#define LONGEST_TEXT  420 /* characters */
#define LISTED_ROUNDS 3   /* more are told by their spacing */

typedef enum {
  COLUMN_GROUND, COLUMN_FILM, COLUMN_CLOCK, COLUMN_FIGURE, COLUMN_DO, COLUMN_SAY, COLUMN_GOES, COLUMN_CARE, N_COLUMNS,
} Column;

typedef struct {
  const LapTimeline     *timeline;
  const LapSheetOptions *options;
  const LapMeasure      *measure;
  LapTable              *table;
  double                 width, height, margin, unit;
  int                    places[N_COLUMNS]; /* column of the table, -1 where it isn't shown */
  LapType                plain, strong, second, quiet, stop, part, name;
  const LapExercise     *before; /* what the body comes from */
  guint                  p;      /* the part at hand */
} Order;

/* Texts */

static void
cell (Order *o, LapTableRow *row, Column column, LapWeight weight, const char *text, const LapType *type)
{
  if (o->places[column] >= 0)
    lap_table_cell (o->table, row, o->places[column], 1, weight, text, type);
}

/* Up to LONGEST_TEXT letters of @text, to the last white space; *@text goes to what is left. */
static char *
take_text (const char **text)
{
  const char *end = *text, *space = NULL;
  char *taken;

  for (guint n = 0; n < LONGEST_TEXT && *end != '\0'; n++) {
    if (g_unichar_isspace (g_utf8_get_char (end)))
      space = end;
    end = g_utf8_next_char (end);
  }
  if (*end != '\0' && space != NULL)
    end = space;
  taken = g_strndup (*text, end - *text);
  *text = end;
  return taken;
}

/* A text of any length to be said, @span columns wide, in @row and, where it is long, in rows that follow. */
static void
say_cell (Order *o, LapTableRow *row, guint span, const char *text)
{
  while (text != NULL && *text != '\0') {
    g_autofree char *piece = take_text (&text);

    lap_table_cell (o->table, row, o->places[COLUMN_SAY], span, LAP_WEIGHT_PLAIN, piece, &o->plain);
    if (*text != '\0')
      row = lap_table_row (o->table, FALSE);
  }
}

/* Clocks */

static gboolean
is_even (GArray *starts)
{
  int step = g_array_index (starts, int, 1) - g_array_index (starts, int, 0);

  for (guint i = 2; i < starts->len; i++)
    if (g_array_index (starts, int, i) - g_array_index (starts, int, i - 1) != step)
      return FALSE;
  return TRUE;
}

static void
clocks_in (Order *o, LapTableRow *row, Column column, GArray *starts, int shift, gboolean leads)
{
  for (guint i = 0; i < starts->len; i++) {
    g_autofree char *clock = lap_clock_text (g_array_index (starts, int, i) + shift);

    cell (o, row, column, i == 0 && leads ? LAP_WEIGHT_HEAVY : LAP_WEIGHT_PLAIN, clock,
          i > 0 ? &o->quiet : leads ? &o->strong : &o->second);
    if (i == 0 && starts->len > LISTED_ROUNDS && is_even (starts)) {
      g_autofree char *step = lap_clock_text (g_array_index (starts, int, 1) - g_array_index (starts, int, 0));
      g_autofree char *every = g_strdup_printf (_("every %s"), step);

      cell (o, row, column, LAP_WEIGHT_PLAIN, every, &o->quiet);
      i = starts->len - 2;
    }
  }
}

/* The clocks at which a row begins, one for each round. */
static void
clocks (Order *o, LapTableRow *row, GArray *starts)
{
  gboolean film = o->places[COLUMN_FILM] >= 0;

  if (film)
    clocks_in (o, row, COLUMN_FILM, starts, (int) o->timeline->session->lead, TRUE);
  clocks_in (o, row, COLUMN_CLOCK, starts, 0, !film);
}

/* The starts of a block, or of intervals of @kind that belong to no block, in the part at hand. */
static GArray *
starts_of (const Order *o, guint block, LapIntervalKind kind)
{
  const LapStretch *stretch = &o->timeline->parts[o->p];
  GArray *starts = g_array_new (FALSE, FALSE, sizeof (int));
  int round = -1;

  for (guint i = 0; i < stretch->n_intervals; i++) {
    const LapInterval *interval = &o->timeline->intervals[stretch->interval + i];

    if (interval->block != block || (block == LAP_NO_BLOCK && interval->kind != kind) || interval->round == round)
      continue;
    g_array_append_val (starts, interval->start);
    round = interval->round;
  }
  return starts;
}

/* What is said, where the body goes, what is spared */

#define SAY(task, member) \
  ((task)->say != NULL && (task)->say->member != NULL ? (task)->say->member \
   : (task)->shown != NULL && (task)->shown->say != NULL ? (task)->shown->say->member : NULL)

/* Adds a sentence, with a full stop where its words have no end of their own. */
static void
add_sentence (GString *text, const char *words)
{
  g_string_append_printf (text, "%s%s", text->len > 0 ? " " : "", words);
  if (text->len > 0 && strchr (".!?:", text->str[text->len - 1]) == NULL)
    g_string_append_c (text, '.');
}

/* The setup, then the two cues that matter most. */
static char *
say_text (const LapTask *task)
{
  const char *setup = SAY (task, setup);
  char **cues = SAY (task, cues);
  GString *text = g_string_new (NULL);

  if (setup != NULL)
    add_sentence (text, setup);
  for (guint i = 0; cues != NULL && cues[i] != NULL && i < 2; i++)
    add_sentence (text, cues[i]);
  return g_string_free (text, FALSE);
}

/* The posture, and the seconds it takes to get there where it takes any; @rest is what there is. */
static void
put_goes (Order *o, LapTableRow *row, const LapTask *task, int rest)
{
  LapChangeRule rule = lap_session_rule (o->timeline->session);
  const LapExercise *to = task->shown;
  g_autofree char *text = NULL;
  int seconds = 0;

  if (to == NULL)
    return;
  if (o->before != NULL)
    seconds = lap_change_seconds (&rule, o->before, to, o->timeline->parts[o->p].part->run == LAP_RUN_STATIONS);
  if (seconds > 0)
    text = g_strdup_printf (_("%s, %d\xc2\xa0s"), lap_words_label (&lap_postures, to->posture), seconds);
  else if (o->before != NULL && o->before->posture == to->posture)
    text = g_strdup (_("stays"));
  else
    text = g_strdup (lap_words_label (&lap_postures, to->posture));
  cell (o, row, COLUMN_GOES, seconds > 0 ? LAP_WEIGHT_STRONG : LAP_WEIGHT_PLAIN, text, &o->plain);
  if (o->before != NULL && seconds > rest) {
    g_autofree char *short_by = g_strdup_printf (_("rest is %d s"), rest);

    cell (o, row, COLUMN_GOES, LAP_WEIGHT_STRONG, short_by, &o->stop);
  }
  o->before = to;
}

/* The joints it really loads, and how to spare those the session is also for. */
static void
put_care (Order *o, LapTableRow *row, const LapTask *task)
{
  const LapSession *session = o->timeline->session;
  guint32 also = lap_words_mask (&lap_care_words, (const char * const *) session->also_for);

  for (guint word = 0; word < LAP_N_CARE; word++) {
    const LapCare *care = task->shown != NULL ? lap_exercise_care (task->shown, word) : NULL;
    gboolean spared = (also & LAP_BIT (word)) != 0 && care != NULL && care->say != NULL;
    g_autofree char *text = NULL;

    if (care == NULL || (care->load < 2 && !spared))
      continue;
    text = spared ? g_strdup_printf ("%s: %s", lap_words_label (&lap_care_words, word), care->say)
                  : g_strdup (lap_words_label (&lap_care_words, word));
    cell (o, row, COLUMN_CARE, LAP_WEIGHT_PLAIN, text, &o->quiet);
  }
}

/* Rows */

static void
put_name (Order *o, LapTableRow *row, const LapStation *station)
{
  const LapInterval *first = &o->timeline->intervals[station->turn->interval];
  g_autofree char *numbered = g_strdup_printf ("%u %s", station->number, station->name);
  g_autofree char *swap = g_strdup_printf (_("swap sides at %d s"), first->seconds);
  g_autofree char *later = station->later != NULL ? g_strdup_printf (_("round %s"), station->later) : NULL;
  g_autofree char *easier = station->easier != NULL ? g_strdup_printf (_("easier: %s"), station->easier) : NULL;
  LapType changed = o->quiet;

  changed.role = LAP_ROLE_EFFORT;
  cell (o, row, COLUMN_DO, LAP_WEIGHT_HEAVY, lap_part_is_shown (o->timeline, o->p) ? numbered : station->name, &o->name);
  cell (o, row, COLUMN_DO, LAP_WEIGHT_PLAIN, station->detail, &o->quiet);
  if (station->swaps && station->work > 0)
    cell (o, row, COLUMN_DO, LAP_WEIGHT_PLAIN, swap, &o->quiet);
  cell (o, row, COLUMN_DO, LAP_WEIGHT_STRONG, later, &changed);
  if ((o->options->hide & LAP_HIDE_OPTIONS) == 0)
    cell (o, row, COLUMN_DO, LAP_WEIGHT_PLAIN, easier, &o->quiet);
  cell (o, row, COLUMN_DO, LAP_WEIGHT_PLAIN, station->task->note, &o->quiet);
}

/* The seconds without work just before @start, for getting there. */
static int
rest_before (const Order *o, int start)
{
  int seconds = 0;

  while (start > 0) {
    const LapInterval *interval = lap_timeline_at (o->timeline, start - 1);

    if (interval->kind == LAP_INTERVAL_WORK)
      break;
    seconds += interval->seconds;
    start = interval->start;
  }
  return seconds;
}

static void
exercise_row (Order *o, const LapStation *station)
{
  LapTableRow *row = lap_table_row (o->table, FALSE);
  g_autoptr (GArray) starts = starts_of (o, station->turn->block, LAP_INTERVAL_WORK);
  g_autofree char *say = say_text (station->task);

  lap_table_ground (row, LAP_ROLE_WORK, MAX (station->work, 1), station->rest);
  clocks (o, row, starts);
  if (o->places[COLUMN_FIGURE] >= 0 && station->task->shown != NULL)
    lap_table_figure (row, o->places[COLUMN_FIGURE], station->task->shown, 8 * o->unit);
  put_name (o, row, station);
  put_goes (o, row, station->task, rest_before (o, station->turn->start));
  put_care (o, row, station->task);
  say_cell (o, row, 1, say);
}

static void
words_row (Order *o, guint i, const LapBlock *block)
{
  LapTableRow *row = lap_table_row (o->table, FALSE);
  g_autoptr (GArray) starts = starts_of (o, i, 0);
  g_autofree char *length = lap_duration_text (block->seconds);
  gboolean talk = block->kind == LAP_BLOCK_TALK;
  g_autofree char *what = g_strdup_printf ("%s, %s", talk ? _("Talk") : block->pause != NULL && *block->pause != '\0'
                                                                           ? block->pause : _("Pause"), length);

  lap_table_ground (row, LAP_ROLE_TALK, talk ? 1 : 0, talk ? 0 : 1);
  clocks (o, row, starts);
  cell (o, row, COLUMN_DO, LAP_WEIGHT_STRONG, what, &o->name);
  if (talk)
    say_cell (o, row, N_COLUMNS, block->talk);
  else
    cell (o, row, COLUMN_SAY, LAP_WEIGHT_PLAIN, block->note, &o->plain);
}

/* Rests that belong to the part: between rounds, or after it. */
static void
rest_row (Order *o, LapIntervalKind kind, int seconds, const char *what)
{
  g_autoptr (GArray) starts = starts_of (o, LAP_NO_BLOCK, kind);
  g_autofree char *length = lap_duration_text (seconds);
  g_autofree char *text = g_strdup_printf ("%s, %s", what, length);
  LapTableRow *row;

  if (starts->len == 0)
    return;
  row = lap_table_row (o->table, FALSE);
  lap_table_ground (row, LAP_ROLE_WORK, 0, 1);
  clocks (o, row, starts);
  cell (o, row, COLUMN_DO, LAP_WEIGHT_STRONG, text, &o->name);
}

static void
part_row (Order *o)
{
  const LapStretch *stretch = &o->timeline->parts[o->p];
  LapTableRow *row = lap_table_row (o->table, TRUE);
  g_autofree char *length = lap_duration_text (stretch->end - stretch->start);
  g_autofree char *formula = stretch->n_turns > 0 ? lap_formula_text (o->timeline, o->p) : NULL;
  GString *info = g_string_new (length);
  guint to = o->places[COLUMN_DO];

  if (formula != NULL)
    g_string_append_printf (info, " · %s", formula);
  if (stretch->part->rounds > 1 && stretch->part->run != LAP_RUN_OWN_PACE)
    g_string_append_printf (info, " · %s", _("each row: round 1 above, later rounds below"));
  lap_table_cell (o->table, row, 1, to - 1, LAP_WEIGHT_HEAVY, lap_part_title (stretch->part), &o->part);
  lap_table_cell (o->table, row, to, N_COLUMNS, LAP_WEIGHT_PLAIN, info->str, &o->quiet);
  g_string_free (info, TRUE);
}

static void
put_part (Order *o)
{
  const LapPart *part = o->timeline->parts[o->p].part;
  g_autoptr (GPtrArray) stations = lap_stations_of (o->timeline, o->p);
  guint next = 0;

  part_row (o);
  rest_row (o, LAP_INTERVAL_WORK, part->cap, _("As many rounds as you can"));
  for (guint i = 0; i < lap_part_n (part); i++) {
    const LapBlock *block = lap_part_nth (part, i);

    if (block->kind == LAP_BLOCK_EXERCISE && next < stations->len)
      exercise_row (o, g_ptr_array_index (stations, next++));
    else if (block->kind != LAP_BLOCK_EXERCISE)
      words_row (o, i, block);
  }
  rest_row (o, LAP_INTERVAL_ROUND_REST, part->round_rest, _("Break between rounds"));
  rest_row (o, LAP_INTERVAL_AFTER, part->rest_after, _("Break"));
}

/* Pages */

static LapTable *
make_table (Order *o)
{
  static const struct {
    const char *heading;
    double share, wide; /* of the width, upright and on its side */
  } columns[] = {
    [COLUMN_GROUND] = { "", 0.034, 0.024 }, [COLUMN_FILM] = { N_("film"), 0.074, 0.055 },
    [COLUMN_CLOCK] = { N_("clock"), 0.074, 0.055 }, [COLUMN_FIGURE] = { "", 0.075, 0.06 },
    [COLUMN_DO] = { N_("do"), 0.195, 0.18 }, [COLUMN_SAY] = { N_("say in the rest before"), 0, 0 },
    [COLUMN_GOES] = { N_("body goes"), 0.115, 0.1 }, [COLUMN_CARE] = { N_("care"), 0.105, 0.11 },
  };
  LapColumn shown[N_COLUMNS];
  LapType heading = { 2.1 * o->unit, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };
  double inner = o->width - 2 * o->margin + 2, left = inner;
  guint n = 0;

  for (guint i = 0; i < N_COLUMNS; i++) {
    gboolean hidden = (i == COLUMN_FILM && o->timeline->session->lead <= 0) ||
                      (i == COLUMN_FIGURE && (o->options->hide & LAP_HIDE_FIGURES));

    o->places[i] = hidden ? -1 : (int) n;
    if (hidden)
      continue;
    shown[n].heading = *columns[i].heading != '\0' ? _(columns[i].heading) : "";
    shown[n].width = inner * (o->options->landscape ? columns[i].wide : columns[i].share);
    left -= shown[n++].width;
  }
  shown[o->places[COLUMN_SAY]].width = left;
  return lap_table_new (o->measure, shown, n, &heading);
}

static char *
lengths_text (const LapTimeline *timeline)
{
  g_autofree char *session = lap_clock_text (timeline->length);
  g_autofree char *film = lap_clock_text (timeline->length + (int) timeline->session->lead);

  if (timeline->session->lead <= 0)
    return g_strdup_printf (_("%s session"), session);
  return g_strdup_printf (_("%s film, %s session"), film, session);
}

static char *
about_text (const LapSession *session)
{
  g_autofree char *kit = lap_words_join (&lap_kit_words, lap_kit_mask (session->kit));
  const char *coach = session->coach != NULL ? session->coach : "";

  return g_strdup_printf ("%s%s%s", coach, *coach != '\0' && *kit != '\0' ? " · " : "", kit);
}

/* The head of the first page; returns where the table begins. */
static double
put_head (Order *o, LapPage *page)
{
  const LapSession *session = o->timeline->session;
  double u = o->unit, inner = o->width - 2 * o->margin, wide = inner * 0.6, y = o->margin, right = y;
  g_autoptr (LapWrap) title = lap_wrap_new (o->measure, LAP_WEIGHT_HEAVY, session->title);
  LapType large = { 6 * u, 1.05, LAP_ROLE_INK, LAP_READ_TITLE }, line = { 2.7 * u, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };
  LapType fitted = lap_wrap_largest (title, large, wide, 22 * u, 0.01);
  g_autofree char *lengths = lengths_text (o->timeline), *about = about_text (session);
  g_autoptr (LapWrap) words = lap_wrap_new (o->measure, LAP_WEIGHT_PLAIN, about);
  LapType quiet = lap_wrap_largest (words, o->quiet, inner - wide, 14 * u, 0.01);

  lap_page_begin (page, "H1");
  y += lap_wrap_put (title, &fitted, page, o->margin, y, wide, 0) + 2 * u;
  lap_page_end (page);
  lap_page_begin (page, "P");
  y += lap_text_put (o->measure, LAP_WEIGHT_STRONG, _("Running order"), &o->part, page, o->margin, y, wide, 0);
  right += lap_text_put (o->measure, LAP_WEIGHT_STRONG, lengths, &line, page, o->margin + wide, right, inner - wide, 1);
  right += 2 * u + lap_wrap_put (words, &quiet, page, o->margin + wide, right + 2 * u, inner - wide, 1);
  lap_page_end (page);
  return MAX (y, right) + 3 * u;
}

static void
put_foot (Order *o, LapPage *page, double y)
{
  double inner = o->width - 2 * o->margin, u = o->unit;
  g_autofree char *safety = g_strdup_printf ("%s %s", lap_safety_first (), lap_safety_more ());
  LapType type = { 1.9 * u, 1.25, LAP_ROLE_INK2, LAP_READ_SAFETY };

  lap_page_rule (page, o->margin, y, inner, 0.3 * u, LAP_ROLE_INK);
  lap_page_begin (page, "P");
  lap_text_put (o->measure, LAP_WEIGHT_PLAIN, safety, &type, page, o->margin, y + 2 * u, inner * 0.86, 0);
  if (page->label != NULL)
    lap_text_put (o->measure, LAP_WEIGHT_STRONG, page->label, &type, page, o->margin + inner * 0.88, y + 2 * u,
                  inner * 0.12, 1);
  lap_page_end (page);
}

static double
foot_height (Order *o)
{
  g_autofree char *safety = g_strdup_printf ("%s %s", lap_safety_first (), lap_safety_more ());
  g_autoptr (LapWrap) wrap = lap_wrap_new (o->measure, LAP_WEIGHT_PLAIN, safety);
  LapType type = { 1.9 * o->unit, 1.25, LAP_ROLE_INK2, LAP_READ_SAFETY };

  return lap_wrap_fit (wrap, &type, (o->width - 2 * o->margin) * 0.86).height + 2 * o->unit;
}

/* The chart of the balance stands at the bottom of the last page, or on one of its own where that is full. */
static void
put_balance (Order *o, LapPage *page, double y)
{
  lap_balance_put (o->timeline, o->measure, page, o->unit, o->margin, y, o->width - 2 * o->margin);
}

static void
put_pages (Order *o, LapPages *pages)
{
  double foot = o->height - o->margin - foot_height (o);
  double chart = lap_balance_height (o->timeline, o->measure, o->unit);
  guint row = 0;
  gboolean charted = chart == 0;

  do {
    LapPage *page = lap_pages_add (pages, o->width, o->height);
    double y = o->margin;

    lap_page_begin (page, "Sect");
    if (lap_pages_n (pages) == 1) {
      lap_pages_outline (pages, 0, _("Running order"), y);
      y = put_head (o, page);
    }
    if (!charted && row < lap_table_n (o->table) &&
        lap_table_put (o->table, row, NULL, o->margin, y, foot - chart - 2 * o->unit) == lap_table_n (o->table)) {
      row = lap_table_put (o->table, row, page, o->margin, y, foot - chart - 2 * o->unit);
      put_balance (o, page, foot - chart);
      charted = TRUE;
    } else if (row < lap_table_n (o->table)) {
      row = lap_table_put (o->table, row, page, o->margin, y, foot - 2 * o->unit);
    } else {
      put_balance (o, page, y);
      charted = TRUE;
    }
    lap_page_end (page);
  } while (row < lap_table_n (o->table) || !charted);
  for (guint i = 0; i < lap_pages_n (pages); i++) {
    LapPage *page = lap_pages_nth (pages, i);

    if (lap_pages_n (pages) > 1)
      page->label = g_strdup_printf (_("%u of %u"), i + 1, lap_pages_n (pages));
    put_foot (o, page, foot);
  }
}

LapPages *
lap_running_order_build (const LapTimeline *timeline, const LapSheetOptions *options, const LapMeasure *measure)
{
  Order o = { .timeline = timeline, .options = options, .measure = measure };
  LapPages *pages = lap_pages_new (timeline->session->title, timeline->session->coach, timeline->catalogue);
  double u;

  lap_paper_size (options, &o.width, &o.height);
  o.unit = u = CLAMP (MIN (o.width, o.height) / 210, 0.72, 1.4);
  o.margin = 12 * u;
  o.plain = (LapType) { 2.15 * u, 1.28, LAP_ROLE_INK, LAP_READ_TABLE };
  o.quiet = (LapType) { 2.1 * u, 1.25, LAP_ROLE_INK2, LAP_READ_OTHER };
  o.stop = (LapType) { 2.15 * u, 1.25, LAP_ROLE_STOP, LAP_READ_OTHER };
  o.strong = (LapType) { 2.6 * u, 1.2, LAP_ROLE_INK, LAP_READ_NUMBER };
  o.second = (LapType) { 2.6 * u, 1.2, LAP_ROLE_INK2, LAP_READ_OTHER };
  o.name = (LapType) { 2.6 * u, 1.15, LAP_ROLE_INK, LAP_READ_NAME };
  o.part = (LapType) { 2.9 * u, 1.15, LAP_ROLE_WORK, LAP_READ_OTHER };
  o.table = make_table (&o);
  for (o.p = 0; o.p < timeline->n_parts; o.p++)
    put_part (&o);
  put_pages (&o, pages);
  lap_table_free (o.table);
  return pages;
}
