/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Actions, menus and keys say the same: what can be done is in a menu, on a button or has a key; what a menu or a
 * button names is there and can be used at some time; each key that is bound is in the list of shortcuts, which is
 * what the window of shortcuts shows. All of it is collected from windows as they stand, in every state that shows
 * other things.
 */
#include "ui/windows.h"

#include "ui/demo.h"
#include "ui/library.h"
#include "ui/rehearse/page.h"
#include "ui/score/parts.h"
#include "ui/shortcuts-window.h"
#include "ui/shortcuts.h"
#include "ui/warning-row.h"
#include "ui/week-window.h"

#include <string.h>

typedef struct {
  GHashTable *there;  /* actions that a widget of ours or the application has */
  GHashTable *named;  /* by a menu or a button -> could be used once, TRUE or FALSE */
  GHashTable *bound;  /* actions that have a key in a widget of ours */
} Harvest;

static Harvest harvest;

/* An action alone, without what it is given along: "win.view::plan", "script.other-words(2)". */
static char *
bare (const char *name)
{
  return g_strndup (name, strcspn (name, ":("));
}

static void
note_named (const char *name, gboolean usable)
{
  char *action = bare (name);
  gboolean before = GPOINTER_TO_INT (g_hash_table_lookup (harvest.named, action));

  g_hash_table_insert (harvest.named, action, GINT_TO_POINTER (before || usable));
}

static void
note_actions (GtkWidget *widget)
{
  GType owner;
  const char *name, *property;
  const GVariantType *type;

  for (guint i = 0;
       gtk_widget_class_query_action (GTK_WIDGET_GET_CLASS (widget), i, &owner, &name, &type, &property); i++)
    if (g_str_has_prefix (g_type_name (owner), "Lap"))
      g_hash_table_add (harvest.there, g_strdup (name));
}

static void
note_keys (GtkWidget *widget)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (widget);

  if (!g_str_has_prefix (G_OBJECT_TYPE_NAME (widget), "Lap"))
    return;
  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GListModel) keys = g_list_model_get_item (controllers, i);

    for (guint k = 0; GTK_IS_SHORTCUT_CONTROLLER (keys) && k < g_list_model_get_n_items (keys); k++) {
      g_autoptr (GtkShortcut) key = g_list_model_get_item (keys, k);
      GtkShortcutAction *action = gtk_shortcut_get_action (key);

      if (GTK_IS_NAMED_ACTION (action))
        g_hash_table_add (harvest.bound, g_strdup (gtk_named_action_get_action_name (GTK_NAMED_ACTION (action))));
    }
  }
}

/* The entry of an open menu that says @label: whether somebody could choose it. */
static gboolean
is_usable (GtkWidget *widget, const char *label)
{
  if (g_str_equal (G_OBJECT_TYPE_NAME (widget), "GtkModelButton")) {
    g_autofree char *text = NULL;

    g_object_get (widget, "text", &text, NULL);
    return g_strcmp0 (text, label) == 0 && gtk_widget_get_sensitive (widget);
  }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    if (is_usable (child, label))
      return TRUE;
  return FALSE;
}

static void
note_menu (GtkWidget *popover, GMenuModel *menu)
{
  for (int i = 0; menu != NULL && i < g_menu_model_get_n_items (menu); i++) {
    g_autoptr (GMenuModel) section = g_menu_model_get_item_link (menu, i, G_MENU_LINK_SECTION);
    g_autoptr (GMenuModel) within = g_menu_model_get_item_link (menu, i, G_MENU_LINK_SUBMENU);
    g_autofree char *label = NULL, *action = NULL;

    note_menu (popover, section);
    note_menu (popover, within);
    if (g_menu_model_get_item_attribute (menu, i, G_MENU_ATTRIBUTE_ACTION, "s", &action) &&
        g_menu_model_get_item_attribute (menu, i, G_MENU_ATTRIBUTE_LABEL, "s", &label)) {
      g_auto (GStrv) parts = g_strsplit (label, "_", 2); /* what is shown is without the mark of its key */
      g_autofree char *text = g_strjoinv ("", parts);

      note_named (action, is_usable (popover, text));
    }
  }
}

