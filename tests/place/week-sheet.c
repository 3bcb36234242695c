/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The week on the wall: what stands in which column, from where it is read, what is different on a date, and that
 * nothing is lost or lies over anything else where there is much.
 */
#include "place/face.h"
#include "place/week-sheet.h"
#include "store/documents.h"
#include "weeks.h"

#include <string.h>

#define HEAD "'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'Sea Loft', 'timezone': 'Europe/Lisbon', " \
             "'rooms': [{'id': 'r', 'name': 'Loft'}, {'id': 'y', 'name': 'Yard'}], " \
             "'coaches': [{'id': 'm', 'name': 'Mira'}, {'id': 't', 'name': 'Teo'}]"
#define CLASS(id, title, day, start) "{'id': '" id "', 'title': '" title "', 'kind': 'k', 'minutes': 45, " \
                                     "'effort': 'hard', 'day': '" day "', 'start': '" start "', 'room': 'r', 'coach': 'm'}"

static LapPages *
build (const char *text, const char *date, LapPaper paper, gboolean landscape)
{
  g_autoptr (LapWeek) week = test_week (text);
  LapSheetOptions options = { .paper = paper, .landscape = landscape };
  LapPages *pages = lap_week_sheet_build (&(LapWeekSubject) { week, date != NULL ? lap_date_monday (lap_date_parse (date)) : 0 },
                                          &options, face_measure ());

  face_check_pages (pages);
  return pages;
}

static const LapMark *
find (const LapPages *pages, const char *text)
{
  const GArray *marks = lap_pages_nth (pages, 0)->marks;

  for (guint i = 0; i < marks->len; i++) {
    const LapMark *mark = &g_array_index (marks, LapMark, i);

    if (mark->kind == LAP_MARK_TEXT && g_str_equal (mark->text, text))
      return mark;
  }
  g_error ("\"%s\" isn't on the page", text);
}

static guint
count_signs (const LapPages *pages)
{
  const GArray *marks = lap_pages_nth (pages, 0)->marks;
  guint n = 0;

  for (guint i = 0; i < marks->len; i++)
    n += g_array_index (marks, LapMark, i).kind == LAP_MARK_SIGN;
  return n;
}

static void
test_columns (void)
{
  g_autoptr (LapPages) pages = build ("{" HEAD ", 'classes': [" CLASS ("a", "Late", "mon", "18:30") ", "
                                      CLASS ("b", "Early", "mon", "07:00") ", " CLASS ("c", "Noon", "tue", "12:00") ", "
                                      "{'id': 'd', 'title': 'Waiting', 'kind': 'k', 'minutes': 45}]}",
                                      NULL, LAP_PAPER_A3, TRUE);
  g_autofree char *text = face_text (pages);

  g_assert_cmpuint (lap_pages_n (pages), ==, 1);
  g_assert_cmpfloat (find (pages, "Early")->y, <, find (pages, "18:30")->y);
  g_assert_cmpfloat (find (pages, "18:30")->y, <, find (pages, "Late")->y);
  g_assert_cmpfloat_with_epsilon (find (pages, "Early")->x, find (pages, "Late")->x, 0.01);
  g_assert_cmpfloat (find (pages, "Late")->x, <, find (pages, "Noon")->x);
  g_assert_cmpuint (count_signs (pages), ==, 3 * 3 + 1 + 2 + 3); /* three hard classes, and what the crests mean */
  g_assert_nonnull (strstr (text, "Loft\xc2\xa0· Mira\xc2\xa0·"));
  g_assert_nonnull (strstr (text, "No classes"));
  g_assert_nonnull (strstr (text, "clinician"));
  g_assert_null (strstr (text, "Waiting"));
}

/* ISO 9241-3 and NUREG-0700 1.3.1-4: read under 16 minutes of arc, here from 2 m. */
static void
test_distance (void)
{
  g_autoptr (LapPages) few = build ("{" HEAD ", 'classes': [" CLASS ("a", "Row", "mon", "18:30") "]}", NULL,
                                    LAP_PAPER_A3, TRUE);

  g_assert_cmpfloat (lap_pages_cap (few, LAP_READ_NAME), >=, lap_cap_height (2, LAP_ARC_READABLE));
}

