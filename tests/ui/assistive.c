/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a screen reader is told: in no view and no dialog is there a control without a name, and the controls that the
 * views are about are there by role and name. Read through AT-SPI, the desktop's own protocol, by another program.
 */
#include "ui/demo.h"
#include "ui/library.h"
#include "ui/preferences.h"
#include "ui/rehearse/page.h"
#include "ui/week-window.h"
#include "ui/windows.h"

#include <unistd.h>

static void
read_cb (GObject *process, GAsyncResult *result, gpointer data)
{
  *(GAsyncResult **) data = g_object_ref (result);
}

/* Runs the reader of AT-SPI on this program, which answers meanwhile; what it printed. */
static char *
reader (const char *flag, const char *value)
{
  g_autofree char *script = g_build_filename (g_getenv ("LAP_SOURCE"), "tests", "ui", "assistive.py", NULL);
  g_autofree char *pid = g_strdup_printf ("%d", getpid ());
  g_autoptr (GSubprocessLauncher) launcher = g_subprocess_launcher_new (G_SUBPROCESS_FLAGS_STDOUT_PIPE);
  g_autoptr (GSubprocess) process = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (GAsyncResult) result = NULL;
  char *out = NULL;

  /* Warnings of the bindings are not ours. */
  g_subprocess_launcher_unsetenv (launcher, "G_DEBUG");
  process = g_subprocess_launcher_spawn (launcher, &error, "/usr/bin/python3", script, pid, flag, value, NULL);
  g_assert_no_error (error);
  g_subprocess_communicate_utf8_async (process, NULL, NULL, read_cb, &result);
  while (result == NULL)
    g_main_context_iteration (NULL, TRUE);
  g_subprocess_communicate_utf8_finish (process, result, &out, NULL, &error);
  g_assert_no_error (error);
  g_assert_cmpint (g_subprocess_get_exit_status (process), ==, 0);
  return out;
}

static void
assert_all_named (const char *where, const char *but)
{
  g_autofree char *unnamed = reader (but != NULL ? "--but" : NULL, but);

  if (unnamed[0] != '\0')
    g_test_message ("%s:\n%s", where, unnamed);
  g_assert_cmpstr (unnamed, ==, "");
}

static void
test_views (void)
{
  static const char *const views[] = { "plan", "rehearse", "sheets", "script" };
  LapWindow *window = windows_demo ();

  for (guint i = 0; i < G_N_ELEMENTS (views); i++) {
    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", views[i]);
    windows_settle (window);
    assert_all_named (views[i], NULL);
  }
  windows_close (window);
}

/* Not the list of shortcuts and About: those windows are the libraries' own, and not all in them has a name. */
static void
test_dialogs (void)
{
  static const char *const actions[] = { "win.properties", "win.export", "win.publish", "win.order", "win.mend",
                                         "win.adapt", "win.choose", "app.new" };

  LapWindow *window = windows_demo ();

  for (guint i = 0; i < G_N_ELEMENTS (actions); i++) {
    g_autoptr (GtkWindow) dialog = NULL;

    gtk_widget_activate_action (GTK_WIDGET (window), actions[i], NULL);
    windows_settle (window);
    dialog = windows_dialog (window);
    assert_all_named (actions[i], "Thirty on the Mat");
    gtk_window_destroy (dialog);
  }
  windows_close (window);
}

static void
test_week (void)
{
  static const char *const views[] = { "sheets", "week" }, *const actions[] = { "win.properties", "win.import" };
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_demo_week (&error);
  LapWindow *window;

  g_assert_no_error (error);
  window = LAP_WINDOW (lap_application_show (LAP_APPLICATION (g_application_get_default ()), document));
  windows_settle (window);
  for (guint i = 0; i < G_N_ELEMENTS (views); i++) {
    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", views[i]);
    windows_settle (window);
    assert_all_named (views[i], NULL);
  }
  lap_week_view_show (lap_week_window_view (LAP_WEEK_WINDOW (window)),
                      LAP_CLASS (lap_list_nth (lap_document_week (document)->classes, 0))->id);
  lap_document_set_date (document, lap_date_parse ("2027-01-11"));
  windows_settle (window);
  assert_all_named ("a class on its date", NULL);
  for (guint i = 0; i < G_N_ELEMENTS (actions); i++) {
    g_autoptr (GtkWindow) dialog = NULL;

    gtk_widget_activate_action (GTK_WIDGET (window), actions[i], NULL);
    windows_settle (window);
    dialog = windows_dialog (window);
    assert_all_named (actions[i], "Kelpline Studio");
    gtk_window_destroy (dialog);
  }
  g_clear_object (&document);
  windows_close (window);
}

/* The windows beside those of documents, and the settings. */
static void
test_other_windows (void)
{
  LapWindow *window = windows_demo ();
  LapRehearseWindow *rehearse;
  GtkWindow *library, *settings;

  settings = lap_preferences_open (GTK_WINDOW (window));
  windows_settle (window);
  assert_all_named ("settings", "Thirty on the Mat");
  gtk_window_destroy (settings);
  lap_window_show_view (window, "rehearse");
  windows_settle (window);
  rehearse = lap_rehearse_page_open (LAP_REHEARSE_PAGE (windows_find (GTK_WIDGET (window), LAP_TYPE_REHEARSE_PAGE, NULL)),
                                     0);
  windows_settle (window);
  assert_all_named ("rehearsal", "Thirty on the Mat");
  gtk_window_destroy (GTK_WINDOW (rehearse));
  windows_close (window);
  library = lap_application_show_library (LAP_APPLICATION (g_application_get_default ()));
  gtk_test_widget_wait_for_draw (GTK_WIDGET (library));
  assert_all_named ("list of sessions", NULL);
  gtk_window_destroy (library);
}

/* The plan, as a reader goes through it. */
static void
test_plan (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *all = reader ("--all", NULL);

  g_assert_nonnull (strstr (all, "Squat, block 1 of 10, round 1, work 40 seconds, rest 20, starts at 5:25"));
  g_assert_nonnull (strstr (all, "entry “Find an exercise”"));
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/assistive/views", test_views);
  g_test_add_func ("/ui/assistive/dialogs", test_dialogs);
  g_test_add_func ("/ui/assistive/week", test_week);
  g_test_add_func ("/ui/assistive/other-windows", test_other_windows);
  g_test_add_func ("/ui/assistive/plan", test_plan);
  return g_test_run ();
}
