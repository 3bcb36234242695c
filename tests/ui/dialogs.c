/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every dialog by keyboard alone, with keys that the X server makes: its keys open it, Tab leads to each control that
 * can be used and shows where it is, and Escape closes the dialog without a change of the plan or the week.
 */
#include "ui/hands.h"
#include "ui/rows.h"
#include "ui/windows.h"

#include "edit/own.h"
#include "ui/library.h"
#include "ui/own-dialog.h"
#include "ui/week-window.h"

/* Without keys of its own a dialog is opened from the menu. */
typedef struct {
  const char *action, *keys;
} Way;

static const Way ways[] = {
  { "win.properties", "<Alt>Return" }, { "win.export", "<Control>e" }, { "win.publish", "<Control><Shift>e" },
  { "win.order", NULL }, { "win.mend", NULL }, { "win.adapt", NULL }, { "win.choose", NULL },
  { "app.new", "<Control>n" }, { "app.preferences", "<Control>comma" },
};
static const Way week_ways[] = {
  { "win.properties", "<Alt>Return" }, { "win.publish", "<Control><Shift>e" }, { "win.import", NULL },
  { "app.preferences", "<Control>comma" },
};

typedef struct {
  GtkWindow  *dialog;
  GtkWidget  *first;
  GHashTable *visited;
} Walk;

static gboolean
is_round (gpointer data)
{
  Walk *walk = data;
  GtkWidget *focus = gtk_window_get_focus (walk->dialog);

  if (focus == NULL)
    return FALSE;
  if (walk->first == NULL)
    walk->first = focus;
  else if (focus == walk->first)
    return TRUE;
  g_hash_table_add (walk->visited, focus);
  return FALSE;
}

/* Goes on until the focus is where it was first; all it was on. */
static GHashTable *
walk_round (GtkWindow *dialog)
{
  Walk walk = { dialog, NULL, g_hash_table_new (NULL, NULL) };

  gtk_window_set_focus (dialog, NULL);
  hands_press_until ("Tab", is_round, &walk);
  g_assert_true (gtk_window_get_focus_visible (dialog));
  return walk.visited;
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

static gboolean
has_dialog (gpointer data)
{
  return g_list_model_get_n_items (gtk_window_get_toplevels ()) > 1;
}

static gboolean
is_gone (gpointer dialog)
{
  return *(gpointer *) dialog == NULL;
}

/* Nothing that can be used is left out. */
static void
assert_reached (GtkWindow *dialog)
{
  g_autoptr (GHashTable) visited = walk_round (dialog);
  g_autoptr (GString) missed = g_string_new (NULL);

  look_for_missed (visited, GTK_WIDGET (dialog), missed);
  if (missed->len > 0)
    g_test_message ("%s", missed->str);
  g_assert_cmpstr (missed->str, ==, "");
}

static GtkWindow *
go_in (LapWindow *window)
{
  g_autoptr (GtkWindow) dialog = NULL;

  hands_until (has_dialog, NULL);
  dialog = windows_dialog (window);
  hands_until (rows_is_mapped, dialog);
  hands_on (dialog);
  return dialog;
}

/* By Escape; one that searches goes when the search has noticed. */
static void
go_out (LapWindow *window, GtkWindow *dialog, const char *before)
{
  g_autofree char *after = NULL;

  g_object_add_weak_pointer (G_OBJECT (dialog), (gpointer *) &dialog);
  hands_press ("Escape");
  hands_until (is_gone, &dialog);
  after = text_of (window);
  g_assert_cmpstr (after, ==, before);
}

/* The dialog that is open over @window, from the first control to the last, and away. */
static void
walk_dialog (LapWindow *window, const char *before)
{
  GtkWindow *dialog = go_in (window);

  assert_reached (dialog);
  go_out (window, dialog, before);
}

static void
open_by (LapWindow *window, const char *action, const char *keys)
{
  if (keys != NULL) {
    hands_on (GTK_WINDOW (window));
    hands_press (keys);
  } else
    gtk_widget_activate_action (GTK_WIDGET (window), action, NULL);
}

static void
open_and_walk (LapWindow *window, const char *action, const char *keys)
{
  g_autofree char *before = text_of (window);

  open_by (window, action, keys);
  walk_dialog (window, before);
}

static void
test_dialog (gconstpointer way)
{
  LapWindow *window = windows_demo ();

  open_and_walk (window, ((const Way *) way)->action, ((const Way *) way)->keys);
  windows_close (window);
}

static LapWindow *
week_window (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);

  return windows_open (path);
}

