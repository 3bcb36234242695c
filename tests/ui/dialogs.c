/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every dialog by keyboard alone: Tab leads to each control that can be used, and Escape closes the dialog without a
 * change of the plan.
 */
#include "ui/windows.h"

#define STEPS 400 /* more than there are stops in any dialog */

static const char *const actions[] = { "win.properties", "win.export", "win.publish", "win.order", "win.mend",
                                       "win.adapt", "app.new" };

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

static void
test_dialog (gconstpointer action)
{
  LapWindow *window = windows_demo ();
  g_autofree char *before = windows_text (window), *after = NULL;
  g_autoptr (GtkWindow) dialog = NULL;
  g_autoptr (GHashTable) visited = NULL;
  g_autoptr (GString) missed = g_string_new (NULL);

  gtk_widget_activate_action (GTK_WIDGET (window), action, NULL);
  windows_settle (window);
  dialog = windows_dialog (window);
  gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
  visited = walk (dialog);
  g_assert_cmpuint (g_hash_table_size (visited), >, 1);
  look_for_missed (visited, GTK_WIDGET (dialog), missed);
  if (missed->len > 0)
    g_test_message ("%s", missed->str);
  g_assert_cmpstr (missed->str, ==, "");
  g_assert_true (windows_press (gtk_window_get_focus (dialog), "Escape"));
  windows_settle (window);
  g_assert_false (gtk_widget_get_visible (GTK_WIDGET (dialog)));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_clear_object (&dialog);
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
  return g_test_run ();
}