static void
settle (void)
{
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

static void note (GtkWidget *widget);

/* Not scrolled away: what nobody can point at opens nothing. */
static gboolean
is_in_view (GtkWidget *widget)
{
  GtkWidget *root = GTK_WIDGET (gtk_widget_get_root (widget));
  graphene_rect_t place, all = GRAPHENE_RECT_INIT (0, 0, gtk_widget_get_width (root), gtk_widget_get_height (root));

  return gtk_widget_get_mapped (widget) && gtk_widget_compute_bounds (widget, root, &place) &&
         graphene_rect_contains_rect (&all, &place);
}

/* A menu as somebody sees it who opens it. */
static void
note_menu_button (GtkMenuButton *button)
{
  GtkPopover *popover;

  if (!is_in_view (GTK_WIDGET (button)) || !gtk_widget_is_sensitive (GTK_WIDGET (button)))
    return;
  gtk_menu_button_popup (button);
  settle ();
  popover = gtk_menu_button_get_popover (button);
  if (popover != NULL)
    note (GTK_WIDGET (popover));
  gtk_menu_button_popdown (button);
  settle ();
}

static void
note (GtkWidget *widget)
{
  note_actions (widget);
  note_keys (widget);
  if (GTK_IS_POPOVER_MENU (widget))
    note_menu (widget, gtk_popover_menu_get_menu_model (GTK_POPOVER_MENU (widget)));
  else if (GTK_IS_MENU_BUTTON (widget))
    note_menu_button (GTK_MENU_BUTTON (widget));
  else if (GTK_IS_ACTIONABLE (widget) && gtk_actionable_get_action_name (GTK_ACTIONABLE (widget)) != NULL)
    note_named (gtk_actionable_get_action_name (GTK_ACTIONABLE (widget)), gtk_widget_is_sensitive (widget));
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    note (child);
}

/* Every menu that hangs on @widget itself, opened by @action. */
static void
note_context_menu (GtkWidget *widget, const char *action)
{
  g_assert_true (gtk_widget_activate_action (widget, action, NULL));
  settle ();
  note (widget);
}

static void
note_dialogs (LapWindow *window, const char *const *actions, guint n)
{
  for (guint i = 0; i < n; i++) {
    gpointer dialog;

    g_assert_true (gtk_widget_activate_action (GTK_WIDGET (window), actions[i], NULL));
    windows_settle (window);
    dialog = windows_dialog (window);
    note (dialog);
    g_object_add_weak_pointer (dialog, &dialog);
    gtk_window_destroy (dialog);
    g_object_unref (dialog);
    /* One that searches goes when the search has noticed. */
    while (dialog != NULL)
      g_main_context_iteration (NULL, TRUE);
  }
}

static void
note_views (LapWindow *window, const char *const *views, guint n)
{
  for (guint i = 0; i < n; i++) {
    lap_window_show_view (window, views[i]);
    windows_settle (window);
    note (GTK_WIDGET (window));
  }
}

static void
press (LapWindow *window, GtkWidget *widget, const char *action)
{
  g_assert_true (gtk_widget_activate_action (widget, action, NULL));
  windows_settle (window);
}

/* A change that can be undone, and one that was. */
static void
note_history (LapWindow *window, GtkWidget *widget, const char *change)
{
  press (window, widget, change);
  note (GTK_WIDGET (window));
  press (window, GTK_WIDGET (window), "win.undo");
  note (GTK_WIDGET (window));
}

static void
note_score (LapWindow *window)
{
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *blocks = GTK_WIDGET (windows_blocks (window));
  GtkWidget *brackets = windows_find (GTK_WIDGET (window), LAP_TYPE_PARTS_LANE, NULL);

  lap_window_show_view (window, "plan");
  for (guint i = 0; i < context->score->n; i++)
    if (context->score->boxes[i].round == 2 && lap_score_block (context, i) != NULL &&
        lap_score_block (context, i)->kind == LAP_BLOCK_EXERCISE) {
      lap_score_select (context, i);
      break;
    }
  g_assert_cmpint (context->round, ==, 2);
  note_context_menu (blocks, "score.menu");
  note_history (window, blocks, "score.work-more");
  lap_parts_lane_go (LAP_PARTS_LANE (brackets), 0);
  note_context_menu (brackets, "bracket.menu");
}

static void
harvest_session (void)
{
  static const char *const views[] = { "rehearse", "sheets", "script", "plan" };
  static const char *const dialogs[] = { "win.properties", "win.export", "win.publish", "win.order", "win.mend",
                                         "win.adapt", "app.new" };
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "too-much-at-once.lapwing", NULL);
  LapWindow *window = windows_demo ();
  LapRehearseWindow *rehearse;

  note_views (window, views, G_N_ELEMENTS (views));
  note_score (window);
  note_dialogs (window, dialogs, G_N_ELEMENTS (dialogs));
  lap_window_show_view (window, "rehearse");
  windows_settle (window);
  rehearse = lap_rehearse_page_open (LAP_REHEARSE_PAGE (windows_find (GTK_WIDGET (window), LAP_TYPE_REHEARSE_PAGE, NULL)),
                                     0);
  settle ();
  note (GTK_WIDGET (rehearse));
  gtk_window_destroy (GTK_WINDOW (rehearse));
  windows_close (window);
  /* One that has a file, and warnings of every kind. */
  window = windows_open (path);
  note (GTK_WIDGET (window));
  windows_close (window);
}

