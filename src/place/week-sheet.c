/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/week-sheet.h"

#include "place/safety.h"
#include "place/week-column.h"
#include "place/week-words.h"
#include "place/wrap.h"

#include <glib/gi18n-lib.h>

#define MOST       3.0  /* m that names are read from at most, on A3; in proportion on other paper */
#define LEAST      0.8  /* likewise; smaller letters are worth another page */
#define STEPS      10   /* of halving, when a size or a width is looked for */
#define STEP       0.96
#define COLUMN_GAP 4.0  /* units, at least; a unit is a millimetre on A3 */
#define APART      0.6  /* the same, against the capitals */
#define BAND_GAP   3.0  /* units */
#define HIGHEST    0.3  /* of the page: a title that would be higher is set in smaller letters */
#define MOST_BANDS 2
#define PAD        0.25 /* above and below a class, against the capitals, at least */
#define MOST_PAD   0.7  /* the same, at most */
#define WEEKEND    LAP_DAY_SAT

/* How the days go on one page, the calmest first. A size that is larger is taken where it is larger by more than what
 * is less calm about it is worth, or where it is the first that reads from as far as is aimed at. */
static const struct {
  guint    bands;
  gboolean alike;  /* columns are of one width, but for those of the weekend, which has less */
  gboolean beside; /* titles begin beside their times */
  gboolean brief;  /* "Mon" */
  double   worth;
} ways[] = {
  { 1, TRUE, FALSE, FALSE, 1 },    { 1, FALSE, FALSE, FALSE, 0.97 }, { 1, TRUE, FALSE, TRUE, 0.95 },
  { 1, FALSE, FALSE, TRUE, 0.94 }, { 1, TRUE, TRUE, FALSE, 0.94 },   { 1, FALSE, TRUE, FALSE, 0.91 },
  { 1, TRUE, TRUE, TRUE, 0.9 },    { 1, FALSE, TRUE, TRUE, 0.89 },   { 2, TRUE, FALSE, FALSE, 0.9 },
  { 2, FALSE, FALSE, FALSE, 0.87 }, { 2, TRUE, TRUE, FALSE, 0.86 },  { 2, FALSE, TRUE, FALSE, 0.83 },
  { 2, FALSE, FALSE, TRUE, 0.82 },
};

/* How many days each band has. */
static const guint days_in[MOST_BANDS][MOST_BANDS] = { { 7 }, { 4, 3 } };

/* Columns of the same width beside each other, where one page isn't enough, in turn. */
static const guint columns_on[] = { 7, 4, 3, 2, 1 };

/* Columns beside each other. */
typedef struct {
  guint  n;
  double widths[LAP_N_DAYS];
  double top, bottom;
} Band;

typedef struct {
  const LapWeek    *week;
  LapAttachments   *attachments;
  const LapMeasure *measure;
  int               from;  /* its first date; 0 = in every week */
  LapDay            first; /* its first day */
  const LapRoom    *room;  /* whose page it is; NULL = all of them */
  double            width, height, margin, unit;
  double            top, bottom;  /* of the days, mm */
  double            least, most;  /* capitals, mm */
  LapWeekColumn    *days[LAP_N_DAYS];
  LapWeekLook       look;
  guint             n_bands; /* on a page */
  Band              bands[MOST_BANDS];
} Sheet;

/* How large. On one page each day is as wide as it needs to be; columns that can, are of the same width. */

static double
column_gap (const Sheet *s)
{
  return MAX (COLUMN_GAP * s->unit, APART * s->look.cap);
}

static double
for_columns (const Sheet *s, guint n)
{
  return s->width - 2 * s->margin - (n - 1) * column_gap (s);
}

static gboolean
has_room (const Sheet *s, const LapWeekColumn *day, double width, double height)
{
  return lap_week_column_least (day, &s->look) <= width && lap_week_column_height (day, &s->look, width) <= height;
}

