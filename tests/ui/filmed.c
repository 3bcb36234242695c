/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A day of filming from its first key to its last file, by the clock on the wall: a take is broken off and taken
 * again, one is good, the talk runs long; the takes are kept in the file, the longer rest that is offered is taken,
 * and the program publishes it all. What it wrote is judged by filmed.py, which reads the files with the readers of
 * others.
 */
#include "ui/windows.h"

#include "store/folder.h"
#include "ui/rehearse/page.h"

static const char plan[] =
  "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"filmed\", \"title\": \"Filmed\", \"film\": {\"lead\": 2},"
  " \"parts\": [{\"kind\": \"main\", \"blocks\": ["
  "{\"exercise\": \"squat\", \"work\": 10, \"rest\": 5}, {\"exercise\": \"push-up\", \"work\": 10, \"rest\": 5}, "
  "{\"exercise\": \"plank\", \"work\": 10, \"rest\": 5}]}]}\n";

/* Of the session: where the push-up is broken off, where all is said the second time, and where it was good. */
enum { SQUAT_WAS_GOOD = 11, BROKEN_OFF = 18, SAID = 17, WAS_GOOD = 26, END = 40 };

static void
saved_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (GError) error = NULL;

  lap_document_save_finish (LAP_DOCUMENT (source), result, &error);
  g_assert_no_error (error);
}

static void
save (LapWindow *window)
{
  LapDocument *document = lap_window_document (window);

  lap_document_save (document, NULL, FALSE, saved_cb, NULL);
  while (lap_document_state (document) == LAP_DOCUMENT_SAVING)
    g_main_context_iteration (NULL, TRUE);
  windows_settle (window);
  g_assert_false (lap_document_is_modified (document));
}

/* Lets time pass until the session is at @second, or has ended. */
static void
run_to (LapScene *scene, int second)
{
  while (scene->state != LAP_REHEARSAL_DONE &&
         (scene->state == LAP_REHEARSAL_COUNT_IN || scene->clock < second * LAP_SECOND)) {
    /* A machine that was busy with something else looks as if it had slept. */
    if (scene->state == LAP_REHEARSAL_HELD)
      lap_rehearsal_start (scene->rehearsal, 0);
    g_main_context_iteration (NULL, TRUE);
  }
}

static void
film (LapRehearsePage *page)
{
  LapStage *stage = lap_rehearse_window_stage (lap_rehearse_page_open (page, 0));
  LapScene *scene = lap_stage_scene (stage);

  gtk_test_widget_wait_for_draw (GTK_WIDGET (stage));
  g_assert_true (windows_press (GTK_WIDGET (stage), "space"));
  run_to (scene, SQUAT_WAS_GOOD);
  g_assert_true (windows_press (GTK_WIDGET (stage), "g"));
  run_to (scene, BROKEN_OFF);
  g_assert_true (windows_press (GTK_WIDGET (stage), "r"));
  g_assert_cmpint (scene->clock, ==, 10 * LAP_SECOND);
  run_to (scene, SAID);
  g_assert_true (windows_press (GTK_WIDGET (stage), "s"));
  run_to (scene, WAS_GOOD);
  g_assert_true (windows_press (GTK_WIDGET (stage), "g"));
  run_to (scene, END);
  g_assert_cmpint (scene->state, ==, LAP_REHEARSAL_DONE);
  g_assert_true (windows_press (GTK_WIDGET (stage), "Escape"));
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

/* The button of the first edit that is offered. */
static GtkWidget *
offered (LapRehearsePage *page)
{
  GtkWidget *list = windows_find (GTK_WIDGET (page), GTK_TYPE_LIST_BOX, "list");
  GtkWidget *row = GTK_WIDGET (gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), 0));

  g_assert_nonnull (row);
  g_assert_nonnull (strstr (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (row)), "overran by "));
  return windows_find (row, GTK_TYPE_BUTTON, NULL);
}

static void
judge (const char *path, const char *when)
{
  g_autofree char *script = g_build_filename (g_getenv ("LAP_SOURCE"), "tests", "ui", "filmed.py", NULL);
  const char *const words[] = { "/usr/bin/python3", script, path, when, NULL };
  g_autofree char *said = NULL, *complaints = NULL;
  g_autoptr (GError) error = NULL;
  int status;

  g_spawn_sync (NULL, (char **) words, NULL, G_SPAWN_DEFAULT, NULL, NULL, &said, &complaints, &status, &error);
  g_assert_no_error (error);
  if (status != 0)
    g_test_message ("%s: %s%s", when, said, complaints);
  g_assert_cmpint (status, ==, 0);
}

static void
test_day (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "filmed.lapwing", NULL);
  LapRehearsePage *page;
  LapWindow *window;
  LapPart *part;

  put_text (path, plan);
  window = windows_open (path);
  part = lap_session_nth (lap_document_session (lap_window_document (window)), 0);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", "rehearse");
  page = LAP_REHEARSE_PAGE (windows_find (GTK_WIDGET (window), LAP_TYPE_REHEARSE_PAGE, NULL));
  film (page);
  save (window);
  judge (path, "as filmed");
  g_signal_emit_by_name (offered (page), "clicked");
  g_assert_cmpint (lap_part_nth (part, 0)->rest, >, 5);
  save (window);
  judge (path, "after the edit");
  windows_close (window);
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/filmed/day", test_day);
  return g_test_run ();
}
