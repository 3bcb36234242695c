/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/week-sheet.h"

#include "base/customs.h"
#include "model/occurrences.h"
#include "place/safety.h"
#include "place/wrap.h"

#include <glib/gi18n-lib.h>

#define READS_FROM   2.0  /* m, on A3; from nearer by in proportion on smaller paper */
#define LEAST_SCALE  0.4  /* smaller letters are worth another page: names are read from 0.8 m on A3 */
#define STEP         0.96
#define ABOUT        0.7  /* capitals of what stands under a title, against those of the title */
#define CREST        0.9  /* width of a crest, likewise */
#define LEAST_CREST  0.3  /* where it stands close beside a time, likewise */
#define APART        0.9  /* the line of crests below a class, likewise */
#define PAD          0.55 /* above and below a class, likewise */
#define COLUMN_GAP   4.0  /* units; a unit is a millimetre on A3 */
#define HIGHEST      0.4  /* of the page: a title that would be higher is set in smaller letters */

/* Columns beside each other on a page, in turn. */
static const guint columns_on[] = { 7, 4, 3, 2, 1 };

typedef struct {
  LapWrap *time, *title, *about;
  guint    crests;
  gboolean off;     /* it isn't held */
  gboolean changed; /* it isn't as in other weeks */
} Entry;

typedef struct {
  LapWrap   *name, *date; /* `date` NULL = in every week */
  LapWrap   *empty;       /* what is said where there are no classes */
  GPtrArray *entries;     /* Entry */
  guint      next;        /* the first one that isn't on a page yet */
} Day;

typedef struct {
  const LapWeek         *week;
  const LapSheetOptions *options;
  const LapMeasure      *measure;
  int                    monday; /* 0 = in every week */
  const LapRoom         *room;   /* whose page it is; NULL = all of them */
  double                 width, height, margin, unit;
  double                 top, bottom; /* of the days, mm */
  Day                    days[LAP_N_DAYS];
  guint                  n;           /* columns beside each other */
  double                 column;      /* width of a day, mm */
  double                 cap;         /* capitals of times and titles, mm */
  gboolean               apart;       /* crests have a line of their own: beside a time there is no room */
} Sheet;

static void
entry_free (gpointer data)
{
  Entry *entry = data;

  lap_wrap_free (entry->time);
  lap_wrap_free (entry->title);
  lap_wrap_free (entry->about);
  g_free (entry);
}

static LapType
time_type (const Sheet *s, gboolean off)
{
  return (LapType) { s->cap, 1.05, off ? LAP_ROLE_INK2 : LAP_ROLE_WORK, LAP_READ_NUMBER };
}

static LapType
title_type (const Sheet *s, const Entry *entry)
{
  LapType type = { s->cap, 1.08, entry->off ? LAP_ROLE_INK2 : LAP_ROLE_INK, LAP_READ_NAME };

  return lap_wrap_largest (entry->title, type, s->column, s->height * HIGHEST, 0.01);
}

static LapType
about_type (const Sheet *s, const Entry *entry)
{
  LapType type = { s->cap * ABOUT, 1.15, entry->changed ? LAP_ROLE_STOP : LAP_ROLE_INK2, LAP_READ_OTHER };

  return lap_wrap_largest (entry->about, type, s->column, s->height * HIGHEST / 2, 0.01);
}

/* What is read */

static void
append_part (GString *text, const char *part)
{
  g_string_append_printf (text, "%s%s", text->len > 0 ? "\xc2\xa0· " : "", part);
}

/* @now, and what it is in other weeks where that differs. */
static void
append_instead (GString *text, const char *now, const char *else_, const char *format)
{
  g_autofree char *both = else_ != NULL && !g_str_equal (now, else_) ? g_strdup_printf (format, now, else_) : NULL;

  append_part (text, both != NULL ? both : now);
}

static void
append_room (const Sheet *s, const LapOccurrence *o, GString *text)
{
  LapRoom *room = lap_week_room (s->week, o->room), *usual = lap_week_room (s->week, o->c->room);

  if (room != NULL && (s->room == NULL || usual != room))
    /* Translators: the room of a class on one date, and its usual one. */
    append_instead (text, lap_room_title (room), usual != NULL ? lap_room_title (usual) : NULL, _("%1$s, not %2$s"));
}

