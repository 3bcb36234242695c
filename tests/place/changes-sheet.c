/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The changes of a week: each kind of change in words, nothing that is as always, and the week without any.
 */
#include "place/changes-sheet.h"
#include "place/face.h"
#include "weeks.h"

#include <string.h>

#define CLASS(id, title, day) "{'id': '" id "', 'title': '" title "', 'kind': 'k', 'minutes': 45, 'day': '" day "', " \
                              "'start': '18:30', 'room': 'r', 'coach': 'm'}"

static const char text[] =
  "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'Sea Loft', 'timezone': 'Europe/Lisbon', "
  "'closed': ['2027-01-22'], 'rooms': [{'id': 'r', 'name': 'Loft'}, {'id': 'y', 'name': 'Yard'}], "
  "'coaches': [{'id': 'm', 'name': 'Mira'}, {'id': 't', 'name': 'Teo'}], 'classes': ["
  CLASS ("a", "Alpha", "mon") ", " CLASS ("b", "Beta", "tue") ", " CLASS ("c", "Gamma", "wed") ", "
  CLASS ("d", "Delta", "thu") ", " CLASS ("e", "Epsilon", "sat") ", " CLASS ("f", "Omega", "sun") "], 'except': ["
  "{'class': 'a', 'date': '2027-01-18', 'cancelled': true, 'note': 'The boiler is out.'}, "
  "{'class': 'b', 'date': '2027-01-19', 'start': '19:15', 'room': 'y', 'coach': 't'}, "
  "{'class': 'd', 'date': '2027-01-21', 'to': '2027-01-28'}, "
  "{'class': 'e', 'date': '2027-01-23', 'to': '2027-01-24', 'start': '09:00'}], "
  "'away': [{'coach': 'm', 'from': '2027-01-20', 'until': '2027-01-20'}]}";

static char *
shown (const char *date, LapPaper paper)
{
  g_autoptr (LapWeek) week = test_week (text);
  LapSheetOptions options = { .paper = paper };
  g_autoptr (LapPages) pages = lap_changes_sheet_build (&(LapWeekSubject) { week, lap_date_monday (lap_date_parse (date)) },
                                                        &options, face_measure ());

  face_check_pages (pages);
  return face_text (pages);
}

static void
test_changes (void)
{
  static const char *const said[] = {
    "Monday 2027-01-18 18:30 Alpha Cancelled. The boiler is out.",
    "Tuesday 2027-01-19 19:15 Beta At 19:15, not 18:30. Room: Yard. Teo instead of Mira.",
    "Gamma Mira is away; nobody else is named yet.", "Delta Moved to 2027-01-28 at 18:30.",
    "Friday 2027-01-22 Closed", "09:00 Epsilon Moved here from 2027-01-23 at 18:30.", "clinician",
  };

  for (guint paper = 0; paper < lap_papers.n; paper++) {
    g_autofree char *words = shown ("2027-01-20", paper);

    for (guint i = 0; i < G_N_ELEMENTS (said); i++)
      if (strstr (words, said[i]) == NULL)
        g_error ("\"%s\" isn't on the sheet: %s", said[i], words);
    g_assert_null (strstr (words, "Omega"));
    g_assert_null (strstr (words, "No changes"));
  }
}

static void
test_none (void)
{
  g_autofree char *words = shown ("2027-03-03", LAP_PAPER_A4);

  g_assert_nonnull (strstr (words, "No changes"));
  g_assert_nonnull (strstr (words, "2027-03-01"));
  g_assert_null (strstr (words, "Alpha"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/changes-sheet/changes", test_changes);
  g_test_add_func ("/changes-sheet/none", test_none);
  return g_test_run ();
}
