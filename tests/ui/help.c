/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * F1, pressed in each view and each dialog, through the X server, up to a program that shows help: one that writes down
 * which page it was asked for (freedesktop.org, Desktop Entry Specification 1.5: %u; the scheme "help" is yelp's).
 * Without such a program that is said.
 */
#include "ui/hands.h"
#include "ui/windows.h"

#include "edit/own.h"
#include "ui/help.h"
#include "ui/own-dialog.h"
#include "ui/preferences.h"
#include "ui/rehearse/page.h"
#include "ui/shelf-details.h"
#include "ui/warning-row.h"
#include "ui/week-window.h"

#include <glib/gstdio.h>
#include <string.h>
#include <unistd.h>

static char *asked; /* path: what the false viewer was asked for */

/* A viewer, and the choice of it, where GIO looks first. */
static void
install_viewer (void)
{
  g_autofree char *folder = g_build_filename (g_get_user_data_dir (), "applications", NULL);
  g_autofree char *viewer = g_build_filename (folder, "false-viewer.desktop", NULL);
  g_autofree char *choice = g_build_filename (folder, "mimeapps.list", NULL);
  g_autofree char *script = g_build_filename (g_get_user_data_dir (), "viewer", NULL);
  g_autofree char *text = NULL, *run = NULL;

  asked = g_build_filename (g_get_user_data_dir (), "asked", NULL);
  run = g_strdup_printf ("#!/bin/sh\nprintf '%%s' \"$1\" > '%s.new'\nmv '%s.new' '%s'\n", asked, asked, asked);
  text = g_strdup_printf ("[Desktop Entry]\nType=Application\nName=Viewer\nExec=%s %%u\nMimeType=x-scheme-handler/help;\n",
                          script);
  g_assert_cmpint (g_mkdir_with_parents (folder, 0700), ==, 0);
  g_assert_true (g_file_set_contents (script, run, -1, NULL));
  g_assert_cmpint (g_chmod (script, 0700), ==, 0);
  g_assert_true (g_file_set_contents (viewer, text, -1, NULL));
  g_assert_true (g_file_set_contents (choice, "[Default Applications]\nx-scheme-handler/help=false-viewer.desktop\n", -1,
                                      NULL));
}

static gboolean
was_asked (gpointer data)
{
  return g_file_test (asked, G_FILE_TEST_EXISTS);
}

/* A file that comes up wakes nobody. */
static gboolean
look_again (gpointer data)
{
  return G_SOURCE_CONTINUE;
}

static void
expect (GtkWindow *window, const char *page)
{
  g_autofree char *expected = g_strconcat ("help:lapwing/", page, NULL), *got = NULL;
  guint looks;

  g_test_message ("expects %s", page);
  g_remove (asked);
  gtk_test_widget_wait_for_draw (GTK_WIDGET (window));
  hands_on (window);
  hands_press ("F1");
  looks = g_timeout_add (20, look_again, NULL);
  hands_until (was_asked, NULL);
  g_source_remove (looks);
  g_assert_true (g_file_get_contents (asked, &got, NULL, NULL));
  g_assert_cmpstr (got, ==, expected);
}

static void
in_views (LapWindow *window, const char *const *views, guint n)
{
  for (guint i = 0; i < n; i++) {
    lap_window_show_view (window, views[2 * i]);
    windows_settle (window);
    gtk_window_set_focus (GTK_WINDOW (window), NULL);
    expect (GTK_WINDOW (window), views[2 * i + 1]);
  }
}

static void
in_dialogs (LapWindow *window, const char *const *dialogs, guint n)
{
  for (guint i = 0; i < n; i++) {
    GtkWindow *dialog;

    gtk_widget_activate_action (GTK_WIDGET (window), dialogs[2 * i], NULL);
    windows_settle (window);
    dialog = windows_dialog (window);
    expect (dialog, dialogs[2 * i + 1]);
    g_object_add_weak_pointer (G_OBJECT (dialog), (gpointer *) &dialog);
    gtk_window_close (dialog);
    g_object_unref (dialog);
    /* One that searches goes when the search has noticed. */
    while (dialog != NULL)
      g_main_context_iteration (NULL, TRUE);
  }
}

static void
test_session (void)
{
  static const char *const views[] = { "plan", "plan", "rehearse", "rehearse", "sheets", "sheets", "script", "script" };
  static const char *const dialogs[] = {
    "win.properties", "files#properties", "win.export", "sheets", "win.publish", "publish", "win.order", "arrange#order",
    "win.mend", "arrange#mend", "win.adapt", "arrange#adapt", "win.choose", "arrange#choose", "app.new", "files#new",
    "app.preferences", "files#settings", "win.shortcuts", "plan#keys",
  };
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);
  g_autofree char *id = NULL;
  GtkWidget *own;

  in_views (window, views, G_N_ELEMENTS (views) / 2);
  in_dialogs (window, dialogs, G_N_ELEMENTS (dialogs) / 2);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.find", NULL);
  windows_settle (window);
  expect (GTK_WINDOW (window), "plan#find");
  lap_document_apply (document, lap_verb_make_own (lap_document_session (document),
                                                   lap_catalogue_find (lap_document_catalogue (document), "squat"),
                                                   "Harbour squat", lap_document_catalogue (document), &id));
  own = lap_own_dialog_open (GTK_WINDOW (window), document, id);
  expect (GTK_WINDOW (own), "catalogue#own");
  gtk_window_close (GTK_WINDOW (own));
  windows_close (window);
}