static void
test_date (void)
{
  const char *text =
    "{" HEAD ", 'closed': ['2027-01-22'], 'classes': [" CLASS ("a", "Alpha", "mon", "18:30") ", "
    CLASS ("b", "Beta", "tue", "07:00") ", " CLASS ("c", "Gamma", "wed", "12:00") ", " CLASS ("d", "Delta", "fri", "12:00")
    ", " CLASS ("e", "Omega", "thu", "12:00") "], 'except': [{'class': 'a', 'date': '2027-01-18', 'cancelled': true}, "
    "{'class': 'b', 'date': '2027-01-19', 'start': '08:15', 'room': 'y', 'coach': 't'}, "
    "{'class': 'e', 'date': '2027-01-21', 'to': '2027-01-28'}], "
    "'away': [{'coach': 'm', 'from': '2027-01-20', 'until': '2027-01-20'}]}";
  static const char *const said[] = { "2027-01-18", "Alpha Cancelled", "08:15 Beta Yard, not Loft\xc2\xa0· Teo for Mira",
                                      "not at 07:00", "Mira is away", "Moved to 2027-01-28", "Closed" };
  g_autoptr (LapPages) pages = build (text, "2027-01-20", LAP_PAPER_A2, TRUE), always = NULL;
  g_autofree char *shown = face_text (pages), *as_always = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (said); i++)
    if (strstr (shown, said[i]) == NULL)
      g_error ("\"%s\" isn't on the sheet: %s", said[i], shown);
  g_assert_null (strstr (shown, "07:00 Beta"));
  g_assert_null (strstr (shown, "Delta"));
  always = build (text, NULL, LAP_PAPER_A2, TRUE);
  as_always = face_text (always);
  g_assert_nonnull (strstr (as_always, "07:00"));
  g_assert_nonnull (strstr (as_always, "Delta"));
  g_assert_null (strstr (as_always, "Cancelled"));
}

/* A page for each room: its classes alone, in larger letters, and the right way round where people read from the right. */
static void
test_rooms (void)
{
  g_autoptr (GString) json = g_string_new ("{" HEAD ", 'classes': [");
  LapSheetOptions options = { .paper = LAP_PAPER_A3, .landscape = TRUE };
  g_autoptr (LapPages) all = NULL, rooms = NULL;
  g_autoptr (LapWeek) week = NULL;
  g_autofree char *text = NULL;

  for (int i = 0; i < 16; i++)
    g_string_append_printf (json, "%s{'id': 'c%d', 'title': 'Kilometre %d', 'kind': 'k', 'minutes': 45, 'day': 'mon', "
                            "'start': '%02d:00', 'room': '%s', 'coach': 'm'}", i > 0 ? ", " : "", i, i, 6 + i,
                            i % 2 ? "r" : "y");
  g_string_append (json, "]}");
  week = test_week (json->str);
  all = lap_week_sheet_build (&(LapWeekSubject) { week }, &options, face_measure ());
  options.by_room = TRUE;
  rooms = lap_week_sheet_build (&(LapWeekSubject) { week }, &options, face_measure ());
  face_check_pages (rooms);
  g_assert_cmpuint (lap_pages_n (all), ==, 1);
  g_assert_cmpuint (lap_pages_n (rooms), ==, 2);
  g_assert_cmpfloat (lap_pages_cap (rooms, LAP_READ_NAME), >, 1.4 * lap_pages_cap (all, LAP_READ_NAME));
  find (rooms, "Loft"); /* its first page is the first room's */
  text = face_text (rooms);
  for (int i = 0; i < 16; i++) {
    g_autofree char *name = g_strdup_printf ("Kilometre %d ", i);

    g_assert_nonnull (strstr (text, name));
  }
  for (guint i = 0; i < lap_pages_n (rooms); i++)
    lap_page_mirror (lap_pages_nth (rooms, i));
  face_check_pages (rooms);
  g_assert_cmpfloat (find (rooms, "Mon")->x, >, find (rooms, "Tue")->x);
}

static LapSession *
load_session (const char *path, gpointer data, GError **error)
{
  return data;
}

/* How hard a class is, its session says where that can be read, and not the class. */
static void
test_session (void)
{
  static const char stretches[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"T\", \"parts\": [{\"kind\": \"main\", "
    "\"blocks\": [{\"exercise\": \"butterfly-stretch\", \"work\": 60, \"rest\": 60}]}]}";
  g_autoptr (GBytes) bytes = g_bytes_new_static (stretches, strlen (stretches));
  g_autoptr (GError) error = NULL;
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, &error);
  LapSessionSource source = { load_session, NULL, session };
  g_autoptr (LapAttachments) attachments = lap_attachments_new (&source);
  g_autoptr (LapWeek) week = test_week ("{" HEAD ", 'classes': [{'id': 'a', 'title': 'Row', 'kind': 'k', 'minutes': 45, "
                                        "'effort': 'hard', 'session': 's.lapwing', 'day': 'mon', 'start': '18:30'}]}");
  LapSheetOptions options = { .paper = LAP_PAPER_A3 };
  g_autoptr (LapPages) with = NULL, without = NULL;

  g_assert_no_error (error);
  with = lap_week_sheet_build (&(LapWeekSubject) { week, 0, attachments }, &options, face_measure ());
  without = lap_week_sheet_build (&(LapWeekSubject) { week }, &options, face_measure ());
  g_assert_cmpuint (count_signs (with), ==, 1 + 1 + 2 + 3); /* easy, and what the crests mean */
  g_assert_cmpuint (count_signs (without), ==, 3 + 1 + 2 + 3);
}

