/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A part as a whole: its dialog, and the actions that add one, move it and take it away.
 */
#include "ui/windows.h"

#include "place/plans.h"
#include "ui/invitation.h"

/* Shown by the action of the lane of blocks, on the part of what is selected. */
static GtkWindow *
open_properties (LapWindow *window)
{
  g_autoptr (GtkWindow) dialog = NULL;

  gtk_widget_activate_action (GTK_WIDGET (windows_blocks (window)), "score.part-properties", NULL);
  windows_settle (window);
  dialog = windows_dialog (window);
  return dialog;
}

static GtkWidget *
row (GtkWindow *dialog, const char *title)
{
  GtkWidget *found = windows_find_row (GTK_WIDGET (dialog), title);

  g_assert_nonnull (found);
  return found;
}

static GtkWidget *
spin (GtkWindow *dialog, const char *title)
{
  return windows_find (row (dialog, title), GTK_TYPE_SPIN_BUTTON, NULL);
}

static gboolean
is_there (GtkWindow *dialog, const char *title)
{
  return gtk_widget_get_visible (row (dialog, title));
}

static LapWindow *
show_circle (LapPart **part)
{
  g_autoptr (LapSession) session = lap_session_new ("Circle");

  plan_add (plan_part (session, LAP_PART_WARM_UP, 1), lap_block_new_exercise ("march", 30, 10));
  *part = plan_part (session, LAP_PART_MAIN, 2);
  plan_add (*part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (*part, lap_block_new_exercise ("push-up", 40, 20));
  return windows_show (session);
}

/* What counts for the way that is chosen can be set, the rest isn't there; all of it is undone step by step. */
static void
test_ways (void)
{
  LapPart *part;
  LapWindow *window = show_circle (&part);
  g_autofree char *before = windows_text (window), *after = NULL;
  LapScoreContext *context = lap_window_context (window);
  GtkWindow *dialog;
  GtkWidget *way;

  windows_click_box (window, lap_score_find (context->score, 1, 0, 1));
  dialog = open_properties (window);
  way = row (dialog, "Way");
  g_assert_true (is_there (dialog, "Rounds") && is_there (dialog, "Between rounds"));
  g_assert_false (is_there (dialog, "Between sets") || is_there (dialog, "Length") || is_there (dialog, "From start to start"));
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (spin (dialog, "Sets")), 3);
  g_assert_cmpint (part->sets, ==, 3);
  g_assert_true (is_there (dialog, "Between sets"));
  gtk_editable_set_text (GTK_EDITABLE (row (dialog, "Work and rest of each round")), "30/30, 45/15");
  g_signal_emit_by_name (row (dialog, "Work and rest of each round"), "entry-activated");
  g_assert_cmpint (lap_rows_nth (part->steps, LapStep, 1)->work, ==, 45);
  adw_combo_row_set_selected (ADW_COMBO_ROW (way), LAP_RUN_STATIONS);
  g_assert_cmpint (part->run, ==, LAP_RUN_STATIONS);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (spin (dialog, "People at a station")), 2);
  g_assert_cmpint (part->per_station, ==, 2);
  adw_combo_row_set_selected (ADW_COMBO_ROW (way), LAP_RUN_OWN_PACE);
  g_assert_cmpint (part->cap, ==, 240);
  g_assert_true (is_there (dialog, "Length"));
  g_assert_false (is_there (dialog, "Rounds") || is_there (dialog, "People at a station"));
  adw_combo_row_set_selected (ADW_COMBO_ROW (way), LAP_RUN_ON_THE_MINUTE);
  g_assert_true (is_there (dialog, "From start to start"));
  for (int i = 0; i < 6; i++)
    lap_document_undo (lap_window_document (window));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_assert_cmpuint (adw_combo_row_get_selected (ADW_COMBO_ROW (way)), ==, LAP_RUN_TOGETHER);
  gtk_window_destroy (dialog);
  windows_settle (window);
  windows_close (window);
}

