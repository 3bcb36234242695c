/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each kind of drag in the score by the display: pressed, carried and let go by the X server's pointer it is one step;
 * with the Escape key of its keyboard in the middle nothing has happened, whatever is let go afterwards.
 */
#include "ui/hands.h"
#include "ui/windows.h"

#include "place/plans.h"
#include "ui/score/parts.h"

#define STEPS 8

/* 45 s of warm-up, then two rounds of 180 s: squat works to 85 and rests to 105. */
static LapWindow *
window_new (void)
{
  static const char *const ids[] = { "squat", "push-up", "glute-bridge" };
  g_autoptr (LapSession) session = lap_session_new ("Dragged");
  LapPart *part = plan_part (session, LAP_PART_WARM_UP, 1);
  LapWindow *window;

  plan_add (part, lap_block_new_exercise ("march-on-the-spot", 45, 0));
  part = plan_part (session, LAP_PART_MAIN, 2);
  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    plan_add (part, lap_block_new_exercise (ids[i], 40, 20));
  window = windows_show (session);
  lap_score_fit (lap_window_context (window));
  hands_on (GTK_WINDOW (window));
  return window;
}

/* From a second, and px into what is left or right of it, to another; what it is called, and how much longer all is.
 * At the very end of the session is the rest after the part, of none. */
static const struct {
  GType     (*lane) (void);
  double      from, px, y, to;
  const char *undo, *second; /* the exercise that is the second then */
  int         longer;
} drags[] = {
  { lap_blocks_lane_get_type, 60, 0, 15, 140, "Move Squat", "squat", 0 },
  { lap_blocks_lane_get_type, 85, 0, 15, 96, "Change the work of Squat", "push-up", 20 },
  { lap_blocks_lane_get_type, 105, 0, 15, 116, "Change the rest of Squat", "push-up", 20 },
  { lap_parts_lane_get_type, 385, -11, 6, 225, "Change the rounds", "push-up", -180 },
  { lap_parts_lane_get_type, 225, 0, 30, 256, "Change the rest between rounds", "push-up", 30 },
};

/* Presses what is to be dragged in row @i, and carries it there. */
static void
carry (LapWindow *window, guint i)
{
  GtkWidget *lane = windows_find (GTK_WIDGET (window), drags[i].lane (), NULL);
  const LapAxis *axis = lap_window_context (window)->axis;
  double x = lap_axis_x (axis, drags[i].from) + (axis->mirrored ? -1 : 1) * drags[i].px;
  double dx = lap_axis_x (axis, drags[i].to) - lap_axis_x (axis, drags[i].from);

  hands_move (lane, x, drags[i].y);
  hands_button (1, TRUE);
  for (int step = 1; step <= STEPS; step++)
    hands_move (lane, x + dx * step / STEPS, drags[i].y);
}

static const char *
second_of (LapWindow *window)
{
  return lap_part_nth (lap_session_nth (lap_document_session (lap_window_document (window)), 1), 1)->exercise;
}

static void
test_drags (gconstpointer mirrored)
{
  LapWindow *window;
  LapDocument *document;
  g_autofree char *first = NULL;
  int length;

  gtk_widget_set_default_direction (GPOINTER_TO_INT (mirrored) ? GTK_TEXT_DIR_RTL : GTK_TEXT_DIR_LTR);
  window = window_new ();
  document = lap_window_document (window);
  first = windows_text (window);
  length = lap_document_timeline (document)->length;
  for (guint i = 0; i < G_N_ELEMENTS (drags); i++) {
    g_autofree char *last = NULL;

    carry (window, i);
    hands_button (1, FALSE);
    g_assert_cmpstr (lap_history_undo_label (lap_document_history (document)), ==, drags[i].undo);
    g_assert_cmpint (lap_document_timeline (document)->length, ==, length + drags[i].longer);
    g_assert_cmpstr (second_of (window), ==, drags[i].second);
    hands_press ("<Control>z");
    last = windows_text (window);
    g_assert_cmpstr (last, ==, first);
    g_assert_null (lap_history_undo_label (lap_document_history (document)));
  }
  windows_close (window);
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
}

static void
test_escape (void)
{
  LapWindow *window = window_new ();
  LapDocument *document = lap_window_document (window);
  g_autofree char *first = windows_text (window);

  for (guint i = 0; i < G_N_ELEMENTS (drags); i++) {
    g_autofree char *held = NULL, *last = NULL;

    carry (window, i);
    held = windows_text (window);
    /* A block that is carried is put down at the end; what is drawn is there at once. */
    if (drags[i].longer != 0)
      g_assert_cmpstr (held, !=, first);
    hands_press ("Escape");
    hands_move (GTK_WIDGET (windows_blocks (window)), 5, 5);
    hands_button (1, FALSE);
    last = windows_text (window);
    g_assert_cmpstr (last, ==, first);
    g_assert_null (lap_history_undo_label (lap_document_history (document)));
    g_assert_false (lap_document_is_modified (document));
  }
  windows_close (window);
}

static gboolean
has_chosen (gpointer context)
{
  return ((LapScoreContext *) context)->warning != G_MAXUINT;
}

/* Where a block's work ends stands the mark of its warning. A click there is about the warning, a drag about the end. */
static void
test_mark_on_end (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Marked");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  LapBlock *block = lap_block_new_exercise (NULL, 60, 60);
  LapWindow *window;
  LapScoreContext *context;
  GtkWidget *lane;
  double x, y;

  plan_add (part, block);
  plan_add (part, lap_block_new_exercise ("squat", 60, 0));
  window = windows_show (session);
  context = lap_window_context (window);
  lap_score_fit (context);
  hands_on (GTK_WINDOW (window));
  lane = GTK_WIDGET (windows_blocks (window));
  x = lap_axis_x (context->axis, 60);
  y = lap_lane_mark_y (LAP_LANE (lane), 0);
  g_assert_true (lap_lane_is_on_mark (LAP_LANE (lane), x, y));
  hands_move (lane, x, y);
  hands_button (1, TRUE);
  for (int step = 1; step <= STEPS; step++)
    hands_move (lane, lap_axis_x (context->axis, 60 + 20.0 * step / STEPS), y);
  hands_button (1, FALSE);
  g_assert_cmpint (block->work, ==, 80);
  g_assert_cmpuint (context->warning, ==, G_MAXUINT);
  lap_document_undo (context->document);
  windows_settle (window);
  hands_move (lane, x, y);
  hands_click (1, 1);
  hands_until (has_chosen, context);
  g_assert_cmpint (block->work, ==, 60);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_data_func ("/ui/drags/kept", GINT_TO_POINTER (FALSE), test_drags);
  g_test_add_data_func ("/ui/drags/kept-mirrored", GINT_TO_POINTER (TRUE), test_drags);
  g_test_add_func ("/ui/drags/escape", test_escape);
  g_test_add_func ("/ui/drags/mark-on-end", test_mark_on_end);
  return g_test_run ();
}