static void
test_week_dialog (gconstpointer way)
{
  LapWindow *window = week_window ();

  open_and_walk (window, ((const Way *) way)->action, ((const Way *) way)->keys);
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
  open_and_walk (window, "win.fill", "<Control><Shift>p");
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
  open_and_walk (window, "win.revert", NULL);
  before = text_of (window);
  open_by (window, NULL, "<Control>w");
  walk_dialog (window, before);
  g_assert_true (gtk_widget_get_visible (GTK_WIDGET (window)));
  windows_close (window);
}

static void
open_own (LapWindow *window)
{
  LapDocument *document = lap_window_document (window);
  LapCatalogue *catalogue = lap_document_catalogue (document);
  g_autofree char *id = NULL;

  lap_document_apply (document, lap_verb_make_own (lap_document_session (document), lap_catalogue_find (catalogue, "squat"),
                                                   "Harbour squat", catalogue, &id));
  lap_own_dialog_open (GTK_WINDOW (window), document, id);
}

static void
test_own (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *before = NULL;

  open_own (window);
  before = text_of (window);
  walk_dialog (window, before);
  windows_close (window);
}

/* Whatever is typed into what has gone meanwhile is nowhere, and the dialog goes, too. */
static void
test_own_gone (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *before = text_of (window), *after = NULL;
  GtkWindow *dialog;

  open_own (window);
  dialog = go_in (window);
  hands_press ("Tab");
  hands_type ("never");
  g_object_add_weak_pointer (G_OBJECT (dialog), (gpointer *) &dialog);
  lap_document_undo (lap_window_document (window));
  hands_until (is_gone, &dialog);
  after = text_of (window);
  g_assert_cmpstr (after, ==, before);
  windows_close (window);
}

static gboolean
is_closed (gpointer popover)
{
  return !gtk_widget_get_mapped (popover);
}

static gboolean
is_focused (gpointer widget)
{
  return gtk_window_get_focus (GTK_WINDOW (gtk_widget_get_root (widget))) == widget;
}

/* The exercises that can be chosen for a block: looked for, left by Escape from the search and from the list, which has
 * no other effect, and chosen with the arrows. */
static void
test_chooser (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *before = text_of (window), *after = NULL;
  GtkWidget *row = windows_find (GTK_WIDGET (lap_window_pane (window)), ADW_TYPE_ACTION_ROW, "exercise_row");
  GtkWidget *popover = windows_find (GTK_WIDGET (lap_window_pane (window)), GTK_TYPE_POPOVER, "popover");

  windows_click_box (window, 9);
  hands_on (GTK_WINDOW (window));
  for (guint i = 0; i < 3; i++) {
    hands_press_until ("Tab", is_focused, row);
    hands_press ("Return");
    hands_until (rows_is_mapped, popover);
    hands_type ("burpee");
    if (i > 0)
      hands_press ("Down");
    hands_press (i < 2 ? "Escape" : "Return");
    hands_until (is_closed, popover);
    g_free (after);
    after = text_of (window);
    g_assert_true (g_str_equal (after, before) == (i < 2));
  }
  windows_close (window);
}

static gboolean
has_focus_in (gpointer widget)
{
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (gtk_widget_get_root (widget)));

  return focus != NULL && gtk_widget_is_ancestor (focus, widget) && gtk_widget_get_mapped (focus);
}

