/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Deeds on several classes: what they do, that one step takes them back whole, and which places are free.
 */
#include "edit/history.h"
#include "edit/week-many.h"
#include "weeks.h"

static LapWeek *
make_week (void)
{
  static const char text[] =
    "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'Sea Loft', 'timezone': 'Europe/Lisbon', "
    "'rooms': [{'id': 'loft'}, {'id': 'yard'}], 'coaches': [{'id': 'mira'}, {'id': 'teo'}], 'classes': ["
    "{'id': 'a', 'title': 'Early', 'kind': 'k', 'minutes': 45, 'day': 'mon', 'start': '07:00', 'room': 'loft', 'coach': 'mira'},"
    "{'id': 'b', 'title': 'Noon', 'kind': 'k', 'minutes': 10, 'day': 'mon', 'start': '12:00', 'room': 'yard', 'coach': 'teo'},"
    "{'id': 'c', 'title': 'Late', 'kind': 'k', 'minutes': 60, 'day': 'tue', 'start': '23:00', 'room': 'loft', 'coach': 'teo'}],"
    "'except': [{'class': 'a', 'date': '2027-01-18', 'cancelled': true}, {'class': 'c', 'date': '2027-01-19', "
    "'coach': 'mira'}, {'class': 'a', 'date': '2027-01-25', 'cancelled': true}]}";

  return test_week (text);
}

static GPtrArray *
pick (LapWeek *week, const char *ids)
{
  GPtrArray *classes = g_ptr_array_new ();

  for (const char *p = ids; *p != '\0'; p++)
    g_ptr_array_add (classes, lap_week_class (week, (char[]) { *p, '\0' }));
  return classes;
}

static char *
text_of (LapWeek *week)
{
  g_autoptr (GBytes) bytes = lap_object_bytes (week);
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);

  return g_strndup (data, size);
}

/* Applies @edits, and asserts that undoing them brings the same text back and redoing them what they did. */
static void
apply (LapWeek *week, LapEdits *edits, const char *label)
{
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autofree char *before = text_of (week), *after = NULL, *undone = NULL, *redone = NULL;

  g_assert_cmpstr (lap_edits_label (edits), ==, label);
  lap_history_apply (history, edits);
  after = text_of (week);
  g_assert_cmpstr (before, !=, after);
  lap_history_undo (history);
  undone = text_of (week);
  g_assert_cmpstr (undone, ==, before);
  lap_history_redo (history);
  redone = text_of (week);
  g_assert_cmpstr (redone, ==, after);
}

static void
test_place (void)
{
  g_autoptr (LapWeek) week = make_week ();
  g_autoptr (GPtrArray) two = pick (week, "ab"), one = pick (week, "c");
  LapPlace places[] = { { LAP_DAY_WED, 480, "yard", "mira" }, { LAP_DAY_THU, 720, NULL, NULL } };
  LapPlace nowhere = { -1, -1, NULL, NULL };
  g_autoptr (LapEdits) again = NULL;

  apply (week, lap_verb_place_classes (two, places), "Move 2 classes");
  g_assert_cmpint (lap_week_class (week, "a")->day, ==, LAP_DAY_WED);
  g_assert_cmpstr (lap_week_class (week, "a")->room, ==, "yard");
  g_assert_null (lap_week_class (week, "b")->coach);
  again = lap_verb_place_classes (two, places);
  g_assert_cmpuint (lap_edits_n (again), ==, 0);
  apply (week, lap_verb_place_classes (one, &nowhere), "Take Late off the week");
  g_assert_false (lap_class_is_placed (lap_week_class (week, "c")));
}

static void
test_lengthen (void)
{
  g_autoptr (LapWeek) week = make_week ();
  g_autoptr (GPtrArray) all = pick (week, "abc");

  apply (week, lap_verb_lengthen (all, -15), "Change the length of 3 classes");
  g_assert_cmpint (lap_week_class (week, "a")->minutes, ==, 30);
  g_assert_cmpint (lap_week_class (week, "b")->minutes, ==, 5);
  g_assert_cmpint (lap_week_class (week, "c")->minutes, ==, 45);
  /* No longer than until 24:00. */
  apply (week, lap_verb_lengthen (all, 30), "Change the length of 3 classes");
  g_assert_cmpint (lap_week_class (week, "c")->minutes, ==, 60);
}

static void
test_remove (void)
{
  g_autoptr (LapWeek) week = make_week ();
  g_autoptr (GPtrArray) two = pick (week, "ca");

  apply (week, lap_verb_remove_classes (week, two), "Remove 2 classes");
  g_assert_cmpuint (lap_list_n (week->classes), ==, 1);
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
}

static void
test_copies (void)
{
  g_autoptr (LapWeek) week = make_week ();
  g_autoptr (GPtrArray) one = pick (week, "b"), copies = lap_classes_copy (one);
  LapClass *copy = g_ptr_array_index (copies, 0);

  g_assert_cmpstr (copy->id, !=, "b");
  g_assert_cmpstr (copy->title, ==, "Noon");
  apply (week, lap_verb_add_classes (week, copies, "Paste %s"), "Paste Noon");
  g_assert_true (lap_list_nth (week->classes, 3) == copy);
}

/* Noon is from 12:00 to 12:10 in the yard, with Teo. */
static void
test_free (void)
{
  static const struct { LapPlace place; gboolean free_place; } rows[] = {
    { { LAP_DAY_MON, 715, "yard", "mira" }, FALSE }, { { LAP_DAY_MON, 675, "yard", "mira" }, TRUE },
    { { LAP_DAY_MON, 730, "yard", "mira" }, TRUE },  { { LAP_DAY_MON, 720, "loft", "teo" }, FALSE },
    { { LAP_DAY_MON, 720, "loft", "mira" }, TRUE },  { { LAP_DAY_MON, 720, NULL, NULL }, TRUE },
    { { LAP_DAY_SUN, 1400, NULL, NULL }, FALSE },    { { -1, -1, NULL, NULL }, FALSE },
    { { LAP_DAY_MON, 420, "loft", "mira" }, TRUE }, /* where it is itself */
  };
  g_autoptr (LapWeek) week = make_week ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpint (lap_place_is_free (week, lap_week_class (week, "a"), &rows[i].place), ==, rows[i].free_place);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/week-many/place", test_place);
  g_test_add_func ("/week-many/lengthen", test_lengthen);
  g_test_add_func ("/week-many/remove", test_remove);
  g_test_add_func ("/week-many/copies", test_copies);
  g_test_add_func ("/week-many/free", test_free);
  return g_test_run ();
}