static void
append_coach (const Sheet *s, const LapOccurrence *o, GString *text)
{
  LapCoach *coach = lap_week_coach (s->week, o->coach), *usual = lap_week_coach (s->week, o->c->coach);
  g_autofree char *away = NULL;

  if (coach == NULL)
    return;
  if (o->date != 0 && lap_week_is_away (s->week, coach->id, o->date)) {
    away = g_strdup_printf (_("%s is away"), lap_coach_title (coach));
    append_part (text, away);
  } else {
    /* Translators: the coach of a class on one date, and the usual one. */
    append_instead (text, lap_coach_title (coach), usual != NULL ? lap_coach_title (usual) : NULL, _("%1$s for %2$s"));
  }
}

/* That it is on another day or at another time than in other weeks. */
static void
append_moved (const LapOccurrence *o, GString *text)
{
  g_autofree char *was = lap_date_text (MAX (o->was, 1)), *time = lap_time_of_day_text (o->c->start);
  g_autofree char *moved = NULL;

  if (o->date != o->was)
    moved = g_strdup_printf (_("moved from %s"), was);
  else if (o->start != o->c->start)
    /* Translators: the usual time of a class that is at another one on this date. */
    moved = g_strdup_printf (_("not at %s"), time);
  if (moved != NULL)
    append_part (text, moved);
}

/* Room, coach and minutes of a class that is held, and what is different on this date; why it isn't of one that isn't. */
static char *
about_text (const Sheet *s, const LapOccurrence *o)
{
  g_autofree char *to = o->exception != NULL && o->exception->to != 0 ? lap_date_text (o->exception->to) : NULL;
  /* Translators: minutes that a class lasts. */
  g_autofree char *minutes = g_strdup_printf (_("%d\xc2\xa0min"), o->c->minutes);
  GString *text;

  if (o->state == LAP_CANCELLED)
    return g_strdup (_("Cancelled"));
  if (o->state == LAP_MOVED_AWAY)
    return to != NULL ? g_strdup_printf (_("Moved to %s"), to) : g_strdup (_("Moved"));
  text = g_string_new (NULL);
  append_room (s, o, text);
  append_coach (s, o, text);
  append_part (text, minutes);
  append_moved (o, text);
  return g_string_free (text, FALSE);
}

static void
add_entry (Sheet *s, const LapOccurrence *o)
{
  g_autofree char *time = lap_time_of_day_text (o->start), *about = about_text (s, o);
  Entry *entry = g_new0 (Entry, 1);

  entry->time = lap_wrap_new (s->measure, LAP_WEIGHT_HEAVY, time);
  entry->title = lap_wrap_new (s->measure, LAP_WEIGHT_STRONG, lap_class_title (o->c));
  entry->about = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, about);
  entry->off = o->state != LAP_HELD;
  entry->changed = entry->off || (o->date != 0 && (o->exception != NULL || lap_week_is_away (s->week, o->coach, o->date)));
  entry->crests = entry->off || o->c->strain < 0 ? 0 : o->c->strain + 1;
  g_ptr_array_add (s->days[o->day].entries, entry);
}

static void
read_days (Sheet *s)
{
  g_autoptr (GArray) all = lap_occurrences_new (s->week, s->monday);

  for (int i = 0; i < LAP_N_DAYS; i++) {
    Day *day = &s->days[i];
    int date = s->monday != 0 ? s->monday + i : 0;
    g_autofree char *text = date != 0 ? lap_date_text (date) : NULL;
    LapSpan span;
    gboolean closed = !lap_week_open (s->week, i, &span) || (date != 0 && lap_week_is_closed (s->week, date));

    day->name = lap_wrap_new (s->measure, LAP_WEIGHT_HEAVY, lap_words_label (&lap_days, i));
    day->date = text != NULL ? lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, text) : NULL;
    day->empty = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, closed ? _("Closed") : _("No classes"));
    day->entries = g_ptr_array_new_with_free_func (entry_free);
    day->next = 0;
  }
  for (guint i = 0; i < all->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (all, i);

    if (o->state != LAP_HOUSE_CLOSED && (s->room == NULL || g_strcmp0 (o->room, s->room->id) == 0))
      add_entry (s, o);
  }
}

static void
clear_days (Sheet *s)
{
  for (int i = 0; i < LAP_N_DAYS; i++) {
    lap_wrap_free (s->days[i].name);
    g_clear_pointer (&s->days[i].date, lap_wrap_free);
    lap_wrap_free (s->days[i].empty);
    g_ptr_array_unref (s->days[i].entries);
  }
}

/* Days. With @page NULL nothing is put, to ask for heights. */

/* @n crests of @width in a row, beside a line with capitals of @cap at @y. */
static void
put_crests (LapPage *page, guint n, double width, double cap, double x, double y)
{
  for (guint i = 0; i < n; i++)
    lap_page_sign (page, LAP_SIGN_CREST, x + i * width, y + cap * 0.15, width, cap * 0.7,
                   LAP_ROLE_EFFORT)->thick = width * 0.15;
}

