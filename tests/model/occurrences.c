/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which classes are when. Outside check of the clock: GDateTime, and RFC 5545 §3.3.5 for the hour that isn't there and
 * the one that is there twice (Lisbon changes on 2027-03-28 and 2027-10-31 at 01:00 UTC).
 */
#include "model/occurrences.h"
#include "weeks.h"

#include <stdio.h>

#define WEEK(more) \
  "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 't', 'timezone': 'Europe/Lisbon'," \
  "'from': '2027-01-13', 'until': '2027-03-31', 'rooms': [{'id': 'loft'}, {'id': 'yard'}]," \
  "'coaches': [{'id': 'mira'}, {'id': 'teo'}]," \
  "'classes': [{'id': 'late', 'kind': 'k', 'minutes': 60, 'day': 'thu', 'start': '18:00', 'room': 'loft'," \
  "             'coach': 'mira'}," \
  "            {'id': 'early', 'kind': 'k', 'minutes': 30, 'day': 'mon', 'start': '06:30', 'room': 'loft'}," \
  "            {'id': 'nowhere', 'kind': 'k', 'minutes': 30}]" more "}"

/* One line each: "2027-01-14 18:00 late loft mira 0", the state last. */
static void
assert_found (LapWeek *week, const char *date, const char *wanted)
{
  g_autoptr (GArray) found = lap_occurrences_new (week, date != NULL ? lap_date_monday (lap_date_parse (date)) : 0);
  g_autoptr (GString) said = g_string_new (NULL);

  for (guint i = 0; i < found->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (found, i);
    g_autofree char *day = o->date != 0 ? lap_date_text (o->date) : g_strdup (lap_words_id (&lap_days, o->day));
    g_autofree char *time = lap_time_text (o->start);

    g_string_append_printf (said, "%s%s %s %s %s %s %d", i > 0 ? "\n" : "", day, time, o->c->id,
                            o->room != NULL ? o->room : "-", o->coach != NULL ? o->coach : "-", o->state);
    g_assert_cmpint (o->end - o->begin, ==, o->c->minutes);
  }
  g_assert_cmpstr (said->str, ==, wanted);
}

static void
test_always (void)
{
  g_autoptr (LapWeek) week = test_week (WEEK (", 'closed': ['2027-01-18']"));

  assert_found (week, NULL, "mon 06:30 early loft - 0\nthu 18:00 late loft mira 0");
}

static void
test_season (void)
{
  g_autoptr (LapWeek) week = test_week (WEEK (""));

  assert_found (week, "2027-01-10", "");
  /* From the Wednesday on. */
  assert_found (week, "2027-01-11", "2027-01-14 18:00 late loft mira 0");
  assert_found (week, "2027-01-24", "2027-01-18 06:30 early loft - 0\n2027-01-21 18:00 late loft mira 0");
  assert_found (week, "2027-03-31", "2027-03-29 06:30 early loft - 0");
}

static void
test_exceptions (void)
{
  g_autoptr (LapWeek) week = test_week (WEEK (
    ", 'closed': [{'from': '2027-02-01', 'until': '2027-02-03'}],"
    "'except': [{'class': 'early', 'date': '2027-01-18', 'cancelled': true},"
    "           {'class': 'late', 'date': '2027-01-21', 'to': '2027-01-22', 'start': '07:00', 'coach': 'teo'},"
    "           {'class': 'late', 'date': '2027-01-28', 'to': '2027-02-05', 'room': 'yard'},"
    "           {'class': 'late', 'date': '2027-02-02', 'cancelled': true},"
    "           {'class': 'early', 'date': '2027-02-08', 'to': '2027-02-03'}]"));

  assert_found (week, "2027-01-18", "2027-01-18 06:30 early loft - 1\n2027-01-22 07:00 late loft teo 0");
  assert_found (week, "2027-01-25", "2027-01-25 06:30 early loft - 0\n2027-01-28 18:00 late loft mira 3");
  /* Moved in from the weeks before and after; closed, and moved to where it is closed. */
  assert_found (week, "2027-02-01", "2027-02-01 06:30 early loft - 2\n2027-02-03 06:30 early loft - 2\n"
                                    "2027-02-04 18:00 late loft mira 0\n2027-02-05 18:00 late yard mira 0");
}

