/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The list of warnings follows edits: in the frame that draws the lanes, once however many there were, with the rows
 * that are there, and only while it can be seen.
 */
#include "ui/windows.h"

#include "edit/verbs.h"
#include "place/plans.h"
#include "ui/warning-row.h"

/* 399 intervals: 20 blocks in 10 rounds, with plenty that may be wrong. */
static LapWindow *
window_new (void)
{
  static const char *const circle[] = { "squat", "push-up", "step-jack", "dead-bug", "reverse-lunge" };
  g_autoptr (LapSession) session = lap_session_new ("Long");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 10);

  for (guint i = 0; i < 20; i++)
    plan_add (part, lap_block_new_exercise (circle[i % G_N_ELEMENTS (circle)], 20 + i % 3, 10));
  return windows_show (session);
}

static LapCheckup *
checkup_of (LapWindow *window)
{
  return lap_document_checkup (lap_window_document (window));
}

static GtkWidget *
part_of_list (LapWindow *window, GType type, const char *id)
{
  return windows_find (GTK_WIDGET (lap_window_warnings (window)), type, id);
}

static LapWarningRow *
row_at (LapWindow *window, guint i)
{
  return LAP_WARNING_ROW (gtk_list_box_get_row_at_index (GTK_LIST_BOX (part_of_list (window, GTK_TYPE_LIST_BOX, "list")), i));
}

static const char *
words_of (GtkWidget *row)
{
  return gtk_label_get_text (GTK_LABEL (windows_find (row, GTK_TYPE_LABEL, "message")));
}

static void
set_work (LapWindow *window, int seconds)
{
  LapDocument *document = lap_window_document (window);
  LapBlock *block = lap_part_nth (lap_session_nth (lap_document_session (document), 0), 2);
  LapEdits *edits = lap_edits_new ("Work");

  lap_edits_set_int (edits, block, "work", seconds);
  g_assert_true (lap_document_hold (document, edits));
}

/* The rows say what the checkup says, and the name of a block ends in the number of its warning. */
static void
assert_shown (LapWindow *window)
{
  LapScoreContext *context = lap_window_context (window);
  LapCheckup *checkup = checkup_of (window);
  guint i = 0;

  for (; row_at (window, i) != NULL; i++) {
    const LapWarning *warning = lap_checkup_nth (checkup, i);
    g_autofree char *message = lap_warning_message (checkup, warning), *clock = lap_warning_clock (warning);
    g_auto (GStrv) ends = g_strsplit (clock, "–", 2);

    g_assert_true (lap_warning_row_warning (row_at (window, i)) == warning);
    g_assert_true (g_str_has_prefix (words_of (GTK_WIDGET (row_at (window, i))), message));
    if (ends[0] != NULL)
      g_assert_nonnull (strstr (words_of (GTK_WIDGET (row_at (window, i))), ends[0]));
  }
  g_assert_cmpuint (i, >, 20);
  for (guint box = 0; box < context->score->n; box++) {
    GtkWidget *block = lap_blocks_lane_find (windows_blocks (window), box);
    LapPlaced placed = lap_score_place (context->score, context->axis, box);
    graphene_rect_t bounds;

    if (block == NULL || placed.x >= context->axis->view || placed.x + placed.width <= 0)
      continue;
    g_assert_true (gtk_widget_compute_bounds (block, GTK_WIDGET (windows_blocks (window)), &bounds));
    g_assert_cmpint (bounds.origin.x, ==, placed.x);
    g_assert_cmpint (bounds.size.width, ==, MAX (placed.width, LAP_MERGE_BELOW));
  }
}

typedef struct {
  LapWindow *window;
  guint      painted, counted;
} Frames;

static void
painted_cb (Frames *frames)
{
  if (frames->painted++ == 0)
    assert_shown (frames->window);
}

static void
counted_cb (Frames *frames)
{
  frames->counted++;
}

/* However many edits come before a frame, that one shows the last of them everywhere, and nothing is said twice. */
static void
test_same_frame (void)
{
  Frames frames = { window_new () };
  GdkFrameClock *clock = gtk_widget_get_frame_clock (GTK_WIDGET (frames.window));
  GtkWidget *message = windows_find (GTK_WIDGET (row_at (frames.window, 5)), GTK_TYPE_LABEL, "message");
  gulong painted = g_signal_connect_swapped (clock, "after-paint", G_CALLBACK (painted_cb), &frames);
  gulong counted = g_signal_connect_swapped (message, "notify::label", G_CALLBACK (counted_cb), &frames);

  for (int i = 0; i < 7; i++)
    set_work (frames.window, 30 + 5 * i);
  gtk_test_widget_wait_for_draw (GTK_WIDGET (frames.window));
  g_assert_cmpuint (frames.painted, >, 0);
  g_assert_cmpuint (frames.counted, ==, 1);
  g_signal_handler_disconnect (clock, painted);
  g_signal_handler_disconnect (message, counted);
  lap_document_keep (lap_window_document (frames.window));
  windows_close (frames.window);
}

