/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/saving.h"
#include "ui/windows.h"

#include "base/error.h"
#include "edit/verbs.h"
#include "edit/verbs-blocks.h"
#include "place/plans.h"
#include "ui/chooser.h"
#include "ui/export.h"
#include "ui/player.h"
#include "ui/score/block.h"
#include "ui/score/words.h"
#include "ui/shortcuts.h"

#include <glib/gstdio.h>
#include <utime.h>

static void
set_spin (LapWindow *window, const char *id, double value)
{
  GtkWidget *spin = windows_find (GTK_WIDGET (lap_window_pane (window)), GTK_TYPE_SPIN_BUTTON, id);

  g_assert_nonnull (spin);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (spin), value);
}

static int
length (LapWindow *window)
{
  return lap_document_timeline (lap_window_document (window))->length;
}

static void
test_demo (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);

  g_assert_cmpstr (gtk_window_get_title (GTK_WINDOW (window)), ==, "Thirty on the Mat");
  g_assert_cmpuint (context->score->n, >, 20);
  g_assert_cmpuint (lap_blocks_lane_n_live (windows_blocks (window)), >, 5);
  g_assert_false (lap_document_is_modified (lap_window_document (window)));
  windows_close (window);
}

static void
test_click_selects (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  guint box = windows_first_main (window);

  windows_click_box (window, box);
  g_assert_cmpuint (lap_score_selected (context), ==, box);
  g_assert_true (gtk_window_get_focus (GTK_WINDOW (window)) == lap_blocks_lane_find (windows_blocks (window), box));
  windows_close (window);
}

static void
test_keys_walk (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  guint box = windows_first_main (window), last = lap_score_step (context->score, LAP_NO_BOX, -1);

  windows_click_box (window, box);
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "Right"));
  g_assert_cmpuint (lap_score_selected (context), ==, lap_score_step (context->score, box, 1));
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "Left"));
  g_assert_cmpuint (lap_score_selected (context), ==, box);
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "End"));
  g_assert_cmpuint (lap_score_selected (context), ==, last);
  windows_settle (window);
  /* The axis came along, and the focus is on what is selected. */
  g_assert_cmpfloat (context->axis->offset, >, 0);
  g_assert_true (gtk_window_get_focus (GTK_WINDOW (window)) == lap_blocks_lane_find (windows_blocks (window), last));
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "Escape"));
  g_assert_cmpuint (lap_score_selected (context), ==, LAP_NO_BOX);
  windows_close (window);
}

static void
test_work_by_pane (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *before = windows_text (window), *undone = NULL, *redone = NULL, *changed = NULL;
  int was = length (window);

  windows_click_box (window, windows_first_main (window));
  set_spin (window, "work", 45);
  g_assert_cmpint (length (window), ==, was + 10); /* five seconds in each of two rounds */
  g_assert_true (lap_document_is_modified (lap_window_document (window)));
  changed = windows_text (window);
  g_assert_true (windows_press (GTK_WIDGET (window), "<Control>z"));
  undone = windows_text (window);
  g_assert_cmpstr (undone, ==, before);
  g_assert_cmpint (length (window), ==, was);
  g_assert_false (lap_document_is_modified (lap_window_document (window)));
  g_assert_true (windows_press (GTK_WIDGET (window), "<Control><Shift>z"));
  redone = windows_text (window);
  g_assert_cmpstr (redone, ==, changed);
  windows_close (window);
}

/* Hours of work in two rounds are more than a session may take. */
static void
test_impossible_is_taken_back (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Long");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 100);
  g_autofree char *before = NULL, *after = NULL;
  LapWindow *window;

  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  window = windows_show (session);
  before = windows_text (window);
  windows_click_box (window, 0);
  set_spin (window, "work", 10800);
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_assert_cmpstr (lap_history_undo_label (lap_document_history (lap_window_document (window))), ==, NULL);
  g_assert_cmpstr (lap_history_redo_label (lap_document_history (lap_window_document (window))), ==, NULL);
  g_assert_cmpint (gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (
                     windows_find (GTK_WIDGET (lap_window_pane (window)), GTK_TYPE_SPIN_BUTTON, "work"))), ==, 40);
  windows_close (window);
}