/* The least width up to @most in which all of @day goes in one column; more than @most where it doesn't go. */
static double
needed_width (const Sheet *s, const LapWeekColumn *day, double most, double height)
{
  double low = lap_week_column_least (day, &s->look), high = most;

  if (low > most || lap_week_column_height (day, &s->look, low) <= height)
    return low;
  if (!has_room (s, day, high, height))
    return 2 * most;
  for (int i = 0; i < STEPS; i++) {
    double middle = (low + high) / 2;

    if (has_room (s, day, middle, height))
      high = middle;
    else
      low = middle;
  }
  return high;
}

/* Gives what is left of @room to the narrowest columns, so that they get as alike as they can. */
static void
spread (Band *band, double room)
{
  double low = 0, high = room;

  for (int i = 0; i < 3 * STEPS; i++) {
    double level = (low + high) / 2, sum = 0;

    for (guint k = 0; k < band->n; k++)
      sum += MAX (band->widths[k], level);
    if (sum <= room)
      low = level;
    else
      high = level;
  }
  for (guint k = 0; k < band->n; k++)
    band->widths[k] = MAX (band->widths[k], low);
}

/* What is alike: the other days of the week have less. */
static gboolean
is_weekday (const Sheet *s, guint nth)
{
  return lap_day_nth (s->first, nth) < WEEKEND;
}

/* Whether the days from @first on go in @band; sets the widths of their columns. */
static gboolean
fits_band (const Sheet *s, guint first, gboolean alike, Band *band)
{
  double room = for_columns (s, band->n), height = band->bottom - band->top, sum = 0, same;
  guint weekdays = 0;

  for (guint i = 0; i < band->n; i++) {
    gboolean later = alike && is_weekday (s, first + i);

    weekdays += later;
    band->widths[i] = later ? 0 : needed_width (s, s->days[first + i], room, height);
    sum += band->widths[i];
  }
  same = weekdays > 0 ? (room - sum) / weekdays : 0;
  if (sum > room)
    return FALSE;
  for (guint i = 0; alike && i < band->n; i++) {
    if (!is_weekday (s, first + i))
      continue;
    if (!has_room (s, s->days[first + i], same, height))
      return FALSE;
    band->widths[i] = same;
  }
  spread (band, room);
  return TRUE;
}

static void
set_same_width (const Sheet *s, Band *band)
{
  for (guint i = 0; i < band->n; i++)
    band->widths[i] = for_columns (s, band->n) / band->n;
}

/* The height of @band with all of the days from @first on. */
static double
band_height (const Sheet *s, const Band *band, guint first)
{
  double most = 0;

  for (guint i = 0; i < band->n; i++)
    most = MAX (most, lap_week_column_height (s->days[first + i], &s->look, band->widths[i]));
  return most;
}

/* Whether the days go on one page with capitals of @cap in this way. Two bands share the height as they would take it in
 * columns of the same width. */
static gboolean
fits_page (Sheet *s, guint way, double cap)
{
  double parts[MOST_BANDS], sum = 0, y = s->top, room;
  guint first = 0;

  s->n_bands = ways[way].bands;
  s->look.cap = cap;
  s->look.beside = ways[way].beside;
  s->look.brief = ways[way].brief;
  room = s->bottom - s->top - (s->n_bands - 1) * BAND_GAP * s->unit;
  for (guint i = 0; i < s->n_bands; i++) {
    Band *band = &s->bands[i];

    band->n = days_in[s->n_bands - 1][i];
    set_same_width (s, band);
    sum += parts[i] = s->n_bands > 1 ? band_height (s, band, first) : 1;
    first += band->n;
  }
  first = 0;
  for (guint i = 0; i < s->n_bands; i++) {
    Band *band = &s->bands[i];

    band->top = y;
    band->bottom = y + room * parts[i] / sum;
    y = band->bottom + BAND_GAP * s->unit;
    if (!fits_band (s, first, ways[way].alike, band))
      return FALSE;
    first += band->n;
  }
  return TRUE;
}

/* The largest capitals, from @low on, with which the days go on one page in this way; 0 where there are none. */
static double
largest_cap (Sheet *s, guint way, double low)
{
  double high = s->most;

  if (low > high || !fits_page (s, way, low))
    return 0;
  for (int i = 0; i < STEPS; i++) {
    double middle = (low + high) / 2;

    if (fits_page (s, way, middle))
      low = middle;
    else
      high = middle;
  }
  fits_page (s, way, low);
  return low;
}

