/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Parts, rounds and the rests about them, changed by hand and by keys over their brackets.
 */
#include "ui/windows.h"

#include "place/plans.h"
#include "edit/verbs.h"
#include "ui/score/bracket.h"
#include "ui/score/folds.h"
#include "ui/score/parts.h"

/* Opening 60; 2 x (40/20 40/20 40/20) = 340 s, since the last rest is dropped; cool-down of 600: 1000 s. */
static LapSession *
three_parts (void)
{
  LapSession *session = lap_session_new ("Brackets");
  LapPart *part = plan_part (session, LAP_PART_OPENING, 1);

  plan_add (part, lap_block_new_talk ("Hello", 60));
  part = plan_part (session, LAP_PART_MAIN, 2);
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise ("push-up", 40, 20));
  plan_add (part, lap_block_new_exercise ("dead-bug", 40, 20));
  part = plan_part (session, LAP_PART_COOL_DOWN, 1);
  plan_add (part, lap_block_new_exercise ("bridge", 600, 0));
  return session;
}

static LapWindow *
window_new (void)
{
  g_autoptr (LapSession) session = three_parts ();

  return windows_show (session);
}

static LapPartsLane *
lane_of (LapWindow *window)
{
  return LAP_PARTS_LANE (windows_find (GTK_WIDGET (window), LAP_TYPE_PARTS_LANE, NULL));
}

static guint
bracket_of (LapWindow *window, LapBracketKind kind, guint part, guint round)
{
  guint index = lap_brackets_find (lap_parts_lane_brackets (lane_of (window)), kind, part, round);

  g_assert_cmpuint (index, !=, LAP_NO_BRACKET);
  return index;
}

/* "2+0/0": rounds of the main part, the rest between them and after it. */
static void
assert_main (LapWindow *window, const char *expected)
{
  LapPart *part = lap_session_nth (lap_document_session (lap_window_document (window)), 1);
  g_autofree char *text = g_strdup_printf ("%d+%d/%d", part->rounds, part->round_rest, part->rest_after);

  g_assert_cmpstr (text, ==, expected);
}

static double
y_of (LapWindow *window, gboolean upper)
{
  return upper ? 6 : 2 * lap_text_line (GTK_WIDGET (lane_of (window)));
}

/* Presses @px into the part's time from @second, and carries it by @by seconds; ends by the signal @last. */
static void
drag (LapWindow *window, double second, double px, gboolean upper, double by, const char *last)
{
  const LapAxis *axis = lap_window_context (window)->axis;
  int sign = axis->mirrored ? -1 : 1;

  windows_drag (window, GTK_WIDGET (lane_of (window)), lap_axis_x (axis, second) + sign * px, y_of (window, upper),
                sign * by * axis->zoom, last);
}

/* A round takes 170 s: half of the main part. */
static const struct { double second, px; gboolean upper; double by; const char *after, *undo; } drags[] = {
  { 400, -3, FALSE, 150, "3+0/0", "Change the rounds" }, /* the end of the last round */
  { 400, -3, TRUE, 350, "4+0/0", "Change the rounds" },  /* the end of the part */
  { 400, -3, TRUE, -160, "1+0/0", "Change the rounds" },
  { 400, -3, TRUE, -900, "1+0/0", "Change the rounds" },
  { 400, -3, TRUE, 60, "2+0/0", NULL },                  /* not half a round */
  { 240, 0, FALSE, 31, "2+30/0", "Change the rest between rounds" },
  { 240, 0, FALSE, -31, "2+0/0", NULL },
  { 400, 3, TRUE, 46, "2+0/45", "Change the rest after the part" },
};

static void
test_drag (void)
{
  for (int mirrored = 0; mirrored < 2; mirrored++) {
    LapWindow *window;
    LapHistory *history;

    gtk_widget_set_default_direction (mirrored ? GTK_TEXT_DIR_RTL : GTK_TEXT_DIR_LTR);
    window = window_new ();
    history = lap_document_history (lap_window_document (window));
    lap_score_fit (lap_window_context (window));
    windows_settle (window);
    for (guint i = 0; i < G_N_ELEMENTS (drags); i++) {
      drag (window, drags[i].second, drags[i].px, drags[i].upper, drags[i].by, "cancel");
      assert_main (window, "2+0/0");
      g_assert_null (lap_history_undo_label (history));
      drag (window, drags[i].second, drags[i].px, drags[i].upper, drags[i].by, "drag-end");
      assert_main (window, drags[i].after);
      g_assert_cmpstr (lap_history_undo_label (history), ==, drags[i].undo);
      if (drags[i].undo != NULL)
        lap_document_undo (lap_window_document (window)); /* it was one step */
      assert_main (window, "2+0/0");
      g_assert_null (lap_history_undo_label (history));
      windows_settle (window);
    }
    windows_close (window);
  }
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
}

