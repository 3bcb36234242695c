/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people do with files, with a mouse and a keyboard that the X server makes: begin from a pasted list and from a
 * formula, close what isn't saved, go back to the file, take what somebody else wrote or write over it.
 */
#include "store/folder.h"
#include "ui/hands.h"
#include "ui/notice.h"
#include "ui/plan.h"
#include "ui/windows.h"

#include "ui/new.h"

#include <string.h>

/* The button or the entry of a menu in @widget that says @text. */
static GtkWidget *
that_says (GtkWidget *widget, const char *text)
{
  g_autofree char *said = NULL;

  if (GTK_IS_BUTTON (widget))
    said = g_strdup (gtk_button_get_label (GTK_BUTTON (widget)));
  else if (g_str_equal (G_OBJECT_TYPE_NAME (widget), "GtkModelButton"))
    g_object_get (widget, "text", &said, NULL);
  if (g_strcmp0 (said, text) == 0 && gtk_widget_get_mapped (widget))
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = that_says (child, text);

    if (found != NULL)
      return found;
  }
  return NULL;
}

static void
click_on (gpointer window, const char *text)
{
  GtkWidget *button = that_says (window, text);

  g_assert_nonnull (button);
  hands_point (button);
  hands_click (1, 1);
}

static gboolean
is_there (gpointer type)
{
  GListModel *windows = gtk_window_get_toplevels ();

  for (guint i = 0; i < g_list_model_get_n_items (windows); i++) {
    g_autoptr (GtkWidget) window = g_list_model_get_item (windows, i);

    if (g_type_is_a (G_OBJECT_TYPE (window), GPOINTER_TO_SIZE (type)) && gtk_widget_get_mapped (window))
      return TRUE;
  }
  return FALSE;
}

static gboolean
is_not_there (gpointer type)
{
  return !is_there (type);
}

/* The hands go to the dialog of @type that comes up over @window. */
static GtkWindow *
on_dialog (LapWindow *window, GType type)
{
  g_autoptr (GtkWindow) dialog = NULL;

  hands_until (is_there, GSIZE_TO_POINTER (type));
  dialog = windows_dialog (window);
  g_assert_true (g_type_is_a (G_OBJECT_TYPE (dialog), type));
  hands_on (dialog);
  return dialog; /* it is held by being open */
}

static void
away (LapWindow *window, GType type)
{
  hands_until (is_not_there, GSIZE_TO_POINTER (type));
  hands_on (GTK_WINDOW (window));
}

static const char *
title_of (LapWindow *window)
{
  return lap_document_title (lap_window_document (window));
}

/* The window that came beside @first. */
static LapWindow *
other_than (LapWindow *first)
{
  GtkApplication *application = gtk_window_get_application (GTK_WINDOW (first));

  for (GList *l = gtk_application_get_windows (application); l != NULL; l = l->next)
    if (LAP_IS_WINDOW (l->data) && l->data != (gpointer) first)
      return l->data;
  g_assert_not_reached ();
}

static gboolean
is_focused (gpointer widget)
{
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (gtk_widget_get_root (widget)));

  return focus != NULL && (focus == widget || gtk_widget_is_ancestor (focus, widget));
}

static void
type_into (GtkWindow *dialog, GType type, const char *id, const char *text)
{
  hands_press_until ("Tab", is_focused, windows_find (GTK_WIDGET (dialog), type, id));
  hands_type (text);
}

