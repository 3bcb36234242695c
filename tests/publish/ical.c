/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A week as iCalendar, expanded by the recurrence iterator of libical (icalrecur) with the zone that the file itself
 * brings: the same instants as lap_occurrences_between(), in zones that change their clocks, change them the other
 * way round, by half an hour, for a month, or never.
 */
#include "model/occurrences.h"
#include "publish/formats.h"
#include "weeks.h"

#include <glib/gstdio.h>
#include <libical/ical.h>
#include <string.h>

#define WEEK \
  "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 't', 'timezone': '%s'," \
  "'from': '2027-01-13', 'until': '2028-04-30', 'closed': [{'from': '2027-03-01', 'until': '2027-03-07'}]," \
  "'classes': [{'id': 'late', 'kind': 'k', 'minutes': 60, 'day': 'thu', 'start': '18:00'}," \
  "            {'id': 'early', 'kind': 'k', 'minutes': 30, 'day': 'mon', 'start': '06:30'}," \
  "            {'id': 'one', 'kind': 'k', 'minutes': 30, 'day': 'sun', 'start': '00:30'}," \
  "            {'id': 'two', 'kind': 'k', 'minutes': 30, 'day': 'sun', 'start': '04:00'}," \
  "            {'id': 'nowhere', 'kind': 'k', 'minutes': 30}]," \
  "'except': [{'class': 'early', 'date': '2027-01-18', 'cancelled': true}," \
  "           {'class': 'late', 'date': '2027-01-21', 'to': '2027-03-28', 'start': '01:45'}," \
  "           {'class': 'late', 'date': '2027-01-28', 'to': '2027-03-02'}," \
  "           {'class': 'one', 'date': '2028-04-30', 'to': '2028-05-03'}]}"
#define LAST_DATE "2028-05-03"

static LapWeek *
week_in (const char *timezone)
{
  g_autofree char *text = g_strdup_printf (WEEK, timezone);

  return test_week (text);
}

static icalcomponent *
published (LapWeek *week)
{
  const LapPublication what = { .week = LAP_OBJECT (week), .from = "2027-01-13" };
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *text = NULL;
  g_autofree char *path = g_build_filename (folder, "week.ics", NULL);
  g_autoptr (GError) error = NULL;
  icalcomponent *calendar;

  g_assert_true (lap_publish (lap_formats_find ("calendar"), &what, path, NULL, &error));
  g_assert_no_error (error);
  g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
  calendar = icalparser_parse_string (text);
  g_assert_nonnull (calendar);
  /* Counts what libical itself finds wrong: X-LIC-ERROR properties, and RFC 5546's rules. */
  g_assert_cmpint (icalcomponent_count_errors (calendar), ==, 0);
  g_remove (path);
  g_rmdir (folder);
  return calendar;
}

/* Whether @event or an event that replaces one of its weeks says that it isn't at @time. */
static gboolean
is_taken_out (icalcomponent *calendar, icalcomponent *event, struct icaltimetype time)
{
  for (icalproperty *p = icalcomponent_get_first_property (event, ICAL_EXDATE_PROPERTY); p != NULL;
       p = icalcomponent_get_next_property (event, ICAL_EXDATE_PROPERTY))
    if (icaltime_compare (icalproperty_get_exdate (p), time) == 0)
      return TRUE;
  for (icalcompiter i = icalcomponent_begin_component (calendar, ICAL_VEVENT_COMPONENT); icalcompiter_deref (&i) != NULL;
       icalcompiter_next (&i)) {
    icalcomponent *other = icalcompiter_deref (&i);
    icalproperty *replaces = icalcomponent_get_first_property (other, ICAL_RECURRENCEID_PROPERTY);

    if (replaces != NULL && g_str_equal (icalcomponent_get_uid (other), icalcomponent_get_uid (event)) &&
        icaltime_compare (icalproperty_get_recurrenceid (replaces), time) == 0)
      return TRUE;
  }
  return FALSE;
}

