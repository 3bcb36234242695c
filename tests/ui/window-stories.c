/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A window is a document: files dragged in from another program's window, the sessions of a week's classes, and one out
 * of ten thousand in the list, by a mouse and a keyboard that the X server makes.
 */
#include "ui/stories.h"

#include "store/folder.h"
#include "ui/library.h"
#include "ui/week-window.h"

#include <glib/gstdio.h>
#include <string.h>

#define FILES     "--files"
#define SIDE      80 /* px of the other program's window, in the corner of the screen */
#define MANY      10000
#define THE_ONE   4242

/* The other program */

/* A window full of files to drag, in a program of its own: says that it is there, and is ended by whoever started it. */
G_GNUC_NORETURN static void
be_file_manager (int argc, char **argv)
{
  GtkDragSource *source = gtk_drag_source_new ();
  GtkWidget *window;
  GSList *files = NULL;
  g_auto (GValue) value = G_VALUE_INIT;
  g_autoptr (GdkContentProvider) content = NULL;

  gtk_init ();
  for (int i = 2; i < argc; i++)
    files = g_slist_append (files, g_file_new_for_path (argv[i]));
  g_value_init (&value, GDK_TYPE_FILE_LIST);
  g_value_take_boxed (&value, gdk_file_list_new_from_list (files));
  content = gdk_content_provider_new_for_value (&value);
  gtk_drag_source_set_content (source, content);
  window = gtk_window_new ();
  gtk_window_set_decorated (GTK_WINDOW (window), FALSE);
  gtk_window_set_default_size (GTK_WINDOW (window), SIDE, SIDE);
  gtk_widget_add_controller (window, GTK_EVENT_CONTROLLER (source));
  gtk_window_present (GTK_WINDOW (window));
  gtk_test_widget_wait_for_draw (window);
  g_print ("\n");
  for (;;)
    g_main_context_iteration (NULL, TRUE);
}

static GSubprocess *
start_file_manager (const char *program, const char *const *paths)
{
  g_autoptr (GPtrArray) command = g_ptr_array_new ();
  g_autoptr (GError) error = NULL;
  GSubprocess *process;
  char ready;

  g_ptr_array_add (command, (gpointer) program);
  g_ptr_array_add (command, (gpointer) FILES);
  for (guint i = 0; paths[i] != NULL; i++)
    g_ptr_array_add (command, (gpointer) paths[i]);
  g_ptr_array_add (command, NULL);
  process = g_subprocess_newv ((const char *const *) command->pdata, G_SUBPROCESS_FLAGS_STDOUT_PIPE, &error);
  g_assert_no_error (error);
  g_assert_cmpint (g_input_stream_read (g_subprocess_get_stdout_pipe (process), &ready, 1, NULL, NULL), ==, 1);
  return process;
}

static const char *program;

static gboolean
is_over (gpointer target)
{
  return gtk_drop_target_get_current_drop (target) != NULL;
}

/* All windows begin in the corner of the screen, where no manager puts them elsewhere. */
static void
drag_files_to (GtkWindow *window, const char *const *paths)
{
  g_autoptr (GSubprocess) manager = NULL;
  GtkWidget *widget = GTK_WIDGET (window);
  GtkDropTarget *target = windows_controller (widget, GTK_TYPE_DROP_TARGET);

  hands_on (window);
  manager = start_file_manager (program, paths);
  hands_move (widget, SIDE / 2, SIDE / 2);
  hands_button (GDK_BUTTON_PRIMARY, TRUE);
  /* The other program takes part when it likes. */
  for (int i = 0; !is_over (target); i = (i + 1) % 100)
    hands_move (widget, 2 * SIDE + 3 * i, 2 * SIDE + i);
  hands_button (GDK_BUTTON_PRIMARY, FALSE);
  while (is_over (target))
    g_main_context_iteration (NULL, TRUE);
  g_subprocess_force_exit (manager);
}