/* Fewer rounds take along what a block does in a round that is no more, in the same step. */
static void
test_fewer_rounds (void)
{
  LapPart *part;
  LapWindow *window = show_circle (&part);
  LapScoreContext *context = lap_window_context (window);
  LapBlock *block = lap_part_nth (part, 0);
  GtkWindow *dialog;

  windows_click_box (window, lap_score_find (context->score, 1, 0, 2));
  gtk_widget_activate_action (GTK_WIDGET (windows_blocks (window)), "score.only-here", NULL);
  g_assert_nonnull (lap_changes_find (block->in_round, 2));
  dialog = open_properties (window);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (spin (dialog, "Rounds")), 1);
  g_assert_cmpint (part->rounds, ==, 1);
  g_assert_null (block->in_round);
  g_assert_false (is_there (dialog, "Between rounds"));
  lap_document_undo (lap_window_document (window));
  g_assert_cmpint (part->rounds, ==, 2);
  g_assert_nonnull (lap_changes_find (block->in_round, 2));
  gtk_window_destroy (dialog);
  windows_settle (window);
  windows_close (window);
}

/* A title that is typed counts when the dialog is closed, too. */
static void
test_closing (void)
{
  LapPart *part;
  LapWindow *window = show_circle (&part);
  GtkWindow *dialog;

  windows_click_box (window, lap_score_find (lap_window_context (window)->score, 1, 0, 1));
  dialog = open_properties (window);
  gtk_editable_set_text (GTK_EDITABLE (row (dialog, "Title")), "Ring");
  gtk_window_close (dialog);
  windows_settle (window);
  g_assert_cmpstr (part->title, ==, "Ring");
  windows_close (window);
}

static LapPart *
nth_part (LapWindow *window, guint n)
{
  return lap_session_nth (lap_document_session (lap_window_document (window)), n);
}

static void
act (LapWindow *window, const char *action)
{
  gtk_widget_activate_action (GTK_WIDGET (windows_blocks (window)), action, NULL);
}

/* A new part stands behind the one that is selected, and its first block is selected then. */
static void
test_add_move_remove (void)
{
  LapPart *part, *added;
  LapWindow *window = show_circle (&part);
  LapScoreContext *context = lap_window_context (window);
  LapSession *session = lap_document_session (lap_window_document (window));
  g_autofree char *before = windows_text (window), *after = NULL;

  windows_click_box (window, lap_score_find (context->score, 0, 0, 1));
  act (window, "score.add-part");
  g_assert_cmpuint (lap_session_n (session), ==, 3);
  added = nth_part (window, 1);
  g_assert_cmpint (added->kind, ==, LAP_PART_MAIN);
  g_assert_true (context->block == lap_part_nth (added, 0));
  act (window, "score.part-later");
  g_assert_true (nth_part (window, 2) == added);
  act (window, "score.part-later"); /* it is the last one already */
  g_assert_true (nth_part (window, 2) == added);
  act (window, "score.part-earlier");
  act (window, "score.part-earlier");
  g_assert_true (nth_part (window, 0) == added);
  g_assert_true (context->block == lap_part_nth (added, 0));
  act (window, "score.remove-part");
  g_assert_cmpuint (lap_session_n (session), ==, 2);
  g_assert_true (nth_part (window, 1) == part);
  windows_settle (window);
  for (int i = 0; i < 5; i++)
    lap_document_undo (lap_window_document (window));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_settle (window);
  windows_close (window);
}

/* A plan without parts is empty, and its invitation has the room it needs at once. */
static void
test_remove_all (void)
{
  LapPart *part;
  LapWindow *window = show_circle (&part);
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *invitation;

  for (int i = 0; i < 2; i++) {
    windows_click_box (window, lap_score_find (context->score, 0, 0, 1));
    act (window, "score.remove-part");
    windows_settle (window);
  }
  g_assert_cmpuint (lap_session_n (lap_document_session (lap_window_document (window))), ==, 0);
  invitation = windows_find (GTK_WIDGET (window), LAP_TYPE_INVITATION, NULL);
  g_assert_nonnull (invitation);
  g_assert_true (gtk_widget_get_mapped (invitation));
  g_assert_cmpint (gtk_widget_get_height (invitation), >, 40);
  lap_document_undo (lap_window_document (window));
  windows_settle (window);
  g_assert_false (gtk_widget_get_mapped (invitation));
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/part/ways", test_ways);
  g_test_add_func ("/ui/part/fewer-rounds", test_fewer_rounds);
  g_test_add_func ("/ui/part/closing", test_closing);
  g_test_add_func ("/ui/part/add-move-remove", test_add_move_remove);
  g_test_add_func ("/ui/part/remove-all", test_remove_all);
  return g_test_run ();
}
