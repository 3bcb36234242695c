/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A week: what it may hold, what is refused and how that is said, what it answers, and that the history works on it.
 */
#include "base/error.h"
#include "edit/history.h"
#include "store/documents.h"

#include <string.h>

#define HEAD "'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 't', 'timezone': 'Europe/Lisbon'"
#define ROOMS "'rooms': [{'id': 'loft'}], 'coaches': [{'id': 'mira'}]"

static LapWeek *
try_text (const char *text, GError **error)
{
  g_autofree char *json = g_strdelimit (g_strdup (text), "'", '"');
  g_autoptr (GBytes) bytes = g_bytes_new (json, strlen (json));

  return lap_week_from_bytes (bytes, error);
}

static LapWeek *
read_text (const char *text)
{
  g_autoptr (GError) error = NULL;
  LapWeek *week = try_text (text, &error);

  g_assert_no_error (error);
  return week;
}

/* The file may put the members on lines; the error names line and place, and what was expected. */
static const struct { const char *text, *error; } refused[] = {
  { "{}", "line 1: a week needs the member \"format\"" },
  { "{" HEAD ", 'from': '2027-02-30'}", "line 1, /from: expected a date, as \"2027-01-11\"" },
  { "{" HEAD ",\n'from': '2027-01-11', 'until': '2027-01-10'}",
    "line 2, /until: expected a date at most 5 years from \"from\" on" },
  { "{" HEAD ",\n'from': '2027-01-11', 'until': '2032-01-12'}",
    "line 2, /until: expected a date at most 5 years from \"from\" on" },
  { "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 't', 'timezone': 'Sea/Bottom'}",
    "line 1, /timezone: expected a timezone, as \"Europe/Lisbon\"" },
  { "{" HEAD ", 'open': {'mon': ['09:00']}}",
    "line 1, /open/mon: expected two times, as [\"06:30\", \"21:30\"]" },
  { "{" HEAD ", 'open': {'mon': ['09:00', '24:01']}}",
    "line 1, /open/mon/1: expected a time from \"00:00\" to \"24:00\"" },
  { "{" HEAD ", 'open': {'mon': ['24:00', '24:00']}}",
    "line 1, /open/mon/0: expected a time from \"00:00\" to \"23:59\"" },
  { "{" HEAD ", 'open': {'mon': ['21:00', '06:00']}}",
    "line 1, /open/mon: expected a time and a later one of the same day" },
  { "{" HEAD ", 'closed': ['2027-01-11', {'from': '2027-01-12'}]}",
    "line 1, /closed/1: a span of closed dates needs the member \"until\"" },
  { "{" HEAD ", 'closed': [{'from': '2027-01-12', 'until': '2027-01-11'}]}",
    "line 1, /closed/0/until: expected a date that isn't before \"from\"" },
  { "{" HEAD ", 'rooms': [{'id': 'a'}, {'id': 'a'}]}", "line 1, /rooms/1/id: a room \"a\" is there twice" },
  { "{" HEAD ", 'rooms': [{'id': 'a', 'area': -1}]}", "line 1, /rooms/0/area: expected a number from 0 to 1e+06" },
  { "{" HEAD ", 'rooms': [{'id': 'a', 'turnaround': 1441}]}",
    "line 1, /rooms/0/turnaround: expected a whole number from 0 to 1440" },
  { "{" HEAD ", 'coaches': [{'id': ''}]}", "line 1, /coaches/0/id: expected a text that isn't empty" },
  { "{" HEAD ", 'coaches': [{'id': 'a', 'free': {'tue': ['09:00', '10:00']}}]}",
    "line 1, /coaches/0/free/tue/0: expected two times, as [\"06:30\", \"21:30\"]" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 1441}]}",
    "line 1, /classes/0/minutes: expected a whole number from 1 to 1440" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 45, 'day': 'mon'}]}",
    "line 1, /classes/0: a class with a \"day\" needs a \"start\"" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 61, 'day': 'mon', 'start': '23:00'}]}",
    "line 1, /classes/0/start: expected a class of 61 minutes to end by 24:00" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 1, 'room': 'cellar'}]}",
    "line 1, /classes/0/room: there is no room \"cellar\"" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 1, 'coach': 'nobody'}]}",
    "line 1, /classes/0/coach: there is no coach \"nobody\"" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 1, 'effort': 'brutal'}]}",
    "line 1, /classes/0/effort: expected an effort, one of: easy, moderate, hard" },
  { "{" HEAD ", 'except': [{'class': 'a', 'date': '2027-01-11', 'cancelled': true}]}",
    "line 1, /except/0/class: there is no class \"a\"" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 1}],"
    "'except': [{'class': 'a', 'date': '2027-01-11', 'cancelled': true, 'to': '2027-01-12'}]}",
    "line 1, /except/0: a class that is cancelled can't also be moved or given to somebody" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 1}],"
    "'except': [{'class': 'a', 'date': '2027-01-11'}]}",
    "line 1, /except/0: expected \"cancelled\", \"to\", \"start\", \"room\", \"coach\" or \"note\"" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 1}],"
    "'except': [{'class': 'a', 'date': '2027-01-11', 'note': 'x'},\n{'class': 'a', 'date': '2027-01-11', 'note': 'y'}]}",
    "line 2, /except/1/date: an exception of this class is there twice on that date" },
  { "{" HEAD ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 61}],"
    "'except': [{'class': 'a', 'date': '2027-01-11', 'start': '23:00'}]}",
    "line 1, /except/0/start: expected a class of 61 minutes to end by 24:00" },
  { "{" HEAD ", 'away': [{'coach': 'mira', 'from': '2027-01-11', 'until': '2027-01-12'}]}",
    "line 1, /away/0/coach: there is no coach \"mira\"" },
  { "{" HEAD ", " ROOMS ", 'away': [{'coach': 'mira', 'from': '2027-01-11', 'until': '2027-01-10'}]}",
    "line 1, /away/0/until: expected a date that isn't before \"from\"" },
};

