/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/plans.h"
#include "ui/script-block.h"
#include "ui/script-pace.h"
#include "ui/windows.h"

static LapWindow *
script_window (void)
{
  LapWindow *window = windows_demo ();

  gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", "script");
  windows_settle (window);
  return window;
}

/* The row of the first block of @kind. */
static GtkWidget *
row_of (GtkWidget *widget, LapBlockKind kind)
{
  if (LAP_IS_SCRIPT_BLOCK (widget))
    return lap_script_block_block (LAP_SCRIPT_BLOCK (widget))->kind == kind ? widget : NULL;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = row_of (child, kind);

    if (found != NULL)
      return found;
  }
  return NULL;
}

static void
collect (GtkWidget *widget, GType type, GPtrArray *found)
{
  if (G_TYPE_CHECK_INSTANCE_TYPE (widget, type))
    g_ptr_array_add (found, widget);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    collect (child, type, found);
}

/* The @n-th text of @row. */
static GtkTextBuffer *
text (GtkWidget *row, guint n)
{
  g_autoptr (GPtrArray) views = g_ptr_array_new ();

  collect (row, GTK_TYPE_TEXT_VIEW, views);
  g_assert_cmpuint (n, <, views->len);
  return gtk_text_view_get_buffer (g_ptr_array_index (views, n));
}

static gboolean
says (GtkWidget *row, const char *words)
{
  g_autoptr (GPtrArray) labels = g_ptr_array_new ();

  collect (row, GTK_TYPE_LABEL, labels);
  for (guint i = 0; i < labels->len; i++)
    if (gtk_widget_get_mapped (g_ptr_array_index (labels, i)) &&
        strstr (gtk_label_get_text (g_ptr_array_index (labels, i)), words) != NULL)
      return TRUE;
  return FALSE;
}

static GtkWidget *
first_remedy (GtkWidget *row)
{
  g_autoptr (GPtrArray) buttons = g_ptr_array_new ();

  collect (row, GTK_TYPE_BUTTON, buttons);
  for (guint i = 0; i < buttons->len; i++)
    if (gtk_widget_has_css_class (g_ptr_array_index (buttons, i), "remedy"))
      return g_ptr_array_index (buttons, i);
  return NULL;
}

static const char *
undo_label (LapWindow *window)
{
  return lap_history_undo_label (lap_document_history (lap_window_document (window)));
}

/* A field is one step with a name; going back shows the exercise's words again. */
static void
test_words (void)
{
  LapWindow *window = script_window ();
  g_autofree char *before = windows_text (window), *after = NULL;
  GtkWidget *row = row_of (GTK_WIDGET (window), LAP_BLOCK_EXERCISE);
  LapBlock *block = lap_script_block_block (LAP_SCRIPT_BLOCK (row));
  guint n_cues = 1;

  gtk_text_buffer_set_text (text (row, 0), "Stand tall", -1);
  g_assert_null (block->say);
  lap_window_commit (window);
  g_assert_cmpstr (block->say->setup, ==, "Stand tall");
  g_assert_true (g_str_has_prefix (undo_label (window), "Change how to set up "));
  gtk_text_buffer_set_text (text (row, n_cues), "Sit back\n\n Chest up ", -1);
  lap_window_commit (window);
  g_assert_cmpuint (g_strv_length (block->say->cues), ==, 2);
  g_assert_cmpstr (block->say->cues[1], ==, "Chest up");
  g_assert_true (row == row_of (GTK_WIDGET (window), LAP_BLOCK_EXERCISE));
  lap_document_undo (lap_window_document (window));
  g_assert_null (block->say->cues);
  g_assert_cmpint (gtk_text_buffer_get_line_count (text (row, n_cues)), >, 2);
  gtk_text_buffer_set_text (text (row, 0), "", -1);
  lap_window_commit (window);
  g_assert_null (block->say);
  g_assert_cmpint (gtk_text_buffer_get_char_count (text (row, 0)), >, 0);
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_settle (window);
  windows_close (window);
}

/* Seconds follow what is typed, before it is an edit; what is over is said in words, and its remedy is here. */
static void
test_talk_over (void)
{
  LapWindow *window = script_window ();
  GtkWidget *row = row_of (GTK_WIDGET (window), LAP_BLOCK_TALK), *remedy;
  LapBlock *block = lap_script_block_block (LAP_SCRIPT_BLOCK (row));
  g_autoptr (GString) words = g_string_new (NULL);
  LapEdits *freed = lap_edits_new ("Any length");
  int had = block->seconds;

  /* A longer talk helps where the session may become longer. */
  lap_edits_set_int (freed, lap_document_session (lap_window_document (window)), "target", 0);
  lap_document_apply (lap_window_document (window), freed);
  g_assert_false (says (row, " over"));
  for (int i = 0; i < 3 * had; i++)
    g_string_append (words, "word ");
  gtk_text_buffer_set_text (text (row, 0), words->str, -1);
  g_assert_true (says (row, " over"));
  g_assert_cmpint (block->seconds, ==, had);
  lap_window_commit (window);
  g_assert_cmpstr (block->talk, ==, words->str);
  while (lap_script_block_fill (LAP_SCRIPT_BLOCK (row)))
    ;
  remedy = first_remedy (row);
  g_assert_nonnull (remedy);
  g_signal_emit_by_name (remedy, "clicked");
  g_assert_cmpint (block->seconds, >=, 3 * had / 2.5);
  windows_settle (window);
  g_assert_false (says (row, " over"));
  while (lap_history_undo_label (lap_document_history (lap_window_document (window))) != NULL)
    lap_document_undo (lap_window_document (window));
  g_assert_cmpint (block->seconds, ==, had);
  windows_settle (window);
  windows_close (window);
}

