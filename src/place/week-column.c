/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/week-column.h"

#include "base/customs.h"
#include "place/week-words.h"
#include "place/wrap.h"

#include <glib/gi18n-lib.h>

/* Against the capitals of times and titles. */
#define ABOUT    0.5  /* capitals of what stands under a title */
#define AFTER    0.4  /* between a time and the title beside it */
#define TIMED    1.37 /* from a time to the title under it */
#define CLEAR    0.13 /* under the name of a day */
#define UNDER    0.12 /* below a title */
#define HEAD_PAD 0.36 /* round the name of a day */
#define DATE     0.5  /* capitals of its date */
#define LONGEST  12   /* that a word may take of a column's width: a longer one is set in smaller letters */

/* Against the capitals beside them. */
#define CREST    0.9  /* width of a crest */
#define BEFORE   0.5  /* between crests and words */

typedef struct {
  LapWrap *time, *title, *about, *brief; /* `brief` = what is about it, in fewer letters */
  guint    crests;
  gboolean off;     /* it isn't held */
  gboolean changed; /* it isn't as in other weeks */
} Entry;

struct _LapWeekColumn {
  LapWrap   *name, *brief, *date; /* `date` NULL = in every week */
  LapWrap   *empty;               /* what is said where there are no classes */
  GPtrArray *entries;             /* Entry */
  guint      next;                /* the first one that isn't on a page yet */
  gboolean   begun;
};

static void
entry_free (gpointer data)
{
  Entry *entry = data;

  lap_wrap_free (entry->time);
  lap_wrap_free (entry->title);
  lap_wrap_free (entry->about);
  lap_wrap_free (entry->brief);
  g_free (entry);
}

static Entry *
entry_new (const LapMeasure *measure, const LapWeekSubject *subject, const LapRoom *room, const LapOccurrence *o)
{
  const LapWeek *week = subject->week;
  g_autofree char *time = lap_time_of_day_text (o->start), *about = lap_week_words_about (week, room, o, FALSE);
  g_autofree char *brief = lap_week_words_about (week, room, o, TRUE);
  Entry *entry = g_new0 (Entry, 1);
  LapClassFacts facts;

  lap_class_facts (o->c, subject->attachments, &facts);
  entry->time = lap_wrap_new (measure, LAP_WEIGHT_HEAVY, time);
  entry->title = lap_wrap_new (measure, LAP_WEIGHT_STRONG, lap_class_title (o->c));
  entry->about = lap_wrap_new (measure, LAP_WEIGHT_PLAIN, about);
  entry->brief = lap_wrap_new (measure, LAP_WEIGHT_PLAIN, brief);
  entry->off = o->state != LAP_HELD;
  entry->changed = entry->off || (o->date != 0 && (o->exception != NULL || lap_week_is_away (week, o->coach, o->date)));
  entry->crests = entry->off || facts.strain < 0 ? 0 : facts.strain + 1;
  return entry;
}

LapWeekColumn *
lap_week_column_new (const LapMeasure *measure, const LapWeekSubject *subject, const LapRoom *room, int day,
                     const GArray *occurrences)
{
  const LapWeek *week = subject->week;
  int date = subject->date;
  LapWeekColumn *column = g_new0 (LapWeekColumn, 1);
  g_autofree char *text = date != 0 ? lap_date_text (date) : NULL;
  LapSpan span;
  gboolean closed = !lap_week_open (week, day, &span) || (date != 0 && lap_week_is_closed (week, date));

  column->name = lap_wrap_new (measure, LAP_WEIGHT_HEAVY, lap_words_label (&lap_days, day));
  column->brief = lap_wrap_new (measure, LAP_WEIGHT_HEAVY, lap_week_words_day (day));
  column->date = text != NULL ? lap_wrap_new (measure, LAP_WEIGHT_PLAIN, text) : NULL;
  column->empty = lap_wrap_new (measure, LAP_WEIGHT_PLAIN, closed ? _("Closed") : _("No classes"));
  column->entries = g_ptr_array_new_with_free_func (entry_free);
  for (guint i = 0; i < occurrences->len; i++) {
    const LapOccurrence *o = &g_array_index (occurrences, LapOccurrence, i);

    if (o->day == day && o->state != LAP_HOUSE_CLOSED && (room == NULL || g_strcmp0 (o->room, room->id) == 0))
      g_ptr_array_add (column->entries, entry_new (measure, subject, room, o));
  }
  return column;
}

