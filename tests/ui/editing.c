/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The score edited by hand, through the actions and gestures of a real window.
 */
#include "ui/windows.h"

#include "place/plans.h"

/* A warm-up of one block, a main part of four in two rounds. */
static LapWindow *
window_new (void)
{
  static const char *const ids[] = { "squat", "push-up", "glute-bridge", "high-knees" };
  g_autoptr (LapSession) session = lap_session_new ("Edited");
  LapPart *part = plan_part (session, LAP_PART_WARM_UP, 1);

  plan_add (part, lap_block_new_exercise ("march-on-the-spot", 45, 0));
  part = plan_part (session, LAP_PART_MAIN, 2);
  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    plan_add (part, lap_block_new_exercise (ids[i], 40, 20));
  return windows_show (session);
}

static gboolean
press (LapWindow *window, const char *keys)
{
  return windows_press (gtk_window_get_focus (GTK_WINDOW (window)), keys);
}

/* "1.0/2": part, block and round of all that is selected. */
static char *
chosen (LapWindow *window)
{
  LapScoreContext *context = lap_window_context (window);
  g_autoptr (GPtrArray) blocks = lap_score_chosen (context);
  g_autoptr (GString) text = g_string_new (NULL);

  for (guint i = 0; i < blocks->len; i++) {
    LapBlock *block = g_ptr_array_index (blocks, i);
    LapPart *part = LAP_PART (LAP_OBJECT (block)->owner);

    g_string_append_printf (text, "%s%u.%u/%d", i > 0 ? " " : "",
                            lap_list_find (lap_document_session (context->document)->parts, part),
                            lap_list_find (part->blocks, block), lap_score_round_of (context, block));
  }
  return g_strdup (text->str);
}

static void
assert_chosen (LapWindow *window, const char *expected)
{
  g_autofree char *text = chosen (window);

  g_assert_cmpstr (text, ==, expected);
}

static guint
box_of (LapWindow *window, guint part, guint block, int round)
{
  return lap_score_find (lap_window_context (window)->score, part, block, round);
}

static void
test_select_several (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);

  windows_click_box (window, box_of (window, 1, 1, 1));
  assert_chosen (window, "1.1/1");
  g_assert_true (press (window, "<Shift>Right"));
  g_assert_true (press (window, "<Shift>Right"));
  assert_chosen (window, "1.1/1 1.2/1 1.3/1");
  g_assert_true (press (window, "<Shift>Left"));
  assert_chosen (window, "1.1/1 1.2/1");
  /* To the other side of where it began. */
  lap_blocks_lane_choose (windows_blocks (window), box_of (window, 0, 0, 1), LAP_CHOOSE_TO);
  assert_chosen (window, "0.0/1 1.0/1 1.1/1");
  lap_blocks_lane_choose (windows_blocks (window), box_of (window, 1, 0, 1), LAP_CHOOSE_TOGGLE);
  assert_chosen (window, "0.0/1 1.1/1");
  lap_blocks_lane_choose (windows_blocks (window), box_of (window, 1, 3, 2), LAP_CHOOSE_TOGGLE);
  assert_chosen (window, "0.0/1 1.1/1 1.3/2");
  g_assert_cmpuint (lap_score_selected (context), ==, box_of (window, 1, 3, 2));
  g_assert_true (press (window, "<Control>a"));
  assert_chosen (window, "0.0/1 1.0/2 1.1/1 1.2/2 1.3/2");
  g_assert_true (press (window, "Escape"));
  assert_chosen (window, "");
  windows_close (window);
}

/* A plain click on one of several chooses it alone once the button is let go. */
static void
test_click_one_of_several (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);

  windows_click_box (window, box_of (window, 1, 1, 1));
  g_assert_true (press (window, "<Control>a"));
  g_assert_cmpuint (context->marked->len, ==, 4);
  windows_settle (window);
  for (guint i = 0; i < 4; i++) {
    GtkWidget *widget = lap_blocks_lane_find (windows_blocks (window), box_of (window, 1, i, 1));

    gtk_test_accessible_assert_state (GTK_ACCESSIBLE (widget), GTK_ACCESSIBLE_STATE_SELECTED, TRUE);
  }
  windows_click_box (window, box_of (window, 1, 2, 1));
  assert_chosen (window, "1.2/1");
  windows_close (window);
}

static void
test_own_pace (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Own pace");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  LapWindow *window;

  g_object_set (part, "run", LAP_RUN_OWN_PACE, "cap", 600, NULL);
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise ("push-up", 40, 20));
  window = windows_show (session);
  windows_click_box (window, 1);
  assert_chosen (window, "0.1/1");
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/editing/select-several", test_select_several);
  g_test_add_func ("/ui/editing/click-one-of-several", test_click_one_of_several);
  g_test_add_func ("/ui/editing/own-pace", test_own_pace);
  return g_test_run ();
}