static void
test_save (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.lapwing", NULL);
  g_autofree char *read = NULL, *text = NULL;
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);

  windows_click_box (window, windows_first_main (window));
  set_spin (window, "rest", 25);
  lap_saving_to (window, path, FALSE);
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_SAVING);
  while (lap_document_state (document) == LAP_DOCUMENT_SAVING)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_CLEAN);
  g_assert_cmpstr (lap_document_path (document), ==, path);
  text = windows_text (window);
  g_assert_true (g_file_get_contents (path, &read, NULL, NULL));
  g_assert_cmpstr (read, ==, text);
  windows_settle (window);
  windows_close (window);
  g_unlink (path);
  g_rmdir (folder);
}

static void
saved_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  lap_document_save_finish (LAP_DOCUMENT (source), result, data);
}

static void
save_and_wait (LapDocument *document, gboolean whatever, GError **error)
{
  lap_document_save (document, NULL, whatever, saved_cb, error);
  while (lap_document_state (document) == LAP_DOCUMENT_SAVING)
    g_main_context_iteration (NULL, TRUE);
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

static void
test_changed_outside (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.lapwing", NULL);
  g_autoptr (LapSession) session = lap_session_new ("Shared");
  g_autoptr (LapDocument) document = NULL;
  g_autofree char *read = NULL;
  GError *error = NULL;

  {
    g_autoptr (LapDocument) first = lap_document_new (session, NULL);

    lap_document_save (first, path, FALSE, saved_cb, NULL);
    while (lap_document_state (first) == LAP_DOCUMENT_SAVING)
      g_main_context_iteration (NULL, TRUE);
  }
  document = lap_document_read (path, &error);
  g_assert_no_error (error);
  g_assert_true (g_file_set_contents (path, "somebody else's, and longer\n", -1, NULL));
  g_assert_cmpint (g_utime (path, &(struct utimbuf) { 1, 1 }), ==, 0); /* clocks of file systems are coarse */
  save_and_wait (document, FALSE, &error);
  g_assert_error (error, LAP_ERROR, LAP_ERROR_CHANGED);
  g_clear_error (&error);
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_CHANGED_OUTSIDE);
  g_assert_true (g_file_get_contents (path, &read, NULL, NULL));
  g_assert_cmpstr (read, ==, "somebody else's, and longer\n");
  save_and_wait (document, TRUE, &error);
  g_assert_no_error (error);
  g_assert_cmpint (lap_document_state (document), ==, LAP_DOCUMENT_CLEAN);
  g_unlink (path);
  g_rmdir (folder);
}

static void
test_accessible (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  guint box = windows_first_main (window);
  g_autofree char *label = lap_box_label (context->score, box), *spoken = NULL;
  GtkWidget *widget = lap_blocks_lane_find (windows_blocks (window), box);

  g_assert_cmpstr (label, ==, "Squat, block 1 of 10, round 1, work 40 seconds, rest 20, starts at 5:25");
  spoken = g_strdup_printf ("%s, warning %u", label, lap_score_warning (context, box));
  gtk_test_accessible_assert_role (widget, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
  gtk_test_accessible_assert_property (widget, GTK_ACCESSIBLE_PROPERTY_LABEL, spoken);
  gtk_test_accessible_assert_state (widget, GTK_ACCESSIBLE_STATE_SELECTED, FALSE);
  windows_click_box (window, box);
  gtk_test_accessible_assert_state (widget, GTK_ACCESSIBLE_STATE_SELECTED, TRUE);
  windows_close (window);
}

/* The children that show a box stand in the order of time. */
static void
check_order (LapWindow *window)
{
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (windows_blocks (window)));
  guint last = LAP_NO_BOX;

  for (; child != NULL; child = gtk_widget_get_next_sibling (child)) {
    guint box = lap_block_widget_box (LAP_BLOCK_WIDGET (child));

    if (box == LAP_NO_BOX)
      continue;
    g_assert_true (last == LAP_NO_BOX || box > last);
    last = box;
  }
}

/* Bounds the widgets that show a box by 1.25 of what is visible and the few that are kept; returns the former. */
static guint
check_live (LapWindow *window)
{
  LapScoreContext *context = lap_window_context (window);
  guint first, end;

  windows_settle (window);
  check_order (window);
  lap_score_visible (context->score, context->axis, &first, &end);
  g_assert_cmpuint (lap_blocks_lane_n_live (windows_blocks (window)), <=, (end - first) * 5 / 4 + 2);
  return end - first;
}

