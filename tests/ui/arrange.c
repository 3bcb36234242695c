/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The arrangers in the window: what they propose can be kept, which leaves no trace, or taken, which is one step.
 */
#include "ui/windows.h"

#include "place/plans.h"
#include "store/documents.h"
#include "ui/arrange.h"
#include "ui/balance.h"

static LapSession *
demo (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", name, NULL);
  g_autofree char *text = NULL;
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (GError) error = NULL;
  LapSession *session;
  gsize length;

  g_file_get_contents (path, &text, &length, &error);
  g_assert_no_error (error);
  bytes = g_bytes_new (text, length);
  session = lap_session_from_bytes (bytes, &error);
  g_assert_no_error (error);
  return session;
}

static void
wait_for_proposal (LapArrange *dialog)
{
  while (lap_arrange_proposal (dialog) == NULL)
    g_main_context_iteration (NULL, TRUE);
}

/* The dialog, when what it proposes is there. */
static LapArrange *
opened (LapWindow *window, LapArranger arranger)
{
  LapArrange *dialog = lap_arrange_open (window, arranger);

  wait_for_proposal (dialog);
  gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
  return dialog;
}

static void
press (LapArrange *dialog, const char *id)
{
  GtkWidget *button = windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, id);
  gpointer gone = dialog;

  g_object_add_weak_pointer (gone, &gone);
  g_assert_true (gtk_widget_get_sensitive (button));
  g_signal_emit_by_name (button, "clicked");
  for (int i = 0; i < 500 && gone != NULL; i++) {
    g_main_context_iteration (NULL, FALSE);
    g_usleep (1000);
  }
  g_assert_null (gone);
}

static LapHistory *
history (LapWindow *window)
{
  return lap_document_history (lap_window_document (window));
}

static const struct {
  const char *name, *demo;
  LapArranger arranger;
} cases[] = {
  { "/ui/arrange/order", "thirty-on-the-mat.lapwing", LAP_ARRANGE_ORDER },
  { "/ui/arrange/mend", "too-much-at-once.lapwing", LAP_ARRANGE_MEND },
  { "/ui/arrange/adapt", "thirty-on-the-mat.lapwing", LAP_ARRANGE_ADAPT },
  { "/ui/arrange/choose", NULL, LAP_ARRANGE_CHOOSE },
};

static LapSession *
session_for (guint i)
{
  LapSession *session;
  LapPart *part;

  if (cases[i].demo != NULL)
    return demo (cases[i].demo);
  session = lap_session_new ("Half chosen");
  part = plan_part (session, LAP_PART_MAIN, 2);
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise (NULL, 40, 20));
  plan_add (part, lap_block_new_exercise (NULL, 40, 20));
  return session;
}

