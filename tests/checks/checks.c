/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every check of the registry against its two fixtures, tests/data/checks/<id>.good.lapwing and <id>.bad.lapwing: it
 * is silent on the one, speaks on the other in one plain line, and what it offers helps. Limits in the fixtures are
 * those of the design, at the last value that is still good and the first that isn't, wherever that can be had.
 */
#include "checks/checks.h"
#include "store/documents.h"
#include "store/read-file.h"
#include "store/session-folder.h"

static GBytes *
fixture (const char *id, const char *kind, const char *suffix)
{
  g_autofree char *name = g_strdup_printf ("%s.%s.%s", id, kind, suffix);
  g_autofree char *path = g_build_filename (g_getenv ("LAP_TEST_DATA"), "checks", name, NULL);
  g_autoptr (GError) error = NULL;
  GBytes *bytes = lap_read_file (path, NULL, &error);

  g_assert_no_error (error);
  return bytes;
}

static LapTimeline *
lay_out (const char *id, const char *kind)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = fixture (id, kind, "lapwing");
  g_autoptr (LapSession) session = NULL;
  LapTimeline *timeline;

  session = lap_session_from_bytes (bytes, &error);
  g_assert_no_error (error);
  timeline = lap_timeline_new (session, builtin, &error);
  g_assert_no_error (error);
  return timeline;
}

static const LapWarning *
find (const LapCheckup *checkup, const LapCheck *check)
{
  for (guint i = 0; i < lap_checkup_n (checkup); i++)
    if (lap_checkup_nth (checkup, i)->check == check)
      return lap_checkup_nth (checkup, i);
  return NULL;
}

static guint
count (const LapCheckup *checkup, const LapCheck *check)
{
  guint n = 0;

  for (guint i = 0; i < lap_checkup_n (checkup); i++)
    n += lap_checkup_nth (checkup, i)->check == check && !lap_checkup_nth (checkup, i)->fine;
  return n;
}

static void
assert_line (const char *text)
{
  g_assert_nonnull (text);
  g_assert_cmpuint (strlen (text), >, 3);
  g_assert_null (strchr (text, '\n'));
  g_assert_null (strchr (text, '!'));
}

static LapCheckup *
check_again (LapTimeline *timeline)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;
  g_autoptr (LapTimeline) now = lap_timeline_new (timeline->session, builtin, &error);

  g_assert_no_error (error);
  return lap_checkup_new (now);
}

static void
test_good (gconstpointer data)
{
  const LapCheck *check = data;
  g_autoptr (LapTimeline) timeline = lay_out (check->id, "good");
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);

  g_assert_null (find (checkup, check));
}

static void
test_bad (gconstpointer data)
{
  const LapCheck *check = data;
  g_autoptr (LapTimeline) timeline = lay_out (check->id, "bad");
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);
  const LapWarning *w = find (checkup, check);
  g_autofree char *message = NULL, *why = NULL, *clock = NULL;

  g_assert_nonnull (w);
  g_assert_false (w->fine);
  message = lap_warning_message (checkup, w);
  why = lap_warning_why (checkup, w);
  clock = lap_warning_clock (w);
  assert_line (message);
  assert_line (why);
  assert_line (lap_warning_source (w));
  g_assert_cmpint (w->start, <=, w->end);
  g_assert_cmpint (w->end, <=, timeline->length);
}

/* Each remedy, applied, leaves the check with less to say; taken back, with as much as before. */
static void
test_remedies (gconstpointer data)
{
  const LapCheck *check = data;
  g_autoptr (LapTimeline) timeline = lay_out (check->id, "bad");
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);
  g_autoptr (GPtrArray) remedies = lap_warning_remedies (checkup, find (checkup, check));
  g_autoptr (GBytes) before = lap_session_to_bytes (timeline->session);

  if (check->remedies != NULL)
    g_assert_cmpuint (remedies->len, >, 0);
  for (guint i = 0; i < remedies->len; i++) {
    const LapRemedy *remedy = g_ptr_array_index (remedies, i);
    g_autoptr (LapCheckup) then = NULL;
    g_autoptr (GBytes) after = NULL;

    assert_line (remedy->label);
    lap_edits_swap (remedy->edits);
    then = check_again (timeline);
    lap_edits_swap (remedy->edits);
    g_assert_cmpuint (lap_checkup_count (then, LAP_SEVERITY_STOP), <=, lap_checkup_count (checkup, LAP_SEVERITY_STOP));
    g_assert_true (count (then, check) < count (checkup, check) ||
                   find (then, check)->severity > find (checkup, check)->severity);
    after = lap_session_to_bytes (timeline->session);
    g_assert_true (g_bytes_equal (before, after));
  }
}