/* From a list, by keys alone; the line that isn't known is named before anything is made. */
static void
test_list (void)
{
  LapWindow *demo = windows_demo (), *window;
  GtkWindow *dialog;
  GtkWidget *told;

  hands_on (GTK_WINDOW (demo));
  hands_press ("<Control>n");
  dialog = on_dialog (demo, LAP_TYPE_NEW);
  type_into (dialog, ADW_TYPE_ENTRY_ROW, "name", "Pasted");
  type_into (dialog, GTK_TYPE_TEXT_VIEW, "list", "Squat");
  hands_press ("Return");
  hands_type ("Burpeez");
  hands_press ("Return");
  hands_type ("Plank");
  told = windows_find (GTK_WIDGET (dialog), GTK_TYPE_LABEL, "told");
  g_assert_nonnull (strstr (gtk_label_get_text (GTK_LABEL (told)), "Line 2, “Burpeez”"));
  hands_press_until ("Tab", is_focused, windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, "make"));
  hands_press ("Return");
  hands_until (is_not_there, GSIZE_TO_POINTER (LAP_TYPE_NEW));
  window = other_than (demo);
  windows_settle (window);
  g_assert_cmpstr (title_of (window), ==, "Pasted");
  g_assert_cmpuint (lap_part_n (lap_session_nth (lap_document_session (lap_window_document (window)), 0)), ==, 3);
  windows_close (window);
  windows_close (demo);
}

/* By a formula, the button by mouse; nothing can be made while the formula means nothing. */
static void
test_formula (void)
{
  LapWindow *demo = windows_demo (), *window;
  GtkWindow *dialog;
  GtkWidget *make;
  LapPart *part;

  hands_on (GTK_WINDOW (demo));
  hands_press ("<Control>n");
  dialog = on_dialog (demo, LAP_TYPE_NEW);
  make = windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, "make");
  type_into (dialog, ADW_TYPE_ENTRY_ROW, "formula", "45/15 x");
  g_assert_false (gtk_widget_is_sensitive (make));
  hands_type (" 6 x 3");
  g_assert_true (gtk_widget_is_sensitive (make));
  hands_point (make);
  hands_click (1, 1);
  hands_until (is_not_there, GSIZE_TO_POINTER (LAP_TYPE_NEW));
  window = other_than (demo);
  windows_settle (window);
  part = lap_session_nth (lap_document_session (lap_window_document (window)), 0);
  g_assert_cmpuint (lap_part_n (part), ==, 6);
  g_assert_cmpint (part->rounds, ==, 3);
  g_assert_cmpint (lap_part_nth (part, 0)->work, ==, 45);
  windows_close (window);
  windows_close (demo);
}

/* A window with the small plan in a file of its own, changed by a key. */
static LapWindow *
changed_plan (const char *path)
{
  g_autoptr (LapDocument) plan = plan_document ();
  g_autoptr (GBytes) bytes = lap_document_bytes (plan);
  LapWindow *window;

  g_assert_true (g_file_set_contents (path, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL));
  window = windows_open (path);
  windows_click_box (window, 0);
  hands_on (GTK_WINDOW (window));
  gtk_widget_grab_focus (GTK_WIDGET (windows_blocks (window)));
  hands_press ("plus");
  g_assert_true (lap_document_is_modified (lap_window_document (window)));
  return window;
}

static gboolean
is_clean (gpointer window)
{
  return lap_document_state (lap_window_document (window)) == LAP_DOCUMENT_CLEAN;
}

static gboolean
is_gone (gpointer window)
{
  return *(gpointer *) window == NULL;
}

/* Asked about on closing: kept open by Escape, closed without saving by mouse, saved and closed by Enter. */
static void
test_close (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL), *before = NULL, *mine = NULL, *after = NULL;
  LapWindow *window = changed_plan (path);
  GtkWindow *dialog;

  g_assert_true (g_file_get_contents (path, &before, NULL, NULL));
  hands_press ("<Control>w");
  on_dialog (window, ADW_TYPE_MESSAGE_DIALOG);
  hands_press ("Escape");
  away (window, ADW_TYPE_MESSAGE_DIALOG);
  g_assert_true (lap_document_is_modified (lap_window_document (window)));
  hands_press ("<Control>w");
  dialog = on_dialog (window, ADW_TYPE_MESSAGE_DIALOG);
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  click_on (dialog, "_Discard");
  hands_until (is_gone, &window);
  g_assert_true (g_file_get_contents (path, &after, NULL, NULL));
  g_assert_cmpstr (after, ==, before);
  g_clear_pointer (&after, g_free);

  window = changed_plan (path);
  mine = windows_text (window);
  hands_press ("<Control>w");
  on_dialog (window, ADW_TYPE_MESSAGE_DIALOG);
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  hands_press ("Return");
  hands_until (is_gone, &window);
  g_assert_true (g_file_get_contents (path, &after, NULL, NULL));
  g_assert_cmpstr (after, ==, mine);
  folder_remove (folder);
}

