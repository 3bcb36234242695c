/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/windows.h"

#include "edit/verbs.h"
#include "place/plans.h"
#include "ui/words-row.h"

static GtkWidget *
field (LapWindow *window, GType type, const char *id)
{
  GtkWidget *widget = windows_find (GTK_WIDGET (lap_window_pane (window)), type, id);

  g_assert_nonnull (widget);
  return widget;
}

static const char *
undo_label (LapWindow *window)
{
  return lap_history_undo_label (lap_document_history (lap_window_document (window)));
}

static LapBlock *
block_of (LapWindow *window)
{
  return lap_window_context (window)->block;
}

/* Each is one step with a name, and what was undone is shown again. */
static void
test_fields (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *before = windows_text (window), *after = NULL;

  windows_click_box (window, windows_first_main (window));
  adw_combo_row_set_selected (ADW_COMBO_ROW (field (window, ADW_TYPE_COMBO_ROW, "pace")), 1 + LAP_PACE_STEADY);
  g_assert_cmpint (block_of (window)->pace, ==, LAP_PACE_STEADY);
  g_assert_cmpstr (undo_label (window), ==, "Change the pace");
  adw_combo_row_set_selected (ADW_COMBO_ROW (field (window, ADW_TYPE_COMBO_ROW, "sides")), 1 + LAP_SIDES_SPLIT);
  g_assert_cmpint (block_of (window)->sides, ==, LAP_SIDES_SPLIT);
  adw_combo_row_set_selected (ADW_COMBO_ROW (field (window, ADW_TYPE_COMBO_ROW, "option")), LAP_OPTION_EASIER);
  g_assert_cmpint (block_of (window)->option, ==, LAP_OPTION_EASIER);
  gtk_switch_set_active (GTK_SWITCH (field (window, GTK_TYPE_SWITCH, "fixed")), TRUE);
  g_assert_true (block_of (window)->fixed);
  for (int i = 0; i < 4; i++)
    lap_document_undo (lap_window_document (window));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_assert_false (gtk_switch_get_active (GTK_SWITCH (field (window, GTK_TYPE_SWITCH, "fixed"))));
  g_assert_cmpint (adw_combo_row_get_selected (ADW_COMBO_ROW (field (window, ADW_TYPE_COMBO_ROW, "pace"))), ==, 0);
  windows_settle (window);
  windows_close (window);
}

/* Words are counted while they are typed, kept when another block is looked at, and go back to the exercise's when they
 * are taken away. */
static void
test_words (void)
{
  LapWindow *window = windows_demo ();
  guint box = windows_first_main (window);
  GtkWidget *cues = field (window, LAP_TYPE_WORDS_ROW, "cues"), *during = field (window, GTK_TYPE_LABEL, "during");
  g_autofree char *counted = NULL, *usual = NULL, *now = NULL;
  LapBlock *block;

  windows_click_box (window, box);
  block = block_of (window);
  usual = lap_words_row_get_text (LAP_WORDS_ROW (cues));
  counted = g_strdup (gtk_label_get_text (GTK_LABEL (during)));
  lap_words_row_set_text (LAP_WORDS_ROW (cues), "one two three four five six seven eight nine ten / Up");
  g_assert_cmpstr (gtk_label_get_text (GTK_LABEL (during)), !=, counted);
  g_assert_null (block->say);
  windows_click_box (window, box + 1);
  g_assert_nonnull (block->say);
  g_assert_cmpstr (block->say->cues[1], ==, "Up");
  g_assert_cmpstr (undo_label (window), ==, "Change the cues of Squat");
  windows_click_box (window, box);
  lap_words_row_set_text (LAP_WORDS_ROW (field (window, LAP_TYPE_WORDS_ROW, "easier")), "Half as low");
  lap_pane_commit (lap_window_pane (window));
  g_assert_cmpstr (block->say->easier, ==, "Half as low");
  g_assert_null (block->say->harder);
  lap_words_row_set_text (LAP_WORDS_ROW (cues), "");
  lap_pane_commit (lap_window_pane (window));
  g_assert_true (block->say == NULL || block->say->cues == NULL);
  now = lap_words_row_get_text (LAP_WORDS_ROW (cues));
  g_assert_cmpstr (now, ==, usual);
  windows_close (window);
}

/* Several blocks take work and rest together, a talk among them nothing, in one step. */
static void
test_several_times (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  g_autofree char *before = windows_text (window), *after = NULL;
  guint box = windows_first_main (window);

  windows_click_box (window, box);
  lap_score_choose (context, box + 2, LAP_CHOOSE_TO);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (field (window, GTK_TYPE_SPIN_BUTTON, "work")), 35);
  for (guint i = box; i <= box + 2; i++)
    g_assert_cmpint (lap_score_block (context, i)->work, ==, 35);
  g_assert_cmpint (lap_score_block (context, box + 3)->work, ==, 40);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (field (window, GTK_TYPE_SPIN_BUTTON, "rest")), 25);
  for (guint i = box; i <= box + 2; i++)
    g_assert_cmpint (lap_score_block (context, i)->rest, ==, 25);
  lap_document_undo (lap_window_document (window));
  lap_document_undo (lap_window_document (window));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_settle (window);
  windows_close (window);
}