/* What @edits make of the session, written; the session is left as it was. */
static char *
written_with (const LapTimeline *timeline, LapEdits *edits)
{
  g_autoptr (GBytes) bytes = NULL;

  lap_edits_swap (edits);
  bytes = lap_session_to_bytes (timeline->session);
  lap_edits_swap (edits);
  return g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
}

/* No two remedies of one warning do the same under two names. */
static void
test_differ (gconstpointer data)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", data, NULL);
  g_autoptr (GBytes) bytes = lap_read_file (path, NULL, &error);
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, &error);
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, builtin, &error);
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);

  g_assert_no_error (error);
  g_assert_cmpuint (lap_checkup_n (checkup), >, 0);
  for (guint w = 0; w < lap_checkup_n (checkup); w++) {
    g_autoptr (GPtrArray) remedies = lap_warning_remedies (checkup, lap_checkup_nth (checkup, w));
    g_autoptr (GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

    for (guint i = 0; i < remedies->len; i++) {
      const LapRemedy *remedy = g_ptr_array_index (remedies, i);

      g_assert_true (g_hash_table_add (seen, written_with (timeline, remedy->edits)));
    }
  }
}

/* "Fine here" keeps it quiet and leaves it in the list. */
static void
test_fine (gconstpointer data)
{
  const LapCheck *check = data;
  g_autoptr (LapTimeline) timeline = lay_out (check->id, "bad");
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);
  g_autoptr (LapEdits) edits = lap_warning_fine (checkup, find (checkup, check));
  g_autoptr (LapCheckup) then = NULL;

  lap_edits_swap (edits);
  then = check_again (timeline);
  g_assert_cmpuint (count (then, check), <, count (checkup, check));
  g_assert_cmpuint (lap_checkup_n (then), ==, lap_checkup_n (checkup));
}

/* Weeks. A fixture with a first date is checked in the week of that date, one without as it always is. */

typedef struct {
  LapWeek          *week;
  LapSessionFolder *folder;
  LapAttachments   *attachments;
} Week;

static Week
read_week (const char *id, const char *kind)
{
  g_autofree char *place = g_build_filename (g_getenv ("LAP_TEST_DATA"), "checks", "w.lapweek", NULL);
  g_autoptr (GBytes) bytes = fixture (id, kind, "lapweek");
  g_autoptr (GError) error = NULL;
  Week w = { lap_week_from_bytes (bytes, &error), lap_session_folder_new (place) };
  const LapSessionSource source = { lap_session_folder_load, lap_session_folder_seek, w.folder };

  g_assert_no_error (error);
  w.attachments = lap_attachments_new (&source);
  return w;
}

static void
week_clear (Week *w)
{
  g_object_unref (w->week);
  lap_attachments_unref (w->attachments);
  lap_session_folder_free (w->folder);
}

static LapCheckup *
check_week (const Week *w)
{
  return lap_checkup_new_week (w->week, lap_date_monday (w->week->from), w->attachments);
}

static void
test_week_good (gconstpointer data)
{
  const LapCheck *check = data;
  Week w = read_week (check->id, "good");
  g_autoptr (LapCheckup) checkup = check_week (&w);

  g_assert_null (find (checkup, check));
  week_clear (&w);
}

static void
test_week_bad (gconstpointer data)
{
  const LapCheck *check = data;
  Week w = read_week (check->id, "bad");
  g_autoptr (LapCheckup) checkup = check_week (&w);
  const LapWarning *warning = find (checkup, check);
  g_autofree char *message = NULL, *why = NULL;

  g_assert_nonnull (warning);
  g_assert_cmpuint (warning->n_classes, >, 0);
  message = lap_warning_message (checkup, warning);
  why = lap_warning_why (checkup, warning);
  assert_line (message);
  assert_line (why);
  assert_line (lap_warning_source (warning));
  week_clear (&w);
}