/* What warns before and after keeps its row, also when something comes or goes between. */
static void
test_rows_stay (void)
{
  LapWindow *window = window_new ();
  LapWarningRow *first = row_at (window, 0), *second = row_at (window, 1), *third = row_at (window, 2);
  g_autofree char *said = g_strdup (words_of (GTK_WIDGET (third)));

  set_work (window, 50);
  lap_document_keep (lap_window_document (window));
  windows_settle (window);
  g_assert_true (row_at (window, 0) == first && row_at (window, 1) == second && row_at (window, 2) == third);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.undo", NULL);
  windows_settle (window);
  gtk_widget_activate_action (GTK_WIDGET (second), "warning.fine", NULL);
  windows_settle (window);
  g_assert_true (row_at (window, 0) == first);
  g_assert_cmpstr (words_of (GTK_WIDGET (row_at (window, 1))), ==, said);
  g_assert_true (row_at (window, 1) == third);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.undo", NULL);
  windows_settle (window);
  g_assert_true (row_at (window, 0) == first && row_at (window, 2) == third);
  assert_shown (window);
  windows_close (window);
}

/* Behind another view it does nothing, and is right when it comes back. */
static void
test_unseen (void)
{
  LapWindow *window = window_new ();
  GtkWidget *message = windows_find (GTK_WIDGET (row_at (window, 5)), GTK_TYPE_LABEL, "message");
  Frames frames = { window };
  gulong counted = g_signal_connect_swapped (message, "notify::label", G_CALLBACK (counted_cb), &frames);

  lap_window_show_view (window, "rehearse");
  windows_settle (window);
  set_work (window, 45);
  lap_document_keep (lap_window_document (window));
  windows_settle (window);
  g_assert_cmpuint (frames.counted, ==, 0);
  lap_window_show_view (window, "plan");
  windows_settle (window);
  g_assert_cmpuint (frames.counted, ==, 1);
  assert_shown (window);
  g_signal_handler_disconnect (message, counted);
  windows_close (window);
}

/* The button of the first remedy against a session that is too long. */
static GtkWidget *
find_remedy (LapWindow *window)
{
  LapCheckup *checkup = checkup_of (window);
  guint n = 0;
  GtkWidget *row;

  while (!g_str_equal (lap_checkup_nth (checkup, n)->check->id, "length-over"))
    n++;
  row = lap_warnings_row (lap_window_warnings (window), n);
  lap_warning_row_fill (LAP_WARNING_ROW (row));
  return gtk_widget_get_first_child (windows_find (row, GTK_TYPE_BOX, "remedies"));
}

/* A remedy of before an edit is none any more: the button that says it does nothing but say what would help now. */
static void
test_remedy_is_new (void)
{
  LapWindow *window = window_new ();
  LapDocument *document = lap_window_document (window);
  LapEdits *edits = lap_edits_new ("Target");
  g_autofree char *said = NULL, *before = NULL, *after = NULL;
  GtkWidget *button;

  lap_edits_set_int (edits, lap_document_session (document), "target", 700);
  g_assert_true (lap_document_apply (document, edits));
  button = find_remedy (window);
  said = g_strdup (gtk_button_get_label (GTK_BUTTON (button)));
  g_assert_cmpstr (said, ==, "1 round of Main");
  set_work (window, 300); /* now even one is too long */
  lap_document_keep (document);
  before = windows_text (window);
  lap_warnings_row (lap_window_warnings (window), 0); /* the list follows, remedies would when there is time */
  g_assert_cmpstr (gtk_button_get_label (GTK_BUTTON (button)), ==, said);
  g_signal_emit_by_name (button, "clicked");
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_assert_true (find_remedy (window) == button);
  g_assert_cmpstr (gtk_button_get_label (GTK_BUTTON (button)), !=, said);
  g_signal_emit_by_name (button, "clicked");
  g_assert_null (lap_history_redo_label (lap_document_history (document)));
  g_assert_cmpint (lap_document_session (document)->target, ==, lap_document_timeline (document)->length);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/warnings/same-frame", test_same_frame);
  g_test_add_func ("/ui/warnings/rows-stay", test_rows_stay);
  g_test_add_func ("/ui/warnings/unseen", test_unseen);
  g_test_add_func ("/ui/warnings/remedy-is-new", test_remedy_is_new);
  return g_test_run ();
}