/* A warning that is kept as fine. */
static void
harvest_kept (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_TEST_DATA"), "checks", "change-short.bad.lapwing", NULL);
  LapWindow *window = windows_open (path);
  GtkWidget *warnings = GTK_WIDGET (lap_window_warnings (window)), *kept;

  press (window, windows_find (warnings, LAP_TYPE_WARNING_ROW, NULL), "warning.fine");
  kept = windows_find (warnings, GTK_TYPE_EXPANDER, "kept");
  gtk_expander_set_expanded (GTK_EXPANDER (kept), TRUE);
  windows_settle (window);
  gtk_widget_child_focus (windows_find (kept, GTK_TYPE_MENU_BUTTON, "more"), GTK_DIR_TAB_FORWARD);
  windows_settle (window);
  note (kept);
  windows_close (window);
}

static void
harvest_empty (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Nothing yet");
  LapWindow *window = windows_show (session);

  note (GTK_WIDGET (window));
  g_clear_object (&session);
  windows_close (window);
}

static void
harvest_week (void)
{
  static const char *const views[] = { "sheets", "week" };
  static const char *const dialogs[] = { "win.properties", "win.publish", "win.import" }, *const fill[] = { "win.fill" };
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_demo_week (&error);
  LapWindow *window;
  GtkWidget *view;

  g_assert_no_error (error);
  window = LAP_WINDOW (lap_application_show (LAP_APPLICATION (g_application_get_default ()), document));
  windows_settle (window);
  note_views (window, views, G_N_ELEMENTS (views));
  note_dialogs (window, dialogs, G_N_ELEMENTS (dialogs));
  view = GTK_WIDGET (lap_week_window_view (LAP_WEEK_WINDOW (window)));
  lap_week_view_show (LAP_WEEK_VIEW (view), LAP_CLASS (lap_list_nth (lap_document_week (document)->classes, 0))->id);
  note_context_menu (view, "week.menu");
  note_history (window, view, "week.unplace");
  press (window, view, "week.unplace");
  note (GTK_WIDGET (window));
  note_context_menu (view, "week.menu");
  note_dialogs (window, fill, 1);
  lap_document_set_date (document, lap_date_parse ("2027-01-11"));
  lap_week_view_show (LAP_WEEK_VIEW (view), LAP_CLASS (lap_list_nth (lap_document_week (document)->classes, 1))->id);
  note_context_menu (view, "week.menu");
  g_clear_object (&document);
  windows_close (window);
}

static void
harvest_library (void)
{
  GtkWindow *library = lap_application_show_library (LAP_APPLICATION (g_application_get_default ()));

  gtk_test_widget_wait_for_draw (GTK_WIDGET (library));
  note (GTK_WIDGET (library));
  gtk_window_destroy (library);
  settle ();
}

static void
harvest_application (void)
{
  GActionGroup *application = G_ACTION_GROUP (g_application_get_default ());
  g_auto (GStrv) names = g_action_group_list_actions (application);

  /* One that is told what it is about is a notification's, which no window shows. */
  for (guint i = 0; names[i] != NULL; i++)
    if (g_action_group_get_action_parameter_type (application, names[i]) == NULL)
      g_hash_table_add (harvest.there, g_strconcat ("app.", names[i], NULL));
}

