/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every dialog by keyboard alone: Tab leads to each control that can be used, and Escape closes the dialog without a
 * change of the plan or the week.
 */
#include "ui/windows.h"

#include "ui/own-dialog.h"
#include "ui/week-window.h"

#define STEPS 400 /* more than there are stops in any dialog */

static const char *const actions[] = { "win.properties", "win.export", "win.publish", "win.order", "win.mend",
                                       "win.adapt", "win.choose", "app.new", "app.preferences" };
static const char *const week_actions[] = { "win.properties", "win.publish", "win.import", "app.preferences" };

/* Goes on until the focus is where it was first; all it was on. */
static GHashTable *
walk (GtkWindow *dialog)
{
  GHashTable *visited = g_hash_table_new (NULL, NULL);

  gtk_window_set_focus (dialog, NULL);
  for (int i = 0; i < STEPS; i++) {
    GtkWidget *focus;

    if (!gtk_widget_child_focus (GTK_WIDGET (dialog), GTK_DIR_TAB_FORWARD))
      break;
    focus = gtk_window_get_focus (dialog);
    if (focus == NULL || !g_hash_table_add (visited, focus))
      break;
  }
  return visited;
}

static gboolean
is_control (GtkWidget *widget)
{
  return GTK_IS_BUTTON (widget) || GTK_IS_SWITCH (widget) || GTK_IS_TEXT (widget) || GTK_IS_TEXT_VIEW (widget) ||
         GTK_IS_DROP_DOWN (widget) || GTK_IS_CHECK_BUTTON (widget) || GTK_IS_SCALE (widget);
}

/* The focus was on it, or on what it is part of: a row is activated as a whole, and a number has its own + and −. */
static gboolean
is_reached (GHashTable *visited, GtkWidget *widget)
{
  if (g_hash_table_contains (visited, widget))
    return TRUE;
  for (GtkWidget *w = gtk_widget_get_parent (widget); w != NULL && !GTK_IS_WINDOW (w); w = gtk_widget_get_parent (w)) {
    if (GTK_IS_LIST_BOX_ROW (w) && g_hash_table_contains (visited, w))
      return TRUE;
    if (GTK_IS_SPIN_BUTTON (w) || GTK_IS_WINDOW_CONTROLS (w) || GTK_IS_POPOVER (w))
      return TRUE;
  }
  return FALSE;
}

static void
look_for_missed (GHashTable *visited, GtkWidget *widget, GString *missed)
{
  if (!gtk_widget_get_mapped (widget) || !gtk_widget_get_sensitive (widget))
    return;
  if (is_control (widget) && gtk_widget_get_focusable (widget) && !is_reached (visited, widget))
    g_string_append_printf (missed, "%s “%s” in %s\n", G_OBJECT_TYPE_NAME (widget),
                            GTK_IS_BUTTON (widget) && gtk_button_get_label (GTK_BUTTON (widget)) != NULL
                                ? gtk_button_get_label (GTK_BUTTON (widget)) : "",
                            G_OBJECT_TYPE_NAME (gtk_widget_get_parent (widget)));
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    look_for_missed (visited, child, missed);
}

static char *
text_of (LapWindow *window)
{
  g_autoptr (GBytes) bytes = lap_document_bytes (lap_window_document (window));

  return g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
}

/* The dialog that is open over @window, from the first control to the last, and away. */
static void
walk_dialog (LapWindow *window, const char *before)
{
  GtkWindow *dialog = windows_dialog (window);
  g_autofree char *after = NULL;
  g_autoptr (GHashTable) visited = NULL;
  g_autoptr (GString) missed = g_string_new (NULL);

  gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
  visited = walk (dialog);
  g_assert_cmpuint (g_hash_table_size (visited), >, 0);
  look_for_missed (visited, GTK_WIDGET (dialog), missed);
  if (missed->len > 0)
    g_test_message ("%s", missed->str);
  g_assert_cmpstr (missed->str, ==, "");
  g_assert_true (windows_press (gtk_window_get_focus (dialog), "Escape"));
  windows_settle (window);
  g_assert_false (gtk_widget_get_visible (GTK_WIDGET (dialog)));
  after = text_of (window);
  g_assert_cmpstr (after, ==, before);
  g_object_add_weak_pointer (G_OBJECT (dialog), (gpointer *) &dialog);
  g_object_unref (dialog);
  /* One that searches goes when the search has noticed. */
  while (dialog != NULL)
    g_main_context_iteration (NULL, TRUE);
}

static void
open_and_walk (LapWindow *window, const char *action)
{
  g_autofree char *before = text_of (window);

  gtk_widget_activate_action (GTK_WIDGET (window), action, NULL);
  windows_settle (window);
  walk_dialog (window, before);
}

static void
test_dialog (gconstpointer action)
{
  LapWindow *window = windows_demo ();

  open_and_walk (window, action);
  windows_close (window);
}

static LapWindow *
week_window (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);

  return windows_open (path);
}

static void
test_week_dialog (gconstpointer action)
{
  LapWindow *window = week_window ();

  open_and_walk (window, action);
  windows_close (window);
}

/* What places classes, with one that waits for its place. */
static void
test_fill (void)
{
  LapWindow *window = week_window ();
  LapWeekView *view = lap_week_window_view (LAP_WEEK_WINDOW (window));

  lap_week_view_show (view, LAP_CLASS (lap_list_nth (lap_document_week (lap_window_document (window))->classes, 0))->id);
  gtk_widget_activate_action (GTK_WIDGET (view), "week.unplace", NULL);
  windows_settle (window);
  open_and_walk (window, "win.fill");
  windows_close (window);
}

/* Questions: before closing, and before going back to the file. */
static void
test_questions (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "twelve-at-twelve.lapwing", NULL);
  g_autofree char *before = NULL;
  LapWindow *window = windows_open (path);

  windows_click_box (window, 2);
  g_assert_true (windows_press (GTK_WIDGET (windows_blocks (window)), "plus"));
  open_and_walk (window, "win.revert");
  before = text_of (window);
  gtk_window_close (GTK_WINDOW (window));
  windows_settle (window);
  walk_dialog (window, before);
  g_assert_true (gtk_widget_get_visible (GTK_WIDGET (window)));
  windows_close (window);
}

static void
test_own (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *before = text_of (window);

  lap_own_dialog_open (GTK_WINDOW (window), lap_window_document (window), "squat");
  windows_settle (window);
  walk_dialog (window, before);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  for (guint i = 0; i < G_N_ELEMENTS (actions); i++) {
    g_autofree char *path = g_strdup_printf ("/ui/dialogs/%s", actions[i] + 4);

    g_test_add_data_func (path, actions[i], test_dialog);
  }
  for (guint i = 0; i < G_N_ELEMENTS (week_actions); i++) {
    g_autofree char *path = g_strdup_printf ("/ui/dialogs/week/%s", week_actions[i] + 4);

    g_test_add_data_func (path, week_actions[i], test_week_dialog);
  }
  g_test_add_func ("/ui/dialogs/week/fill", test_fill);
  g_test_add_func ("/ui/dialogs/questions", test_questions);
  g_test_add_func ("/ui/dialogs/own", test_own);
  return g_test_run ();
}