/* Several blocks take the pace together, in one step. */
static void
test_several (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  g_autofree char *before = windows_text (window), *after = NULL;
  guint box = windows_first_main (window), n = 0;

  windows_click_box (window, box);
  lap_score_choose (context, box + 2, LAP_CHOOSE_TO);
  adw_combo_row_set_selected (ADW_COMBO_ROW (field (window, ADW_TYPE_COMBO_ROW, "pace")), 1 + LAP_PACE_STEADY);
  for (guint i = box; i <= box + 2; i++)
    n += lap_score_block (context, i)->pace == LAP_PACE_STEADY;
  g_assert_cmpuint (n, ==, 3);
  lap_document_undo (lap_window_document (window));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_settle (window);
  windows_close (window);
}

/* A block that differs in a round shows and changes what it is there; a number that nothing says is not to be typed. */
static void
test_in_round (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Rounds");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 2);
  LapBlock *block = lap_block_new_exercise ("squat", 40, 20);
  GtkWidget *work, *rest, *only;
  g_autofree char *words = NULL;
  LapScoreContext *context;
  const LapChange *change;
  LapWindow *window;

  plan_add (part, block);
  window = windows_show (session);
  context = lap_window_context (window);
  work = field (window, GTK_TYPE_SPIN_BUTTON, "work");
  rest = field (window, GTK_TYPE_SPIN_BUTTON, "rest");
  windows_click_box (window, lap_score_find (context->score, 0, 0, 2));
  only = gtk_widget_get_first_child (field (window, GTK_TYPE_BOX, "rounds"));
  g_assert_cmpstr (gtk_button_get_label (GTK_BUTTON (only)), ==, "Only in round 2");
  g_signal_emit_by_name (only, "clicked");
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (work), 30);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (rest), 25);
  g_assert_cmpint (block->work, ==, 40);
  g_assert_cmpint (block->rest, ==, 20);
  change = lap_changes_find (block->in_round, 2);
  g_assert_cmpint (change->work, ==, 30);
  g_assert_cmpint (change->rest, ==, 25);
  g_assert_cmpstr (undo_label (window), ==, "Change the rest of Squat in round 2");
  /* Words that are written there are that round's, also when a click on another round ends the writing. */
  lap_words_row_set_text (LAP_WORDS_ROW (field (window, LAP_TYPE_WORDS_ROW, "setup")), "Last one");
  windows_click_box (window, lap_score_find (context->score, 0, 0, 1));
  g_assert_null (block->say);
  g_assert_cmpstr (lap_changes_find (block->in_round, 2)->say->setup, ==, "Last one");
  words = lap_words_row_get_text (LAP_WORDS_ROW (field (window, LAP_TYPE_WORDS_ROW, "setup")));
  g_assert_cmpstr (words, !=, "Last one");
  g_assert_cmpint (gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (work)), ==, 40);
  windows_click_box (window, lap_score_find (context->score, 0, 0, 2));
  g_assert_cmpint (gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (work)), ==, 30);
  /* And back: the button under what it says of the round. */
  gtk_widget_grab_focus (gtk_widget_get_last_child (field (window, GTK_TYPE_BOX, "rounds")));
  g_signal_emit_by_name (gtk_widget_get_last_child (field (window, GTK_TYPE_BOX, "rounds")), "clicked");
  g_assert_null (lap_changes_find (block->in_round, 2));
  /* The one that stands in its place now has the focus. */
  only = gtk_widget_get_first_child (field (window, GTK_TYPE_BOX, "rounds"));
  g_assert_cmpstr (gtk_button_get_label (GTK_BUTTON (only)), ==, "Only in round 2");
  g_assert_true (gtk_window_get_focus (GTK_WINDOW (window)) == only);
  g_assert_cmpint (gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (work)), ==, 40);
  g_object_set (part, "run", LAP_RUN_OWN_PACE, "cap", 300, NULL);
  lap_document_apply (lap_window_document (window), lap_verb_set_work (block, 45, lap_document_catalogue (context->document)));
  g_assert_false (gtk_widget_get_sensitive (rest));
  windows_settle (window);
  windows_close (window);
}

/* Types @text into the line @id, as if followed by Enter. */
static void
type (LapWindow *window, const char *id, const char *text)
{
  GtkWidget *line = field (window, ADW_TYPE_ENTRY_ROW, id);

  gtk_editable_set_text (GTK_EDITABLE (line), text);
  g_signal_emit_by_name (line, "apply");
}

static const char *
line (LapWindow *window, const char *id)
{
  return gtk_editable_get_text (GTK_EDITABLE (field (window, ADW_TYPE_ENTRY_ROW, id)));
}