/* Widgets are made for what is seen, however long the session is. */
static void
test_live_widgets (void)
{
  static const int rounds[] = { 20, 100 };
  guint n[G_N_ELEMENTS (rounds)];

  for (guint i = 0; i < G_N_ELEMENTS (rounds); i++) {
    g_autoptr (LapSession) session = lap_session_new ("Many");
    LapScoreContext *context;
    LapWindow *window;
    guint most;

    for (int p = 0; p < rounds[i] / 20; p++) {
      LapPart *part = plan_part (session, LAP_PART_MAIN, 20);

      for (int b = 0; b < 20; b++)
        plan_add (part, lap_block_new_exercise ("squat", 2, 2));
    }
    window = windows_show (session);
    context = lap_window_context (window);
    most = check_live (window);
    lap_score_zoom (context, 10, 0);
    for (int step = 0; step < 30; step++) {
      most = MAX (most, check_live (window));
      lap_score_scroll_by (context, step < 20 ? 97 : -131);
    }
    n[i] = lap_blocks_lane_n_all (windows_blocks (window));
    g_assert_cmpuint (n[i], <=, most * 5 / 4 + 2);
    lap_score_fit (context);
    windows_settle (window);
    /* Everything is below 6 px, yet what is selected has its widget. */
    g_assert_cmpuint (lap_blocks_lane_n_live (windows_blocks (window)), ==, 0);
    windows_click_box (window, context->score->n / 2);
    windows_settle (window);
    g_assert_cmpuint (lap_blocks_lane_n_live (windows_blocks (window)), ==, 1);
    windows_close (window);
  }
  g_assert_cmpuint (n[1], ==, n[0]);
}

/* The focus stays on its block when blocks before it go. */
static void
test_focus_follows (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  LapDocument *document = lap_window_document (window);
  guint box = lap_score_step (context->score, windows_first_main (window), 1), part = context->score->boxes[box].part;
  LapBlock *block = lap_score_block (context, box);
  g_autoptr (GPtrArray) first = g_ptr_array_new ();
  GtkWidget *widget;

  windows_click_box (window, box);
  widget = gtk_window_get_focus (GTK_WINDOW (window));
  g_ptr_array_add (first, lap_part_nth (lap_session_nth (lap_document_session (document), part), 0));
  lap_document_apply (document, lap_verb_remove_blocks (first, lap_document_catalogue (document)));
  windows_settle (window);
  g_assert_true (context->block == block);
  g_assert_cmpuint (lap_score_selected (context), ==, box - 1);
  g_assert_true (gtk_window_get_focus (GTK_WINDOW (window)) == widget);
  g_assert_true (lap_blocks_lane_find (windows_blocks (window), box - 1) == widget);
  windows_close (window);
}

static void
test_warnings (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Flawed");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  LapWindow *window;
  LapCheckup *checkup;
  GtkWidget *row, *button;
  guint open;

  g_object_set (session, "target", 60, NULL);
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise ("press-up", 40, 20));
  window = windows_show (session);
  checkup = lap_document_checkup (lap_window_document (window));
  open = lap_checkup_n_open (checkup);
  g_assert_cmpuint (open, >, 0);
  row = lap_warnings_row (lap_window_warnings (window), 0);
  g_assert_nonnull (row);
  gtk_widget_activate_action (row, "warning.fine", NULL);
  windows_settle (window);
  g_assert_cmpuint (lap_checkup_n_open (lap_document_checkup (lap_window_document (window))), <, open);
  /* A remedy is an edit like any other. */
  button = windows_find (GTK_WIDGET (lap_window_warnings (window)), GTK_TYPE_BUTTON, NULL);
  g_assert_nonnull (button);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.undo", NULL);
  windows_settle (window);
  g_assert_cmpuint (lap_checkup_n_open (lap_document_checkup (lap_window_document (window))), ==, open);
  windows_close (window);
}