static char *
after_text (const LapProposal *proposal)
{
  g_autoptr (GString) text = g_string_new (NULL);

  for (guint i = 0; i < proposal->after->rows->len; i++) {
    g_autofree char *row = lap_plan_row_text (g_ptr_array_index (proposal->after->rows, i));

    g_string_append_printf (text, "%s\n", row);
  }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

/* What the session reads like when it is laid out now. */
static char *
now_text (LapWindow *window)
{
  LapProposal now = { .after = lap_plan_side_new (lap_document_timeline (lap_window_document (window))) };
  char *text = after_text (&now);

  lap_plan_side_free (now.after);
  return text;
}

static void
test_keep (gconstpointer data)
{
  guint i = GPOINTER_TO_UINT (data);
  g_autoptr (LapSession) session = session_for (i);
  LapWindow *window = windows_show (session);
  g_autofree char *before = windows_text (window), *after = NULL;

  press (opened (window, cases[i].arranger), "keep");
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_assert_null (lap_history_undo_label (history (window)));
  g_assert_false (lap_document_is_modified (lap_window_document (window)));
  windows_close (window);
}

/* It becomes what was shown, in one step. */
static void
test_take (gconstpointer data)
{
  guint i = GPOINTER_TO_UINT (data);
  g_autoptr (LapSession) session = session_for (i);
  LapWindow *window = windows_show (session);
  g_autofree char *before = windows_text (window), *taken = NULL, *undone = NULL, *redone = NULL, *shown = NULL;
  g_autofree char *is = NULL;
  LapArrange *dialog = opened (window, cases[i].arranger);

  g_assert_true (lap_arrange_proposal (dialog)->possible);
  g_assert_cmpstr (lap_arrange_proposal (dialog)->heading, !=, "");
  shown = after_text (lap_arrange_proposal (dialog));
  press (dialog, "take");
  windows_settle (window);
  taken = windows_text (window);
  is = now_text (window);
  g_assert_cmpstr (is, ==, shown);
  g_assert_cmpstr (taken, !=, before);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.undo", NULL);
  undone = windows_text (window);
  g_assert_cmpstr (undone, ==, before);
  g_assert_null (lap_history_undo_label (history (window)));
  gtk_widget_activate_action (GTK_WIDGET (window), "win.redo", NULL);
  redone = windows_text (window);
  g_assert_cmpstr (redone, ==, taken);
  windows_close (window);
}

/* Another choice makes another proposal; nothing of the first one stays. */
static void
test_adapt_for_each (void)
{
  g_autoptr (LapSession) session = demo ("too-much-at-once.lapwing");
  LapWindow *window = windows_show (session);
  g_autofree char *before = windows_text (window), *after = NULL;
  LapArrange *dialog = opened (window, LAP_ARRANGE_ADAPT);
  GtkWidget *whom = windows_find (GTK_WIDGET (dialog), ADW_TYPE_COMBO_ROW, "whom");

  for (guint i = 1; i < LAP_N_FOR; i++) {
    g_autofree char *was = after_text (lap_arrange_proposal (dialog)), *is = NULL;

    adw_combo_row_set_selected (ADW_COMBO_ROW (whom), i);
    wait_for_proposal (dialog);
    is = after_text (lap_arrange_proposal (dialog));
    if (i == LAP_FOR_ON_CHAIR)
      g_assert_cmpstr (is, !=, was);
  }
  press (dialog, "keep");
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_close (window);
}

/* Nineteen blocks keep a worker busy; closing the dialog ends it. */
static void
test_cancel (void)
{
  static const char *const ids[] = { "squat", "push-up", "plank", "burpee", "glute-bridge" };
  g_autoptr (LapSession) session = lap_session_new ("Many");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 2);
  g_autofree char *before = NULL, *after = NULL;
  LapWindow *window;
  LapArrange *dialog;

  for (guint i = 0; i < 19; i++)
    plan_add (part, lap_block_new_exercise (ids[i % G_N_ELEMENTS (ids)], 30, 15));
  window = windows_show (session);
  before = windows_text (window);
  dialog = lap_arrange_open (window, LAP_ARRANGE_ORDER);
  gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
  g_assert_null (lap_arrange_proposal (dialog));
  g_assert_false (gtk_widget_get_sensitive (windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, "take")));
  g_assert_true (windows_press (GTK_WIDGET (dialog), "Escape"));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_settle (window);
  windows_close (window);
}

/* @n blocks of all kinds, which suit neither each other nor people who are new: each mistake is one to mend. */
static LapSession *
unsuitable (guint n)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  LapSession *session = lap_session_new ("Long");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);

  g_object_set (session, "group-level", LAP_LEVEL_NEW, NULL);
  for (guint i = 0; i < n; i++)
    plan_add (part, lap_block_new_exercise (lap_catalogue_nth (builtin, i * 37 % lap_catalogue_n (builtin))->id, 30, 5));
  return session;
}

static gboolean
turn_cb (gpointer turns)
{
  (*(guint *) turns)++;
  return G_SOURCE_CONTINUE;
}

/* The window lives on while the worker works: sources that are ready get their turn again and again. */
static void
test_alive (void)
{
  g_autoptr (LapSession) session = unsuitable (25);
  LapWindow *window = windows_show (session);
  guint turns = 0, source = g_idle_add (turn_cb, &turns);
  LapArrange *dialog = lap_arrange_open (window, LAP_ARRANGE_MEND);

  g_assert_null (lap_arrange_proposal (dialog));
  wait_for_proposal (dialog);
  g_source_remove (source);
  g_assert_cmpuint (turns, >, 50);
  g_assert_cmpuint (lap_arrange_proposal (dialog)->done->len, >, 0);
  press (dialog, "keep");
  windows_close (window);
}

/* The dialog of work that would take minutes, when it says that there is something to wait for. */
static LapArrange *
waiting (LapWindow *window)
{
  LapArrange *dialog = lap_arrange_open (window, LAP_ARRANGE_MEND);
  GtkWidget *bar = windows_find (GTK_WIDGET (dialog), GTK_TYPE_PROGRESS_BAR, "progress");

  g_assert_false (gtk_widget_get_mapped (bar));
  while (!gtk_widget_get_mapped (bar))
    g_main_context_iteration (NULL, TRUE);
  g_assert_null (lap_arrange_proposal (dialog));
  g_assert_false (gtk_widget_get_sensitive (windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, "take")));
  return dialog;
}

static void
test_give_up (void)
{
  g_autoptr (LapSession) session = unsuitable (200);
  LapWindow *window = windows_show (session);
  g_autofree char *before = windows_text (window), *after = NULL;
  gpointer dialog = waiting (window);

  g_object_add_weak_pointer (dialog, &dialog);
  g_assert_true (windows_press (dialog, "Escape"));
  windows_settle (window);
  g_assert_null (dialog);
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_assert_null (lap_history_undo_label (history (window)));
  windows_close (window);
}

