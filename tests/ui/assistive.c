/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a screen reader is told: in no view and no dialog is there a control without a name, and the controls that the
 * views are about are there by role and name. Read through AT-SPI, the desktop's own protocol, by another program.
 */
#include "edit/own.h"
#include "ui/library.h"
#include "ui/own-dialog.h"
#include "ui/part-properties.h"
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

/* All that has come up over @window, and goes again. */
static void
assert_over (LapWindow *window, const char *where)
{
  g_autoptr (GPtrArray) dialogs = g_ptr_array_new ();
  GListModel *windows = gtk_window_get_toplevels ();

  windows_settle (window);
  for (guint i = 0; i < g_list_model_get_n_items (windows); i++) {
    g_autoptr (GtkWidget) dialog = g_list_model_get_item (windows, i);

    if (dialog != GTK_WIDGET (window)) {
      gtk_test_widget_wait_for_draw (dialog);
      g_ptr_array_add (dialogs, dialog);
    }
  }
  g_assert_cmpuint (dialogs->len, >, 0);
  assert_all_named (where, gtk_window_get_title (GTK_WINDOW (window)));
  for (guint i = 0; i < dialogs->len; i++)
    gtk_window_destroy (dialogs->pdata[i]);
}

/* Each time the program is read it takes a while: all at once. */
static void
assert_dialogs (LapWindow *window, const char *const *actions, guint n)
{
  for (guint i = 0; i < n; i++)
    gtk_widget_activate_action (GTK_WIDGET (window), actions[i], NULL);
  g_assert_cmpuint (g_list_model_get_n_items (gtk_window_get_toplevels ()), ==, n + 1);
  assert_over (window, "dialogs");
}

/* Not the list of shortcuts and About: those windows are the libraries' own, and not all in them has a name. */
static void
test_dialogs (void)
{
  static const char *const actions[] = { "win.properties", "win.export", "win.publish", "win.order", "win.mend",
                                         "win.adapt", "win.choose", "app.new", "app.preferences" };
  LapWindow *window = windows_demo ();

  assert_dialogs (window, actions, G_N_ELEMENTS (actions));
  windows_close (window);
}

/* A part, an exercise of the session's own, and the question before closing. */
static void
test_of_session (void)
{
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);
  LapSession *session = lap_document_session (document);
  LapCatalogue *catalogue = lap_document_catalogue (document);
  g_autofree char *id = NULL;

  lap_part_properties_open (GTK_WINDOW (window), document, lap_session_nth (session, 1));
  lap_document_apply (document, lap_verb_make_own (session, lap_catalogue_find (catalogue, "squat"), "Harbour squat",
                                                   catalogue, &id));
  lap_own_dialog_open (GTK_WINDOW (window), document, id);
  gtk_window_close (GTK_WINDOW (window));
  g_assert_cmpuint (g_list_model_get_n_items (gtk_window_get_toplevels ()), ==, 4);
  assert_over (window, "what is about the session");
  windows_close (window);
}

static void
assert_popover (LapWindow *window, const char *where, GtkWidget *popover)
{
  gtk_popover_popup (GTK_POPOVER (popover));
  windows_settle (window);
  g_assert_true (gtk_widget_get_mapped (popover));
  assert_all_named (where, NULL);
  gtk_popover_popdown (GTK_POPOVER (popover));
}

/* What opens in the plan: the pane of a block, what can be chosen for it, words to find, a formula, the menu. */
static void
test_in_plan (void)
{
  LapWindow *window = windows_demo ();
  GtkWidget *root = GTK_WIDGET (window), *pane, *menu = windows_find (root, GTK_TYPE_MENU_BUTTON, "menu_button");

  windows_click_box (window, 9);
  windows_settle (window);
  pane = GTK_WIDGET (lap_window_pane (window));
  assert_popover (window, "choice of an exercise", windows_find (pane, GTK_TYPE_POPOVER, "popover"));
  gtk_widget_activate_action (root, "win.find", NULL);
  gtk_widget_activate_action (root, "win.formula", NULL);
  windows_settle (window);
  assert_all_named ("find and formula", NULL);
  gtk_menu_button_popup (GTK_MENU_BUTTON (menu));
  assert_popover (window, "menu", GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (menu))));
  windows_close (window);
}

static void
test_week (void)
{
  static const char *const views[] = { "sheets", "week" };
  LapWindow *window = windows_demo_week ();
  LapDocument *document = lap_window_document (window);
  GtkWidget *dates;

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
  dates = windows_find (GTK_WIDGET (window), GTK_TYPE_MENU_BUTTON, "choose");
  gtk_menu_button_popup (GTK_MENU_BUTTON (dates));
  assert_popover (window, "choice of a week", GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (dates))));
  windows_close (window);
}

/* Its properties are on three pages. */
static void
test_week_dialogs (void)
{
  static const char *const actions[] = { "win.properties", "win.import", "win.publish", "win.fill" };
  LapWindow *window = windows_demo_week ();
  LapWeek *week = lap_document_week (lap_window_document (window));
  LapWeekView *view = lap_week_window_view (LAP_WEEK_WINDOW (window));
  g_autoptr (GtkWindow) dialog = NULL;
  GtkWidget *stack;

  lap_week_view_show (view, LAP_CLASS (lap_list_nth (week->classes, 0))->id);
  gtk_widget_activate_action (GTK_WIDGET (view), "week.unplace", NULL);
  windows_settle (window);
  assert_dialogs (window, actions, G_N_ELEMENTS (actions));
  gtk_widget_activate_action (GTK_WIDGET (window), "win.properties", NULL);
  windows_settle (window);
  dialog = windows_dialog (window);
  stack = windows_find (GTK_WIDGET (dialog), ADW_TYPE_VIEW_STACK, NULL);
  for (GtkWidget *page = gtk_widget_get_first_child (stack); page != NULL; page = gtk_widget_get_next_sibling (page)) {
    adw_view_stack_set_visible_child (ADW_VIEW_STACK (stack), page);
    gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
    assert_all_named (adw_preferences_page_get_title (ADW_PREFERENCES_PAGE (page)), gtk_window_get_title (GTK_WINDOW (window)));
  }
  gtk_window_destroy (dialog);
  g_clear_object (&dialog);
  windows_close (window);
}

/* The windows beside those of documents. */
static void
test_other_windows (void)
{
  LapWindow *window = windows_demo ();
  LapRehearseWindow *rehearse;
  GtkWindow *library;

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
  g_test_add_func ("/ui/assistive/of-session", test_of_session);
  g_test_add_func ("/ui/assistive/in-plan", test_in_plan);
  g_test_add_func ("/ui/assistive/week", test_week);
  g_test_add_func ("/ui/assistive/week-dialogs", test_week_dialogs);
  g_test_add_func ("/ui/assistive/other-windows", test_other_windows);
  g_test_add_func ("/ui/assistive/plan", test_plan);
  return g_test_run ();
}