/* The width of a crest beside the time of @entry: room for three of the same size in each column. */
static double
crest_width (const Sheet *s, const Entry *entry)
{
  LapType type = time_type (s, FALSE);

  if (s->apart)
    return s->cap * CREST * ABOUT;
  return MIN (s->cap * CREST, (s->column - lap_wrap_fit (entry->time, &type, 1e6).width - s->cap * 0.4) / lap_strains.n);
}

static double
lay_entry (const Sheet *s, const Entry *entry, LapPage *page, double x, double y)
{
  LapType time = time_type (s, entry->off), title = title_type (s, entry), about = about_type (s, entry);
  double top = y, crest = crest_width (s, entry), side = x + s->column - entry->crests * crest, about_height;

  y += s->cap * PAD;
  if (page != NULL) {
    lap_page_begin (page, "P");
    lap_wrap_put (entry->time, &time, page, x, y, s->column, 0);
    if (!s->apart)
      put_crests (page, entry->crests, crest, s->cap, side, y);
    lap_wrap_put (entry->title, &title, page, x, y + s->cap * 1.45, s->column, 0);
  }
  y += s->cap * 1.45 + lap_wrap_fit (entry->title, &title, s->column).height + s->cap * 0.3;
  about_height = lap_wrap_fit (entry->about, &about, s->column).height;
  if (page != NULL) {
    lap_wrap_put (entry->about, &about, page, x, y, s->column, 0);
    if (s->apart)
      put_crests (page, entry->crests, crest, s->cap * ABOUT, x, y + about_height);
    lap_page_end (page);
  }
  return y + about_height + (s->apart && entry->crests > 0 ? s->cap * APART : 0) + s->cap * PAD - top;
}

/* The letters of the days' names: all the same, as large as the widest allows. */
static LapType
name_type (const Sheet *s)
{
  LapType type = { s->cap * 0.95, 1, LAP_ROLE_INK, LAP_READ_TITLE };

  for (int i = 0; i < LAP_N_DAYS; i++)
    type = lap_wrap_largest (s->days[i].name, type, s->column - s->cap * 0.6, s->cap * 2, 0.01);
  return type;
}

static double
lay_day_head (const Sheet *s, const Day *day, LapPage *page, double x, double y)
{
  LapType name = name_type (s), date = { name.cap * 0.7, 1, LAP_ROLE_INK2, LAP_READ_OTHER };
  double pad = s->cap * 0.5, inset = s->cap * 0.3, height = 2 * pad + name.cap;

  if (day->date != NULL)
    height += pad * 0.8 + date.cap;
  if (page == NULL)
    return height;
  lap_page_box (page, x, y, s->column, height, LAP_ROLE_SHADE);
  lap_page_begin (page, "H2");
  lap_wrap_put (day->name, &name, page, x + inset, y + pad, s->column - inset, 0);
  if (day->date != NULL)
    lap_wrap_put (day->date, &date, page, x + inset, y + pad * 1.8 + name.cap, s->column - inset, 0);
  lap_page_end (page);
  return height;
}

/* Puts what is left of @day in its column, as much as fits; at least one class. */
static void
put_day (const Sheet *s, Day *day, LapPage *page, double x)
{
  double y = s->top + lay_day_head (s, day, page, x, s->top);
  LapType quiet = { s->cap * ABOUT, 1.15, LAP_ROLE_INK2, LAP_READ_OTHER };
  guint first = day->next;

  if (day->entries->len == 0)
    lap_wrap_put (day->empty, &quiet, page, x, y + s->cap * PAD, s->column, 0);
  for (; day->next < day->entries->len; day->next++) {
    const Entry *entry = g_ptr_array_index (day->entries, day->next);
    double height = lay_entry (s, entry, NULL, x, y);

    if (y + height > s->bottom && day->next > first)
      break;
    if (day->next > first)
      lap_page_rule (page, x, y, s->column, 0.3 * s->unit, LAP_ROLE_LINE);
    lay_entry (s, entry, page, x, y);
    y += height;
  }
}

/* Whether times have room, with crests beside them or alone. */
static gboolean
is_wide_enough (const Sheet *s)
{
  LapType type = time_type (s, FALSE);

  for (int i = 0; i < LAP_N_DAYS; i++)
    for (guint k = 0; k < s->days[i].entries->len; k++) {
      const Entry *entry = g_ptr_array_index (s->days[i].entries, k);

      if (s->apart ? lap_wrap_fit (entry->time, &type, 1e6).width > s->column
                   : crest_width (s, entry) < s->cap * LEAST_CREST)
        return FALSE;
    }
  return TRUE;
}

