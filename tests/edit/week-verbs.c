/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people do to a week: applied it says what was wanted and can still be read, taken back it is as before.
 */
#include "edit/week-verbs.h"
#include "store/documents.h"

static LapWeek *
everything (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_TEST_DATA"), "sessions", "everything.lapweek", NULL);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = NULL;
  LapWeek *week;
  char *text;
  gsize length;

  g_file_get_contents (path, &text, &length, &error);
  g_assert_no_error (error);
  bytes = g_bytes_new_take (text, length);
  week = lap_week_from_bytes (bytes, &error);
  g_assert_no_error (error);
  return week;
}

/* The week after @edits, as read from its file again; @week itself is as it was. Takes @edits over. */
static LapWeek *
after (LapWeek *week, LapEdits *edits)
{
  g_autoptr (GBytes) before = lap_week_to_bytes (week);
  g_autoptr (GBytes) then = NULL;
  g_autoptr (GBytes) again = NULL;
  g_autoptr (GError) error = NULL;
  LapWeek *read;

  g_assert_cmpuint (lap_edits_n (edits), >, 0);
  lap_edits_swap (edits);
  then = lap_week_to_bytes (week);
  lap_edits_swap (edits);
  again = lap_week_to_bytes (week);
  g_assert_true (g_bytes_equal (before, again));
  read = lap_week_from_bytes (then, &error);
  g_assert_no_error (error);
  lap_edits_free (edits);
  return read;
}

static void
test_place (void)
{
  g_autoptr (LapWeek) week = everything ();
  LapClass *c = lap_week_class (week, "c1");
  LapPlace place = lap_class_place (c), off = { -1, -1, "loft", NULL };
  g_autoptr (LapEdits) stays = lap_verb_place (c, &place);
  g_autoptr (LapWeek) moved = NULL;
  g_autoptr (LapWeek) taken_off = after (week, lap_verb_place (c, &off));

  g_assert_cmpuint (lap_edits_n (stays), ==, 0);
  place.day = LAP_DAY_SUN;
  place.coach = NULL;
  moved = after (week, lap_verb_place (c, &place));
  g_assert_cmpint (lap_week_class (moved, "c1")->day, ==, LAP_DAY_SUN);
  g_assert_null (lap_week_class (moved, "c1")->coach);
  g_assert_false (lap_class_is_placed (lap_week_class (taken_off, "c1")));
}

static void
test_minutes (void)
{
  g_autoptr (LapWeek) week = everything ();
  LapClass *c = lap_week_class (week, "c1");
  g_autoptr (LapWeek) longer = after (week, lap_verb_set_minutes (c, 360, 5000));
  g_autoptr (LapWeek) shorter = after (week, lap_verb_set_minutes (c, 400, -5));

  /* On one date it starts at 07:00 and ends by 24:00 too. */
  g_assert_cmpint (lap_week_class (longer, "c1")->minutes, ==, 17 * 60);
  g_assert_cmpint (lap_week_class (shorter, "c1")->minutes, ==, 1);
}

static void
test_on_a_date (void)
{
  g_autoptr (LapWeek) week = everything ();
  int date = lap_date_parse ("2027-02-08"), changed = lap_date_parse ("2027-01-25");
  LapClass *c = lap_week_class (week, "c1");
  LapPlace place = lap_class_place (c);
  g_autoptr (LapEdits) nothing = lap_verb_place_on (week, c, date, date, &place);
  g_autoptr (LapWeek) cancelled = after (week, lap_verb_cancel_on (week, c, changed));
  g_autoptr (LapWeek) always = after (week, lap_verb_as_always (week, c, changed));
  g_autoptr (LapWeek) moved = NULL;
  LapException *e;

  g_assert_cmpuint (lap_edits_n (nothing), ==, 0);
  place.start = 600;
  moved = after (week, lap_verb_place_on (week, c, date, date + 1, &place));
  e = lap_week_exception (moved, "c1", date);
  g_assert_cmpint (e->to, ==, date + 1);
  g_assert_cmpint (e->start, ==, 600);
  g_assert_null (e->room);
  e = lap_week_exception (cancelled, "c1", changed);
  g_assert_true (e->cancelled);
  g_assert_cmpint (e->to, ==, 0);
  g_assert_cmpstr (e->note, ==, "late"); /* what people wrote stays */
  g_assert_null (lap_week_exception (always, "c1", changed));
}

