/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/changes-sheet.h"

#include "base/customs.h"
#include "model/occurrences.h"
#include "place/safety.h"
#include "place/wrap.h"

#include <glib/gi18n-lib.h>

#define LARGEST  7.0 /* capitals of a title in units; a unit is a millimetre on A4. Read from 1.5 m */
#define LEAST    0.5 /* of that; smaller letters are worth another page */
#define STEP     0.95
#define PAD      0.9 /* above and below a change, against the capitals of its title */
#define HIGHEST  0.2 /* of the page: words that would be higher are set in smaller letters */

typedef struct {
  LapWrap *when, *title, *what;
  gboolean off; /* it isn't held */
} Change;

typedef struct {
  const LapWeek    *week;
  const LapMeasure *measure;
  int               from; /* 0 = no date */
  double            width, height, margin, unit, inner, top, bottom;
  double            cap;
  GPtrArray        *changes; /* Change */
} Sheet;

static void
change_free (gpointer data)
{
  Change *change = data;

  lap_wrap_free (change->when);
  lap_wrap_free (change->title);
  lap_wrap_free (change->what);
  g_free (change);
}

static void
add_change (Sheet *s, int date, const char *title, const char *what, gboolean off)
{
  g_autofree char *day = lap_date_text (date);
  g_autofree char *when = g_strdup_printf ("%s %s", lap_words_label (&lap_days, lap_date_day (date)), day);
  Change *change = g_new0 (Change, 1);

  change->when = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, when);
  change->title = lap_wrap_new (s->measure, LAP_WEIGHT_HEAVY, title);
  change->what = lap_wrap_new (s->measure, LAP_WEIGHT_STRONG, what);
  change->off = off;
  g_ptr_array_add (s->changes, change);
}

/* What is different */

static void
add_sentence (GString *text, char *sentence)
{
  g_string_append_printf (text, "%s%s", text->len > 0 ? " " : "", sentence);
  g_free (sentence);
}

static void
add_time (GString *text, const LapOccurrence *o)
{
  g_autofree char *now = lap_time_of_day_text (o->start), *was = lap_time_of_day_text (o->c->start);
  g_autofree char *date = lap_date_text (o->was);

  if (o->was != o->date)
    add_sentence (text, g_strdup_printf (_("Moved here from %s at %s."), date, was));
  else if (o->start != o->c->start)
    add_sentence (text, g_strdup_printf (_("At %s, not %s."), now, was));
}

static void
add_place (GString *text, const Sheet *s, const LapOccurrence *o)
{
  LapRoom *room = lap_week_room (s->week, o->room);

  if (room != NULL && g_strcmp0 (o->room, o->c->room) != 0)
    add_sentence (text, g_strdup_printf (_("Room: %s."), lap_room_title (room)));
}

static void
add_coach (GString *text, const Sheet *s, const LapOccurrence *o)
{
  LapCoach *coach = lap_week_coach (s->week, o->coach), *usual = lap_week_coach (s->week, o->c->coach);

  if (coach != NULL && usual != NULL && coach != usual)
    add_sentence (text, g_strdup_printf (_("%s instead of %s."), lap_coach_title (coach), lap_coach_title (usual)));
  else if (coach != NULL && coach != usual)
    add_sentence (text, g_strdup_printf (_("Coach: %s."), lap_coach_title (coach)));
  if (coach != NULL && lap_week_is_away (s->week, coach->id, o->date))
    add_sentence (text, g_strdup_printf (_("%s is away; nobody else is named yet."), lap_coach_title (coach)));
}

