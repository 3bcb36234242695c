/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/windows.h"

#include "store/documents.h"
#include "ui/arrange.h"
#include "ui/demo.h"
#include "ui/help.h"
#include "ui/quarks.h"
#include "ui/sheets-view.h"

#include <signal.h>
#include <unistd.h>

/* s: more than any of the programs takes, less than what the whole run may. */
#define PATIENCE 900

static LapApplication *application;

const char *
windows_data_folder (void)
{
  static char *folder;

  if (folder == NULL) {
    g_autofree char *name = g_strdup_printf ("lapwing-data-%d", getpid ());

    folder = g_build_filename (g_getenv ("HOME"), name, NULL);
    g_setenv ("XDG_DATA_HOME", folder, TRUE);
  }
  return folder;
}

/* The sanitizer prints the stack of what aborts. */
static void
stuck_cb (int signal)
{
  abort ();
}

void
windows_init (int *argc, char ***argv)
{
  g_autoptr (GError) error = NULL;

  signal (SIGALRM, stuck_cb);
  alarm (PATIENCE);
  windows_data_folder ();
  quarks_keep_first_table ();
  gtk_test_init (argc, argv, NULL);
  adw_init ();
  /* Nothing waits for a second click that may come. */
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", FALSE, "gtk-double-click-time", 0, NULL);
  application = lap_application_new ();
  g_application_set_flags (G_APPLICATION (application), G_APPLICATION_HANDLES_OPEN | G_APPLICATION_NON_UNIQUE);
  g_application_register (G_APPLICATION (application), NULL, &error);
  g_assert_no_error (error);
}

static gboolean
lays_out_pages (LapWindow *window)
{
  GtkWidget *view = g_strcmp0 (lap_window_view (window), "sheets") == 0
                      ? windows_find (GTK_WIDGET (window), LAP_TYPE_SHEETS_VIEW, NULL) : NULL;

  return view != NULL && gtk_widget_get_mapped (view) && lap_sheets_view_is_busy (LAP_SHEETS_VIEW (view));
}

void
windows_settle (LapWindow *window)
{
  gtk_test_widget_wait_for_draw (GTK_WIDGET (window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  while (lays_out_pages (window))
    g_main_context_iteration (NULL, TRUE);
}

LapWindow *
windows_demo (void)
{
  LapWindow *window = LAP_WINDOW (lap_application_open_demo (application));

  windows_settle (window);
  return window;
}

LapWindow *
windows_demo_week (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_demo_week (&error);
  LapWindow *window;

  g_assert_no_error (error);
  window = LAP_WINDOW (lap_application_show (application, document));
  windows_settle (window);
  return window;
}

LapWindow *
windows_open (const char *path)
{
  g_autoptr (GError) error = NULL;
  LapWindow *window = LAP_WINDOW (lap_application_open_path (application, path, &error));

  g_assert_no_error (error);
  windows_settle (window);
  return window;
}

LapWindow *
windows_show (LapSession *session)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_document_new (session, &error);
  LapWindow *window;

  g_assert_no_error (error);
  window = LAP_WINDOW (lap_session_window_new (GTK_APPLICATION (application), document));
  gtk_window_present (GTK_WINDOW (window));
  windows_settle (window);
  return window;
}

void
windows_close (LapWindow *window)
{
  gpointer document = lap_window_document (window), gone = window;
  gpointer context = LAP_IS_SESSION_WINDOW (window) ? lap_window_context (window) : NULL;

  g_object_add_weak_pointer (document, &document);
  if (context != NULL)
    g_object_add_weak_pointer (context, &context);
  g_object_add_weak_pointer (gone, &gone);
  gtk_window_destroy (GTK_WINDOW (window));
  for (int i = 0; i < 200 && (gone != NULL || document != NULL || context != NULL); i++) {
    g_main_context_iteration (NULL, FALSE);
    g_usleep (1000);
  }
  g_assert_null (gone);
  g_assert_null (context);
  g_assert_null (document);
}

guint
windows_first_main (LapWindow *window)
{
  LapScore *score = lap_window_context (window)->score;

  for (guint i = 0; i < score->n; i++)
    if (score->boxes[i].kind == LAP_BOX_EXERCISE &&
        score->timeline->parts[score->boxes[i].part].part->kind == LAP_PART_MAIN)
      return i;
  g_assert_not_reached ();
}

LapBlocksLane *
windows_blocks (LapWindow *window)
{
  return lap_score_view_blocks (lap_window_score (window));
}

gpointer
windows_controller (GtkWidget *widget, GType type)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (widget);

  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GObject) item = g_list_model_get_item (controllers, i);

    if (g_type_is_a (G_OBJECT_TYPE (item), type))
      return item;
  }
  g_assert_not_reached ();
}

void
windows_click (GtkWidget *widget, double x, double y)
{
  GtkGesture *click = windows_controller (widget, GTK_TYPE_GESTURE_CLICK);

  g_signal_emit_by_name (click, "pressed", 1, x, y);
  g_signal_emit_by_name (click, "released", 1, x, y);
}

void
windows_click_box (LapWindow *window, guint box)
{
  LapScoreContext *context = lap_window_context (window);
  LapPlaced placed = lap_score_place (context->score, context->axis, box);

  windows_click (GTK_WIDGET (windows_blocks (window)), placed.x + placed.width / 2.0, 20);
}