static void
add_dates (LapRows *rows, int from, int until)
{
  LapClosed *span = lap_rows_add (rows);

  span->from = from;
  span->until = until;
}

/* The file has seven days from @first on. */
static void
test_away (void)
{
  g_autoptr (LapWeek) week = everything ();
  LapCoach *coach = lap_week_coach (week, "orla");
  int first = lap_date_parse ("2027-02-01");
  g_autoptr (LapRows) but_one = lap_rows_new (&lap_kind_closed);
  g_autoptr (LapWeek) away = NULL, never = after (week, lap_verb_set_aways (week, coach, NULL));

  add_dates (but_one, first, first + 2);
  add_dates (but_one, first + 4, first + 20);
  away = after (week, lap_verb_set_aways (week, coach, but_one));
  for (int date = first; date < first + 22; date++) {
    g_assert_true (lap_week_is_away (away, "orla", date) == (date != first + 3 && date != first + 21));
    g_assert_false (lap_week_is_away (never, "orla", date));
  }
}

static void
test_copy_day (void)
{
  g_autoptr (LapWeek) week = everything ();
  guint n = lap_list_n (week->classes);
  g_autoptr (LapWeek) tuesday = after (week, lap_verb_copy_day (week, LAP_DAY_MON, LAP_DAY_TUE));

  g_assert_cmpint (LAP_CLASS (lap_list_nth (tuesday->classes, n))->day, ==, LAP_DAY_TUE);
  g_assert_cmpstr (LAP_CLASS (lap_list_nth (tuesday->classes, n))->room, ==, "loft");
}

/* Nothing names what has gone, or the file couldn't be read any more. */
static void
test_rooms_and_coaches (void)
{
  g_autoptr (LapWeek) week = everything ();
  g_autoptr (LapWeek) homeless = after (week, lap_verb_remove_room (week, lap_week_room (week, "loft")));
  g_autoptr (LapWeek) alone = after (week, lap_verb_remove_coach (week, lap_week_coach (week, "orla")));
  g_autoptr (LapWeek) larger = after (week, lap_verb_add_room (week, "Yard"));
  g_autoptr (LapWeek) more = after (larger, lap_verb_add_room (larger, "Back room"));
  g_autoptr (LapWeek) staffed = after (week, lap_verb_add_coach (week, "Teo"));

  g_assert_null (lap_week_class (homeless, "c1")->room);
  g_assert_null (lap_week_class (alone, "c1")->coach);
  g_assert_cmpuint (lap_list_n (alone->aways), ==, 0);
  g_assert_cmpstr (LAP_ROOM (lap_list_nth (more->rooms, 1))->id, ==, "room-1");
  g_assert_cmpstr (LAP_ROOM (lap_list_nth (more->rooms, 2))->id, ==, "room-2");
  g_assert_cmpstr (lap_coach_title (lap_list_nth (staffed->coaches, 1)), ==, "Teo");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/week-verbs/place", test_place);
  g_test_add_func ("/week-verbs/minutes", test_minutes);
  g_test_add_func ("/week-verbs/on-a-date", test_on_a_date);
  g_test_add_func ("/week-verbs/away", test_away);
  g_test_add_func ("/week-verbs/copy-day", test_copy_day);
  g_test_add_func ("/week-verbs/rooms-and-coaches", test_rooms_and_coaches);
  return g_test_run ();
}