/* Gives the height that is left to the classes, up to what looks well. */
static void
breathe (Sheet *s)
{
  for (s->look.pad = MOST_PAD; s->look.pad > PAD; s->look.pad -= PAD / 5) {
    double height = (s->n_bands - 1) * BAND_GAP * s->unit;
    guint first = 0;

    for (guint i = 0; i < s->n_bands; first += s->bands[i++].n)
      height += band_height (s, &s->bands[i], first);
    if (height <= s->bottom - s->top)
      return;
  }
  s->look.pad = PAD;
}

/* The way that is worth most on the page of @sheets that it is worth least on, of those that reach the aim where some do:
 * doors beside each other look alike. -1 where not each of them goes on one page. */
static int
best_way (GPtrArray *sheets)
{
  double aim = lap_cap_height (LAP_WEEK_SHEET_AIM, LAP_ARC_READABLE), worth = 0, reached = 0;
  int best = -1;

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++) {
    double enough = worth / ways[i].worth, cap = G_MAXDOUBLE;

    enough = reached >= aim ? MAX (enough, aim) : MIN (enough, aim);
    for (guint k = 0; k < sheets->len && cap > 0; k++) {
      Sheet *s = g_ptr_array_index (sheets, k);

      cap = MIN (cap, largest_cap (s, i, MAX (s->least, enough)));
    }
    if (cap > 0 && ((cap >= aim && reached < aim) || cap * ways[i].worth > worth)) {
      worth = cap * ways[i].worth;
      reached = cap;
      best = i;
    }
  }
  return best;
}

static void
set_columns (Sheet *s, guint n)
{
  Band *band = &s->bands[0];

  *band = (Band) { .n = n, .top = s->top, .bottom = s->bottom };
  set_same_width (s, band);
}

/* How many columns of the same width the days take. */
static guint
count_columns (const Sheet *s)
{
  guint columns = 0;

  for (guint i = 0; i < LAP_N_DAYS; i++)
    columns += lap_week_column_count (s->days[i], &s->look, s->bands[0].widths[0], s->bottom - s->top);
  return columns;
}

static gboolean
are_wide_enough (const Sheet *s)
{
  for (guint i = 0; i < LAP_N_DAYS; i++)
    if (lap_week_column_least (s->days[i], &s->look) > s->bands[0].widths[0])
      return FALSE;
  return TRUE;
}

/* The fewest pages that the least letters allow, with the most columns that do it; there the largest letters that take
 * no more. */
static void
choose_pages (Sheet *s)
{
  guint fewest = G_MAXUINT, best = 1;

  s->n_bands = 1;
  s->look.beside = TRUE;
  s->look.brief = FALSE;
  s->look.cap = s->least;
  for (guint i = 0; i < G_N_ELEMENTS (columns_on); i++) {
    guint pages;

    set_columns (s, columns_on[i]);
    pages = (count_columns (s) + columns_on[i] - 1) / columns_on[i];
    if (are_wide_enough (s) && pages < fewest) {
      fewest = pages;
      best = columns_on[i];
    }
  }
  for (s->look.cap = s->most; s->look.cap > s->least; s->look.cap *= STEP) {
    set_columns (s, best);
    if (are_wide_enough (s) && count_columns (s) <= fewest * best)
      return;
  }
  s->look.cap = s->least;
  set_columns (s, best);
}

/* Head and foot */