void
lap_week_column_free (LapWeekColumn *column)
{
  lap_wrap_free (column->name);
  lap_wrap_free (column->brief);
  g_clear_pointer (&column->date, lap_wrap_free);
  lap_wrap_free (column->empty);
  g_ptr_array_unref (column->entries);
  g_free (column);
}

/* Letters */

static LapType
time_type (const LapWeekLook *look, const Entry *entry)
{
  return (LapType) { look->cap, 1, entry->off ? LAP_ROLE_INK2 : LAP_ROLE_WORK, LAP_READ_NUMBER };
}

static double
time_width (const LapWeekLook *look, const Entry *entry)
{
  LapType type = time_type (look, entry);

  return lap_wrap_fit (entry->time, &type, G_MAXINT).width;
}

static LapType
title_type (const LapWeekLook *look, const Entry *entry, double width)
{
  LapType type = { look->cap, 1, entry->off ? LAP_ROLE_INK2 : LAP_ROLE_INK, LAP_READ_NAME };

  type.indent = look->beside ? time_width (look, entry) + AFTER * look->cap : 0;
  return lap_wrap_largest (entry->title, type, width, look->highest, 0.01);
}

static LapWrap *
about_of (const LapWeekLook *look, const Entry *entry)
{
  return look->brief ? entry->brief : entry->about;
}

static LapType
about_type (const LapWeekLook *look, const Entry *entry, double width)
{
  LapType type = { look->cap * ABOUT, 1.15, entry->changed ? LAP_ROLE_STOP : LAP_ROLE_INK2, LAP_READ_DETAIL };

  type.indent = lap_crests_put (NULL, entry->crests, type.cap, 0, 0);
  return lap_wrap_largest (about_of (look, entry), type, width, look->highest, 0.01);
}

static LapType
quiet_type (const LapWeekLook *look)
{
  return (LapType) { look->cap * ABOUT, 1.15, LAP_ROLE_INK2, LAP_READ_OTHER };
}

static LapWrap *
name_of (const LapWeekColumn *column, const LapWeekLook *look)
{
  return look->brief ? column->brief : column->name;
}

/* Laying out. With @page NULL nothing is put, to ask for heights. */

double
lap_crests_put (LapPage *page, guint n, double cap, double x, double y)
{
  double width = cap * CREST;

  for (guint i = 0; page != NULL && i < n; i++)
    lap_page_sign (page, LAP_SIGN_CREST, x + i * width, y + cap * 0.15, width, cap * 0.7,
                   LAP_ROLE_EFFORT)->thick = width * 0.15;
  return n > 0 ? n * width + cap * BEFORE : 0;
}

/* The least width in which @wrap takes no more lines than in @width: its lines are of like length there. */
static double
balanced (LapWrap *wrap, const LapType *type, double width)
{
  guint lines = lap_wrap_fit (wrap, type, width).lines;
  double low = 0, high = width;

  for (int i = 0; i < 8 && lines > 1; i++) {
    double middle = (low + high) / 2;
    LapFit fit = lap_wrap_fit (wrap, type, middle);

    if (fit.lines <= lines && fit.broken == 0)
      high = middle;
    else
      low = middle;
  }
  return high;
}

static double
lay_entry (const LapWeekLook *look, const Entry *entry, LapPage *page, double x, double y, double width)
{
  LapType time = time_type (look, entry), title = title_type (look, entry, width), about = about_type (look, entry, width);
  double top = y;

  y += look->cap * look->pad;
  if (page != NULL) {
    lap_page_begin (page, "P");
    lap_wrap_put (entry->time, &time, page, x, y, width, 0);
  }
  y += look->beside ? time.cap - title.cap : look->cap * TIMED;
  if (page != NULL)
    lap_wrap_put (entry->title, &title, page, x, y, look->beside ? width : balanced (entry->title, &title, width), 0);
  y += lap_wrap_fit (entry->title, &title, width).height + look->cap * UNDER;
  if (page != NULL) {
    lap_crests_put (page, entry->crests, about.cap, x, y);
    lap_wrap_put (about_of (look, entry), &about, page, x, y, balanced (about_of (look, entry), &about, width), 0);
    lap_page_end (page);
  }
  return y + lap_wrap_fit (about_of (look, entry), &about, width).height + look->cap * look->pad - top;
}