static void
test_refused (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (refused); i++) {
    g_autoptr (GError) error = NULL;
    g_autoptr (LapWeek) week = try_text (refused[i].text, &error);

    g_assert_null (week);
    g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
    g_assert_cmpstr (error->message, ==, refused[i].error);
  }
}

/* As many as there may be are read, one more isn't. */
static void
test_limits (void)
{
  static const struct { const char *member, *rest; guint most; } lists[] = {
    { "rooms", "", 100 }, { "coaches", "", 500 }, { "classes", ", 'kind': 'k', 'minutes': 30", 2000 },
  };

  for (guint l = 0; l < G_N_ELEMENTS (lists); l++)
    for (guint over = 0; over < 2; over++) {
      g_autoptr (GString) text = g_string_new ("{" HEAD ", ");
      g_autoptr (GError) error = NULL;
      g_autoptr (LapWeek) week = NULL;

      g_string_append_printf (text, "'%s': [", lists[l].member);
      for (guint i = 0; i < lists[l].most + over; i++)
        g_string_append_printf (text, "%s{'id': 'x%u'%s}", i > 0 ? "," : "", i, lists[l].rest);
      g_string_append (text, "]}");
      week = try_text (text->str, &error);
      g_assert_true ((week == NULL) == (over == 1));
      if (over)
        g_assert_nonnull (strstr (error->message, "expected at most"));
    }
}

static void
test_format_tells (void)
{
  static const char *const texts[] = {
    "{\"format\": \"lapwing-song\"}", "{\"format\": [\"lapwing-week\"]}", "{\"format\": 7}", "[]",
  };
  g_autoptr (LapWeek) week = read_text ("{" HEAD "}");
  g_autoptr (GBytes) bytes = lap_week_to_bytes (week);
  g_autoptr (LapObject) document = lap_document_from_bytes (bytes, NULL);

  g_assert_true (LAP_IS_WEEK (document));
  for (guint i = 0; i < G_N_ELEMENTS (texts); i++) {
    g_autoptr (GBytes) bad = g_bytes_new_static (texts[i], strlen (texts[i]));
    g_autoptr (GError) error = NULL;

    g_assert_null (lap_document_from_bytes (bad, &error));
    g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  }
}

/* Design §4.4: what isn't said is no limit. */
static void
test_defaults (void)
{
  g_autoptr (LapWeek) week = read_text ("{" HEAD ", " ROOMS ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 45}]}");
  LapClass *c = lap_week_class (week, "a");
  LapSpan span;

  g_assert_true (lap_week_open (week, LAP_DAY_SUN, &span));
  g_assert_cmpint (span.end, ==, 1440);
  g_assert_true (lap_coach_is_free (lap_week_coach (week, "mira"), LAP_DAY_SUN, 0, 1440));
  g_assert_true (lap_coach_can (lap_week_coach (week, "mira"), "k"));
  g_assert_false (lap_class_is_placed (c));
  g_assert_true (c->takes_part);
  g_assert_cmpint (c->strain, ==, -1);
  g_assert_cmpstr (lap_class_title (c), ==, "k");
  g_assert_cmpstr (lap_room_title (lap_week_room (week, "loft")), ==, "loft");
  g_assert_null (lap_week_room (week, NULL));
  g_assert_null (lap_week_room (week, "cellar"));
}

/* Where any is said, a day that isn't named is closed, and not free. */
static void
test_hours (void)
{
  g_autoptr (LapWeek) week = read_text (
    "{" HEAD ", 'open': {'mon': ['06:30', '21:30']}, 'coaches': [{'id': 'a', 'free': {'mon': "
    "[['09:00', '12:00'], ['06:00', '08:00'], ['08:00', '09:30']], 'tue': []}, 'can': ['circuit']}]}");
  LapCoach *coach = lap_week_coach (week, "a");
  LapSpan span;

  g_assert_true (lap_week_open (week, LAP_DAY_MON, &span));
  g_assert_cmpint (span.start, ==, 390);
  g_assert_cmpint (span.end, ==, 1290);
  g_assert_false (lap_week_open (week, LAP_DAY_TUE, &span));
  g_assert_true (lap_coach_is_free (coach, LAP_DAY_MON, 360, 720));
  g_assert_false (lap_coach_is_free (coach, LAP_DAY_MON, 359, 720));
  g_assert_false (lap_coach_is_free (coach, LAP_DAY_MON, 700, 721));
  g_assert_false (lap_coach_is_free (coach, LAP_DAY_TUE, 600, 601));
  g_assert_false (lap_coach_is_free (coach, LAP_DAY_WED, 600, 601));
  g_assert_true (lap_coach_can (coach, "circuit"));
  g_assert_false (lap_coach_can (coach, "stretch"));
  g_assert_true (lap_hours_touch (coach->free_hours[LAP_DAY_MON], 719, 800));
  g_assert_false (lap_hours_touch (coach->free_hours[LAP_DAY_MON], 720, 800));
}