static void
add_found (GPtrArray *found, const char *id, gint64 instant, int minutes)
{
  g_ptr_array_add (found, g_strdup_printf ("%" G_GINT64_FORMAT " %s %d", instant, id, minutes));
}

static void
expand_event (GPtrArray *found, icalcomponent *calendar, icalcomponent *event, icaltimezone *zone)
{
  icalproperty *rule = icalcomponent_get_first_property (event, ICAL_RRULE_PROPERTY);
  icalproperty *begin = icalcomponent_get_first_property (event, ICAL_DTSTART_PROPERTY);
  struct icaltimetype start = icalproperty_get_dtstart (begin), time;
  g_auto (GStrv) uid = g_strsplit_set (icalcomponent_get_uid (event), ".@", -1);
  const int minutes = icaldurationtype_as_int (icalcomponent_get_duration (event)) / 60;
  icalrecur_iterator *each;

  start.zone = zone;
  if (rule == NULL) {
    add_found (found, uid[1], icaltime_as_timet_with_zone (start, zone), minutes);
    return;
  }
  each = icalrecur_iterator_new (icalproperty_get_rrule (rule), start);
  for (time = icalrecur_iterator_next (each); !icaltime_is_null_time (time); time = icalrecur_iterator_next (each)) {
    struct icaltimetype shown = time;

    shown.zone = NULL;
    if (!is_taken_out (calendar, event, shown))
      add_found (found, uid[1], icaltime_as_timet_with_zone (time, zone), minutes);
  }
  icalrecur_iterator_free (each);
}

static int
compare (gconstpointer a, gconstpointer b)
{
  return strcmp (*(const char *const *) a, *(const char *const *) b);
}

static char *
sorted (GPtrArray *lines)
{
  g_ptr_array_sort (lines, compare);
  g_ptr_array_add (lines, NULL);
  return g_strjoinv ("\n", (char **) lines->pdata);
}

static char *
expanded (LapWeek *week)
{
  g_autoptr (GPtrArray) found = g_ptr_array_new_with_free_func (g_free);
  icalcomponent *calendar = published (week);
  icalcomponent *vtimezone = icalcomponent_get_first_component (calendar, ICAL_VTIMEZONE_COMPONENT);
  icaltimezone *zone = icaltimezone_new ();

  g_assert_true (icaltimezone_set_component (zone, icalcomponent_new_clone (vtimezone)));
  for (icalcompiter i = icalcomponent_begin_component (calendar, ICAL_VEVENT_COMPONENT); icalcompiter_deref (&i) != NULL;
       icalcompiter_next (&i))
    expand_event (found, calendar, icalcompiter_deref (&i), zone);
  icaltimezone_free (zone, TRUE);
  icalcomponent_free (calendar);
  return sorted (found);
}

static char *
expected (LapWeek *week)
{
  g_autoptr (GPtrArray) found = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GTimeZone) zone = g_time_zone_new_identifier (week->timezone);
  g_autoptr (GArray) all = lap_occurrences_between (week, week->from, lap_date_parse (LAST_DATE));

  for (guint i = 0; i < all->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (all, i);

    if (o->state == LAP_HELD)
      add_found (found, o->c->id, lap_instant (zone, o->date, o->start), o->c->minutes);
  }
  return sorted (found);
}

static void
test_zone (gconstpointer data)
{
  g_autoptr (LapWeek) week = week_in (data);
  g_autofree char *found = expanded (week), *wanted = expected (week);

  g_assert_cmpstr (found, ==, wanted);
}

int
main (int argc, char **argv)
{
  static const char *const zones[] = { "Europe/Lisbon", "America/New_York", "Australia/Lord_Howe",
                                       "Africa/Casablanca", "Asia/Kolkata", "UTC" };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (zones); i++) {
    g_autofree char *path = g_strconcat ("/publish/ical/", zones[i], NULL);

    g_test_add_data_func (path, zones[i], test_zone);
  }
  return g_test_run ();
}