/* In sentences; empty where the class is as always. */
static char *
what_text (const Sheet *s, const LapOccurrence *o)
{
  const LapException *e = o->exception;
  g_autofree char *to = e != NULL && e->to != 0 ? lap_date_text (e->to) : NULL;
  g_autofree char *at = e != NULL ? lap_time_of_day_text (e->start >= 0 ? e->start : o->c->start) : NULL;
  GString *text = g_string_new (NULL);

  if (o->state == LAP_CANCELLED) {
    add_sentence (text, g_strdup (_("Cancelled.")));
  } else if (o->state == LAP_MOVED_AWAY) {
    add_sentence (text, g_strdup_printf (_("Moved to %s at %s."), to, at));
  } else {
    add_time (text, o);
    add_place (text, s, o);
    add_coach (text, s, o);
  }
  if (e != NULL && e->note != NULL && *e->note != '\0')
    add_sentence (text, g_strdup (e->note));
  return g_string_free (text, FALSE);
}

static void
read_changes (Sheet *s)
{
  g_autoptr (GArray) all = lap_occurrences_new (s->week, s->from);

  for (int date = s->from; s->from != 0 && date < s->from + LAP_N_DAYS; date++) {
    if (lap_week_is_closed (s->week, date))
      add_change (s, date, _("Closed"), _("No classes on this day."), TRUE);
    for (guint i = 0; i < all->len; i++) {
      const LapOccurrence *o = lap_occurrence_nth (all, i);
      g_autofree char *time = lap_time_of_day_text (o->start), *what = NULL;
      g_autofree char *title = g_strdup_printf ("%s %s", time, lap_class_title (o->c));

      if (o->date != date || o->state == LAP_HOUSE_CLOSED)
        continue;
      what = what_text (s, o);
      if (*what != '\0')
        add_change (s, date, title, what, o->state != LAP_HELD);
    }
  }
}

/* The page. With @page NULL nothing is put, to ask for heights. */

static double
lay_text (const Sheet *s, LapWrap *wrap, LapType type, LapPage *page, double y)
{
  type = lap_wrap_largest (wrap, type, s->inner, s->height * HIGHEST, 0.01);
  if (page != NULL)
    lap_wrap_put (wrap, &type, page, s->margin, y, s->inner, 0);
  return y + lap_wrap_fit (wrap, &type, s->inner).height;
}

static double
lay_change (const Sheet *s, const Change *change, LapPage *page, double y)
{
  LapType when = { s->cap * 0.6, 1.2, LAP_ROLE_INK2, LAP_READ_OTHER };
  LapType title = { s->cap, 1.1, change->off ? LAP_ROLE_INK2 : LAP_ROLE_INK, LAP_READ_NAME };
  LapType what = { s->cap * 0.8, 1.2, change->off ? LAP_ROLE_STOP : LAP_ROLE_WORK, LAP_READ_OTHER };

  if (page != NULL)
    lap_page_begin (page, "P");
  y = lay_text (s, change->when, when, page, y + s->cap * PAD) + s->cap * 0.4;
  y = lay_text (s, change->title, title, page, y) + s->cap * 0.4;
  y = lay_text (s, change->what, what, page, y) + s->cap * PAD;
  if (page != NULL) {
    lap_page_end (page);
    lap_page_rule (page, s->margin, y, s->inner, 0.3 * s->unit, LAP_ROLE_LINE);
  }
  return y;
}

static double
lay_head (const Sheet *s, LapPage *page)
{
  g_autofree char *from = s->from != 0 ? lap_date_text (s->from) : g_strdup ("");
  g_autofree char *until = s->from != 0 ? lap_date_text (s->from + LAP_DAY_SUN) : g_strdup ("");
  g_autofree char *text = g_strdup_printf (_("Changes from %s to %s"), from, until);
  g_autoptr (LapWrap) title = lap_wrap_new (s->measure, LAP_WEIGHT_HEAVY, s->week->title);
  g_autoptr (LapWrap) words = lap_wrap_new (s->measure, LAP_WEIGHT_STRONG, text);
  LapType large = { 9 * s->unit, 1.05, LAP_ROLE_INK, LAP_READ_TITLE };
  LapType line = { 4.5 * s->unit, 1.2, LAP_ROLE_WORK, LAP_READ_OTHER };
  double y = s->margin;

  if (page != NULL)
    lap_page_begin (page, "H1");
  y = lay_text (s, title, large, page, y) + 3 * s->unit;
  y = lay_text (s, words, line, page, y) + 5 * s->unit;
  if (page != NULL) {
    lap_page_end (page);
    lap_page_rule (page, s->margin, y, s->inner, 0.6 * s->unit, LAP_ROLE_INK);
  }
  return y + s->unit;
}

