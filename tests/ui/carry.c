/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is carried over the score: where it would land is told before it does, the view follows, and what would be too
 * much is refused without a loss.
 */
#include "ui/windows.h"

#include "place/plans.h"
#include "ui/exercise-drop.h"
#include "ui/score/block.h"
#include "ui/score/landing-paint.h"
#include "ui/shortcuts.h"

#include <string.h>

/* 45 s; 2 x (squat, push-up, bridge, dead bug at 40/20), the last rest dropped: 45 + 480 - 20 = 505 s. */
static LapWindow *
window_new (void)
{
  static const char *const ids[] = { "squat", "push-up", "glute-bridge", "dead-bug" };
  g_autoptr (LapSession) session = lap_session_new ("Carried");
  LapPart *part = plan_part (session, LAP_PART_WARM_UP, 1);

  plan_add (part, lap_block_new_exercise ("march-on-the-spot", 45, 0));
  part = plan_part (session, LAP_PART_MAIN, 2);
  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    plan_add (part, lap_block_new_exercise (ids[i], 40, 20));
  return windows_show (session);
}

static double
x_of (LapWindow *window, double second)
{
  return lap_axis_x (lap_window_context (window)->axis, second);
}

/* Presses at one second and moves to another; holds there. */
static GtkGesture *
carry (LapWindow *window, double from, double to)
{
  GtkGesture *gesture = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_GESTURE_DRAG);
  double x = x_of (window, from);

  g_signal_emit_by_name (gesture, "drag-begin", x, 40.0);
  for (int i = 1; i <= 4; i++)
    g_signal_emit_by_name (gesture, "drag-update", (x_of (window, to) - x) * i / 4, 0.0);
  windows_settle (window);
  return gesture;
}

/* A key that is pressed or released while something is held, as the window's controller of keys hears it. */
static void
key (LapWindow *window, const char *signal, guint keyval)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (GTK_WIDGET (window));

  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GObject) item = g_list_model_get_item (controllers, i);
    gboolean taken;

    if (!GTK_IS_EVENT_CONTROLLER_KEY (item) ||
        gtk_event_controller_get_propagation_phase (GTK_EVENT_CONTROLLER (item)) != GTK_PHASE_CAPTURE)
      continue;
    if (g_str_equal (signal, "key-pressed"))
      g_signal_emit_by_name (item, signal, keyval, 0, 0, &taken);
    else
      g_signal_emit_by_name (item, signal, keyval, 0, 0);
    return;
  }
  g_assert_not_reached ();
}

static const char *
order_of (LapWindow *window)
{
  LapPart *part = lap_session_nth (lap_document_session (lap_window_document (window)), 1);
  static char text[100];

  *text = '\0';
  for (guint i = 0; i < lap_part_n (part); i++)
    g_strlcat (text, (char[]) { lap_part_nth (part, i)->exercise[0], '\0' }, sizeof text);
  return text;
}

static gboolean
has_warning (LapCheckup *checkup, const char *id)
{
  for (guint i = 0; i < lap_checkup_n (checkup); i++)
    if (g_str_equal (lap_checkup_nth (checkup, i)->check->id, id))
      return TRUE;
  return FALSE;
}

/* @words: what the lane of @kind says of a new warning, NULL for nothing. */
static void
assert_lane_tells (LapWindow *window, const LapLaneKind *kind, const char *words)
{
  GtkWidget *lane = windows_find (GTK_WIDGET (lap_window_score (window)), kind->type (), NULL);
  g_autofree char *told = lap_landing_words (LAP_LANE (lane));

  g_assert_cmpstr (told, ==, words);
}