/* Each rest between rounds before it pushes the end along, too: what is under the pointer stays there. */
static void
test_second_rest (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);

  lap_score_fit (context);
  lap_document_apply (lap_window_document (window),
                      lap_verb_set_rounds (lap_session_nth (context->score->timeline->session, 1), 3));
  windows_settle (window);
  drag (window, 420, 0, FALSE, 40, "drag-end");
  assert_main (window, "3+20/0");
  g_assert_cmpint (context->score->rounds[2].start, ==, 460);
  windows_close (window);
}

/* What is beyond the limits of a file is never made, and what was possible stays. */
static void
test_limits (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);

  lap_score_fit (context);
  windows_settle (window);
  drag (window, 400, -3, TRUE, 400000, "drag-end");
  assert_main (window, "100+0/0");
  lap_document_undo (lap_window_document (window));
  /* Rounds of 600 s: 43,200 s hold 71 of them with the other parts, not 100. */
  for (guint i = 0; i < 3; i++) {
    LapEdits *edits = lap_edits_new ("Long");

    lap_edits_set_int (edits, lap_part_nth (lap_session_nth (context->score->timeline->session, 1), i), "work", 180);
    lap_document_apply (lap_window_document (window), edits);
  }
  windows_settle (window);
  drag (window, context->score->timeline->parts[1].end, -3, TRUE, 400000, "drag-end");
  g_assert_cmpint (lap_document_timeline (lap_window_document (window))->length, <=, LAP_MOST_SECONDS);
  g_assert_cmpint (lap_session_nth (context->score->timeline->session, 1)->rounds, >=, 2);
  windows_close (window);
}

/* At one's own pace the end is that of the time allowed. */
static void
test_own_pace (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Own pace");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  LapWindow *window;

  g_object_set (part, "run", LAP_RUN_OWN_PACE, "cap", 600, NULL);
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  window = windows_show (session);
  lap_score_zoom (lap_window_context (window), 1, 0);
  windows_settle (window);
  drag (window, 600, -11, TRUE, -118, "drag-end"); /* beside it is the rest of none */
  g_assert_cmpint (part->cap, ==, 480);
  g_assert_cmpstr (lap_history_undo_label (lap_document_history (lap_window_document (window))), ==,
                   "Change the length of the part");
  windows_close (window);
}

/* Where the keys are at first, what is pressed, and what it makes. */
static const struct { LapBracketKind kind; guint round; const char *keys, *after; } keys[] = {
  { LAP_BRACKET_PART, 0, "plus", "3+0/0" },
  { LAP_BRACKET_ROUND, 2, "minus", "1+0/0" },
  { LAP_BRACKET_ROUND, 1, "<Control>Up <Control>Up", "4+0/0" },
  { LAP_BRACKET_BETWEEN, 1, "plus plus", "2+10/0" },
  { LAP_BRACKET_BETWEEN, 1, "plus <Alt>plus", "2+6/0" },
  { LAP_BRACKET_BETWEEN, 1, "plus plus minus <Alt>minus", "2+4/0" },
  { LAP_BRACKET_ROUND, 1, "<Alt>Up <Alt>Up <Alt>Down", "2+5/0" },
  { LAP_BRACKET_AFTER, 0, "plus", "2+0/5" },
  { LAP_BRACKET_PART, 0, "<Control><Shift>Up <Control><Shift>Up <Control><Shift>Down", "2+0/5" },
};

static gboolean
press (LapWindow *window, const char *key)
{
  return windows_press (gtk_window_get_focus (GTK_WINDOW (window)), key);
}

static void
test_keys (void)
{
  LapWindow *window = window_new ();
  LapDocument *document = lap_window_document (window);

  for (guint i = 0; i < G_N_ELEMENTS (keys); i++) {
    g_auto (GStrv) each = g_strsplit (keys[i].keys, " ", -1);

    lap_parts_lane_go (lane_of (window), bracket_of (window, keys[i].kind, 1, keys[i].round));
    for (guint k = 0; each[k] != NULL; k++) {
      g_assert_true (press (window, each[k]));
      windows_settle (window);
      /* Whoever works with the keys can go on with them. */
      g_assert_true (gtk_widget_is_ancestor (gtk_window_get_focus (GTK_WINDOW (window)), GTK_WIDGET (lane_of (window))));
    }
    assert_main (window, keys[i].after);
    while (lap_history_undo_label (lap_document_history (document)) != NULL)
      lap_document_undo (document);
    windows_settle (window);
  }
  windows_close (window);
}