static double
right_end (const LapPages *pages, const char *text)
{
  const LapMark *mark = find (pages, text);

  return mark->x + mark->width;
}

/* A day gets the width that it needs and no more height than there is: beside a Monday of twelve classes with long names
 * the other days are narrow, and all of it is on one page. What is called short is read by that: minutes, too. */
static void
test_widths (void)
{
  g_autoptr (GString) json = g_string_new ("{" HEAD ", 'classes': [" CLASS ("t", "Row", "tue", "12:00"));
  g_autoptr (LapPages) pages = NULL;
  g_autofree char *text = NULL;
  double monday, tuesday;

  for (int i = 0; i < 12; i++)
    g_string_append_printf (json, ", {'id': 'c%d', 'title': 'Kilometre after kilometre', 'kind': 'k', 'minutes': 45, "
                            "'day': 'mon', 'start': '%02d:00', 'room': 'r', 'coach': 'm'}", i, 7 + i);
  g_string_append (json, "]}");
  pages = build (json->str, NULL, LAP_PAPER_A3, TRUE);
  text = face_text (pages);
  g_assert_cmpuint (lap_pages_n (pages), ==, 1);
  monday = find (pages, "Tue")->x - find (pages, "Mon")->x;
  tuesday = find (pages, "Wed")->x - find (pages, "Tue")->x;
  g_assert_cmpfloat (monday, >, 1.5 * tuesday);
  g_assert_cmpfloat (right_end (pages, "Row"), <, find (pages, "Wed")->x);
  g_assert_nonnull (strstr (text, "45\xe2\x80\xb2"));
}

/* Many classes on large paper: a long day takes more columns, and the pages are full. 40 classes a day of 5, of which no
 * column of A2 holds more than 16 at the least letters. */
static void
test_flow (void)
{
  static const char *const days[] = { "mon", "tue", "wed", "thu", "fri" };
  g_autoptr (GString) json = g_string_new ("{" HEAD ", 'classes': [");
  g_autoptr (LapPages) pages = NULL;

  for (int i = 0; i < 200; i++)
    g_string_append_printf (json, "%s{'id': 'c%d', 'title': 'Kilometre %d', 'kind': 'k', 'minutes': 30, 'day': '%s', "
                            "'start': '%02d:%02d', 'room': 'r', 'coach': 'm'}", i > 0 ? ", " : "", i, i, days[i % 5],
                            6 + i / 16, i % 60);
  g_string_append (json, "]}");
  pages = build (json->str, NULL, LAP_PAPER_A2, TRUE);
  g_assert_cmpuint (lap_pages_n (pages), <=, 4);
}

/* Long names and many classes: letters don't get unreadable, more pages come, and each class is there. */
static void
test_much (void)
{
  static const char *const days[] = { "mon", "wed", "wed", "sat" };
  static const LapPaper papers[] = { LAP_PAPER_A5, LAP_PAPER_A4, LAP_PAPER_A3, LAP_PAPER_TABLOID };
  GString *json = g_string_new ("{" HEAD ", 'classes': [");

  for (int i = 0; i < 80; i++)
    g_string_append_printf (json, "%s{'id': 'c%d', 'title': 'Kilometre%d with a Donaudampfschifffahrtsgesellschaft and a "
                            "name that goes on', 'kind': 'k', 'minutes': 45, 'effort': 'hard', 'day': '%s', "
                            "'start': '%02d:%02d', 'room': 'r', 'coach': 'm'}", i > 0 ? ", " : "", i, i, days[i % 4],
                            6 + i / 8, i % 60);
  g_string_append (json, "]}");
  for (guint i = 0; i < G_N_ELEMENTS (papers); i++)
    for (int landscape = 0; landscape < 2; landscape++) {
      g_autoptr (LapPages) pages = build (json->str, NULL, papers[i], landscape);
      g_autofree char *text = face_text (pages);

      g_assert_cmpuint (lap_pages_n (pages), >, 1);
      g_assert_cmpstr (lap_pages_nth (pages, 0)->label, !=, NULL);
      for (int k = 0; k < 80; k++) {
        g_autofree char *name = g_strdup_printf ("Kilometre%d", k);

        g_assert_nonnull (strstr (text, name));
      }
    }
  g_string_free (json, TRUE);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/week-sheet/columns", test_columns);
  g_test_add_func ("/week-sheet/distance", test_distance);
  g_test_add_func ("/week-sheet/date", test_date);
  g_test_add_func ("/week-sheet/flow", test_flow);
  g_test_add_func ("/week-sheet/much", test_much);
  g_test_add_func ("/week-sheet/rooms", test_rooms);
  g_test_add_func ("/week-sheet/session", test_session);
  g_test_add_func ("/week-sheet/widths", test_widths);
  return g_test_run ();
}