/* How many columns the days take. */
static guint
count_columns (const Sheet *s)
{
  guint columns = 0;

  for (int i = 0; i < LAP_N_DAYS; i++) {
    const Day *day = &s->days[i];
    double head = s->top + lay_day_head (s, day, NULL, 0, 0), y = head;

    columns++;
    for (guint k = 0; k < day->entries->len; k++) {
      double height = lay_entry (s, g_ptr_array_index (day->entries, k), NULL, 0, 0);

      if (y + height > s->bottom && y > head) {
        columns++;
        y = head;
      }
      y += height;
    }
  }
  return columns;
}

static void
set_columns (Sheet *s, guint n)
{
  s->n = n;
  s->column = (s->width - 2 * s->margin - (n - 1) * COLUMN_GAP * s->unit) / n;
}

/* The largest capitals with which the days take no more than @columns, between what is sound and what is enough. */
static double
largest_cap (Sheet *s, gboolean apart, guint columns)
{
  double most = lap_cap_height (READS_FROM, LAP_ARC_READABLE) * s->unit;

  s->apart = apart;
  for (s->cap = most; s->cap > most * LEAST_SCALE; s->cap *= STEP)
    if (is_wide_enough (s) && count_columns (s) <= columns)
      return s->cap;
  return most * LEAST_SCALE;
}

/* The fewest pages that letters of the least sound size allow, with the most columns that do it; there the largest
 * letters that take no more. */
static void
choose_size (Sheet *s)
{
  double most = lap_cap_height (READS_FROM, LAP_ARC_READABLE) * s->unit;
  guint fewest = G_MAXUINT, best = 1;
  double beside, apart;

  s->cap = most * LEAST_SCALE;
  s->apart = FALSE;
  for (guint i = 0; i < G_N_ELEMENTS (columns_on); i++) {
    guint pages;

    set_columns (s, columns_on[i]);
    pages = (count_columns (s) + s->n - 1) / s->n;
    if (is_wide_enough (s) && pages < fewest) {
      fewest = pages;
      best = s->n;
    }
  }
  set_columns (s, best);
  apart = largest_cap (s, TRUE, fewest * best);
  beside = largest_cap (s, FALSE, fewest * best);
  s->apart = apart > beside;
  s->cap = MAX (apart, beside);
}

/* Head and foot */

static char *
when_text (const Sheet *s)
{
  g_autofree char *from = s->week->from != 0 ? lap_date_text (s->week->from) : NULL;
  g_autofree char *until = s->week->until != 0 ? lap_date_text (s->week->until) : NULL;
  g_autofree char *monday = s->monday != 0 ? lap_date_text (s->monday) : NULL;
  g_autofree char *sunday = s->monday != 0 ? lap_date_text (s->monday + LAP_DAY_SUN) : NULL;

  if (monday != NULL)
    /* Translators: the first and the last date of a week. */
    return g_strdup_printf (_("Classes from %s to %s"), monday, sunday);
  if (from != NULL && until != NULL)
    return g_strdup_printf (_("Classes every week from %s until %s"), from, until);
  return from != NULL ? g_strdup_printf (_("Classes every week from %s on"), from) : g_strdup (_("Classes every week"));
}

/* On the page of a room its name is what people look for. */
static double
lay_head (const Sheet *s, LapPage *page)
{
  double inner = s->width - 2 * s->margin, y = s->margin, u = s->unit;
  g_autofree char *weekly = when_text (s);
  g_autofree char *when = s->room != NULL ? g_strdup_printf ("%s\xc2\xa0· %s", s->week->title, weekly) : g_strdup (weekly);
  g_autoptr (LapWrap) title = lap_wrap_new (s->measure, LAP_WEIGHT_HEAVY,
                                            s->room != NULL ? lap_room_title (s->room) : s->week->title);
  g_autoptr (LapWrap) words = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, when);
  LapType large = { 9 * u, 1.02, LAP_ROLE_INK, LAP_READ_TITLE };
  LapType line = { 4.6 * u, 1.2, LAP_ROLE_INK2, LAP_READ_OTHER };
  LapType fitted = lap_wrap_largest (title, large, inner, 26 * u, 0.01);

  if (page != NULL) {
    lap_page_begin (page, "H1");
    lap_wrap_put (title, &fitted, page, s->margin, y, inner, 0);
    lap_page_end (page);
  }
  y += lap_wrap_fit (title, &fitted, inner).height + 3 * u;
  if (page != NULL) {
    lap_page_begin (page, "P");
    lap_wrap_put (words, &line, page, s->margin, y, inner, 0);
    lap_page_end (page);
  }
  return y + lap_wrap_fit (words, &line, inner).height + 5 * u;
}