static void
test_week_remedies (gconstpointer data)
{
  const LapCheck *check = data;
  Week w = read_week (check->id, "bad");
  g_autoptr (LapCheckup) checkup = check_week (&w);
  g_autoptr (GPtrArray) remedies = lap_warning_remedies (checkup, find (checkup, check));
  g_autoptr (GBytes) before = lap_week_to_bytes (w.week);

  if (check->remedies != NULL)
    g_assert_cmpuint (remedies->len, >, 0);
  for (guint i = 0; i < remedies->len; i++) {
    const LapRemedy *remedy = g_ptr_array_index (remedies, i);
    g_autoptr (LapCheckup) then = NULL;
    g_autoptr (GBytes) written = NULL;
    g_autoptr (GBytes) after = NULL;
    g_autoptr (LapWeek) again = NULL;
    g_autoptr (GError) error = NULL;

    assert_line (remedy->label);
    lap_edits_swap (remedy->edits);
    then = check_week (&w);
    written = lap_week_to_bytes (w.week);
    lap_edits_swap (remedy->edits);
    again = lap_week_from_bytes (written, &error);
    g_assert_no_error (error);
    g_assert_cmpuint (lap_checkup_count (then, LAP_SEVERITY_STOP), <=, lap_checkup_count (checkup, LAP_SEVERITY_STOP));
    g_assert_true (count (then, check) < count (checkup, check) ||
                   find (then, check)->severity > find (checkup, check)->severity);
    after = lap_week_to_bytes (w.week);
    g_assert_true (g_bytes_equal (before, after));
  }
  week_clear (&w);
}

static void
test_week_fine (gconstpointer data)
{
  const LapCheck *check = data;
  Week w = read_week (check->id, "bad");
  g_autoptr (LapCheckup) checkup = check_week (&w);
  g_autoptr (LapEdits) edits = lap_warning_fine (checkup, find (checkup, check));
  g_autoptr (LapCheckup) then = NULL;

  lap_edits_swap (edits);
  then = check_week (&w);
  g_assert_cmpuint (count (then, check), <, count (checkup, check));
  g_assert_cmpuint (lap_checkup_n (then), ==, lap_checkup_n (checkup));
  week_clear (&w);
}

static void
add_week_tests (void)
{
  static const struct { const char *name; GTestDataFunc func; } rows[] = {
    { "good", test_week_good }, { "bad", test_week_bad }, { "remedies", test_week_remedies }, { "fine", test_week_fine },
  };

  for (guint i = 0; i < lap_checks_n (); i++)
    for (guint r = 0; r < G_N_ELEMENTS (rows) && lap_checks_nth (i)->find_week != NULL; r++) {
      g_autofree char *path = g_strdup_printf ("/checks/%s/week/%s", lap_checks_nth (i)->id, rows[r].name);

      g_test_add_data_func (path, lap_checks_nth (i), rows[r].func);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < lap_checks_n (); i++) {
    const LapCheck *check = lap_checks_nth (i);
    g_autofree char *good = g_strdup_printf ("/checks/%s/good", check->id);
    g_autofree char *bad = g_strdup_printf ("/checks/%s/bad", check->id);
    g_autofree char *remedies = g_strdup_printf ("/checks/%s/remedies", check->id);
    g_autofree char *fine = g_strdup_printf ("/checks/%s/fine", check->id);

    if (check->find == NULL)
      continue;
    g_test_add_data_func (good, check, test_good);
    g_test_add_data_func (bad, check, test_bad);
    g_test_add_data_func (remedies, check, test_remedies);
    g_test_add_data_func (fine, check, test_fine);
  }
  add_week_tests ();
  g_test_add_data_func ("/checks/remedies-differ/calm", "twelve-at-twelve.lapwing", test_differ);
  g_test_add_data_func ("/checks/remedies-differ/crowded", "too-much-at-once.lapwing", test_differ);
  return g_test_run ();
}