static double
lay_foot (const Sheet *s, LapPage *page, double y)
{
  g_autofree char *safety = g_strdup_printf ("%s %s", lap_safety_first (), lap_safety_more ());
  g_autofree char *text = g_strdup_printf ("%s%s%s", page != NULL && page->label != NULL ? page->label : "",
                                           page != NULL && page->label != NULL ? "\xc2\xa0· " : "", safety);
  g_autoptr (LapWrap) words = lap_wrap_new (s->measure, LAP_WEIGHT_PLAIN, text);
  LapType type = { 2.0 * s->unit, 1.25, LAP_ROLE_INK2, LAP_READ_SAFETY };

  if (page != NULL)
    lap_page_begin (page, "P");
  y = lay_text (s, words, type, page, y + 2 * s->unit);
  if (page != NULL)
    lap_page_end (page);
  return y;
}

static void
choose_size (Sheet *s)
{
  for (s->cap = LARGEST * s->unit; s->cap > LARGEST * LEAST * s->unit; s->cap *= STEP) {
    double y = s->top;

    for (guint i = 0; i < s->changes->len; i++)
      y = lay_change (s, g_ptr_array_index (s->changes, i), NULL, y);
    if (y <= s->bottom)
      return;
  }
}

static void
put_pages (Sheet *s, LapPages *pages)
{
  g_autoptr (LapWrap) none = lap_wrap_new (s->measure, LAP_WEIGHT_HEAVY,
                                           _("No changes this week."));
  LapType type = { LARGEST * s->unit, 1.2, LAP_ROLE_INK, LAP_READ_NAME };
  guint i = 0;

  do {
    LapPage *page = lap_pages_add (pages, s->width, s->height);
    double y = lay_head (s, page);
    guint first = i;

    if (first == 0)
      lap_pages_outline (pages, 0, _("Changes"), s->margin);
    if (s->changes->len == 0)
      lay_text (s, none, type, page, y + 10 * s->unit);
    for (; i < s->changes->len; i++) {
      const Change *change = g_ptr_array_index (s->changes, i);

      if (i > first && lay_change (s, change, NULL, y) > s->bottom)
        break;
      y = lay_change (s, change, page, y);
    }
  } while (i < s->changes->len);
}

LapPages *
lap_changes_sheet_build (const LapWeekSubject *subject, const LapSheetOptions *options, const LapMeasure *measure)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (GPtrArray) changes = g_ptr_array_new_with_free_func (change_free);
  LapPages *pages = lap_pages_new (subject->week->title, NULL, catalogue);
  Sheet s = { .week = subject->week, .measure = measure, .changes = changes };

  s.from = subject->date;
  lap_paper_size (options, &s.width, &s.height);
  s.unit = MIN (s.width, s.height) / 210;
  s.margin = 14 * s.unit;
  s.inner = s.width - 2 * s.margin;
  s.top = lay_head (&s, NULL);
  s.bottom = s.height - s.margin - 2 * lay_foot (&s, NULL, 0); /* the number of the page may take a line more */
  read_changes (&s);
  choose_size (&s);
  put_pages (&s, pages);
  for (guint i = 0; i < lap_pages_n (pages); i++) {
    LapPage *page = lap_pages_nth (pages, i);

    if (lap_pages_n (pages) > 1)
      page->label = g_strdup_printf (_("%u of %u"), i + 1, lap_pages_n (pages));
    lay_foot (&s, page, s.bottom);
  }
  return pages;
}
