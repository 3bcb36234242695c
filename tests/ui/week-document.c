/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A week as a document: what a session can do it can do too, and the sessions of its classes stay the ones they are
 * wherever its file goes.
 */
#include "base/error.h"
#include "edit/week-verbs.h"
#include "store/folder.h"
#include "store/read-file.h"
#include "ui/week-plan.h"

#include <glib/gstdio.h>
#include <string.h>

/* A folder with the week's file and its session in it. */
typedef struct {
  char *folder, *path;
} Place;

static void
place_begin (Place *place)
{
  place->folder = folder_new ();
  place->path = g_build_filename (place->folder, "harbour.lapweek", NULL);
  put_text (place->path, week_text);
  week_put_session (place->path, 1200);
}

static void
place_end (Place *place)
{
  folder_remove (place->folder);
  g_free (place->path);
}

static LapDocument *
read_week (const Place *place)
{
  g_autoptr (GError) error = NULL;
  LapDocument *document = lap_document_read (place->path, &error);

  g_assert_no_error (error);
  return document;
}

static void
saved_cb (GObject *source, GAsyncResult *result, gpointer done)
{
  g_autoptr (GError) error = NULL;

  g_assert_true (lap_document_save_finish (LAP_DOCUMENT (source), result, &error));
  g_assert_no_error (error);
  *(gboolean *) done = TRUE;
}

static void
save (LapDocument *document, const char *path)
{
  gboolean done = FALSE;

  lap_document_save (document, path, FALSE, saved_cb, &done);
  while (!done)
    g_main_context_iteration (NULL, TRUE);
}

static void
rename_week (LapDocument *document, const char *title)
{
  LapEdits *edits = lap_edits_new ("Title");

  lap_edits_set_text (edits, lap_document_week (document), "title", title);
  g_assert_true (lap_document_apply (document, edits));
}

static void
test_read (void)
{
  Place place;
  g_autoptr (LapDocument) document = NULL;
  g_autoptr (GBytes) bytes = NULL;
  LapClassFacts facts;

  place_begin (&place);
  document = read_week (&place);
  g_assert_null (lap_document_session (document));
  g_assert_null (lap_document_timeline (document));
  g_assert_cmpstr (lap_document_title (document), ==, "Harbour");
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_CLEAN);
  lap_class_facts (week_class (document, "dawn"), lap_document_attachments (document), &facts);
  g_assert_true (facts.found);
  g_assert_cmpint (facts.length, ==, 1200);
  g_assert_true (week_says (document, "unplaced"));
  bytes = lap_document_bytes (document);
  g_assert_cmpmem (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), week_text, strlen (week_text));
  place_end (&place);
}

static void
test_edit (void)
{
  g_autoptr (LapDocument) document = week_document ();
  const LapPlace evening = { LAP_DAY_TUE, 18 * 60, "yard", NULL };

  g_assert_true (lap_document_apply (document, lap_verb_place (week_class (document, "late"), &evening)));
  g_assert_false (week_says (document, "unplaced"));
  g_assert_true (lap_document_is_modified (document));
  lap_document_undo (document);
  g_assert_true (week_says (document, "unplaced"));
  g_assert_false (lap_document_is_modified (document));
  lap_document_redo (document);
  g_assert_cmpint (week_class (document, "late")->day, ==, LAP_DAY_TUE);
}

/* A file with it couldn't be read again. */
static void
test_impossible (void)
{
  g_autoptr (LapDocument) document = week_document ();
  LapEdits *late = lap_edits_new ("Later"), *nobody = lap_edits_new ("Nobody"), *dates = lap_edits_new ("Dates");

  lap_edits_set_int (late, week_class (document, "dawn"), "start", 23 * 60 + 30);
  g_assert_false (lap_document_apply (document, late));
  lap_edits_set_text (nobody, week_class (document, "dawn"), "coach", "nobody");
  g_assert_false (lap_document_apply (document, nobody));
  lap_edits_set_int (dates, lap_document_week (document), "until", lap_date_parse ("2027-01-10"));
  g_assert_false (lap_document_hold (document, dates));
  lap_document_let_go (document);
  g_assert_cmpint (week_class (document, "dawn")->start, ==, 7 * 60);
  g_assert_cmpstr (week_class (document, "dawn")->coach, ==, "mira");
  g_assert_false (lap_document_is_modified (document));
}