static void
test_between (void)
{
  g_autoptr (LapWeek) week = test_week (WEEK (""));
  g_autoptr (GArray) found = lap_occurrences_between (week, lap_date_parse ("2027-01-21"), lap_date_parse ("2027-01-28"));

  g_assert_cmpuint (found->len, ==, 3);
  g_assert_cmpint (lap_occurrence_nth (found, 0)->begin, ==, 18 * 60);
  g_assert_cmpint (lap_occurrence_nth (found, 2)->begin, ==, 7 * LAP_DAY_MINUTES + 18 * 60);
}

/* An hour less passes before the Monday after the clocks go forward. */
static void
test_clocks_change (void)
{
  g_autoptr (LapWeek) week = test_week (WEEK (""));
  int sunday = lap_date_parse ("2027-03-28");
  g_autoptr (GArray) found = lap_occurrences_between (week, sunday, sunday + 1);

  g_assert_cmpuint (found->len, ==, 1);
  g_assert_cmpint (lap_occurrence_nth (found, 0)->start, ==, 390);
  g_assert_cmpint (lap_occurrence_nth (found, 0)->begin, ==, LAP_DAY_MINUTES + 390 - 60);
}

static void
test_instants (void)
{
  static const struct { const char *date; int minutes; const char *utc; } rows[] = {
    { "2027-01-11", 0, "2027-01-11T00:00:00Z" },
    { "2027-07-11", 390, "2027-07-11T05:30:00Z" },
    { "2027-03-28", 59, "2027-03-28T00:59:00Z" },
    { "2027-03-28", 90, "2027-03-28T01:30:00Z" }, /* shown as 02:30 */
    { "2027-03-28", 120, "2027-03-28T01:00:00Z" },
    { "2027-10-31", 90, "2027-10-31T00:30:00Z" }, /* the first of two */
    { "2027-10-31", 120, "2027-10-31T02:00:00Z" },
    { "1970-01-01", 0, "1969-12-31T23:00:00Z" }, /* Lisbon kept an hour ahead until 1976 */
  };
  g_autoptr (GTimeZone) zone = g_time_zone_new_identifier ("Europe/Lisbon");

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (GDateTime) utc = g_date_time_new_from_iso8601 (rows[i].utc, NULL);

    g_assert_cmpint (lap_instant (zone, lap_date_parse (rows[i].date), rows[i].minutes), ==,
                     g_date_time_to_unix (utc));
  }
}

/* GDateTime says the same of every hour that is there once. */
static void
test_instants_of_others (void)
{
  static const char *const zones[] = { "Europe/Lisbon", "America/St_Johns", "Asia/Kathmandu", "Australia/Lord_Howe" };

  for (guint z = 0; z < G_N_ELEMENTS (zones); z++) {
    g_autoptr (GTimeZone) zone = g_time_zone_new_identifier (zones[z]);

    for (int date = lap_date_parse ("2027-01-01"); date < lap_date_parse ("2028-01-01"); date += 1) {
      g_autofree char *text = lap_date_text (date);
      int year, month, day;
      g_autoptr (GDateTime) noon = NULL;

      g_assert_cmpint (sscanf (text, "%d-%d-%d", &year, &month, &day), ==, 3);
      noon = g_date_time_new (zone, year, month, day, 12, 0, 0);
      g_assert_cmpint (lap_instant (zone, date, 12 * 60), ==, g_date_time_to_unix (noon));
    }
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/occurrences/always", test_always);
  g_test_add_func ("/occurrences/season", test_season);
  g_test_add_func ("/occurrences/exceptions", test_exceptions);
  g_test_add_func ("/occurrences/between", test_between);
  g_test_add_func ("/occurrences/clocks-change", test_clocks_change);
  g_test_add_func ("/occurrences/instants", test_instants);
  g_test_add_func ("/occurrences/instants-of-others", test_instants_of_others);
  return g_test_run ();
}