/* What the crests mean, in one line. */
static void
put_legend (const Sheet *s, LapPage *page, double y)
{
  LapType type = { 3.2 * s->unit, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };
  double x = s->margin;

  for (guint i = 0; i < lap_strains.n; i++) {
    g_autoptr (LapWrap) word = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, lap_words_label (&lap_strains, i));
    double width = lap_wrap_fit (word, &type, 1e6).width + 0.1;

    put_crests (page, i + 1, type.cap * CREST, type.cap, x, y);
    x += (i + 1) * type.cap * CREST + type.cap * 0.5;
    lap_wrap_put (word, &type, page, x, y, width, 0);
    x += width + 5 * s->unit;
  }
}

static double
lay_foot (const Sheet *s, LapPage *page, double y)
{
  double inner = s->width - 2 * s->margin, wide = inner * 0.86, u = s->unit, top = y;
  g_autofree char *safety = g_strdup_printf ("%s %s", lap_safety_first (), lap_safety_more ());
  g_autoptr (LapWrap) words = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, safety);
  LapType type = { 2.7 * u, 1.25, LAP_ROLE_INK2, LAP_READ_SAFETY }, strong = { 2.7 * u, 1.25, LAP_ROLE_INK2, 0 };

  y += 2.5 * u;
  if (page != NULL) {
    lap_page_rule (page, s->margin, top, inner, 0.4 * u, LAP_ROLE_INK);
    lap_page_begin (page, "P");
    put_legend (s, page, y);
    lap_wrap_put (words, &type, page, s->margin, y + 6.5 * u, wide, 0);
    if (page->label != NULL)
      lap_text_put (s->measure, LAP_WEIGHT_STRONG, page->label, &strong, page, s->margin + inner * 0.88, y + 6.5 * u,
                    inner * 0.12, 1);
    lap_page_end (page);
  }
  return y + 6.5 * u + lap_wrap_fit (words, &type, wide).height - top;
}

/* The days in columns, as many on a page as there is room for; a day that is too long for one takes the next, too. */
static void
put_days (Sheet *s, LapPages *pages)
{
  LapPage *page = NULL;
  guint column = 0;

  for (guint i = 0; i < LAP_N_DAYS; i++)
    do {
      if (column % s->n == 0) {
        if (page != NULL)
          lap_page_end (page);
        page = lap_pages_add (pages, s->width, s->height);
        lap_page_begin (page, "Sect");
        lay_head (s, page);
      }
      if (column == 0 && s->room != NULL)
        lap_pages_outline (pages, 0, lap_room_title (s->room), 0);
      if (s->days[i].next == 0)
        lap_pages_outline (pages, s->room != NULL, lap_words_label (&lap_days, i), s->top);
      put_day (s, &s->days[i], page, s->margin + column % s->n * (s->column + COLUMN_GAP * s->unit));
      column++;
    } while (s->days[i].next < s->days[i].entries->len);
  lap_page_end (page);
}

/* All pages of a room, or of all rooms together. */
static void
put_sheet (Sheet *s, LapPages *pages)
{
  s->top = lay_head (s, NULL);
  s->bottom = s->height - s->margin - lay_foot (s, NULL, 0);
  read_days (s);
  choose_size (s);
  put_days (s, pages);
  clear_days (s);
}

static gboolean
has_rooms (const LapWeek *week, const LapSheetOptions *options)
{
  return options->by_room && lap_list_n (week->rooms) > 0;
}

LapPages *
lap_week_sheet_build (const LapWeek *week, int date, const LapSheetOptions *options, const LapMeasure *measure)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  LapPages *pages = lap_pages_new (week->title, NULL, catalogue);
  Sheet s = { .week = week, .options = options, .measure = measure };

  s.monday = date != 0 ? lap_date_monday (date) : 0;
  lap_paper_size (options, &s.width, &s.height);
  s.unit = MIN (s.width, s.height) / 297;
  s.margin = 12 * s.unit;
  for (guint i = 0; has_rooms (week, options) && i < lap_list_n (week->rooms); i++) {
    s.room = lap_list_nth (week->rooms, i);
    put_sheet (&s, pages);
  }
  if (!has_rooms (week, options))
    put_sheet (&s, pages);
  for (guint i = 0; i < lap_pages_n (pages); i++) {
    LapPage *page = lap_pages_nth (pages, i);

    if (lap_pages_n (pages) > 1)
      page->label = g_strdup_printf (_("%u of %u"), i + 1, lap_pages_n (pages));
    lay_foot (&s, page, s.bottom);
  }
  return pages;
}