/* On the page of a room its name is what people look for. What is read from nearby stands beside it, or under it. */
static double
lay_head (const Sheet *s, LapPage *page)
{
  double inner = s->width - 2 * s->margin, y = s->margin, u = s->unit;
  g_autofree char *weekly = lap_week_words_when (s->week, s->from);
  g_autofree char *when = s->room != NULL ? g_strdup_printf ("%s\xc2\xa0· %s", s->week->title, weekly) : g_strdup (weekly);
  g_autoptr (LapWrap) title = lap_wrap_new (s->measure, LAP_WEIGHT_HEAVY,
                                            s->room != NULL ? lap_room_title (s->room) : s->week->title);
  g_autoptr (LapWrap) words = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, when);
  LapType line = { 3.6 * u, 1.2, LAP_ROLE_INK2, LAP_READ_OTHER };
  LapType most = { (s->room != NULL ? 12 : 8) * u, 1.02, LAP_ROLE_INK, LAP_READ_TITLE };
  LapType large = lap_wrap_largest (title, most, inner, 26 * u, 0.01);
  LapFit titled = lap_wrap_fit (title, &large, inner), told = lap_wrap_fit (words, &line, inner);
  gboolean beside = titled.width + told.width + 8 * u <= inner;
  double words_y = beside ? y + large.cap - line.cap : y + titled.height + 2.5 * u;

  if (page != NULL) {
    lap_page_begin (page, "H1");
    lap_wrap_put (title, &large, page, s->margin, y, inner, 0);
    lap_page_end (page);
    lap_page_begin (page, "P");
    lap_wrap_put (words, &line, page, s->margin, words_y, inner, beside ? 1 : 0);
    lap_page_end (page);
  }
  return (beside ? y + titled.height : words_y + told.height) + 2.5 * u;
}

/* What the crests mean, in one line that ends at @end; returns where it starts. Without @page it is only measured. */
static double
lay_legend (const Sheet *s, LapPage *page, double end, double y)
{
  LapType type = { 3 * s->unit, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };
  double x = end;

  for (guint i = lap_strains.n; i > 0; i--) {
    g_autoptr (LapWrap) word = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, lap_words_label (&lap_strains, i - 1));
    double width = lap_wrap_fit (word, &type, G_MAXINT).width + 0.1, crests = lap_crests_put (NULL, i, type.cap, 0, 0);

    x -= width + crests;
    if (page != NULL) {
      lap_crests_put (page, i, type.cap, x, y);
      lap_wrap_put (word, &type, page, x + crests, y, width, 0);
    }
    x -= i > 1 ? 5 * s->unit : 0;
  }
  return x;
}

static double
lay_foot (const Sheet *s, LapPage *page, double y)
{
  double u = s->unit, end = s->width - s->margin, top = y;
  double start = lay_legend (s, NULL, end, 0), wide = start - s->margin - 8 * u;
  g_autofree char *safety = g_strdup_printf ("%s %s", lap_safety_first (), lap_safety_more ());
  g_autoptr (LapWrap) words = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, safety);
  LapType type = { 2.6 * u, 1.25, LAP_ROLE_INK2, LAP_READ_SAFETY }, strong = { 2.6 * u, 1.25, LAP_ROLE_INK2, 0 };
  double words_height = lap_wrap_fit (words, &type, wide).height;

  y += 2.5 * u;
  if (page != NULL) {
    lap_page_rule (page, s->margin, top, end - s->margin, 0.4 * u, LAP_ROLE_INK);
    lap_page_begin (page, "P");
    lap_wrap_put (words, &type, page, s->margin, y, wide, 0);
    lay_legend (s, page, end, y);
    if (page->label != NULL)
      lap_text_put (s->measure, LAP_WEIGHT_STRONG, page->label, &strong, page, start, y + 6 * u, end - start, 1);
    lap_page_end (page);
  }
  return y + MAX (words_height, 9 * u) - top;
}

/* Days */

static void
read_days (Sheet *s)
{
  g_autoptr (GArray) all = lap_occurrences_new (s->week, s->from);
  LapWeekSubject subject = { s->week, 0, s->attachments };

  for (int i = 0; i < LAP_N_DAYS; i++) {
    subject.date = s->from != 0 ? s->from + i : 0;
    s->days[i] = lap_week_column_new (s->measure, &subject, s->room, lap_day_nth (s->first, i), all);
  }
}