/* With a button to close only, as desktops have at first, a window can be as narrow as a phone. */
static void
test_narrow (void)
{
  LapWindow *window = windows_demo ();
  int least;

  g_object_set (gtk_settings_get_default (), "gtk-decoration-layout", ":close", NULL);
  windows_settle (window);
  windows_click_box (window, windows_first_main (window));
  gtk_widget_measure (GTK_WIDGET (window), GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
  g_assert_cmpint (least, <=, 360);
  gtk_settings_reset_property (gtk_settings_get_default (), "gtk-decoration-layout");
  windows_close (window);
}

static void
test_zoom (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  double zoom = context->axis->zoom;

  gtk_widget_activate_action (GTK_WIDGET (window), "win.zoom-in", NULL);
  g_assert_cmpfloat (context->axis->zoom, >, zoom);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.zoom-fit", NULL);
  g_assert_cmpfloat_with_epsilon (context->axis->width, context->axis->view, 1);
  windows_close (window);
}

/* The dialog that is open over @window. */
static GtkWidget *
dialog_of (LapWindow *window)
{
  GListModel *windows = gtk_window_get_toplevels ();

  for (guint i = 0; i < g_list_model_get_n_items (windows); i++) {
    g_autoptr (GtkWindow) other = g_list_model_get_item (windows, i);

    if (ADW_IS_MESSAGE_DIALOG (other) && gtk_window_get_transient_for (other) == GTK_WINDOW (window))
      return GTK_WIDGET (other);
  }
  return NULL;
}

static void
test_close_asks (void)
{
  LapWindow *window = windows_demo ();
  gpointer gone = window;
  GtkWidget *dialog;

  windows_click_box (window, windows_first_main (window));
  set_spin (window, "work", 50);
  gtk_window_close (GTK_WINDOW (window));
  g_assert_nonnull (dialog_of (window));
  gtk_window_close (GTK_WINDOW (dialog_of (window)));
  windows_settle (window);
  g_assert_null (dialog_of (window));
  g_object_add_weak_pointer (G_OBJECT (window), &gone);
  gtk_window_close (GTK_WINDOW (window));
  dialog = dialog_of (window);
  adw_message_dialog_response (ADW_MESSAGE_DIALOG (dialog), "discard");
  gtk_window_destroy (GTK_WINDOW (dialog));
  for (int i = 0; i < 500 && gone != NULL; i++) {
    g_main_context_iteration (NULL, FALSE);
    g_usleep (1000);
  }
  g_assert_null (gone);
}

static void
test_export (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.pdf", NULL);
  LapWindow *window = windows_demo ();
  LapSheetOptions options = { .paper = LAP_PAPER_A3 };

  for (guint i = 0; i < lap_sheets_n (); i++) {
    g_autofree char *read = NULL;

    lap_export_to (window, lap_sheets_nth (i), &options, -1, path);
    while (!g_file_test (path, G_FILE_TEST_EXISTS))
      g_main_context_iteration (NULL, TRUE);
    windows_settle (window);
    g_assert_true (g_file_get_contents (path, &read, NULL, NULL));
    g_assert_true (g_str_has_prefix (read, "%PDF-"));
    g_unlink (path);
  }
  gtk_widget_activate_action (GTK_WIDGET (window), "win.export", NULL);
  g_assert_nonnull (dialog_of (window));
  gtk_window_destroy (GTK_WINDOW (dialog_of (window)));
  windows_close (window);
  g_rmdir (folder);
}

static void
test_chooser (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *chooser, *search;

  windows_click_box (window, windows_first_main (window));
  chooser = windows_find (GTK_WIDGET (lap_window_pane (window)), LAP_TYPE_CHOOSER, NULL);
  lap_chooser_set_catalogue (LAP_CHOOSER (chooser), lap_document_catalogue (lap_window_document (window)));
  g_assert_cmpuint (lap_chooser_n (LAP_CHOOSER (chooser)), >=, 170);
  search = windows_find (chooser, GTK_TYPE_SEARCH_ENTRY, NULL);
  gtk_editable_set_text (GTK_EDITABLE (search), "star jump");
  g_assert_cmpuint (lap_chooser_n (LAP_CHOOSER (chooser)), >, 0);
  gtk_editable_set_text (GTK_EDITABLE (search), "nothing is called so");
  g_assert_cmpuint (lap_chooser_n (LAP_CHOOSER (chooser)), ==, 0);
  g_signal_emit_by_name (chooser, "chosen", "burpee");
  g_assert_cmpstr (context->block->exercise, ==, "burpee");
  windows_close (window);
}

/* Words half typed are an edit before the window does anything else with the session. */
static void
test_talk (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *talk;

  g_assert_cmpint (context->score->boxes[0].kind, ==, LAP_BOX_TALK);
  windows_click_box (window, 0);
  talk = windows_find (GTK_WIDGET (lap_window_pane (window)), GTK_TYPE_TEXT_VIEW, "talk");
  gtk_text_buffer_set_text (gtk_text_view_get_buffer (GTK_TEXT_VIEW (talk)), "Good morning", -1);
  windows_click_box (window, windows_first_main (window));
  g_assert_cmpstr (lap_score_block (context, 0)->talk, ==, "Good morning");
  windows_close (window);
}

/* A window takes its keys before the widgets in it: one of the window's would never reach the score or the catalogue. */
static void
assert_own_key (const LapShortcut *shortcut, const char *key)
{
  for (guint i = 0; i < lap_shortcuts_n (); i++) {
    g_auto (GStrv) taken = g_strsplit (lap_shortcuts_nth (i)->keys, " ", -1);

    if (lap_shortcuts_nth (i)->scope == LAP_SCOPE_WINDOW && lap_shortcuts_nth (i) != shortcut)
      g_assert_false (g_strv_contains ((const char * const *) taken, key));
  }
}

/* A sign with Shift is another key on another layout: "+" is Shift and "=" on a US keyboard (ANSI INCITS 154), a key
 * without Shift on a German one (DIN 2137). The number pad is the same on both. */
static void
assert_any_layout (guint key, GdkModifierType modifiers)
{
  gunichar sign = gdk_keyval_to_unicode (key);

  g_assert_true (!(modifiers & GDK_SHIFT_MASK) || !g_unichar_isgraph (sign) || g_unichar_isalpha (sign) ||
                 (key >= GDK_KEY_KP_Space && key <= GDK_KEY_KP_9));
}

/* Every key of the table does something where it says it does. */
static void
test_shortcuts (void)
{
  LapWindow *window = windows_demo ();

  for (guint i = 0; i < lap_shortcuts_n (); i++) {
    const LapShortcut *shortcut = lap_shortcuts_nth (i);
    g_auto (GStrv) keys = g_strsplit (shortcut->keys, " ", -1);

    for (guint k = 0; keys[k] != NULL; k++) {
      guint key;
      GdkModifierType modifiers;

      g_assert_true (gtk_accelerator_parse (keys[k], &key, &modifiers));
      assert_any_layout (key, modifiers);
      if (shortcut->scope != LAP_SCOPE_REHEARSE)
        assert_own_key (shortcut, keys[k]);
    }
    if (shortcut->scope == LAP_SCOPE_SCORE)
      g_assert_true (windows_press (GTK_WIDGET (windows_blocks (window)), keys[0]));
  }
  windows_close (window);
}

/* The figure of the block that is selected moves when it is asked to, and another one stands still. */
static void
test_player (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  LapPlayer *player = LAP_PLAYER (windows_find (GTK_WIDGET (window), LAP_TYPE_PLAYER, NULL));
  GtkWidget *button = gtk_widget_get_first_child (GTK_WIDGET (player));
  guint first = windows_first_main (window);

  lap_score_select (context, first);
  windows_settle (window);
  g_assert_true (gtk_widget_get_visible (GTK_WIDGET (player)));
  /* With less motion asked for there is nothing to press. */
  g_assert_false (gtk_widget_get_visible (button));
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", TRUE, NULL);
  lap_score_select (context, lap_score_step (context->score, first, 1));
  g_assert_true (gtk_widget_get_visible (button));
  g_assert_false (lap_player_is_moving (player));
  g_signal_emit_by_name (button, "clicked");
  while (lap_player_seconds (player) == 0)
    g_main_context_iteration (NULL, TRUE);
  g_assert_true (lap_player_is_moving (player));
  lap_score_select (context, first);
  g_assert_false (lap_player_is_moving (player));
  g_assert_cmpfloat (lap_player_seconds (player), ==, 0);
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", FALSE, NULL);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/window/demo", test_demo);
  g_test_add_func ("/ui/window/click-selects", test_click_selects);
  g_test_add_func ("/ui/window/keys-walk", test_keys_walk);
  g_test_add_func ("/ui/window/work-by-pane", test_work_by_pane);
  g_test_add_func ("/ui/window/impossible-is-taken-back", test_impossible_is_taken_back);
  g_test_add_func ("/ui/window/save", test_save);
  g_test_add_func ("/ui/document/changed-outside", test_changed_outside);
  g_test_add_func ("/ui/window/accessible", test_accessible);
  g_test_add_func ("/ui/window/live-widgets", test_live_widgets);
  g_test_add_func ("/ui/window/focus-follows", test_focus_follows);
  g_test_add_func ("/ui/window/warnings", test_warnings);
  g_test_add_func ("/ui/window/narrow", test_narrow);
  g_test_add_func ("/ui/window/zoom", test_zoom);
  g_test_add_func ("/ui/window/close-asks", test_close_asks);
  g_test_add_func ("/ui/window/export", test_export);
  g_test_add_func ("/ui/window/chooser", test_chooser);
  g_test_add_func ("/ui/window/talk", test_talk);
  g_test_add_func ("/ui/window/shortcuts", test_shortcuts);
  g_test_add_func ("/ui/player", test_player);
  return g_test_run ();
}