static gboolean
are_three (gpointer data)
{
  return stories_n_windows () == 3;
}

/* Two plans, one of which is open already, and something that isn't one. */
static void
test_drag (void)
{
  char *folder = folder_new ();
  g_autofree char *one = g_build_filename (folder, "one.lapwing", NULL), *two = g_build_filename (folder, "two ä.lapwing", NULL);
  g_autofree char *bad = g_build_filename (folder, "bad.lapwing", NULL);
  const char *const paths[] = { one, bad, two, NULL };
  LapWindow *demo, *first, *second;
  GtkWindow *dialog;

  stories_put_plan (one, "One");
  stories_put_plan (two, "Two");
  put_text (bad, "{");
  first = windows_open (one);
  demo = windows_demo (); /* above it */
  drag_files_to (GTK_WINDOW (demo), paths);
  hands_until (are_three, NULL);
  dialog = stories_dialog (ADW_TYPE_MESSAGE_DIALOG);
  g_assert_nonnull (strstr (adw_message_dialog_get_body (ADW_MESSAGE_DIALOG (dialog)), "bad.lapwing"));
  hands_press ("Escape");
  stories_away (NULL, ADW_TYPE_MESSAGE_DIALOG);
  g_assert_cmpuint (stories_n_windows (), ==, 3);
  windows_close (first);
  second = stories_other (demo);
  g_assert_cmpstr (stories_title (second), ==, "Two");
  windows_close (second);
  windows_close (demo);
  folder_remove (folder);
}

/* The sessions of a week */

static LapClass *
current_of (LapWindow *week)
{
  return lap_week_scene_current (lap_week_view_scene (lap_week_window_view (LAP_WEEK_WINDOW (week))));
}

static gboolean
has_session (gpointer week)
{
  LapClass *c = current_of (week);

  return c != NULL && c->session != NULL;
}

/* Enter on a class opens its session in a window of its own; the button in the pane, or another class of the same
 * session, raises that. */
static void
test_class (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);
  LapWindow *week = windows_open (path), *session;
  const char *last;

  hands_on (GTK_WINDOW (week));
  stories_tab_to (GTK_WIDGET (lap_week_view_strip (lap_week_window_view (LAP_WEEK_WINDOW (week)))));
  hands_press ("Home");
  hands_press_until ("Right", has_session, week);
  hands_press ("Return");
  session = stories_other (week);
  g_assert_nonnull (lap_document_session (lap_window_document (session)));
  g_assert_cmpstr (lap_document_path (lap_window_document (session)), ==, current_of (week)->session);
  last = current_of (week)->id;
  hands_on (GTK_WINDOW (week));
  hands_press ("Return");
  g_assert_cmpuint (stories_n_windows (), ==, 2);
  hands_on (GTK_WINDOW (week));
  rows_by_mouse.press (GTK_WIDGET (lap_week_window_pane (LAP_WEEK_WINDOW (week))), "Open the session");
  g_assert_cmpuint (stories_n_windows (), ==, 2);
  hands_on (GTK_WINDOW (week));
  do
    hands_press ("Page_Down");
  while (!has_session (week) || g_str_equal (current_of (week)->id, last));
  windows_close (session);
  windows_close (week);
}

/* The views of each kind of document, by their keys. */
static void
test_views (void)
{
  static const char *const of_session[] = { "plan", "rehearse", "sheets", "script", NULL };
  static const char *const of_week[] = { "week", "sheets", NULL };
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);

  for (guint i = 0; i < 2; i++) {
    LapWindow *window = i == 0 ? windows_demo () : windows_open (path);
    const char *const *views = i == 0 ? of_session : of_week;

    hands_on (GTK_WINDOW (window));
    for (guint j = g_strv_length ((GStrv) views); j-- > 0;) {
      g_autofree char *keys = g_strdup_printf ("<Alt>%u", j + 1);

      hands_press (keys);
      g_assert_cmpstr (lap_window_view (window), ==, views[j]);
    }
    windows_close (window);
  }
}