/* The pace is the session's, a step each, and what the words need follows at once. */
static void
test_pace (void)
{
  LapWindow *window = script_window ();
  LapSession *session = lap_document_session (lap_window_document (window));
  g_autoptr (GPtrArray) spins = g_ptr_array_new ();
  GtkWidget *pace = windows_find (GTK_WIDGET (window), LAP_TYPE_SCRIPT_PACE, NULL);
  GtkWidget *row = row_of (GTK_WIDGET (window), LAP_BLOCK_TALK);

  collect (pace, GTK_TYPE_SPIN_BUTTON, spins);
  g_assert_cmpuint (spins->len, ==, 5);
  gtk_spin_button_set_value (g_ptr_array_index (spins, 0), 0.5);
  g_assert_cmpfloat (session->voice, ==, 0.5);
  g_assert_cmpstr (undo_label (window), ==, "Change the pace of talks");
  g_assert_true (says (row, " over"));
  gtk_spin_button_set_value (g_ptr_array_index (spins, 4), 2);
  g_assert_cmpfloat (session->change, ==, 2);
  lap_document_undo (lap_window_document (window));
  lap_document_undo (lap_window_document (window));
  g_assert_cmpfloat (session->voice, ==, 2.5);
  g_assert_cmpfloat (gtk_spin_button_get_value (g_ptr_array_index (spins, 0)), ==, 2.5);
  g_assert_null (undo_label (window));
  windows_settle (window);
  windows_close (window);
}

/* The rows of @block, in order. */
static GPtrArray *
rows_of (LapWindow *window, LapBlock *block)
{
  GPtrArray *rows = g_ptr_array_new ();

  collect (GTK_WIDGET (window), LAP_TYPE_SCRIPT_BLOCK, rows);
  for (guint i = rows->len; i-- > 0;)
    if (lap_script_block_block (rows->pdata[i]) != block)
      g_ptr_array_remove_index (rows, i);
  return rows;
}

/* A round may have other words: its row comes by the block's menu, is written in without touching the others, has the
 * remedies of its round, and goes by the way back. */
static void
test_rounds (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Rounds");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 3);
  LapBlock *block = lap_block_new_exercise ("squat", 40, 20);
  g_autoptr (GPtrArray) rows = NULL, two = NULL, one = NULL;
  g_autofree char *before = NULL, *after = NULL;
  g_autoptr (GString) words = g_string_new (NULL);
  LapWindow *window;

  plan_add (part, block);
  window = windows_show (session);
  before = windows_text (window);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", "script");
  windows_settle (window);
  rows = rows_of (window, block);
  g_assert_cmpuint (rows->len, ==, 1);
  gtk_widget_activate_action (rows->pdata[0], "script.other-words", "i", 3);
  windows_settle (window);
  two = rows_of (window, block);
  g_assert_cmpuint (two->len, ==, 2);
  g_assert_true (says (two->pdata[1], "only in round 3"));
  gtk_text_buffer_set_text (text (two->pdata[1], 0), "Last one", -1);
  lap_window_commit (window);
  for (int i = 0; i < 15; i++)
    g_string_append_printf (words, "cue %d of eight words that is long\n", i);
  gtk_text_buffer_set_text (text (two->pdata[1], 1), words->str, -1);
  lap_window_commit (window);
  g_assert_null (block->say);
  g_assert_cmpstr (lap_changes_find (block->in_round, 3)->say->setup, ==, "Last one");
  g_assert_cmpstr (undo_label (window), ==, "Change the words of Squat in round 3");
  while (lap_script_block_fill (LAP_SCRIPT_BLOCK (two->pdata[1])))
    ;
  g_assert_nonnull (first_remedy (two->pdata[1]));
  g_assert_null (first_remedy (two->pdata[0]));
  gtk_text_buffer_set_text (text (two->pdata[0], 0), "Stand tall", -1);
  lap_window_commit (window);
  g_assert_cmpstr (block->say->setup, ==, "Stand tall");
  g_assert_cmpstr (lap_changes_find (block->in_round, 3)->say->setup, ==, "Last one");
  gtk_widget_activate_action (two->pdata[1], "script.same-words", NULL);
  windows_settle (window);
  one = rows_of (window, block);
  g_assert_cmpuint (one->len, ==, 1);
  g_assert_null (block->in_round);
  while (undo_label (window) != NULL)
    lap_document_undo (lap_window_document (window));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_settle (window);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/script/words", test_words);
  g_test_add_func ("/ui/script/talk-over", test_talk_over);
  g_test_add_func ("/ui/script/pace", test_pace);
  g_test_add_func ("/ui/script/rounds", test_rounds);
  return g_test_run ();
}