/* What is next in @band, from day @i on, its top at @y; returns the day that isn't done after it. */
static guint
put_band (const Sheet *s, const Band *band, guint i, double y, LapPages *pages, LapPage *page)
{
  double x = s->margin;

  for (guint k = 0; k < band->n && i < LAP_N_DAYS; k++) {
    if (lap_week_column_is_new (s->days[i]))
      lap_pages_outline (pages, s->room != NULL, lap_words_label (&lap_days, lap_day_nth (s->first, i)), y);
    lap_week_column_put (s->days[i], &s->look, page, x, y, band->widths[k], y + band->bottom - band->top);
    x += band->widths[k] + column_gap (s);
    i += lap_week_column_is_done (s->days[i]);
  }
  return i;
}

/* The days in columns, as many on a page as there is room for; a day that is too long for one takes the next, too. A
 * second band follows right under the first. */
static void
put_days (const Sheet *s, LapPages *pages)
{
  for (guint i = 0; i < LAP_N_DAYS;) {
    LapPage *page = lap_pages_add (pages, s->width, s->height);
    double y = s->top;

    if (i == 0 && lap_week_column_is_new (s->days[0]) && s->room != NULL)
      lap_pages_outline (pages, 0, lap_room_title (s->room), 0);
    lap_page_begin (page, "Sect");
    lay_head (s, page);
    for (guint k = 0; k < s->n_bands; k++) {
      const Band *band = &s->bands[k];
      guint first = i;

      i = put_band (s, band, first, y, pages, page);
      y += s->n_bands > 1 ? band_height (s, band, first) + BAND_GAP * s->unit : 0;
    }
    lap_page_end (page);
  }
}

/* A sheet for @room, NULL for all rooms together. */
static Sheet *
sheet_new (const LapWeekSubject *subject, const LapRoom *room, const LapSheetOptions *options, const LapMeasure *measure)
{
  Sheet *s = g_new0 (Sheet, 1);

  s->week = subject->week;
  s->attachments = subject->attachments;
  s->room = room;
  s->measure = measure;
  s->from = subject->date;
  s->first = subject->date != 0 ? lap_date_day (subject->date) : options->first_day;
  lap_paper_size (options, &s->width, &s->height);
  s->unit = MIN (s->width, s->height) / 297;
  s->margin = 10 * s->unit;
  s->top = lay_head (s, NULL);
  s->bottom = s->height - s->margin - lay_foot (s, NULL, 0) - s->unit;
  s->most = lap_cap_height (MOST, LAP_ARC_READABLE) * s->unit;
  s->least = lap_cap_height (LEAST, LAP_ARC_READABLE) * s->unit;
  s->look.unit = s->unit;
  s->look.pad = PAD;
  s->look.highest = s->height * HIGHEST;
  read_days (s);
  return s;
}

static void
sheet_free (gpointer data)
{
  Sheet *s = data;

  for (guint i = 0; i < LAP_N_DAYS; i++)
    lap_week_column_free (s->days[i]);
  g_free (s);
}

LapPages *
lap_week_sheet_build (const LapWeekSubject *subject, const LapSheetOptions *options, const LapMeasure *measure)
{
  const LapWeek *week = subject->week;
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (GPtrArray) sheets = g_ptr_array_new_with_free_func (sheet_free);
  LapPages *pages = lap_pages_new (week->title, NULL, catalogue);
  const Sheet *first;
  int way;

  for (guint i = 0; options->by_room && i < lap_list_n (week->rooms); i++)
    g_ptr_array_add (sheets, sheet_new (subject, lap_list_nth (week->rooms, i), options, measure));
  if (sheets->len == 0)
    g_ptr_array_add (sheets, sheet_new (subject, NULL, options, measure));
  way = best_way (sheets);
  for (guint i = 0; i < sheets->len; i++) {
    Sheet *s = g_ptr_array_index (sheets, i);

    if (way >= 0 && largest_cap (s, way, s->least) > 0)
      breathe (s);
    else
      choose_pages (s);
    put_days (s, pages);
  }
  first = g_ptr_array_index (sheets, 0);
  for (guint i = 0; i < lap_pages_n (pages); i++) {
    LapPage *page = lap_pages_nth (pages, i);

    if (lap_pages_n (pages) > 1)
      page->label = g_strdup_printf (_("%u of %u"), i + 1, lap_pages_n (pages));
    lay_foot (first, page, first->bottom + first->unit);
  }
  return pages;
}