/* The same keys do the same while a block has the focus. */
static void
test_keys_of_blocks (void)
{
  LapWindow *window = window_new ();

  windows_click_box (window, lap_score_find (lap_window_context (window)->score, 1, 1, 1));
  g_assert_true (press (window, "<Control>Up"));
  g_assert_true (press (window, "<Alt>Up"));
  g_assert_true (press (window, "<Control><Shift>Up"));
  assert_main (window, "3+5/5");
  g_assert_true (press (window, "<Control>6"));
  g_assert_true (lap_folds_any (lap_window_context (window)));
  g_assert_true (press (window, "<Control>7"));
  g_assert_false (lap_folds_any (lap_window_context (window)));
  windows_close (window);
}

static const char *
words_of (LapWindow *window, guint index)
{
  static char *words;

  g_free (words);
  words = lap_bracket_words (lap_window_context (window), &lap_parts_lane_brackets (lane_of (window))->all[index]);
  return words;
}

/* By the arrows from bracket to bracket; each is spoken with what it is, and its state. */
static void
test_spoken (void)
{
  static const struct { const char *key, *words; GtkAccessibleRole role; } rows[] = {
    { "Right", "Rest after Opening, 0 seconds", GTK_ACCESSIBLE_ROLE_SLIDER },
    { "Right", "Main, part 2 of 3, 2 rounds, 5:40, starts at 1:00", GTK_ACCESSIBLE_ROLE_BUTTON },
    { "Down", "Main, round 1 of 2, 3:00, starts at 1:00", GTK_ACCESSIBLE_ROLE_BUTTON },
    { "Right", "Rest between rounds 1 and 2 of Main, 0 seconds", GTK_ACCESSIBLE_ROLE_SLIDER },
    { "plus", "Rest between rounds 1 and 2 of Main, 5 seconds", GTK_ACCESSIBLE_ROLE_SLIDER },
    { "Right", "Main, round 2 of 2, 2:40, starts at 4:05", GTK_ACCESSIBLE_ROLE_BUTTON },
    { "Up", "Main, part 2 of 3, 2 rounds, 5:45, starts at 1:00", GTK_ACCESSIBLE_ROLE_BUTTON },
    { "plus", "Main, part 2 of 3, 3 rounds, 8:50, starts at 1:00", GTK_ACCESSIBLE_ROLE_BUTTON },
  };
  LapWindow *window = window_new ();

  g_assert_true (gtk_widget_child_focus (GTK_WIDGET (lane_of (window)), GTK_DIR_TAB_FORWARD));
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    GtkWidget *focus;

    g_assert_true (press (window, rows[i].key));
    windows_settle (window);
    focus = gtk_window_get_focus (GTK_WINDOW (window));
    gtk_test_accessible_assert_property (focus, GTK_ACCESSIBLE_PROPERTY_LABEL, rows[i].words);
    gtk_test_accessible_assert_role (focus, rows[i].role);
    g_assert_true (gtk_widget_get_mapped (focus));
  }
  windows_close (window);
}

static void
test_folds (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *round, *part;

  lap_parts_lane_go (lane_of (window), bracket_of (window, LAP_BRACKET_ROUND, 1, 1));
  g_assert_true (press (window, "Return"));
  windows_settle (window);
  round = lap_parts_lane_find (lane_of (window), bracket_of (window, LAP_BRACKET_ROUND, 1, 1));
  part = lap_parts_lane_find (lane_of (window), bracket_of (window, LAP_BRACKET_PART, 2, 0));
  gtk_test_accessible_assert_state (round, GTK_ACCESSIBLE_STATE_EXPANDED, TRUE);
  gtk_test_accessible_assert_state (part, GTK_ACCESSIBLE_STATE_EXPANDED, FALSE);
  g_assert_true (lap_folds_any (context));
  g_assert_true (press (window, "Return"));
  g_assert_false (lap_folds_any (context));
  g_assert_true (press (window, "<Shift>Return"));
  g_assert_true (lap_folds_any (context));
  g_assert_true (press (window, "<Control>7"));
  g_assert_false (lap_folds_any (context));
  windows_close (window);
}

/* What was folded has nothing to draw by; keys change it all the same. */
static void
test_folded_is_not_drawn (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);

  lap_folds_open (context, 0, 0, FALSE);
  windows_settle (window);
  drag (window, 400, -2, TRUE, 300, "drag-end");
  assert_main (window, "2+0/0");
  lap_parts_lane_go (lane_of (window), bracket_of (window, LAP_BRACKET_PART, 1, 0));
  g_assert_true (press (window, "plus"));
  assert_main (window, "3+0/0");
  windows_close (window);
}