static GtkWidget *
named (GtkWidget *widget, const char *name)
{
  if (g_str_equal (gtk_widget_get_name (widget), name))
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = named (child, name);

    if (found != NULL)
      return found;
  }
  return NULL;
}

/* What comes up over a window, for whom no type of its own says what it is about. */
static void
expect_over (LapWindow *window, const char *page)
{
  g_autoptr (GtkWindow) dialog = windows_dialog (window);

  expect (dialog, page);
  gtk_window_close (dialog);
  windows_settle (window);
}

/* Questions about the file, and what goes wrong in a view. */
static void
test_boxes (void)
{
  g_autofree char *path = g_build_filename (g_get_user_data_dir (), "plan.lapwing", NULL), *text = NULL;
  g_autofree char *demo = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "twelve-at-twelve.lapwing", NULL);
  LapWindow *window;
  GtkWidget *copy;

  g_assert_true (g_file_get_contents (demo, &text, NULL, NULL));
  g_assert_true (g_file_set_contents (path, text, -1, NULL));
  window = windows_open (path);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.revert", NULL);
  windows_settle (window);
  expect_over (window, "files");
  windows_click_box (window, 2);
  g_assert_true (windows_press (GTK_WIDGET (windows_blocks (window)), "plus"));
  gtk_window_close (GTK_WINDOW (window));
  windows_settle (window);
  expect_over (window, "files");
  lap_window_show_view (window, "sheets");
  windows_settle (window);
  gtk_window_set_focus (GTK_WINDOW (window), NULL);
  lap_window_tell_error (window, "It is so", "There is no paper");
  windows_settle (window);
  expect_over (window, "sheets");
  lap_window_show_view (window, "plan");
  windows_settle (window);
  lap_shelf_grid_go (lap_shelf_grid (lap_window_shelf (window)),
                     lap_catalogue_find (lap_document_catalogue (lap_window_document (window)), "squat"), FALSE);
  copy = windows_find (GTK_WIDGET (lap_window_shelf (window)), LAP_TYPE_SHELF_DETAILS, NULL);
  g_signal_emit_by_name (copy, "copy");
  windows_settle (window);
  expect_over (window, "catalogue#own");
  windows_close (window);
}

/* What opens over a part of a window. */
static void
test_popovers (void)
{
  LapWindow *window = windows_demo ();
  GtkWidget *root = GTK_WIDGET (window), *change, *lanes, *row;

  gtk_widget_activate_action (root, "win.formula", NULL);
  windows_settle (window);
  expect (GTK_WINDOW (window), "catalogue#formula");
  hands_press ("Escape");
  windows_click_box (window, 2);
  windows_settle (window);
  change = windows_find (GTK_WIDGET (lap_window_pane (window)), GTK_TYPE_MENU_BUTTON, "choose");
  gtk_menu_button_popup (GTK_MENU_BUTTON (change));
  windows_settle (window);
  expect (GTK_WINDOW (window), "catalogue");
  hands_press ("Escape");
  lanes = named (root, LAP_HELP_LANES);
  gtk_menu_button_popup (GTK_MENU_BUTTON (lanes));
  windows_settle (window);
  expect (GTK_WINDOW (window), "lanes#choose");
  hands_press ("Escape");
  row = windows_find (GTK_WIDGET (lap_window_warnings (window)), LAP_TYPE_WARNING_ROW, NULL);
  gtk_widget_grab_focus (row);
  expect (GTK_WINDOW (window), gtk_widget_get_name (row));
  g_assert_true (g_str_has_prefix (gtk_widget_get_name (row), "check-"));
  windows_close (window);
}

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
  expect (GTK_WINDOW (rehearse), "rehearse");
  gtk_window_destroy (GTK_WINDOW (rehearse));
  windows_close (window);
  library = lap_application_show_library (LAP_APPLICATION (g_application_get_default ()));
  expect (library, "files#list");
  gtk_window_destroy (library);
}