/* Pace, option, repetitions, load and note are the round's where it differs, and the block's where it doesn't. */
static void
test_way_in_round (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Rounds");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 2);
  LapBlock *block = lap_block_new_exercise ("squat", 40, 20);
  g_autoptr (LapChanges) changes = lap_changes_new ();
  GtkWidget *option, *told;
  LapWindow *window;

  plan_add (part, block);
  lap_changes_ensure (changes, 2)->work = 40;
  lap_changes_find (changes, 2)->present = LAP_BIT (LAP_CHANGE_WORK);
  g_object_set (block, "in-round", changes, NULL);
  window = windows_show (session);
  option = field (window, ADW_TYPE_COMBO_ROW, "option");
  windows_click_box (window, lap_score_find (lap_window_context (window)->score, 0, 0, 2));
  adw_combo_row_set_selected (ADW_COMBO_ROW (option), LAP_OPTION_HARDER);
  adw_combo_row_set_selected (ADW_COMBO_ROW (field (window, ADW_TYPE_COMBO_ROW, "pace")), 1 + LAP_PACE_STEADY);
  type (window, "reps", "8-12");
  type (window, "load", "8 kg");
  type (window, "note", "Slowly");
  g_assert_cmpint (block->option, ==, LAP_OPTION_AS_SHOWN);
  g_assert_cmpint (block->pace, ==, -1);
  g_assert_cmpuint (block->reps, ==, 0);
  g_assert_null (block->note);
  g_assert_cmpuint (lap_changes_find (block->in_round, 2)->reps, ==, LAP_REPS (8, 12));
  g_assert_cmpstr (lap_changes_find (block->in_round, 2)->note, ==, "Slowly");
  told = gtk_widget_get_first_child (field (window, GTK_TYPE_BOX, "rounds"));
  g_assert_cmpstr (gtk_label_get_text (GTK_LABEL (told)), ==,
                   "Round 2: work 40 s, option: Harder, pace: Steady, 8–12 reps, 8 kg and another note");
  g_assert_cmpstr (adw_action_row_get_subtitle (ADW_ACTION_ROW (option)), ==, "Only in round 2");
  windows_click_box (window, lap_score_find (lap_window_context (window)->score, 0, 0, 1));
  g_assert_cmpint (adw_combo_row_get_selected (ADW_COMBO_ROW (option)), ==, LAP_OPTION_AS_SHOWN);
  g_assert_cmpstr (line (window, "note"), ==, "");
  windows_click_box (window, lap_score_find (lap_window_context (window)->score, 0, 0, 2));
  g_assert_cmpint (adw_combo_row_get_selected (ADW_COMBO_ROW (option)), ==, LAP_OPTION_HARDER);
  g_assert_cmpstr (line (window, "reps"), ==, "8–12");
  windows_settle (window);
  windows_close (window);
}

/* What can't be read is told and changes nothing. */
static void
test_lines (void)
{
  LapWindow *window = windows_demo ();
  LapBlock *block;

  windows_click_box (window, windows_first_main (window));
  block = block_of (window);
  type (window, "reps", "10");
  g_assert_cmpuint (block->reps, ==, LAP_REPS (10, 10));
  g_assert_cmpstr (undo_label (window), ==, "Change the repetitions");
  type (window, "reps", "some");
  g_assert_cmpuint (block->reps, ==, LAP_REPS (10, 10));
  g_assert_cmpstr (line (window, "reps"), ==, "10");
  type (window, "tempo", "3-1");
  g_assert_null (block->tempo);
  type (window, "tempo", "3-1-1");
  g_assert_cmpstr (block->tempo, ==, "3-1-1");
  gtk_switch_set_active (GTK_SWITCH (field (window, GTK_TYPE_SWITCH, "partner")), TRUE);
  g_assert_cmpint (block->with, ==, 1);
  type (window, "tempo", "");
  g_assert_null (block->tempo);
  windows_close (window);
}

/* Only a block whose work is split between the sides asks for it; what doesn't fit is refused. */
static void
test_change_of_sides (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *change = field (window, GTK_TYPE_SPIN_BUTTON, "change");
  guint box = windows_first_main (window);

  windows_click_box (window, box);
  g_assert_false (gtk_widget_get_mapped (change));
  while (g_strcmp0 (lap_score_block (context, box)->exercise, "side-plank") != 0)
    box++;
  windows_click_box (window, box);
  windows_settle (window);
  g_assert_true (gtk_widget_get_mapped (change));
  g_assert_cmpint (gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (change)), ==, 4);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (change), 6);
  g_assert_cmpint (block_of (window)->switch_seconds, ==, 6);
  g_assert_cmpstr (undo_label (window), ==, "Change the time to change sides");
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (change), 39);
  g_assert_cmpint (block_of (window)->switch_seconds, ==, 6);
  g_assert_cmpint (gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (change)), ==, 6);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/pane/fields", test_fields);
  g_test_add_func ("/ui/pane/words", test_words);
  g_test_add_func ("/ui/pane/several", test_several);
  g_test_add_func ("/ui/pane/several-times", test_several_times);
  g_test_add_func ("/ui/pane/in-round", test_in_round);
  g_test_add_func ("/ui/pane/way-in-round", test_way_in_round);
  g_test_add_func ("/ui/pane/lines", test_lines);
  g_test_add_func ("/ui/pane/change-of-sides", test_change_of_sides);
  return g_test_run ();
}