/* With the round that had the focus gone, the last one has it; with the rests, the part. */
static void
test_focus_stays (void)
{
  LapWindow *window = window_new ();

  lap_parts_lane_go (lane_of (window), bracket_of (window, LAP_BRACKET_ROUND, 1, 2));
  g_assert_true (press (window, "plus"));
  windows_settle (window);
  lap_parts_lane_go (lane_of (window), bracket_of (window, LAP_BRACKET_ROUND, 1, 3));
  g_assert_true (press (window, "minus"));
  windows_settle (window);
  gtk_test_accessible_assert_property (gtk_window_get_focus (GTK_WINDOW (window)), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       words_of (window, bracket_of (window, LAP_BRACKET_ROUND, 1, 2)));
  lap_parts_lane_go (lane_of (window), bracket_of (window, LAP_BRACKET_BETWEEN, 1, 1));
  g_assert_true (press (window, "<Control>Down"));
  windows_settle (window);
  gtk_test_accessible_assert_property (gtk_window_get_focus (GTK_WINDOW (window)), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       words_of (window, bracket_of (window, LAP_BRACKET_PART, 1, 0)));
  windows_close (window);
}

static void
test_menu (void)
{
  LapWindow *window = window_new ();
  GtkWidget *menu;

  lap_parts_lane_go (lane_of (window), bracket_of (window, LAP_BRACKET_PART, 1, 0));
  g_assert_true (press (window, "<Shift>F10"));
  windows_settle (window);
  menu = windows_find (GTK_WIDGET (lane_of (window)), GTK_TYPE_POPOVER_MENU, NULL);
  g_assert_nonnull (menu);
  g_assert_true (gtk_widget_get_mapped (menu));
  gtk_widget_activate_action (menu, "score.rounds-more", NULL);
  gtk_widget_activate_action (menu, "score.between-more", NULL);
  gtk_widget_activate_action (menu, "score.after-more", NULL);
  assert_main (window, "3+5/5");
  gtk_popover_popdown (GTK_POPOVER (menu));
  windows_settle (window);
  windows_close (window);
}

/* At the edge of the view what is held goes on by itself, as far as it can. */
static void
test_scrolls (void)
{
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);
  GtkGesture *gesture = windows_controller (GTK_WIDGET (lane_of (window)), GTK_TYPE_GESTURE_DRAG);
  double x;

  lap_score_zoom (context, 3, 0);
  windows_settle (window);
  lap_score_reveal (context, 300, 420);
  windows_settle (window);
  x = lap_axis_x (context->axis, 400) - 3;
  g_signal_emit_by_name (gesture, "drag-begin", x, y_of (window, TRUE));
  g_signal_emit_by_name (gesture, "drag-update", context->axis->view - 5 - x, 0.0);
  while (lap_session_nth (context->score->timeline->session, 1)->rounds < 5)
    g_main_context_iteration (NULL, TRUE);
  g_signal_emit_by_name (gesture, "cancel", NULL);
  assert_main (window, "2+0/0");
  windows_close (window);
}

/* What can't be changed says why when its rounds are pulled, once, and stays as it is. */
static void
told_cb (LapDocument *document, const char *text, gboolean undoable, guint *told)
{
  *told += g_strcmp0 (text, lap_document_why_not (document)) == 0;
}

static void
test_read_only (void)
{
  g_autoptr (LapSession) session = three_parts ();
  LapWindow *window;
  guint told = 0;

  session->version = LAP_SESSION_VERSION + 1;
  window = windows_show (session);
  g_signal_connect (lap_window_document (window), "told", G_CALLBACK (told_cb), &told);
  lap_score_fit (lap_window_context (window));
  windows_settle (window);
  drag (window, drags[0].second, drags[0].px, drags[0].upper, drags[0].by, "drag-end");
  g_assert_cmpuint (told, ==, 1);
  assert_main (window, "2+0/0");
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/brackets/drag", test_drag);
  g_test_add_func ("/ui/brackets/read-only", test_read_only);
  g_test_add_func ("/ui/brackets/second-rest", test_second_rest);
  g_test_add_func ("/ui/brackets/limits", test_limits);
  g_test_add_func ("/ui/brackets/own-pace", test_own_pace);
  g_test_add_func ("/ui/brackets/keys", test_keys);
  g_test_add_func ("/ui/brackets/keys-of-blocks", test_keys_of_blocks);
  g_test_add_func ("/ui/brackets/spoken", test_spoken);
  g_test_add_func ("/ui/brackets/folds", test_folds);
  g_test_add_func ("/ui/brackets/folded-is-not-drawn", test_folded_is_not_drawn);
  g_test_add_func ("/ui/brackets/focus-stays", test_focus_stays);
  g_test_add_func ("/ui/brackets/menu", test_menu);
  g_test_add_func ("/ui/brackets/scrolls", test_scrolls);
  return g_test_run ();
}
