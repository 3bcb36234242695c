/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/calendar.h"

#include "base/error.h"
#include "model/occurrences.h"
#include "place/safety.h"
#include "publish/chapters.h"
#include "publish/ical.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* How long a week without an end goes on, and how far beyond its end a class may have been moved. */
#define LONGEST_DAYS (5 * 366)
#define MOVED_DAYS 366

static gboolean
refuse (GError **error, const char *why)
{
  g_set_error_literal (error, LAP_ERROR, LAP_ERROR_USAGE, why);
  return FALSE;
}

/* What a session and a class both end with. */
static void
add_description (icalcomponent *event, GString *text)
{
  g_string_append_printf (text, "%s%s %s", text->len > 0 ? "\n" : "", lap_safety_first (), lap_safety_more ());
  lap_ical_add_text (event, ICAL_DESCRIPTION_PROPERTY, text->str);
}

static void
add_line (GString *text, const char *format, const char *words)
{
  if (words == NULL || *words == '\0')
    return;
  g_string_append_printf (text, format, words);
  g_string_append_c (text, '\n');
}

/* "2027-01-11T18:30" and perhaps ":00", on the clock that hangs on the wall. FALSE where it isn't. */
static gboolean
parse_at (const char *at, int *date, int *minutes, int *seconds)
{
  g_auto (GStrv) halves = g_strsplit_set (at, "Tt ", 2);
  g_autofree char *time = g_strv_length (halves) == 2 ? g_strndup (halves[1], strlen ("18:30")) : NULL;
  const char *rest;

  if (time == NULL)
    return FALSE;
  *date = lap_date_parse (halves[0]);
  *minutes = lap_time_parse (time, LAP_DAY_MINUTES - 1);
  rest = halves[1] + strlen (time);
  *seconds = 0;
  if (rest[0] == ':' && g_ascii_isdigit (rest[1]) && g_ascii_isdigit (rest[2]) && rest[3] == '\0')
    *seconds = (rest[1] - '0') * 10 + rest[2] - '0';
  else if (rest[0] != '\0')
    return FALSE;
  return *date != 0 && *minutes >= 0 && *seconds < 60;
}

static gboolean
is_known (const char *timezone)
{
  g_autoptr (GTimeZone) zone = g_time_zone_new_identifier (timezone);

  return zone != NULL;
}

static void
describe_session (icalcomponent *event, const LapTimeline *timeline)
{
  g_autoptr (GArray) chapters = lap_chapters_of (timeline);
  g_autoptr (GString) text = g_string_new (NULL);

  add_line (text, _("with %s"), timeline->session->coach);
  for (guint i = 0; i < chapters->len; i++) {
    const LapChapter *chapter = &g_array_index (chapters, LapChapter, i);
    g_autofree char *clock = lap_clock_text (chapter->start);

    g_string_append_printf (text, "%s %s\n", clock, chapter->title);
  }
  add_description (event, text);
}

static LapIcal *
session_calendar (const LapPublication *what, GError **error)
{
  const LapSession *session = what->timeline->session;
  g_autofree char *uid = g_strconcat (session->id, "@lapwing", NULL);
  LapIcal *ical;
  icalcomponent *event;
  int date, minutes, seconds;

  if (what->at == NULL || what->timezone == NULL) {
    refuse (error, _("calendar needs --at and --timezone: when the session is held"));
  } else if (!parse_at (what->at, &date, &minutes, &seconds)) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("--at %s: expected a date and a time, as 2027-01-11T18:30"),
                 what->at);
  } else if (!is_known (what->timezone)) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("--timezone %s: expected a timezone, as Europe/Lisbon"),
                 what->timezone);
  } else {
    ical = lap_ical_new (session->title, what->timezone, date, date, error);
    if (ical == NULL)
      return NULL;
    event = lap_ical_add_event (ical, uid, date, what->timeline->length);
    lap_ical_add_start (ical, event, lap_instant (ical->zone, date, minutes) + seconds);
    lap_ical_add_text (event, ICAL_SUMMARY_PROPERTY, session->title);
    describe_session (event, what->timeline);
    lap_ical_add_link (event, session->link);
    return ical;
  }
  return NULL;
}

typedef struct {
  const LapWeek *week;
  LapIcal       *ical;
  GArray        *all; /* LapOccurrence */
  int            from;
} Series;

/* What @c is, in @room with @coach. */
static icalcomponent *
add_class (Series *s, const LapClass *c, const char *uid, const char *room, const char *coach, const char *note)
{
  icalcomponent *event = lap_ical_add_event (s->ical, uid, s->from, c->minutes * 60);
  const LapRoom *its_room = lap_week_room (s->week, room);
  const LapCoach *its_coach = lap_week_coach (s->week, coach);
  g_autoptr (GString) text = g_string_new (NULL);

  lap_ical_add_text (event, ICAL_SUMMARY_PROPERTY, lap_class_title (c));
  if (its_room != NULL)
    lap_ical_add_text (event, ICAL_LOCATION_PROPERTY, lap_room_title (its_room));
  if (its_coach != NULL)
    add_line (text, _("with %s"), lap_coach_title (its_coach));
  add_line (text, "%s", c->for_whom);
  add_line (text, "%s", note);
  add_description (event, text);
  return event;
}