static void
test_week (void)
{
  static const char *const views[] = { "week", "timetable", "sheets", "sheets" };
  static const char *const dialogs[] = {
    "win.properties", "week#begin", "win.import", "timetable#spreadsheet", "win.publish", "publish",
  }, *const fill[] = { "win.fill", "timetable#fill" };
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);
  LapWindow *window = windows_open (path);
  LapWeekView *view;

  in_views (window, views, G_N_ELEMENTS (views) / 2);
  in_dialogs (window, dialogs, G_N_ELEMENTS (dialogs) / 2);
  lap_window_show_view (window, "week");
  gtk_widget_child_focus (GTK_WIDGET (lap_week_window_pane (LAP_WEEK_WINDOW (window))), GTK_DIR_TAB_FORWARD);
  expect (GTK_WINDOW (window), "week");
  gtk_menu_button_popup (GTK_MENU_BUTTON (windows_find (GTK_WIDGET (window), GTK_TYPE_MENU_BUTTON, "choose")));
  windows_settle (window);
  expect (GTK_WINDOW (window), "week#dates");
  hands_press ("Escape");
  view = lap_week_window_view (LAP_WEEK_WINDOW (window));
  lap_week_view_show (view, LAP_CLASS (lap_list_nth (lap_document_week (lap_window_document (window))->classes, 0))->id);
  gtk_widget_activate_action (GTK_WIDGET (view), "week.unplace", NULL);
  windows_settle (window);
  in_dialogs (window, fill, 1);
  windows_close (window);
}

static gboolean
is_told (gpointer data)
{
  GListModel *windows = gtk_window_get_toplevels ();

  return g_list_model_get_n_items (windows) > 1;
}

static void
test_without (void)
{
  LapWindow *window;
  g_autoptr (GtkWindow) dialog = NULL;
  g_autofree char *heading = NULL, *body = NULL;

  if (!g_test_subprocess ()) {
    g_test_trap_subprocess (NULL, 0, G_TEST_SUBPROCESS_INHERIT_STDERR);
    g_test_trap_assert_passed ();
    return;
  }
  window = windows_demo ();
  hands_on (GTK_WINDOW (window));
  hands_press ("F1");
  hands_until (is_told, NULL);
  dialog = windows_dialog (window);
  g_object_get (dialog, "heading", &heading, "body", &body, NULL);
  g_assert_cmpstr (heading, ==, "The help can’t be shown");
  g_assert_nonnull (strstr (body, "Yelp"));
  hands_on (dialog);
  hands_press ("Escape");
  windows_settle (window);
  g_assert_false (gtk_widget_get_visible (GTK_WIDGET (dialog)));
}

/* Of what is installed only the types of files, by which icons are read: no program that shows help. */
static void
leave_only_types (void)
{
  g_autofree char *folder = g_build_filename (windows_data_folder (), "types", NULL);
  g_autofree char *types = g_build_filename (folder, "mime", NULL);

  g_assert_cmpint (g_mkdir_with_parents (folder, 0700), ==, 0);
  g_assert_cmpint (symlink ("/usr/share/mime", types), ==, 0);
  g_setenv ("XDG_DATA_DIRS", folder, TRUE);
}

int
main (int argc, char **argv)
{
  /* Without a viewer: nothing of what is installed on the machine counts. */
  gboolean without = FALSE;

  for (int i = 1; i < argc; i++)
    without = without || g_str_equal (argv[i], "--GTestSubprocess");
  if (without)
    leave_only_types ();
  else
    windows_data_folder ();
  if (!without)
    install_viewer ();
  windows_init (&argc, &argv);
  g_test_add_func ("/help/session", test_session);
  g_test_add_func ("/help/boxes", test_boxes);
  g_test_add_func ("/help/week", test_week);
  g_test_add_func ("/help/popovers", test_popovers);
  g_test_add_func ("/help/other-windows", test_other_windows);
  g_test_add_func ("/help/without", test_without);
  return g_test_run ();
}
