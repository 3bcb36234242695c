/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a window does about its file: a draft that a crash left, somebody else who writes, going back, a copy.
 */
#include "store/drafts.h"
#include "store/folder.h"
#include "ui/notice.h"
#include "ui/plan.h"
#include "ui/saving.h"
#include "ui/windows.h"

#include <glib/gstdio.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

/* Leaves the draft of a renamed plan, as a program that was killed does. */
static void
leave_draft (const char *data)
{
  g_autofree char *folder = g_build_filename (data, "lapwing", "drafts", NULL);
  int status;
  pid_t child = fork ();

  g_assert_cmpint (child, >=, 0);
  if (child == 0) {
    LapDocument *document = plan_document ();

    plan_rename (document, "Left behind");
    _exit (lap_drafts_write (lap_drafts_new (folder, NULL), "left", NULL, NULL, lap_document_bytes (document), NULL) ? 0 : 1);
  }
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_cmpint (status, ==, 0);
}

static LapWindow *recovered; /* of the draft, opened when the program started */

static GtkWidget *
notice_of (LapWindow *window)
{
  return windows_find (GTK_WIDGET (window), LAP_TYPE_NOTICE, NULL);
}

/* Waits until @document is in @state; ends by the time limit of the test. */
static void
wait_for_state (LapDocument *document, LapDocumentState state)
{
  while (lap_document_state (document) != state)
    g_main_context_iteration (NULL, TRUE);
}

static void
test_recovered (void)
{
  LapDocument *document = lap_window_document (recovered);
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);

  g_assert_cmpstr (lap_document_title (document), ==, "Left behind");
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_RECOVERED);
  g_assert_true (gtk_widget_get_visible (notice_of (recovered)));
  lap_saving_to (recovered, path, FALSE);
  wait_for_state (document, LAP_DOCUMENT_CLEAN);
  g_assert_false (gtk_widget_get_visible (notice_of (recovered)));
  windows_settle (recovered);
  windows_close (recovered);
  folder_remove (folder);
}

static LapWindow *
saved_demo (const char *path)
{
  LapWindow *window = windows_demo ();

  lap_saving_to (window, path, FALSE);
  wait_for_state (lap_window_document (window), LAP_DOCUMENT_SAVING);
  wait_for_state (lap_window_document (window), LAP_DOCUMENT_CLEAN);
  return window;
}

/* Somebody else's file is noticed while it is written, taken on request, and that can be undone. */
static void
test_changed_outside (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);
  LapWindow *window = saved_demo (path);
  LapDocument *document = lap_window_document (window);
  g_autoptr (LapDocument) theirs = plan_document ();
  g_autoptr (GBytes) bytes = lap_document_bytes (theirs);
  g_autofree char *mine = windows_text (window), *now = NULL;
  g_autoptr (GError) error = NULL;

  g_assert_true (g_file_set_contents (path, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL));
  wait_for_state (document, LAP_DOCUMENT_CHANGED_OUTSIDE);
  g_assert_true (gtk_widget_get_visible (notice_of (window)));
  g_assert_true (lap_document_reload (document, &error));
  g_assert_no_error (error);
  g_assert_cmpstr (lap_document_title (document), ==, "Small");
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_CLEAN);
  windows_settle (window);
  lap_document_undo (document);
  now = windows_text (window);
  g_assert_cmpstr (now, ==, mine);
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_DIRTY);
  windows_settle (window);
  windows_close (window);
  folder_remove (folder);
}

/* A file that has become something else is told, and the plan stays. */
static void
test_reload_bad (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);
  LapWindow *window = saved_demo (path);
  g_autofree char *mine = windows_text (window), *now = NULL;
  g_autoptr (GError) error = NULL;

  g_assert_cmpint (g_unlink (path), ==, 0);
  put_text (path, "{\"format\": 3}");
  g_assert_false (lap_document_reload (lap_window_document (window), &error));
  g_assert_nonnull (error);
  now = windows_text (window);
  g_assert_cmpstr (now, ==, mine);
  windows_close (window);
  folder_remove (folder);
}

/* A copy shares nothing with what it was made of, not its identity either, and isn't saved yet. */
static void
test_duplicate (void)
{
  g_autoptr (LapDocument) plan = plan_document ();
  g_autoptr (LapDocument) copy = lap_document_duplicate (plan);

  g_assert_cmpstr (lap_document_title (copy), ==, "Small, copy");
  g_assert_cmpstr (lap_document_session (copy)->id, !=, lap_document_session (plan)->id);
  g_assert_true (lap_document_is_modified (copy));
  plan_rename (copy, "Other");
  g_assert_cmpstr (lap_document_title (plan), ==, "Small");
}

int
main (int argc, char **argv)
{
  g_autofree char *data = g_strdup (windows_data_folder ());

  leave_draft (data);
  windows_init (&argc, &argv);
  recovered = LAP_WINDOW (gtk_application_get_active_window (GTK_APPLICATION (g_application_get_default ())));
  g_test_add_func ("/recovery/recovered", test_recovered);
  g_test_add_func ("/recovery/changed-outside", test_changed_outside);
  g_test_add_func ("/recovery/reload-bad", test_reload_bad);
  g_test_add_func ("/recovery/duplicate", test_duplicate);
  return g_test_run ();
}