/* The list */

static void
put_many (const char *folder)
{
  g_autofree char *first = g_build_filename (folder, "00000.lapwing", NULL), *text = NULL;
  g_auto (GStrv) pieces = NULL;

  stories_put_plan (first, "Session 00000");
  g_assert_true (g_file_get_contents (first, &text, NULL, NULL));
  pieces = g_strsplit (text, "Session 00000", 2);
  for (guint i = 1; i < MANY; i++) {
    g_autofree char *name = g_strdup_printf ("%05u.lapwing", i), *path = g_build_filename (folder, name, NULL);
    FILE *file = fopen (path, "w");

    g_assert_nonnull (file);
    fprintf (file, "%sSession %05u%s", pieces[0], i, pieces[1]);
    fclose (file);
  }
}

static gboolean
lists_one (gpointer library)
{
  return g_list_model_get_n_items (lap_library_list (library)) == 1;
}

static gboolean
lists_ten (gpointer library)
{
  return g_list_model_get_n_items (lap_library_list (library)) == 10;
}

static gboolean
has_read (gpointer library)
{
  return g_list_model_get_n_items (lap_library_list (library)) >= MANY && !lap_library_is_busy (library);
}

static GtkWindow *
open_list (LapWindow *over)
{
  hands_on (GTK_WINDOW (over));
  hands_press ("<Control>o");
  return stories_dialog (LAP_TYPE_LIBRARY);
}

/* The window that the list has opened, of the session called that. */
static void
expect (LapWindow *demo, const char *title)
{
  LapWindow *window = stories_other (demo);

  g_assert_cmpstr (stories_title (window), ==, title);
  stories_away (NULL, LAP_TYPE_LIBRARY);
  windows_close (window);
}

/* A folder is chosen, and a session looked for while it is read; others from what the list remembers: by Enter before
 * the search has begun, with the arrows, wherever the focus was. */
static void
test_many (void)
{
  char *folder = folder_new ();
  LapWindow *demo = windows_demo ();
  g_autoptr (LapIndexEntry) second = NULL;
  GtkWindow *library;

  put_many (folder);
  library = open_list (demo);
  hands_press ("F10");
  hands_press ("f"); /* Choose the folder */
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  hands_type (folder);
  hands_press ("Return");
  stories_away (NULL, GTK_TYPE_FILE_CHOOSER_DIALOG);
  hands_on (library);
  g_assert_cmpstr (lap_library_folder (LAP_LIBRARY (library)), ==, folder);
  hands_type ("04242");
  hands_until (lists_one, library);
  hands_press ("Return");
  expect (demo, "Session 04242");

  library = open_list (demo);
  hands_until (has_read, library);
  hands_type ("session 09999");
  hands_press ("Return");
  expect (demo, "Session 09999");

  library = open_list (demo);
  hands_type ("session 0777");
  hands_until (lists_ten, library);
  second = g_list_model_get_item (lap_library_list (LAP_LIBRARY (library)), 1);
  hands_press ("Down");
  hands_press ("Down");
  hands_press ("Return");
  expect (demo, second->facts.title);

  library = open_list (demo);
  hands_press ("<Shift>Tab");
  g_assert_true (GTK_IS_BUTTON (gtk_window_get_focus (library)));
  hands_type ("00007");
  hands_press ("Return");
  expect (demo, "Session 00007");
  windows_close (demo);
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  if (argc > 1 && g_str_equal (argv[1], FILES))
    be_file_manager (argc, argv);
  program = argv[0];
  windows_data_folder ();
  g_setenv ("XDG_CACHE_HOME", windows_data_folder (), TRUE);
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/window-stories/drag", test_drag);
  g_test_add_func ("/ui/window-stories/class", test_class);
  g_test_add_func ("/ui/window-stories/views", test_views);
  g_test_add_func ("/ui/window-stories/many", test_many);
  return g_test_run ();
}