static gboolean
try_controller (GtkShortcutController *shortcuts, GtkWidget *widget, guint key, GdkModifierType modifiers)
{
  for (guint i = 0; i < g_list_model_get_n_items (G_LIST_MODEL (shortcuts)); i++) {
    g_autoptr (GtkShortcut) shortcut = g_list_model_get_item (G_LIST_MODEL (shortcuts), i);
    GtkShortcutTrigger *trigger = gtk_shortcut_get_trigger (shortcut);
    g_autoptr (GtkShortcutTrigger) wanted = gtk_keyval_trigger_new (key, modifiers);
    gboolean either = FALSE;

    if (GTK_IS_ALTERNATIVE_TRIGGER (trigger))
      either = gtk_shortcut_trigger_equal (gtk_alternative_trigger_get_first (GTK_ALTERNATIVE_TRIGGER (trigger)), wanted);
    if ((either || gtk_shortcut_trigger_equal (trigger, wanted)) &&
        gtk_shortcut_action_activate (gtk_shortcut_get_action (shortcut), GTK_SHORTCUT_ACTION_EXCLUSIVE, widget,
                                      gtk_shortcut_get_arguments (shortcut)))
      return TRUE;
  }
  return FALSE;
}

void
windows_drag (LapWindow *window, GtkWidget *widget, double x, double y, double dx, const char *last)
{
  GtkGesture *gesture = windows_controller (widget, GTK_TYPE_GESTURE_DRAG);

  g_signal_emit_by_name (gesture, "drag-begin", x, y);
  for (int i = 1; i <= 8; i++)
    g_signal_emit_by_name (gesture, "drag-update", dx * i / 8, 0.0);
  windows_settle (window);
  if (g_str_equal (last, "cancel"))
    g_signal_emit_by_name (gesture, "cancel", NULL);
  else
    g_signal_emit_by_name (gesture, last, dx, 0.0);
  windows_settle (window);
}

gboolean
windows_press (GtkWidget *widget, const char *keys)
{
  GdkModifierType modifiers;
  guint key;

  g_assert_true (gtk_accelerator_parse (keys, &key, &modifiers));
  for (; widget != NULL; widget = gtk_widget_get_parent (widget)) {
    g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (widget);

    for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
      g_autoptr (GObject) item = g_list_model_get_item (controllers, i);

      if (GTK_IS_SHORTCUT_CONTROLLER (item) &&
          try_controller (GTK_SHORTCUT_CONTROLLER (item), widget, key, modifiers))
        return TRUE;
    }
  }
  return FALSE;
}

GtkWidget *
windows_find (GtkWidget *widget, GType type, const char *id)
{
  if (g_type_is_a (G_OBJECT_TYPE (widget), type) &&
      (id == NULL || g_strcmp0 (gtk_buildable_get_buildable_id (GTK_BUILDABLE (widget)), id) == 0))
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = windows_find (child, type, id);

    if (found != NULL)
      return found;
  }
  return NULL;
}

static GtkWidget *
find_row (GtkWidget *widget, const char *title, gboolean hidden)
{
  if (!hidden && !gtk_widget_get_visible (widget))
    return NULL;
  if (ADW_IS_PREFERENCES_ROW (widget) &&
      g_strcmp0 (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (widget)), title) == 0)
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = find_row (child, title, hidden);

    if (found != NULL)
      return found;
  }
  return NULL;
}

GtkWidget *
windows_find_row (GtkWidget *widget, const char *title)
{
  return find_row (widget, title, TRUE);
}

GtkWidget *
windows_find_shown_row (GtkWidget *widget, const char *title)
{
  return find_row (widget, title, FALSE);
}

char *
windows_text (LapWindow *window)
{
  g_autoptr (GBytes) bytes = lap_session_to_bytes (lap_document_session (lap_window_document (window)));

  return g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
}

GtkWindow *
windows_errand (void)
{
  g_autoptr (GListModel) all = g_object_ref (gtk_window_get_toplevels ());

  for (guint i = g_list_model_get_n_items (all); i-- > 0;) {
    g_autoptr (GtkWindow) window = g_list_model_get_item (all, i);

    if (g_str_equal (gtk_widget_get_name (GTK_WIDGET (window)), LAP_HELP_EXPORTING))
      return window;
  }
  g_assert_not_reached ();
}

void
windows_end_errand (void (*cancel) (GtkWindow *dialog))
{
  gpointer dialog = windows_errand ();

  g_object_add_weak_pointer (dialog, &dialog);
  if (cancel != NULL)
    cancel (dialog);
  while (dialog != NULL)
    g_main_context_iteration (NULL, TRUE);
}

static GtkWindow *
newest_beside (LapWindow *window)
{
  g_autoptr (GListModel) all = g_object_ref (gtk_window_get_toplevels ());

  for (guint i = g_list_model_get_n_items (all); i-- > 0;) {
    g_autoptr (GtkWindow) other = g_list_model_get_item (all, i);

    if (other != GTK_WINDOW (window) && gtk_widget_get_visible (GTK_WIDGET (other)))
      return g_steal_pointer (&other);
  }
  g_assert_not_reached ();
}

GtkWindow *
windows_dialog (LapWindow *window)
{
  GtkWindow *dialog = newest_beside (window);

  if (LAP_IS_ARRANGE (dialog)) {
    while (lap_arrange_proposal (LAP_ARRANGE (dialog)) == NULL)
      g_main_context_iteration (NULL, TRUE);
    gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
  }
  return dialog;
}