static double
lay_head (const LapWeekColumn *column, const LapWeekLook *look, LapPage *page, double x, double y, double width)
{
  LapType name = { look->cap, 1, LAP_ROLE_INK, LAP_READ_TITLE }, date = quiet_type (look);
  double pad = look->cap * HEAD_PAD, inner = width - 2 * pad, height = 2 * pad + look->cap, date_y = y + height;

  name = lap_wrap_largest (name_of (column, look), name, inner, 2 * look->cap, 0.01);
  date.cap = look->cap * DATE;
  if (column->date != NULL) {
    date = lap_wrap_largest (column->date, date, inner, 2 * look->cap, 0.01);
    height += look->cap * DATE + pad;
  }
  if (page != NULL) {
    lap_page_box (page, x, y, width, height, LAP_ROLE_SHADE);
    lap_page_begin (page, "H2");
    lap_wrap_put (name_of (column, look), &name, page, x + pad, y + pad, inner, 0);
    if (column->date != NULL)
      lap_wrap_put (column->date, &date, page, x + pad, date_y, inner, 0);
    lap_page_end (page);
  }
  return height + look->cap * CLEAR;
}

double
lap_week_column_least (const LapWeekColumn *column, const LapWeekLook *look)
{
  double least = lap_wrap_longest (name_of (column, look)) + HEAD_PAD * 2;

  if (column->date != NULL)
    least = MAX (least, lap_wrap_longest (column->date) * DATE + HEAD_PAD * 2);
  if (column->entries->len == 0)
    least = MAX (least, lap_wrap_longest (column->empty) * ABOUT);
  for (guint i = 0; i < column->entries->len; i++) {
    const Entry *entry = g_ptr_array_index (column->entries, i);
    double longest = MAX (lap_wrap_longest (entry->title), lap_wrap_longest (about_of (look, entry)) * ABOUT);

    least = MAX (least, MAX (MIN (longest, LONGEST), time_width (look, entry) / look->cap));
  }
  return least * look->cap * (1 + 1e-6);
}

double
lap_week_column_height (const LapWeekColumn *column, const LapWeekLook *look, double width)
{
  double y = lay_head (column, look, NULL, 0, 0, width);

  for (guint i = 0; i < column->entries->len; i++)
    y += lay_entry (look, g_ptr_array_index (column->entries, i), NULL, 0, y, width);
  return y;
}

guint
lap_week_column_count (const LapWeekColumn *column, const LapWeekLook *look, double width, double height)
{
  double head = lay_head (column, look, NULL, 0, 0, width), y = head;
  guint n = 1;

  for (guint i = 0; i < column->entries->len; i++) {
    double more = lay_entry (look, g_ptr_array_index (column->entries, i), NULL, 0, 0, width);

    if (y + more > height && y > head) {
      n++;
      y = head;
    }
    y += more;
  }
  return n;
}

void
lap_week_column_put (LapWeekColumn *column, const LapWeekLook *look, LapPage *page, double x, double y, double width,
                     double bottom)
{
  LapType quiet = quiet_type (look);
  guint first = column->next;

  y += lay_head (column, look, page, x, y, width);
  if (column->entries->len == 0)
    lap_wrap_put (column->empty, &quiet, page, x, y + look->cap * look->pad, width, 0);
  for (; column->next < column->entries->len; column->next++) {
    const Entry *entry = g_ptr_array_index (column->entries, column->next);
    double height = lay_entry (look, entry, NULL, x, y, width);

    if (y + height > bottom + 1e-6 && column->next > first)
      break;
    if (column->next > first)
      lap_page_rule (page, x, y, width, 0.3 * look->unit, LAP_ROLE_LINE);
    lay_entry (look, entry, page, x, y, width);
    y += height;
  }
  column->begun = TRUE;
}

gboolean
lap_week_column_is_new (const LapWeekColumn *column)
{
  return !column->begun;
}

gboolean
lap_week_column_is_done (const LapWeekColumn *column)
{
  return column->begun && column->next == column->entries->len;
}