/* Back to what the file holds, from the menu by mouse; and that by undoing back again. */
static void
test_revert (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL), *mine = NULL, *now = NULL;
  LapWindow *window = changed_plan (path);
  GtkWidget *menu = windows_find (GTK_WIDGET (window), GTK_TYPE_MENU_BUTTON, "menu_button");

  mine = windows_text (window);
  hands_point (menu);
  hands_click (1, 1);
  click_on (gtk_menu_button_get_popover (GTK_MENU_BUTTON (menu)), "Go back to the file…");
  click_on (on_dialog (window, ADW_TYPE_MESSAGE_DIALOG), "_Go back");
  away (window, ADW_TYPE_MESSAGE_DIALOG);
  hands_until (is_clean, window);
  hands_press ("<Control>z");
  now = windows_text (window);
  g_assert_cmpstr (now, ==, mine);
  windows_close (window);
  folder_remove (folder);
}

static gboolean
is_changed_outside (gpointer window)
{
  return lap_document_state (lap_window_document (window)) == LAP_DOCUMENT_CHANGED_OUTSIDE;
}

/* Somebody else's file: taken by the button above the plan, or written over after a question. */
static void
test_theirs (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL), *mine = NULL, *after = NULL;
  LapWindow *window = changed_plan (path);
  g_autoptr (LapDocument) theirs = plan_document ();
  g_autoptr (GBytes) bytes = NULL;
  GtkWidget *notice = windows_find (GTK_WIDGET (window), LAP_TYPE_NOTICE, NULL);

  plan_rename (theirs, "Theirs");
  bytes = lap_document_bytes (theirs);
  g_assert_true (g_file_set_contents (path, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL));
  hands_until (is_changed_outside, window);
  mine = windows_text (window);
  click_on (notice, "Save _mine…");
  click_on (on_dialog (window, ADW_TYPE_MESSAGE_DIALOG), "_Replace");
  away (window, ADW_TYPE_MESSAGE_DIALOG);
  hands_until (is_clean, window);
  g_assert_true (g_file_get_contents (path, &after, NULL, NULL));
  g_assert_cmpstr (after, ==, mine);

  g_assert_true (g_file_set_contents (path, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL));
  hands_until (is_changed_outside, window);
  click_on (notice, "Take _theirs…");
  click_on (on_dialog (window, ADW_TYPE_MESSAGE_DIALOG), "_Go back");
  away (window, ADW_TYPE_MESSAGE_DIALOG);
  hands_until (is_clean, window);
  g_assert_cmpstr (title_of (window), ==, "Theirs");
  windows_close (window);
  folder_remove (folder);
}

/* A copy from the menu, by mouse: a window of its own, not saved yet. */
static void
test_duplicate (void)
{
  LapWindow *demo = windows_demo (), *copy;
  GtkWidget *menu = windows_find (GTK_WIDGET (demo), GTK_TYPE_MENU_BUTTON, "menu_button");

  hands_on (GTK_WINDOW (demo));
  hands_point (menu);
  hands_click (1, 1);
  click_on (gtk_menu_button_get_popover (GTK_MENU_BUTTON (menu)), "Duplicate");
  copy = other_than (demo);
  windows_settle (copy);
  g_assert_cmpstr (title_of (copy), ==, "Thirty on the Mat, copy");
  g_assert_true (lap_document_is_modified (lap_window_document (copy)));
  g_assert_null (lap_document_path (lap_window_document (copy)));
  windows_close (copy);
  windows_close (demo);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/file-stories/list", test_list);
  g_test_add_func ("/ui/file-stories/formula", test_formula);
  g_test_add_func ("/ui/file-stories/close", test_close);
  g_test_add_func ("/ui/file-stories/revert", test_revert);
  g_test_add_func ("/ui/file-stories/theirs", test_theirs);
  g_test_add_func ("/ui/file-stories/duplicate", test_duplicate);
  return g_test_run ();
}
