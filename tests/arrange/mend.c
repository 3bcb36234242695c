/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What mending promises, on the demo that is full of mistakes and on sessions by chance: it ends, makes nothing
 * worse, has nothing left to do a second time, and can be taken back to the byte.
 */
#include "arrange/mend.h"

#include "arrange/plans.h"

#define SESSIONS 15

/* Whether the state @then is @now or lower, stops first, then warnings, then notes. */
static gboolean
is_no_higher (const LapCheckup *then, const LapCheckup *now)
{
  for (LapSeverity s = LAP_SEVERITY_STOP; s <= LAP_SEVERITY_NOTE; s++)
    if (lap_checkup_count (then, s) != lap_checkup_count (now, s))
      return lap_checkup_count (then, s) < lap_checkup_count (now, s);
  return TRUE;
}

/* The stops of @check that aren't kept fine. */
static guint
count_stops (const LapCheckup *checkup, const LapCheck *check)
{
  guint n = 0;

  for (guint i = 0; i < lap_checkup_n (checkup); i++) {
    const LapWarning *w = lap_checkup_nth (checkup, i);

    n += !w->fine && w->severity == LAP_SEVERITY_STOP && w->check == check;
  }
  return n;
}

/* Mends @session and holds it to its promises; returns how many steps it took. */
static guint
assert_mends (LapSession *session, gboolean keep_clock)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapCheckup) now = plan_check (session);
  g_autofree char *before = plan_text (session);
  g_autoptr (LapSession) twin = lap_object_copy (session);
  g_autoptr (LapEdits) edits = NULL, onto = NULL;
  g_autoptr (GPtrArray) done = lap_mend (session, catalogue, keep_clock, NULL, &edits);
  g_autofree char *mended = plan_text (session);
  g_autoptr (LapCheckup) then = plan_check (session);
  g_autoptr (GPtrArray) again = NULL;
  g_autofree char *after = NULL, *back = NULL, *forth = NULL, *twin_text = NULL, *twin_back = NULL;

  g_assert_true (is_no_higher (then, now));
  for (guint i = 0; i < lap_checks_n (); i++)
    g_assert_cmpuint (count_stops (then, lap_checks_nth (i)), <=, count_stops (now, lap_checks_nth (i)));
  if (keep_clock)
    g_assert_cmpint (lap_checkup_timeline (then)->length, ==, lap_checkup_timeline (now)->length);
  for (guint i = 0; i < done->len; i++) {
    const LapMended *m = g_ptr_array_index (done, i);

    g_assert_nonnull (lap_checks_find (m->check));
    g_assert_cmpstr (m->message, !=, "");
    g_assert_cmpstr (m->remedy, !=, "");
  }
  again = lap_mend (session, catalogue, keep_clock, NULL, NULL);
  after = plan_text (session);
  g_assert_cmpuint (again->len, ==, 0);
  g_assert_cmpstr (after, ==, mended);

  g_assert_true (lap_edits_applied (edits));
  lap_edits_swap (edits);
  back = plan_text (session);
  g_assert_cmpstr (back, ==, before);
  onto = lap_edits_onto (edits, session, twin);
  lap_edits_swap (onto);
  twin_text = plan_text (twin);
  g_assert_cmpstr (twin_text, ==, mended);
  lap_edits_swap (onto);
  twin_back = plan_text (twin);
  g_assert_cmpstr (twin_back, ==, before);
  lap_edits_swap (edits);
  forth = plan_text (session);
  g_assert_cmpstr (forth, ==, mended);
  return done->len;
}

static void
test_demo (void)
{
  g_autoptr (LapSession) session = plan_demo ("too-much-at-once");
  g_autoptr (LapCheckup) before = plan_check (session), after = NULL;
  guint steps = assert_mends (session, FALSE);

  after = plan_check (session);
  g_assert_cmpuint (lap_checkup_n_open (before), >, 0);
  g_assert_cmpuint (steps, >, 0);
  for (guint i = 0; i < lap_checkup_n_open (after); i++) {
    g_autofree char *message = lap_warning_message (after, lap_checkup_nth (after, i));

    g_test_message ("left: %s", message);
  }
  g_assert_cmpuint (lap_checkup_n_open (after), ==, 0);
}

static void
test_demo_keeps_clock (void)
{
  g_autoptr (LapSession) session = plan_demo ("too-much-at-once");

  g_assert_cmpuint (assert_mends (session, TRUE), >, 0);
}

/* Who doesn't wait gets what was done until then: here nothing. */
static void
test_cancelled (void)
{
  g_autoptr (LapSession) session = plan_demo ("too-much-at-once");
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_autofree char *before = plan_text (session), *after = NULL;
  g_autoptr (LapEdits) edits = NULL;
  g_autoptr (GPtrArray) done = NULL;

  g_cancellable_cancel (cancellable);
  done = lap_mend (session, catalogue, FALSE, cancellable, &edits);
  after = plan_text (session);
  g_assert_cmpuint (done->len, ==, 0);
  g_assert_cmpuint (lap_edits_n (edits), ==, 0);
  g_assert_cmpstr (after, ==, before);
}

/* What has nothing wrong stays as it is. */
static void
test_nothing_to_do (void)
{
  g_autoptr (LapSession) session = plan_demo ("thirty-on-the-mat");
  g_autoptr (LapCheckup) checkup = plan_check (session);
  guint notes = lap_checkup_count (checkup, LAP_SEVERITY_NOTE);

  g_assert_cmpuint (lap_checkup_n_open (checkup), ==, 0);
  g_assert_cmpuint (assert_mends (session, FALSE), <=, notes);
}

static void
test_by_chance (gconstpointer keep_clock)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (20270111);
  guint steps = 0;

  for (guint i = 0; i < SESSIONS; i++) {
    g_autoptr (LapSession) session = plan_random (rand);

    steps += assert_mends (session, GPOINTER_TO_INT (keep_clock));
  }
  g_assert_cmpuint (steps, >, SESSIONS);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/mend/cancelled", test_cancelled);
  g_test_add_func ("/mend/demo", test_demo);
  g_test_add_func ("/mend/demo/keeps-clock", test_demo_keeps_clock);
  g_test_add_func ("/mend/nothing-to-do", test_nothing_to_do);
  g_test_add_data_func ("/mend/by-chance", GINT_TO_POINTER (FALSE), test_by_chance);
  g_test_add_data_func ("/mend/by-chance/keeps-clock", GINT_TO_POINTER (TRUE), test_by_chance);
  return g_test_run ();
}