/* Saved in another folder, the file names the same session, and so it does after undo and in a copy. */
static void
test_save_elsewhere (void)
{
  Place place;
  g_autoptr (LapDocument) document = NULL, copy = NULL, again = NULL;
  g_autofree char *inner = NULL, *path = NULL, *text = NULL, *copied = NULL;
  g_autoptr (GError) error = NULL;
  LapClassFacts facts;

  place_begin (&place);
  inner = g_build_filename (place.folder, "spring", NULL);
  path = g_build_filename (inner, "spring.lapweek", NULL);
  copied = g_build_filename (inner, "copy.lapweek", NULL);
  g_assert_cmpint (g_mkdir (inner, 0755), ==, 0);
  document = read_week (&place);
  rename_week (document, "Spring");
  copy = lap_document_duplicate (document);
  save (document, path);
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_CLEAN);
  g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
  g_assert_nonnull (strstr (text, "\"../plans/squats.lapwing\""));
  lap_document_undo (document);
  lap_class_facts (week_class (document, "dawn"), lap_document_attachments (document), &facts);
  g_assert_true (facts.found);
  lap_class_facts (week_class (copy, "dawn"), lap_document_attachments (copy), &facts);
  g_assert_true (facts.found);
  save (copy, copied);
  again = lap_document_read (copied, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (lap_document_title (again), ==, "Spring, copy");
  lap_class_facts (week_class (again, "dawn"), lap_document_attachments (again), &facts);
  g_assert_true (facts.found);
  place_end (&place);
}

static void
changed_cb (gboolean *changed)
{
  *changed = TRUE;
}

/* The session is written by somebody, moved and put back: the checkup knows. Ends by the time limit of the test. */
static void
test_sessions (void)
{
  Place place;
  g_autoptr (LapDocument) document = NULL;
  g_autofree char *session = NULL, *moved = NULL;
  gboolean changed = FALSE;

  place_begin (&place);
  session = g_build_filename (place.folder, "plans", "squats.lapwing", NULL);
  moved = g_build_filename (place.folder, "squats.lapwing", NULL);
  document = read_week (&place);
  g_signal_connect_swapped (document, "changed", G_CALLBACK (changed_cb), &changed);
  g_assert_false (week_says (document, "slot-short"));
  week_put_session (place.path, 2701);
  while (!week_says (document, "slot-short"))
    g_main_context_iteration (NULL, TRUE);
  g_assert_true (changed);
  g_assert_cmpint (g_rename (session, moved), ==, 0);
  while (!week_says (document, "session-missing"))
    g_main_context_iteration (NULL, TRUE);
  for (guint i = 0; i < lap_checkup_n (lap_document_checkup (document)); i++) {
    const LapWarning *w = lap_checkup_nth (lap_document_checkup (document), i);
    g_autoptr (GPtrArray) remedies = NULL;

    if (!g_str_equal (w->check->id, "session-missing"))
      continue;
    remedies = lap_warning_remedies (lap_document_checkup (document), w);
    lap_document_apply (document, lap_edits_copy (((LapRemedy *) remedies->pdata[0])->edits));
    break;
  }
  g_assert_false (week_says (document, "session-missing"));
  g_assert_cmpstr (week_class (document, "dawn")->session, ==, moved);
  g_assert_false (week_says (document, "unknown-member"));
  place_end (&place);
}

