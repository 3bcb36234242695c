/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a window has done in a worker: the window lives meanwhile, and what is given up leaves everything as it was.
 */
#include "ui/windows.h"

#include "place/plans.h"
#include "ui/export.h"
#include "ui/sheet-print.h"

#include <glib/gstdio.h>

static const LapSheetChoice choice = { .options = { .paper = LAP_PAPER_A3 }, .pieces = -1 };

/* A window with a plan of @n blocks. */
static LapWindow *
with_blocks (guint n)
{
  static const char *const ids[] = { "squat", "push-up", "plank", "glute-bridge", "star-jump" };
  g_autoptr (LapSession) session = lap_session_new ("Long");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);

  for (guint i = 0; i < n; i++)
    plan_add (part, lap_block_new_exercise (ids[i % G_N_ELEMENTS (ids)], 30, 10));
  return windows_show (session);
}

static gboolean
turn_cb (gpointer turns)
{
  (*(guint *) turns)++;
  return G_SOURCE_CONTINUE;
}

static void
test_alive (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.pdf", NULL);
  LapWindow *window = with_blocks (60);
  guint turns = 0, source = g_idle_add (turn_cb, &turns);
  g_autofree char *read = NULL;

  lap_export_to (window, lap_sheets_find ("poster"), &choice.options, -1, path);
  g_assert_false (gtk_widget_get_visible (GTK_WIDGET (windows_errand ())));
  windows_end_errand (NULL);
  g_source_remove (source);
  g_assert_cmpuint (turns, >, 50);
  g_assert_true (g_file_get_contents (path, &read, NULL, NULL));
  g_assert_true (g_str_has_prefix (read, "%PDF-"));
  g_unlink (path);
  g_rmdir (folder);
  windows_close (window);
}

static void
escape (GtkWindow *dialog)
{
  while (!gtk_widget_get_mapped (GTK_WIDGET (dialog)))
    g_main_context_iteration (NULL, TRUE);
  g_assert_nonnull (windows_find (GTK_WIDGET (dialog), GTK_TYPE_PROGRESS_BAR, NULL));
  g_assert_true (windows_press (GTK_WIDGET (dialog), "Escape"));
}

/* Given up by the keyboard while it is painted: the file that was there is as it was, and nothing is beside it. */
static void
test_give_up (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.pdf", NULL);
  LapWindow *window = with_blocks (600);
  g_autofree char *read = NULL;

  g_assert_true (g_file_set_contents (path, "of yesterday", -1, NULL));
  lap_export_to (window, lap_sheets_find ("poster"), &choice.options, -1, path);
  windows_end_errand (escape);
  g_assert_true (g_file_get_contents (path, &read, NULL, NULL));
  g_assert_cmpstr (read, ==, "of yesterday");
  g_unlink (path);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
  windows_close (window);
}

static void
cancel (GtkWindow *dialog)
{
  adw_message_dialog_response (ADW_MESSAGE_DIALOG (dialog), "cancel");
}

/* The same of pages for a printer: no print dialog comes, and nothing is printed. */
static void
test_not_printed (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.pdf", NULL);
  LapWindow *window = with_blocks (60);

  lap_sheet_print_dialog (window, lap_sheets_find ("poster"), &choice, path);
  windows_end_errand (cancel);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
  windows_close (window);
}

/* A window that is closed meanwhile takes nothing with it: the file is written. */
static void
test_closed (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.pdf", NULL);
  LapWindow *window = with_blocks (60), *other = windows_demo ();

  lap_export_to (window, lap_sheets_find ("poster"), &choice.options, -1, path);
  gtk_window_destroy (GTK_WINDOW (window));
  windows_end_errand (NULL);
  g_assert_cmpint (g_unlink (path), ==, 0);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
  windows_close (other);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/errand/alive", test_alive);
  g_test_add_func ("/ui/errand/give-up", test_give_up);
  g_test_add_func ("/ui/errand/not-printed", test_not_printed);
  g_test_add_func ("/ui/errand/closed", test_closed);
  return g_test_run ();
}