/* Bridge after squat: the glutes would work twice running, which they don't now. */
static void
test_landing (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);
  g_autofree char *before = windows_text (window), *after = NULL;
  guint n = lap_document_timeline (lap_window_document (window))->n, fresh = 0;
  GtkGesture *gesture = carry (window, 180, 110);
  const LapLanding *landing = context->landing;

  g_assert_nonnull (landing);
  g_assert_true (has_warning (lap_document_checkup (lap_window_document (window)), "warm-up-short"));
  g_assert_cmpuint (landing->ghosts->len, ==, 1);
  g_assert_cmpint (g_array_index (landing->ghosts, LapGhost, 0).body, ==, 40);
  g_assert_cmpint (lap_landing_seconds (landing), ==, 60);
  g_assert_true (g_str_has_prefix (landing->words, "Glute bridge, 1:00. Main: after 1, in 2 rounds: ±0:00, 8:25 in all"));
  for (guint i = 0; i < landing->fresh->len; i++) {
    const LapWarning *warning = lap_checkup_nth (landing->checkup, g_array_index (landing->fresh, guint, i));

    g_assert_cmpstr (warning->check->id, !=, "warm-up-short"); /* it is so already */
    fresh += g_str_equal (warning->check->id, "same-muscle");
  }
  g_assert_cmpuint (fresh, ==, 1);
  assert_lane_tells (window, &lap_lane_muscles, "The same muscles twice running");
  assert_lane_tells (window, &lap_lane_parts, NULL);
  assert_lane_tells (window, &lap_lane_talk, NULL);
  g_assert_cmphex (g_array_index (landing->ghosts, LapGhost, 0).hard & LAP_BIT (LAP_REGION_GLUTES), !=, 0);
  g_assert_nonnull (strstr (landing->words, "New: "));
  /* Nothing has changed yet. */
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_assert_cmpuint (lap_document_timeline (lap_window_document (window))->n, ==, n);
  g_assert_cmpstr (order_of (window), ==, "spgd");
  g_signal_emit_by_name (gesture, "drag-end", x_of (window, 110) - x_of (window, 180), 0.0);
  g_assert_cmpstr (order_of (window), ==, "sgpd");
  g_assert_null (context->landing);
  windows_settle (window);
  windows_close (window);
}

/* Where it stands already there is nothing to show. */
static void
test_nowhere (void)
{
  LapWindow *window = window_new ();
  GtkGesture *gesture = carry (window, 60, 70);

  g_assert_null (lap_window_context (window)->landing);
  g_signal_emit_by_name (gesture, "cancel", NULL);
  windows_close (window);
}

/* Ctrl makes a copy of it, whenever it is pressed; Escape ends it all. */
static void
test_modifiers (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);
  GtkGesture *gesture = carry (window, 180, 110);

  key (window, "key-pressed", GDK_KEY_Control_L);
  g_assert_nonnull (strstr (context->landing->words, "+2:00, 10:25 in all"));
  key (window, "key-released", GDK_KEY_Control_L);
  g_assert_nonnull (strstr (context->landing->words, "±0:00, 8:25 in all"));
  key (window, "key-pressed", GDK_KEY_Control_L);
  g_signal_emit_by_name (gesture, "drag-end", x_of (window, 110) - x_of (window, 180), 0.0);
  g_assert_cmpstr (order_of (window), ==, "sgpgd");
  lap_document_undo (lap_window_document (window));
  windows_settle (window);
  carry (window, 180, 110);
  key (window, "key-pressed", GDK_KEY_Escape);
  g_assert_null (context->landing);
  g_assert_cmpstr (order_of (window), ==, "spgd");
  windows_settle (window);
  windows_close (window);
}

/* With Alt an end moves by seconds. */
static void
test_fine_end (void)
{
  LapWindow *window = window_new ();
  LapBlock *squat = lap_score_block (lap_window_context (window), 1);
  GtkGesture *gesture;

  lap_score_zoom (lap_window_context (window), 4, 0);
  windows_settle (window);
  gesture = carry (window, 85, 92);
  g_assert_cmpint (squat->work, ==, 45);
  key (window, "key-pressed", GDK_KEY_Alt_L);
  g_assert_cmpint (squat->work, ==, 47);
  key (window, "key-released", GDK_KEY_Alt_L);
  g_assert_cmpint (squat->work, ==, 45);
  g_signal_emit_by_name (gesture, "drag-end", x_of (window, 92) - x_of (window, 85), 0.0);
  g_assert_cmpstr (lap_history_undo_label (lap_document_history (lap_window_document (window))), ==,
                   "Change the work of Squat");
  windows_settle (window);
  windows_close (window);
}

/* The end of all can be drawn further out. */
static void
test_last_end (void)
{
  LapWindow *window = window_new ();
  LapBlock *bug = lap_part_nth (lap_session_nth (lap_document_session (lap_window_document (window)), 1), 3);
  LapScoreContext *context = lap_window_context (window);
  GtkGesture *gesture = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_GESTURE_DRAG);
  double x;

  lap_score_scroll_by (context, 1e6);
  windows_settle (window);
  x = x_of (window, 505) - 2;
  g_signal_emit_by_name (gesture, "drag-begin", x, 40.0);
  g_signal_emit_by_name (gesture, "drag-update", 50 * context->axis->zoom, 0.0);
  /* In both rounds, and at the edge of the view on and on. */
  while (bug->work < 100)
    g_main_context_iteration (NULL, TRUE);
  g_signal_emit_by_name (gesture, "cancel", NULL);
  g_assert_cmpint (bug->work, ==, 40);
  windows_settle (window);
  windows_close (window);
}