static const LapShortcut *
shortcut_of (const char *action)
{
  for (guint i = 0; i < lap_shortcuts_n (); i++) {
    g_autofree char *name = bare (lap_shortcuts_nth (i)->action);

    if (g_str_equal (name, action))
      return lap_shortcuts_nth (i);
  }
  return NULL;
}

/* GTK's own, of every window. */
static gboolean
is_gtks (const char *action)
{
  return g_str_has_prefix (action, "window.");
}

/* What is found wrong is said in one list: see test_all(). */
static void
wrong (GPtrArray *list, const char *what, const char *action)
{
  g_ptr_array_add (list, g_strdup_printf ("%s: %s", what, action));
}

/* What a notification of the desktop's asks for. */
static gboolean
is_on_notifications (const char *action)
{
  return g_str_equal (action, "app.show-folder") || g_str_equal (action, "app.raise-window");
}

static void
check_reached (GPtrArray *list)
{
  GHashTableIter iter;
  gpointer action;

  g_hash_table_iter_init (&iter, harvest.there);
  while (g_hash_table_iter_next (&iter, &action, NULL))
    if (!g_hash_table_contains (harvest.named, action) && shortcut_of (action) == NULL && !is_on_notifications (action))
      wrong (list, "in no menu, on no button and without a key", action);
}

static void
check_named (GPtrArray *list)
{
  GHashTableIter iter;
  gpointer action, usable;

  g_hash_table_iter_init (&iter, harvest.named);
  while (g_hash_table_iter_next (&iter, &action, &usable)) {
    if (!g_hash_table_contains (harvest.there, action) && !is_gtks (action))
      wrong (list, "named, but not there", action);
    else if (!GPOINTER_TO_INT (usable))
      wrong (list, "named, but never to be used", action);
  }
}

/* Keys and table are the same both ways. */
static void
check_bound (GPtrArray *list)
{
  g_auto (GStrv) described = gtk_application_list_action_descriptions (GTK_APPLICATION (g_application_get_default ()));
  GHashTableIter iter;
  gpointer action;

  for (guint i = 0; described[i] != NULL; i++)
    g_hash_table_add (harvest.bound, bare (described[i]));
  g_hash_table_iter_init (&iter, harvest.bound);
  while (g_hash_table_iter_next (&iter, &action, NULL))
    if (shortcut_of (action) == NULL && !is_gtks (action))
      wrong (list, "has a key that isn't in the table", action);
  for (guint i = 0; i < lap_shortcuts_n (); i++) {
    g_autofree char *name = bare (lap_shortcuts_nth (i)->action);

    if (!g_hash_table_contains (harvest.there, name) && !is_gtks (name))
      wrong (list, "in the table, but not there", name);
    else if (!g_hash_table_contains (harvest.bound, name))
      wrong (list, "in the table, but without its key", name);
  }
}

static void
collect_rows (GtkWidget *widget, GHashTable *rows)
{
  if (ADW_IS_PREFERENCES_ROW (widget))
    g_hash_table_add (rows, g_strdup (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (widget))));
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    collect_rows (child, rows);
}

static void
test_rows (void)
{
  GtkWindow *list = lap_shortcuts_window ();
  g_autoptr (GHashTable) rows = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  collect_rows (GTK_WIDGET (list), rows);
  for (guint i = 0; i < lap_shortcuts_n (); i++)
    g_assert_true (g_hash_table_contains (rows, lap_shortcuts_nth (i)->title));
  gtk_window_destroy (list);
}

static void
test_all (void)
{
  g_autoptr (GPtrArray) list = g_ptr_array_new_with_free_func (g_free);

  harvest.there = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  harvest.named = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  harvest.bound = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  harvest_application ();
  harvest_session ();
  harvest_kept ();
  harvest_empty ();
  harvest_week ();
  harvest_library ();
  check_reached (list);
  check_named (list);
  check_bound (list);
  for (guint i = 0; i < list->len; i++)
    g_test_message ("%s", (char *) list->pdata[i]);
  g_assert_cmpuint (list->len, ==, 0);
  g_hash_table_unref (harvest.there);
  g_hash_table_unref (harvest.named);
  g_hash_table_unref (harvest.bound);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/actions/all", test_all);
  g_test_add_func ("/ui/actions/rows", test_rows);
  return g_test_run ();
}