/* What is worked on is outdated when the document changes under it. */
static void
test_outdated_while_working (void)
{
  g_autoptr (LapSession) session = unsuitable (200);
  LapWindow *window = windows_show (session);
  LapDocument *document = lap_window_document (window);
  gpointer dialog = waiting (window);
  LapEdits *edits = lap_edits_new ("Rename");

  g_object_add_weak_pointer (dialog, &dialog);
  lap_edits_set_text (edits, lap_document_session (document), "title", "Another");
  lap_document_apply (document, edits);
  windows_settle (window);
  g_assert_null (dialog);
  g_assert_cmpstr (lap_history_undo_label (history (window)), ==, "Rename");
  lap_document_undo (document);
  windows_close (window);
}

/* What is shown is outdated when the document changes under it. */
static void
test_outdated (void)
{
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);
  gpointer dialog = opened (window, LAP_ARRANGE_MEND);
  LapEdits *edits = lap_edits_new ("Rename");

  g_object_add_weak_pointer (dialog, &dialog);
  lap_edits_set_text (edits, lap_document_session (document), "title", "Another");
  lap_document_apply (document, edits);
  windows_settle (window);
  g_assert_null (dialog);
  windows_close (window);
}

/* A block that moves is told as moved, and none of those that stay. */
static void
test_sides (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Sides");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapTimeline) was = NULL, is = NULL;
  g_autoptr (GPtrArray) pairs = NULL, moved = g_ptr_array_new ();
  LapPlanSide *before, *after;
  guint changed = 0;

  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise ("push-up", 40, 20));
  plan_add (part, lap_block_new_exercise ("plank", 40, 20));
  plan_add (part, lap_block_new_exercise ("burpee", 40, 20));
  was = lap_timeline_new (session, builtin, NULL);
  before = lap_plan_side_new (was);
  g_ptr_array_add (moved, g_object_ref (lap_part_nth (part, 3)));
  lap_list_splice (part->blocks, 3, 1, NULL);
  lap_list_splice (part->blocks, 0, 0, moved);
  g_object_unref (g_ptr_array_index (moved, 0));
  is = lap_timeline_new (session, builtin, NULL);
  after = lap_plan_side_new (is);
  pairs = lap_plan_pairs (before, after, NULL);
  for (guint i = 0; i < pairs->len; i++) {
    const LapPlanPair *pair = g_ptr_array_index (pairs, i);

    changed += pair->after_change != NULL;
    if (pair->after_change != NULL) {
      g_assert_true (pair->after->object == LAP_OBJECT (lap_part_nth (part, 0)));
      g_assert_cmpstr (pair->after_change, ==, "was in place 4");
      g_assert_null (pair->before);
    }
    if (pair->before_change != NULL)
      g_assert_cmpstr (pair->before_change, ==, "goes to place 1");
  }
  g_assert_cmpuint (changed, ==, 1);
  g_assert_cmpuint (pairs->len, ==, 6); /* the part, three that stay, one that goes and comes */
  lap_plan_side_free (before);
  lap_plan_side_free (after);
}

static void
test_balance (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Two");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 2);
  GtkWidget *chart;
  const char *words;
  LapWindow *window;

  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise ("push-up", 30, 20));
  window = windows_show (session);
  chart = windows_find (GTK_WIDGET (lap_window_pane (window)), LAP_TYPE_BALANCE_CHART, NULL);
  g_assert_nonnull (chart);
  words = lap_balance_chart_words (LAP_BALANCE_CHART (chart));
  g_test_message ("%s", words);
  g_assert_nonnull (strstr (words, "Thighs 80 s")); /* two rounds of 40 s */
  g_assert_nonnull (strstr (words, "Chest 60 s"));
  g_assert_nonnull (strstr (words, "Push 60 s; Pull 0 s"));
  gtk_test_accessible_assert_property (chart, GTK_ACCESSIBLE_PROPERTY_LABEL, words);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++) {
    g_autofree char *keep = g_strconcat (cases[i].name, "/keep", NULL);
    g_autofree char *take = g_strconcat (cases[i].name, "/take", NULL);

    g_test_add_data_func (keep, GUINT_TO_POINTER (i), test_keep);
    g_test_add_data_func (take, GUINT_TO_POINTER (i), test_take);
  }
  g_test_add_func ("/ui/arrange/adapt/for-each", test_adapt_for_each);
  g_test_add_func ("/ui/arrange/order/cancel", test_cancel);
  g_test_add_func ("/ui/arrange/alive", test_alive);
  g_test_add_func ("/ui/arrange/give-up", test_give_up);
  g_test_add_func ("/ui/arrange/outdated", test_outdated);
  g_test_add_func ("/ui/arrange/outdated/while-working", test_outdated_while_working);
  g_test_add_func ("/ui/arrange/sides", test_sides);
  g_test_add_func ("/ui/balance/words", test_balance);
  return g_test_run ();
}