static void
test_dates (void)
{
  g_autoptr (LapWeek) week = read_text (
    "{" HEAD ", " ROOMS ", 'closed': ['2027-02-16', {'from': '2027-03-01', 'until': '2027-03-03'}],"
    "'away': [{'coach': 'mira', 'from': '2027-02-01', 'until': '2027-02-07'}]}");
  int monday = lap_date_parse ("2027-01-11");
  g_autofree char *text = lap_date_text (monday);

  g_assert_cmpstr (text, ==, "2027-01-11");
  g_assert_cmpint (lap_date_day (monday), ==, LAP_DAY_MON);
  g_assert_cmpint (lap_date_day (monday + 6), ==, LAP_DAY_SUN);
  g_assert_cmpint (lap_date_monday (monday + 6), ==, monday);
  g_assert_cmpint (lap_date_parse ("2028-02-29") - lap_date_parse ("2028-02-28"), ==, 1);
  g_assert_cmpint (lap_date_parse ("2027-02-29"), ==, 0);
  g_assert_cmpint (lap_date_parse ("2027-1-11"), ==, 0);
  g_assert_cmpint (lap_date_parse ("2027-01-11T"), ==, 0);
  g_assert_cmpint (lap_date_parse ("0000-01-11"), ==, 0);
  g_assert_cmpint (lap_time_parse ("24:00", 1440), ==, 1440);
  g_assert_cmpint (lap_time_parse ("24:00", 1439), ==, -1);
  g_assert_cmpint (lap_time_parse ("9:00", 1439), ==, -1);
  g_assert_cmpint (lap_time_parse ("09:60", 1439), ==, -1);
  g_assert_true (lap_week_is_closed (week, lap_date_parse ("2027-02-16")));
  g_assert_false (lap_week_is_closed (week, lap_date_parse ("2027-02-17")));
  g_assert_true (lap_week_is_closed (week, lap_date_parse ("2027-03-03")));
  g_assert_false (lap_week_is_closed (week, lap_date_parse ("2027-03-04")));
  g_assert_true (lap_week_is_away (week, "mira", lap_date_parse ("2027-02-07")));
  g_assert_false (lap_week_is_away (week, "mira", lap_date_parse ("2027-02-08")));
}

/* The same edits and history as a session's, taken back to the byte. */
static void
test_history (void)
{
  g_autoptr (LapWeek) week = read_text ("{" HEAD ", " ROOMS ", 'classes': [{'id': 'a', 'kind': 'k', 'minutes': 45}]}");
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autoptr (GBytes) before = lap_week_to_bytes (week);
  g_autoptr (GBytes) after = NULL;
  g_autoptr (GBytes) now = NULL;
  g_autoptr (LapClass) added = lap_class_new ("stretch", 30);
  LapEdits *edits = lap_edits_new ("Place k");
  LapClass *c = lap_week_class (week, "a");

  lap_edits_set_int (edits, c, "day", LAP_DAY_THU);
  lap_edits_set_int (edits, c, "start", 18 * 60);
  lap_edits_set_text (edits, c, "room", "loft");
  lap_edits_insert (edits, week->classes, 1, added);
  lap_history_apply (history, edits);
  g_assert_true (lap_class_is_placed (c));
  g_assert_cmpuint (lap_list_n (week->classes), ==, 2);
  after = lap_week_to_bytes (week);
  g_assert_nonnull (strstr (g_bytes_get_data (after, NULL), "\"start\": \"18:00\""));
  g_assert_true (lap_history_undo (history));
  now = lap_week_to_bytes (week);
  g_assert_true (g_bytes_equal (before, now));
  g_assert_true (lap_history_redo (history));
  g_clear_pointer (&now, g_bytes_unref);
  now = lap_week_to_bytes (week);
  g_assert_true (g_bytes_equal (after, now));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/model-week/refused", test_refused);
  g_test_add_func ("/model-week/limits", test_limits);
  g_test_add_func ("/model-week/format-tells", test_format_tells);
  g_test_add_func ("/model-week/defaults", test_defaults);
  g_test_add_func ("/model-week/hours", test_hours);
  g_test_add_func ("/model-week/dates", test_dates);
  g_test_add_func ("/model-week/history", test_history);
  return g_test_run ();
}