static void
test_reload (void)
{
  Place place;
  g_autoptr (LapDocument) document = NULL;
  g_autoptr (GError) error = NULL;

  place_begin (&place);
  document = read_week (&place);
  rename_week (document, "Other");
  g_assert_true (lap_document_reload (document, &error));
  g_assert_no_error (error);
  g_assert_cmpstr (lap_document_title (document), ==, "Harbour");
  g_assert_false (lap_document_is_modified (document));
  lap_document_undo (document);
  g_assert_cmpstr (lap_document_title (document), ==, "Other");
  /* Another kind of file in its place is told, and the week stays. */
  put_text (place.path, "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"x\", \"title\": \"t\", \"parts\": []}");
  g_assert_false (lap_document_reload (document, &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  g_assert_cmpstr (lap_document_title (document), ==, "Other");
  place_end (&place);
}

static void
test_recover (void)
{
  Place place;
  g_autoptr (LapDocument) document = NULL, found = NULL;
  g_autoptr (GBytes) draft = NULL;
  g_autoptr (GError) error = NULL;
  LapClassFacts facts;

  place_begin (&place);
  document = read_week (&place);
  rename_week (document, "Left behind");
  draft = lap_document_bytes (document);
  found = lap_document_recover (draft, place.path, lap_document_etag (document), &error);
  g_assert_no_error (error);
  g_assert_cmpint (lap_document_state (found), ==, LAP_DOCUMENT_RECOVERED);
  g_assert_cmpstr (lap_document_title (found), ==, "Left behind");
  lap_class_facts (week_class (found, "dawn"), lap_document_attachments (found), &facts);
  g_assert_true (facts.found);
  save (found, NULL);
  g_assert_cmpint (lap_document_state (found), ==, LAP_DOCUMENT_CLEAN);
  place_end (&place);
}

static void
test_newer (void)
{
  Place place;
  g_autoptr (LapDocument) document = NULL;
  g_auto (GStrv) halves = g_strsplit (week_text, "\"version\": 1", 2);
  g_autofree char *newer = g_strjoinv ("\"version\": 2", halves);

  place_begin (&place);
  put_text (place.path, newer);
  document = read_week (&place);
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_READ_ONLY);
  place_end (&place);
}

/* A dated week is looked at, not edited. */
static void
test_date (void)
{
  g_autoptr (LapDocument) document = week_document ();
  const int thursday = lap_date_parse ("2027-01-14");
  LapWeek *week = lap_document_week (document);
  g_autoptr (LapRows) away = lap_rows_new (&lap_kind_closed);
  LapClosed *span = lap_rows_add (away);

  span->from = thursday - 3;
  span->until = thursday;
  g_assert_true (lap_document_apply (document, lap_verb_set_aways (week, lap_week_coach (week, "mira"), away)));
  g_assert_false (week_says (document, "coach-away"));
  lap_document_set_date (document, thursday);
  g_assert_cmpint (lap_document_date (document), ==, lap_date_parse ("2027-01-11"));
  g_assert_true (week_says (document, "coach-away"));
  lap_document_set_date (document, thursday + 7);
  g_assert_false (week_says (document, "coach-away"));
  lap_document_set_date (document, 0);
  g_assert_cmpint (lap_document_date (document), ==, 0);
  lap_document_undo (document);
  g_assert_false (lap_document_is_modified (document));
}

static void
count_cb (LapDocument *document, gpointer n)
{
  ++*(guint *) n;
}

/* The document of a window doesn't wait for other files: what they say comes with one change, which is no edit. */
static void
test_waiting (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (LapDocument) document = NULL;
  g_autofree char *etag = NULL;
  LapClassFacts facts;
  guint n = 0;
  Place place;

  place_begin (&place);
  bytes = lap_read_file (place.path, &etag, &error);
  g_assert_no_error (error);
  document = lap_document_from_file (bytes, place.path, etag, &error);
  g_assert_no_error (error);
  lap_class_facts (week_class (document, "dawn"), lap_document_attachments (document), &facts);
  g_assert_false (facts.named);
  g_assert_false (week_says (document, "session-missing"));
  g_signal_connect (document, "changed", G_CALLBACK (count_cb), &n);
  lap_document_read_sessions (document);
  lap_class_facts (week_class (document, "dawn"), lap_document_attachments (document), &facts);
  g_assert_true (facts.found);
  g_assert_cmpint (facts.length, ==, 1200);
  g_assert_false (lap_document_is_modified (document));
  lap_document_read_sessions (document);
  g_assert_cmpuint (n, ==, 1);
  place_end (&place);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/week-document/read", test_read);
  g_test_add_func ("/week-document/edit", test_edit);
  g_test_add_func ("/week-document/impossible", test_impossible);
  g_test_add_func ("/week-document/save-elsewhere", test_save_elsewhere);
  g_test_add_func ("/week-document/sessions", test_sessions);
  g_test_add_func ("/week-document/reload", test_reload);
  g_test_add_func ("/week-document/recover", test_recover);
  g_test_add_func ("/week-document/newer", test_newer);
  g_test_add_func ("/week-document/date", test_date);
  g_test_add_func ("/week-document/waiting", test_waiting);
  return g_test_run ();
}