/* One that takes place, but not as in other weeks. It replaces that of its week; where the series begins later, it
 * stands alone. */
static void
add_different (Series *s, const LapOccurrence *o, const char *uid)
{
  g_autofree char *was = lap_date_text (o->was), *own = g_strdup_printf ("%s.%s", was, uid);
  const gboolean alone = o->was < s->from;
  icalcomponent *event = add_class (s, o->c, alone ? own : uid, o->room, o->coach, o->exception->note);

  if (!alone)
    lap_ical_add_clock (s->ical, event, ICAL_RECURRENCEID_PROPERTY, o->was, o->c->start);
  lap_ical_add_start (s->ical, event, lap_instant (s->ical->zone, o->date, o->start));
}

/* The series of the class that the occurrences from @i to before @end are of, where any of it takes place. */
static void
add_series (Series *s, guint i, guint end)
{
  const LapClass *c = lap_occurrence_nth (s->all, i)->c;
  g_autofree char *uid = g_strdup_printf ("%s.%s@lapwing", s->week->id, c->id);
  const int last = lap_occurrence_nth (s->all, end - 1)->was;
  icalcomponent *event = NULL;
  gboolean held = FALSE;
  guint k;

  for (; i < end && lap_occurrence_nth (s->all, i)->was < s->from; i++)
    if (lap_occurrence_nth (s->all, i)->state == LAP_HELD)
      add_different (s, lap_occurrence_nth (s->all, i), uid);
  for (k = i; k < end; k++)
    held = held || lap_occurrence_nth (s->all, k)->state == LAP_HELD;
  if (!held)
    return;
  event = add_class (s, c, uid, c->room, c->coach, NULL);
  lap_ical_add_clock (s->ical, event, ICAL_DTSTART_PROPERTY, lap_occurrence_nth (s->all, i)->was, c->start);
  lap_ical_add_weekly (event, lap_instant (s->ical->zone, last, c->start));
  for (k = i; k < end; k++) {
    const LapOccurrence *o = lap_occurrence_nth (s->all, k);

    if (o->state != LAP_HELD)
      lap_ical_add_clock (s->ical, event, ICAL_EXDATE_PROPERTY, o->was, c->start);
    else if (o->exception != NULL)
      add_different (s, o, uid);
  }
}

/* Each class by itself, in the order of the weeks that its occurrences are of. */
static int
compare (gconstpointer a, gconstpointer b)
{
  const LapOccurrence *oa = a, *ob = b;

  return oa->index != ob->index ? (oa->index < ob->index ? -1 : 1) : oa->was - ob->was;
}

/* The first date and the last on which anything may be, those that a class was moved to included. */
static gboolean
find_dates (const LapPublication *what, int *from, int *until, GError **error)
{
  const LapWeek *week = LAP_WEEK (what->week);
  int most;

  if (what->at != NULL || what->timezone != NULL)
    return refuse (error, _("a week says itself when and where: --at and --timezone don’t change it"));
  if (what->from == NULL && week->from == 0)
    return refuse (error, _("calendar needs --from: the first day"));
  *from = what->from != NULL ? lap_date_parse (what->from) : week->from;
  if (*from == 0) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("%s: expected a date, as 2027-01-11"), what->from);
    return FALSE;
  }
  *from = MAX (*from, week->from);
  *until = MIN (week->until != 0 ? week->until : G_MAXINT, *from + LONGEST_DAYS);
  most = *until + MOVED_DAYS;
  for (guint i = 0; week->until != 0 && i < lap_list_n (week->exceptions); i++) {
    const LapException *e = lap_list_nth (week->exceptions, i);

    *until = e->to <= most ? MAX (*until, e->to) : *until;
  }
  if (*from > *until)
    return refuse (error, _("--from is later than the last day of the week"));
  return TRUE;
}

static LapIcal *
week_calendar (const LapPublication *what, GError **error)
{
  const LapWeek *week = LAP_WEEK (what->week);
  g_autoptr (GArray) all = NULL;
  Series series = { .week = week };
  int until;

  if (!find_dates (what, &series.from, &until, error))
    return NULL;
  series.ical = lap_ical_new (week->title, week->timezone, series.from, until, error);
  if (series.ical == NULL)
    return NULL;
  all = lap_occurrences_between (week, series.from, until);
  series.all = all;
  g_array_sort (all, compare);
  for (guint i = 0, end; i < all->len; i = end) {
    for (end = i + 1; end < all->len && lap_occurrence_nth (all, end)->index == lap_occurrence_nth (all, i)->index;)
      end++;
    add_series (&series, i, end);
  }
  return series.ical;
}

gboolean
lap_calendar_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  g_autoptr (LapIcal) ical = (what->week != NULL ? week_calendar : session_calendar) (what, error);

  return ical != NULL && lap_output_write_text (output, lap_ical_text (ical), error);
}
