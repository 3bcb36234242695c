/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sessions that a week names: read once, read again when the file changes, found where they were moved to, and how a
 * path beside the week is spelt. What a week reads from one: the demo sessions' own figures.
 */
#include "effort/attached.h"
#include "store/session-folder.h"

#include <glib/gstdio.h>

#define SESSION "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"%s\", \"title\": \"t\", \"parts\": [" \
                "{\"kind\": \"main\", \"blocks\": [{\"exercise\": \"squat\", \"work\": 40, \"rest\": 20}]}]}"

static void
put (const char *folder, const char *name, const char *id)
{
  g_autofree char *path = g_build_filename (folder, name, NULL), *text = g_strdup_printf (SESSION, id);
  g_autofree char *inner = g_path_get_dirname (path);

  g_assert_cmpint (g_mkdir_with_parents (inner, 0755), ==, 0);
  g_assert_true (g_file_set_contents (path, text, -1, NULL));
}

static void
test_load (void)
{
  g_autofree char *dir = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *week = g_build_filename (dir, "w.lapweek", NULL);
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new (week);
  g_autofree char *file = g_build_filename (dir, "a.lapwing", NULL);
  g_autoptr (GError) error = NULL;
  LapSession *session;

  put (dir, "a.lapwing", "first");
  session = lap_session_folder_load ("a.lapwing", folder, NULL);
  g_assert_cmpstr (session->id, ==, "first");
  g_assert_true (lap_session_folder_load ("a.lapwing", folder, NULL) == session);
  g_assert_false (lap_session_folder_refresh (folder));
  put (dir, "a.lapwing", "the second, of another size");
  g_assert_true (lap_session_folder_load ("a.lapwing", folder, NULL) == session);
  g_assert_true (lap_session_folder_refresh (folder));
  g_assert_cmpstr (lap_session_folder_load ("a.lapwing", folder, NULL)->id, ==, "the second, of another size");
  g_assert_cmpint (g_remove (file), ==, 0);
  g_assert_true (lap_session_folder_refresh (folder));
  g_assert_null (lap_session_folder_load ("a.lapwing", folder, &error));
  g_assert_nonnull (error);
  g_assert_false (lap_session_folder_refresh (folder));
  put (dir, "a.lapwing", "back");
  g_assert_true (lap_session_folder_refresh (folder));
  g_assert_nonnull (lap_session_folder_load ("a.lapwing", folder, NULL));
  g_assert_cmpint (g_remove (file), ==, 0);
  g_rmdir (dir);
}

static void
test_bad (void)
{
  g_autofree char *dir = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *week = g_build_filename (dir, "w.lapweek", NULL);
  g_autofree char *file = g_build_filename (dir, "a.lapwing", NULL);
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new (week);
  g_autoptr (GError) error = NULL;

  g_assert_true (g_file_set_contents (file, "{}", -1, NULL));
  g_assert_null (lap_session_folder_load ("a.lapwing", folder, &error));
  g_assert_cmpstr (error->message, ==, "a.lapwing: line 1: a session needs the member \"format\"");
  g_assert_cmpint (g_remove (file), ==, 0);
  g_rmdir (dir);
}

static void
test_seek (void)
{
  g_autofree char *dir = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *week = g_build_filename (dir, "w.lapweek", NULL);
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new (week);
  g_autofree char *found = NULL, *file = NULL, *inner = NULL;

  g_assert_null (lap_session_folder_seek ("old/a.lapwing", folder));
  put (dir, "plans/a.lapwing", "a");
  found = lap_session_folder_seek ("old/a.lapwing", folder);
  g_assert_cmpstr (found, ==, "plans/a.lapwing");
  file = lap_session_folder_file (folder, found);
  g_assert_true (g_file_test (file, G_FILE_TEST_EXISTS));
  g_assert_cmpint (g_remove (file), ==, 0);
  inner = g_build_filename (dir, "plans", NULL);
  g_rmdir (inner);
  g_rmdir (dir);
}

static void
test_path (void)
{
  static const struct { const char *file, *path; } rows[] = {
    { "/house/weeks/a.lapwing", "a.lapwing" },
    { "/house/weeks/plans/a.lapwing", "plans/a.lapwing" },
    { "/house/plans/a.lapwing", "../plans/a.lapwing" },
    { "/house/weeks2/a.lapwing", "../weeks2/a.lapwing" },
    { "/elsewhere/a.lapwing", "../../elsewhere/a.lapwing" },
  };
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new ("/house/weeks/w.lapweek");
  g_autoptr (LapSessionFolder) nowhere = lap_session_folder_new (NULL);
  g_autofree char *whole = lap_session_folder_path (nowhere, "/house/a.lapwing");

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autofree char *path = lap_session_folder_path (folder, rows[i].file);
    g_autofree char *file = lap_session_folder_file (folder, rows[i].path);

    g_assert_cmpstr (path, ==, rows[i].path);
    g_assert_cmpstr (file, ==, rows[i].file);
  }
  g_assert_cmpstr (whole, ==, "/house/a.lapwing");
}

/* What is computed is kept for as long as the session stays the same object. */
static void
test_attached (void)
{
  g_autofree char *demo = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "w.lapweek", NULL);
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new (demo);
  const LapSessionSource source = { lap_session_folder_load, lap_session_folder_seek, folder };
  g_autoptr (LapAttachments) attachments = lap_attachments_new (&source);
  g_autoptr (GError) error = NULL;
  const LapAttached *twelve = lap_attachments_find (attachments, "twelve-at-twelve.lapwing", &error);

  g_assert_no_error (error);
  g_assert_cmpint (twelve->length, >, 600);
  g_assert_cmpuint (twelve->regions, !=, 0);
  g_assert_true (lap_attachments_find (attachments, "twelve-at-twelve.lapwing", NULL) == twelve);
  g_assert_null (lap_attachments_find (attachments, "gone.lapwing", &error));
  g_assert_nonnull (error);
}

static void
test_no_source (void)
{
  const LapSessionSource source = { NULL };
  g_autoptr (LapAttachments) attachments = lap_attachments_new (&source);

  g_assert_null (lap_attachments_find (attachments, "a.lapwing", NULL));
  g_assert_null (lap_attachments_seek (attachments, "a.lapwing"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/session-folder/load", test_load);
  g_test_add_func ("/session-folder/bad", test_bad);
  g_test_add_func ("/session-folder/seek", test_seek);
  g_test_add_func ("/session-folder/path", test_path);
  g_test_add_func ("/session-folder/attached", test_attached);
  g_test_add_func ("/session-folder/no-source", test_no_source);
  return g_test_run ();
}
