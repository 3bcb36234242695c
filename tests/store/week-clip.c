/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Classes on a clipboard, there and into another week.
 */
#include "base/error.h"
#include "store/documents.h"
#include "store/week-clip.h"
#include "weeks.h"

#define HEAD "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'Sea Loft', 'timezone': 'Europe/Lisbon', "

static void
test_there_and_back (void)
{
  g_autoptr (LapWeek) week = test_week (
    HEAD "'rooms': [{'id': 'loft'}, {'id': 'yard'}], 'coaches': [{'id': 'mira'}], 'classes': ["
    "{'id': 'a', 'title': 'Early', 'kind': 'k', 'minutes': 45, 'day': 'mon', 'start': '07:00', 'room': 'loft', 'coach': 'mira'},"
    "{'id': 'b', 'title': 'Noon', 'kind': 'k', 'minutes': 30, 'later': 1, 'day': 'mon', 'start': '12:00', 'room': 'loft'},"
    "{'id': 'c', 'title': 'Late', 'kind': 'k', 'minutes': 60}]}");
  g_autoptr (LapWeek) other = test_week (HEAD "'rooms': [{'id': 'loft'}]}");
  g_autoptr (GPtrArray) two = g_ptr_array_new (), read = NULL;
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (GError) error = NULL;
  LapClass *a;

  g_ptr_array_add (two, lap_list_nth (week->classes, 0));
  g_ptr_array_add (two, lap_list_nth (week->classes, 1));
  bytes = lap_week_clip_write (week, two);
  read = lap_week_clip_read (other, bytes, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (read->len, ==, 2);
  a = g_ptr_array_index (read, 0);
  g_assert_cmpstr (a->title, ==, "Early");
  g_assert_cmpstr (a->id, !=, "a");
  g_assert_cmpstr (a->room, ==, "loft");
  g_assert_null (a->coach); /* the other week has no Mira */
  g_assert_cmpint (a->start, ==, 420);
  g_assert_nonnull (LAP_OBJECT (g_ptr_array_index (read, 1))->extras); /* what we don't know goes along */
}

static void
test_nothing_in_it (void)
{
  g_autoptr (LapWeek) week = test_week (HEAD "'rooms': []}");
  g_autoptr (GBytes) bytes = lap_week_to_bytes (week), text = g_bytes_new_static ("Squat", 5);
  g_autoptr (GError) none = NULL, wrong = NULL;

  g_assert_null (lap_week_clip_read (week, bytes, &none));
  g_assert_error (none, LAP_ERROR, LAP_ERROR_INVALID);
  g_assert_null (lap_week_clip_read (week, text, &wrong));
  g_assert_nonnull (wrong);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/week-clip/there-and-back", test_there_and_back);
  g_test_add_func ("/week-clip/nothing-in-it", test_nothing_in_it);
  return g_test_run ();
}