/* Enter leads from a block to what can be changed of it, also where the pane was put away, and F6 back. */
static void
test_fields (void)
{
  LapWindow *window = windows_demo ();
  GtkWidget *pane = GTK_WIDGET (lap_window_pane (window)), *blocks = GTK_WIDGET (windows_blocks (window));

  hands_on (GTK_WINDOW (window));
  for (guint i = 0; i < 2; i++) {
    hands_press ("F6");
    g_assert_true (has_focus_in (blocks));
    hands_press ("Right");
    hands_press ("Return");
    hands_until (has_focus_in, pane);
    hands_press ("F6");
    hands_until (has_focus_in, blocks);
    hands_press ("F9");
  }
  windows_close (window);
}

/* Exercise after exercise, with no key but what leads to the next. */
static void
test_one_by_one (void)
{
  LapWindow *window = windows_demo ();
  LapPart *part = lap_session_nth (lap_document_session (lap_window_document (window)), 1);
  GtkWidget *popover = windows_find (GTK_WIDGET (lap_window_pane (window)), GTK_TYPE_POPOVER, "popover");

  hands_on (GTK_WINDOW (window));
  hands_press ("F6");
  hands_press ("<Control>Page_Down");
  for (guint i = 0; i < 3; i++) {
    hands_press ("F2");
    hands_until (rows_is_mapped, popover);
    hands_type ("burpee");
    hands_press ("Return");
    hands_until (is_closed, popover);
    g_assert_cmpstr (lap_part_nth (part, i)->exercise, ==, "burpee");
    hands_press ("Right");
  }
  windows_close (window);
}

/* Of the part that the selected block is in. */
static void
test_part (void)
{
  LapWindow *window = windows_demo ();

  windows_click_box (window, 9);
  gtk_widget_grab_focus (GTK_WIDGET (windows_blocks (window)));
  open_and_walk (window, NULL, "<Alt><Shift>Return");
  windows_close (window);
}

/* A week has pages of properties: each is found by the arrows of its switcher, and walked. */
static void
test_week_pages (void)
{
  static const char *const pages[] = { "Rooms", "Coaches", "Week" };
  LapWindow *window = week_window ();
  g_autofree char *before = text_of (window);
  GtkWindow *dialog;

  open_by (window, NULL, "<Alt>Return");
  dialog = go_in (window);
  for (guint i = 0; i < G_N_ELEMENTS (pages); i++) {
    rows_by_keys.press (GTK_WIDGET (dialog), pages[i]);
    assert_reached (dialog);
  }
  go_out (window, dialog, before);
  windows_close (window);
}

/* The list of sessions, over a plan. */
static void
test_list (void)
{
  LapWindow *window = windows_demo ();
  GtkWindow *library;

  open_by (window, NULL, "<Control>o");
  library = go_in (window);
  g_assert_true (LAP_IS_LIBRARY (library));
  while (lap_library_is_busy (LAP_LIBRARY (library)))
    g_main_context_iteration (NULL, TRUE);
  assert_reached (library);
  g_object_add_weak_pointer (G_OBJECT (library), (gpointer *) &library);
  hands_press ("<Control>w");
  hands_until (is_gone, &library);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++) {
    g_autofree char *path = g_strdup_printf ("/ui/dialogs/%s", ways[i].action + 4);

    g_test_add_data_func (path, &ways[i], test_dialog);
  }
  for (guint i = 0; i < G_N_ELEMENTS (week_ways); i++) {
    g_autofree char *path = g_strdup_printf ("/ui/dialogs/week/%s", week_ways[i].action + 4);

    g_test_add_data_func (path, &week_ways[i], test_week_dialog);
  }
  g_test_add_func ("/ui/dialogs/week/fill", test_fill);
  g_test_add_func ("/ui/dialogs/questions", test_questions);
  g_test_add_func ("/ui/dialogs/own", test_own);
  g_test_add_func ("/ui/dialogs/own-gone", test_own_gone);
  g_test_add_func ("/ui/dialogs/chooser", test_chooser);
  g_test_add_func ("/ui/dialogs/one-by-one", test_one_by_one);
  g_test_add_func ("/ui/dialogs/fields", test_fields);
  g_test_add_func ("/ui/dialogs/part", test_part);
  g_test_add_func ("/ui/dialogs/week/pages", test_week_pages);
  g_test_add_func ("/ui/dialogs/list", test_list);
  return g_test_run ();
}