/* Near the edge the view goes along, for what is carried and for what comes from the catalogue. */
static void
test_scrolls (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);
  GtkGesture *gesture = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_GESTURE_DRAG);
  GtkDropTarget *target = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_DROP_TARGET);
  double x, offset;
  GdkDragAction action = 0;

  lap_score_zoom (context, 6, 0);
  windows_settle (window);
  x = x_of (window, 10);
  g_signal_emit_by_name (gesture, "drag-begin", x, 40.0);
  g_signal_emit_by_name (gesture, "drag-update", context->axis->view - 5 - x, 0.0);
  while (context->axis->offset < 400)
    g_main_context_iteration (NULL, TRUE);
  g_signal_emit_by_name (gesture, "cancel", NULL);
  g_assert_null (context->landing);
  offset = context->axis->offset;
  g_signal_emit_by_name (target, "motion", context->axis->view - 5, 40.0, &action);
  while (context->axis->offset < offset + 200)
    g_main_context_iteration (NULL, TRUE);
  g_assert_nonnull (context->landing);
  g_signal_emit_by_name (target, "leave");
  g_assert_null (context->landing);
  windows_settle (window);
  windows_close (window);
}

static void
told_cb (LapDocument *document, const char *text, gboolean undoable, char **told)
{
  g_free (*told);
  *told = g_strdup (text);
}

/* 100 rounds of 66 blocks with a rest of a second: 13,199 intervals, and as long as a session may be nearly. */
static LapSession *
nearly_full (void)
{
  LapSession *session = lap_session_new ("Full");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 100);

  for (int i = 0; i < 66; i++)
    plan_add (part, lap_block_new_exercise ("squat", 1, 1));
  plan_add (part, lap_block_new_exercise ("push-up", 300, 0));
  return session;
}

static void
assert_taken_back (LapWindow *window, const char *told, const char *before)
{
  g_autofree char *after = windows_text (window);

  g_assert_nonnull (told);
  g_assert_true (g_str_has_prefix (told, "Taken back: "));
  g_assert_null (strchr (told, '\n'));
  g_assert_cmpstr (after, ==, before);
  g_assert_null (lap_history_undo_label (lap_document_history (lap_window_document (window))));
}

/* A duplicate, a drop and a paste that would be beyond what a file may hold are told of and lose nothing. */
static void
test_limits (void)
{
  g_autoptr (LapSession) session = nearly_full ();
  LapWindow *window = windows_show (session);
  LapScoreContext *context = lap_window_context (window);
  guint last = lap_score_find (context->score, 0, 66, 1);
  g_autofree char *before = windows_text (window), *told = NULL;
  GtkDropTarget *target = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_DROP_TARGET);
  g_autoptr (LapExerciseDrop) exercise = lap_exercise_drop_new ("burpee");
  g_auto (GValue) value = G_VALUE_INIT;
  gboolean taken = TRUE;

  g_signal_connect (lap_window_document (window), "told", G_CALLBACK (told_cb), &told);
  lap_blocks_lane_go (windows_blocks (window), last);
  g_assert_true (windows_press (GTK_WIDGET (windows_blocks (window)), "<Control>d"));
  assert_taken_back (window, told, before);
  g_assert_cmpuint (lap_score_selected (context), ==, last);
  g_clear_pointer (&told, g_free);
  /* After the last of 300 s: another of 300 in each of a hundred rounds. */
  g_value_init (&value, LAP_TYPE_EXERCISE_DROP);
  g_value_set_boxed (&value, exercise);
  lap_score_scroll_by (context, 1e9);
  windows_settle (window);
  g_signal_emit_by_name (target, "drop", &value, context->axis->view - 1, 40.0, &taken);
  g_assert_false (taken);
  assert_taken_back (window, told, before);
  g_clear_pointer (&told, g_free);
  g_assert_true (windows_press (GTK_WIDGET (windows_blocks (window)), "<Control>c"));
  g_assert_true (windows_press (GTK_WIDGET (windows_blocks (window)), "<Control>v"));
  while (told == NULL)
    g_main_context_iteration (NULL, TRUE);
  assert_taken_back (window, told, before);
  windows_settle (window);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/carry/landing", test_landing);
  g_test_add_func ("/ui/carry/nowhere", test_nowhere);
  g_test_add_func ("/ui/carry/modifiers", test_modifiers);
  g_test_add_func ("/ui/carry/fine-end", test_fine_end);
  g_test_add_func ("/ui/carry/last-end", test_last_end);
  g_test_add_func ("/ui/carry/scrolls", test_scrolls);
  g_test_add_func ("/ui/carry/limits", test_limits);
  return g_test_run ();
}
