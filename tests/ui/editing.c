/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The score edited by hand, through the actions and gestures of a real window.
 */
#include "ui/windows.h"

#include "place/plans.h"
#include "ui/exercise-drop.h"

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

/* "a45/0|squat40/20 push-up40/20*2": exercises with work and rest, "!" where a round differs. */
static char *
plan (LapWindow *window)
{
  LapSession *session = lap_document_session (lap_window_document (window));
  g_autoptr (GString) text = g_string_new (NULL);

  for (guint p = 0; p < lap_session_n (session); p++) {
    LapPart *part = lap_session_nth (session, p);

    g_string_append (text, p > 0 ? "|" : "");
    for (guint i = 0; i < lap_part_n (part); i++) {
      LapBlock *block = lap_part_nth (part, i);

      if (block->kind == LAP_BLOCK_EXERCISE)
        g_string_append_printf (text, "%s%.1s%d/%d%s", i > 0 ? " " : "", block->exercise != NULL ? block->exercise : "?",
                                block->work, block->rest, block->in_round != NULL ? "!" : "");
      else
        g_string_append_printf (text, "%s%s%d", i > 0 ? " " : "", block->kind == LAP_BLOCK_TALK ? "talk" : "pause",
                                block->seconds);
    }
    if (part->rounds > 1)
      g_string_append_printf (text, "*%d", part->rounds);
  }
  return g_strdup (text->str);
}

static void
assert_plan (LapWindow *window, const char *expected)
{
  g_autofree char *text = plan (window);

  g_assert_cmpstr (text, ==, expected);
}

#define PLAN "m45/0|s40/20 p40/20 g40/20 h40/20*2"

/* Where one starts, what is pressed, the plan and the selection afterwards, and what undoing is called. */
static const struct { guint part, block, round; const char *keys, *after, *chosen, *undo; } verbs[] = {
  { 1, 1, 1, "<Alt>Right", "m45/0|s40/20 g40/20 p40/20 h40/20*2", "1.2/1", "Move Push-up" },
  { 1, 1, 2, "<Alt>Left", "m45/0|p40/20 s40/20 g40/20 h40/20*2", "1.0/2", "Move Push-up" },
  { 1, 0, 2, "<Alt>Left", "m45/0 s40/20|p40/20 g40/20 h40/20*2", "0.1/1", "Move Squat" },
  { 0, 0, 1, "<Alt>Right", "|m45/0 s40/20 p40/20 g40/20 h40/20*2", "1.0/1", "Move March on the spot" },
  { 1, 0, 1, "<Shift>Right <Alt>Right", "m45/0|g40/20 s40/20 p40/20 h40/20*2", "1.1/1 1.2/1", "Move 2 blocks" },
  { 1, 0, 1, "plus", "m45/0|s45/20 p40/20 g40/20 h40/20*2", "1.0/1", "Change the work of Squat" },
  { 1, 0, 2, "minus minus", "m45/0|s30/20 p40/20 g40/20 h40/20*2", "1.0/2", "Change the work of Squat" },
  { 1, 0, 1, "<Alt>plus", "m45/0|s41/20 p40/20 g40/20 h40/20*2", "1.0/1", "Change the work of Squat" },
  { 1, 0, 1, "<Alt>minus", "m45/0|s39/20 p40/20 g40/20 h40/20*2", "1.0/1", "Change the work of Squat" },
  { 1, 0, 1, "period", "m45/0|s40/25 p40/20 g40/20 h40/20*2", "1.0/1", "Change the rest of Squat" },
  { 1, 0, 1, "comma", "m45/0|s40/15 p40/20 g40/20 h40/20*2", "1.0/1", "Change the rest of Squat" },
  { 1, 0, 1, "<Alt>period", "m45/0|s40/21 p40/20 g40/20 h40/20*2", "1.0/1", "Change the rest of Squat" },
  { 1, 0, 1, "<Alt>comma", "m45/0|s40/19 p40/20 g40/20 h40/20*2", "1.0/1", "Change the rest of Squat" },
  { 1, 2, 1, "<Control>a plus", "m45/0|s45/20 p45/20 g45/20 h45/20*2", "1.0/1 1.1/1 1.2/1 1.3/1",
    "Change the work of 4 blocks" },
  { 1, 1, 1, "Delete", "m45/0|s40/20 g40/20 h40/20*2", "1.1/1", "Remove Push-up" },
  { 1, 3, 2, "Delete", "m45/0|s40/20 p40/20 g40/20*2", "1.2/2", "Remove High knees" },
  { 0, 0, 1, "Delete", "|s40/20 p40/20 g40/20 h40/20*2", "", "Remove March on the spot" },
  { 1, 1, 1, "<Control>d", "m45/0|s40/20 p40/20 p40/20 g40/20 h40/20*2", "1.2/1", "Duplicate Push-up" },
  { 1, 0, 1, "Insert", "m45/0|s40/20 ?40/20 p40/20 g40/20 h40/20*2", "1.1/1", "Add Not chosen yet" },
  { 1, 0, 1, "<Control>Up", "m45/0|s40/20 p40/20 g40/20 h40/20*3", "1.0/1", "Change the rounds" },
  { 1, 0, 2, "<Control>Down", "m45/0|s40/20 p40/20 g40/20 h40/20", "1.0/1", "Change the rounds" },
  { 1, 0, 2, "<Control>l", "m45/0|s40/20! p40/20 g40/20 h40/20*2", "1.0/2", "Let Squat differ in round 2" },
  { 1, 0, 2, "<Control>l plus", "m45/0|s40/20! p40/20 g40/20 h40/20*2", "1.0/2",
    "Change the work of Squat in round 2" },
  { 1, 0, 2, "<Control>l <Control>l", PLAN, "1.0/2", "Squat in round 2 as in round 1" },
};

/* The last key is one step: undone, the plan is as it was before it; redone, as after it. */
static void
test_verbs (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (verbs); i++) {
    LapWindow *window = window_new ();
    LapHistory *history = lap_document_history (lap_window_document (window));
    g_auto (GStrv) keys = g_strsplit (verbs[i].keys, " ", -1);
    g_autofree char *before = NULL, *after = NULL, *undone = NULL, *redone = NULL;

    windows_click_box (window, box_of (window, verbs[i].part, verbs[i].block, verbs[i].round));
    for (guint k = 0; keys[k] != NULL; k++) {
      g_free (before);
      before = windows_text (window);
      g_assert_true (press (window, keys[k]));
    }
    assert_plan (window, verbs[i].after);
    assert_chosen (window, verbs[i].chosen);
    g_assert_cmpstr (lap_history_undo_label (history), ==, verbs[i].undo);
    windows_settle (window);
    /* Whoever works with the keys can go on with them. */
    g_assert_true (gtk_widget_is_ancestor (gtk_window_get_focus (GTK_WINDOW (window)),
                                           GTK_WIDGET (windows_blocks (window))));
    after = windows_text (window);
    g_assert_true (press (window, "<Control>z"));
    undone = windows_text (window);
    g_assert_cmpstr (undone, ==, before);
    windows_settle (window);
    g_assert_true (press (window, "<Control><Shift>z"));
    redone = windows_text (window);
    g_assert_cmpstr (redone, ==, after);
    windows_close (window);
  }
}

/* What can't be done changes nothing. */
static void
test_refused (void)
{
  static const struct { guint part, block, round; const char *key; } rows[] = {
    { 0, 0, 1, "<Alt>Left" }, { 1, 3, 1, "<Alt>Right" }, { 0, 0, 1, "<Control>Down" }, { 1, 0, 1, "<Control>l" },
    { 0, 0, 1, "comma" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    LapWindow *window = window_new ();

    windows_click_box (window, box_of (window, rows[i].part, rows[i].block, rows[i].round));
    press (window, rows[i].key);
    assert_plan (window, PLAN);
    g_assert_null (lap_history_undo_label (lap_document_history (lap_window_document (window))));
    windows_close (window);
  }
}

static void
test_jumps (void)
{
  static const struct { const char *key, *chosen; } rows[] = {
    { "<Control>Page_Down", "1.0/1" }, { "Page_Down", "1.0/2" }, { "Page_Down", "1.0/2" }, { "Right", "1.1/2" },
    { "Page_Up", "1.1/1" }, { "<Control>Page_Up", "0.0/1" }, { "<Control>Page_Up", "0.0/1" },
  };
  LapWindow *window = window_new ();
  LapScoreContext *context = lap_window_context (window);
  guint box;

  windows_click_box (window, 0);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    press (window, rows[i].key);
    assert_chosen (window, rows[i].chosen);
  }
  /* From one warning to the next and back. */
  press (window, "F7");
  box = lap_score_selected (context);
  g_assert_cmpuint (box, >, 0);
  g_assert_cmpuint (lap_score_warning (context, box), >, 0);
  press (window, "F7");
  g_assert_cmpuint (lap_score_selected (context), >=, box);
  windows_close (window);
}

/* The keys alone make a plan out of nothing. */
static void
test_from_nothing (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Nothing");
  LapWindow *window = windows_show (session);

  g_assert_true (gtk_widget_child_focus (GTK_WIDGET (windows_blocks (window)), GTK_DIR_TAB_FORWARD));
  g_assert_true (press (window, "Insert"));
  windows_settle (window);
  g_assert_true (press (window, "<Control>d"));
  g_assert_true (press (window, "plus"));
  g_assert_true (press (window, "<Control>Up"));
  assert_plan (window, "?40/20 ?45/20*2");
  for (int i = 0; i < 4; i++)
    g_assert_true (press (window, "<Control>z"));
  windows_settle (window);
  assert_plan (window, "");
  g_assert_true (press (window, "Insert"));
  assert_plan (window, "?40/20");
  windows_close (window);
}

static void
told_cb (LapDocument *document, const char *text, gboolean undoable, char **told)
{
  g_free (*told);
  *told = g_strdup (text);
}

/* Runs the main loop until the window's document tells something. */
static char *
wait_told (LapWindow *window)
{
  char *told = NULL;
  gulong id = g_signal_connect (lap_window_document (window), "told", G_CALLBACK (told_cb), &told);

  while (told == NULL)
    g_main_context_iteration (NULL, TRUE);
  g_signal_handler_disconnect (lap_window_document (window), id);
  return told;
}

/* Blocks go from window to window with all that is theirs. */
static void
test_clipboard (void)
{
  LapWindow *from = window_new (), *to = window_new ();
  g_autofree char *told = NULL, *again = NULL;

  windows_click_box (from, box_of (from, 1, 0, 2));
  press (from, "<Control>l");
  press (from, "<Shift>Right");
  press (from, "<Control>c");
  windows_click_box (to, box_of (to, 0, 0, 1));
  press (to, "<Control>v");
  told = wait_told (to);
  g_assert_cmpstr (told, ==, "Paste 2 blocks");
  /* The warm-up has one round: what differed in the second stays behind. */
  assert_plan (to, "m45/0 s40/20 p40/20|s40/20 p40/20 g40/20 h40/20*2");
  assert_chosen (to, "0.1/1 0.2/1");
  windows_click_box (to, box_of (to, 1, 3, 1));
  press (to, "<Control>v");
  again = wait_told (to);
  assert_plan (to, "m45/0 s40/20 p40/20|s40/20 p40/20 g40/20 h40/20 s40/20! p40/20*2");
  press (from, "<Control>x");
  assert_plan (from, "m45/0|g40/20 h40/20*2");
  windows_close (from);
  windows_close (to);
}

/* A text that isn't blocks is told of in one line and loses nothing. */
static void
test_bad_paste (void)
{
  static const char *const texts[] = { "hello", "{", "{\"format\": \"lapwing-session\"}", "" };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++) {
    LapWindow *window = window_new ();
    g_autofree char *told = NULL;

    windows_click_box (window, 1);
    gdk_clipboard_set_text (gtk_widget_get_clipboard (GTK_WIDGET (window)), texts[i]);
    press (window, "<Control>v");
    told = wait_told (window);
    g_assert_true (g_str_has_prefix (told, "Nothing pasted: "));
    g_assert_null (strchr (told, '\n'));
    assert_plan (window, PLAN);
    windows_close (window);
  }
}

/* A session of its own exercises brings those along. */
static void
test_paste_own (void)
{
  static const char text[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"x\", \"title\": \"T\", \"exercises\": [%s],"
    " \"parts\": [{\"kind\": \"main\", \"blocks\": [{\"exercise\": \"own-thing\", \"work\": 30}]}]}";
  g_autofree char *path = g_build_filename (g_getenv ("LAP_TEST_DATA"), "..", "..", "data", "exercises",
                                            "squat.json", NULL);
  g_autofree char *squat = NULL, *told = NULL;
  g_autoptr (GString) own = NULL, whole = g_string_new (NULL);
  LapWindow *window = window_new ();

  g_assert_true (g_file_get_contents (path, &squat, NULL, NULL));
  own = g_string_new (squat);
  g_string_replace (own, "\"id\": \"squat\"", "\"id\": \"own-thing\"", 1);
  g_string_printf (whole, text, own->str);
  gdk_clipboard_set_text (gtk_widget_get_clipboard (GTK_WIDGET (window)), whole->str);
  windows_click_box (window, 0);
  press (window, "<Control>v");
  told = wait_told (window);
  g_assert_nonnull (lap_catalogue_find (lap_document_catalogue (lap_window_document (window)), "own-thing"));
  press (window, "<Control>z");
  g_assert_null (lap_catalogue_find (lap_document_catalogue (lap_window_document (window)), "own-thing"));
  windows_close (window);
}

static void
test_menu (void)
{
  LapWindow *window = window_new ();
  GtkWidget *menu;

  windows_click_box (window, box_of (window, 1, 1, 2));
  g_assert_true (press (window, "<Shift>F10"));
  windows_settle (window);
  menu = windows_find (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_POPOVER_MENU, NULL);
  g_assert_nonnull (menu);
  g_assert_true (gtk_widget_get_mapped (menu));
  /* What it names are actions of the lane. */
  gtk_widget_activate_action (menu, "score.work-more", NULL);
  assert_plan (window, "m45/0|s40/20 p45/20 g40/20 h40/20*2");
  gtk_popover_popdown (GTK_POPOVER (menu));
  windows_settle (window);
  windows_close (window);
}

static double
x_of (LapWindow *window, double second)
{
  return lap_axis_x (lap_window_context (window)->axis, second);
}

/* Presses at one second and moves to another, in steps; lets go with "drag-end", or calls off with "cancel". */
static void
drag (LapWindow *window, double from, double to, const char *last)
{
  double x = x_of (window, from);

  windows_drag (window, GTK_WIDGET (windows_blocks (window)), x, 40, x_of (window, to) - x, last);
}

/* The warm-up takes 45 s; squat works to 85, push-up begins at 105, bridge at 165, knees at 225, round 2 at 285. */
static const struct { double from, to; const char *after, *undo; } drags[] = {
  { 60, 140, "m45/0|p40/20 s40/20 g40/20 h40/20*2", "Move Squat" },
  { 120, 30, "m45/0 p40/20|s40/20 g40/20 h40/20*2", "Move Push-up" },
  { 300, 380, "m45/0|p40/20 s40/20 g40/20 h40/20*2", "Move Squat" }, /* in another round: its place in the part */
  { 120, 440, "m45/0|s40/20 g40/20 p40/20 h40/20*2", "Move Push-up" },
  { 60, 70, PLAN, NULL },                                             /* back where it was */
  { 85, 96, "m45/0|s50/20 p40/20 g40/20 h40/20*2", "Change the work of Squat" },
  { 85, 77, "m45/0|s30/20 p40/20 g40/20 h40/20*2", "Change the work of Squat" },
  { 85, 20, "m45/0|s5/20 p40/20 g40/20 h40/20*2", "Change the work of Squat" },
  { 105, 116, "m45/0|s40/30 p40/20 g40/20 h40/20*2", "Change the rest of Squat" },
  { 325, 345, "m45/0|s50/20 p40/20 g40/20 h40/20*2", "Change the work of Squat" }, /* the end moves in both rounds */
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
    for (guint i = 0; i < G_N_ELEMENTS (drags); i++) {
      g_autofree char *redo = g_strdup (lap_history_redo_label (history));

      drag (window, drags[i].from, drags[i].to, "cancel");
      assert_plan (window, PLAN);
      g_assert_null (lap_history_undo_label (history));
      g_assert_cmpstr (lap_history_redo_label (history), ==, redo); /* it leaves even what could be redone */
      drag (window, drags[i].from, drags[i].to, "drag-end");
      assert_plan (window, drags[i].after);
      g_assert_cmpstr (lap_history_undo_label (history), ==, drags[i].undo);
      lap_document_undo (lap_window_document (window));
      assert_plan (window, PLAN);
      windows_settle (window);
    }
    windows_close (window);
  }
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
}

/* What comes into view has its widget before the layout begins: there it would be too late to ask for room. */
static void
assert_bound (LapWindow *window)
{
  LapScoreContext *context = lap_window_context (window);
  guint first, end;

  lap_score_visible (context->score, context->axis, &first, &end);
  g_assert_cmpuint (end, >, first);
  for (guint i = first; i < end; i++)
    if (lap_score_place (context->score, context->axis, i).width >= LAP_MERGE_BELOW)
      g_assert_nonnull (lap_blocks_lane_find (windows_blocks (window), i));
  windows_settle (window);
}

static void
test_travel (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);

  lap_score_zoom (context, 12, 0);
  assert_bound (window);
  for (int i = 0; i < 12; i++) {
    lap_score_scroll_by (context, 170);
    assert_bound (window);
  }
  lap_score_fit (context);
  assert_bound (window);
  windows_close (window);
}

static void
drop (LapWindow *window, double second, const char *id)
{
  GtkDropTarget *target = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_DROP_TARGET);
  g_autoptr (LapExerciseDrop) exercise = lap_exercise_drop_new (id);
  g_auto (GValue) value = G_VALUE_INIT;
  gboolean taken = FALSE;
  GdkDragAction action = 0;

  g_value_init (&value, LAP_TYPE_EXERCISE_DROP);
  g_value_set_boxed (&value, exercise);
  g_signal_emit_by_name (target, "motion", x_of (window, second), 40.0, &action);
  g_assert_cmpint (action, ==, GDK_ACTION_COPY);
  windows_settle (window);
  g_signal_emit_by_name (target, "drop", &value, x_of (window, second), 40.0, &taken);
  g_assert_true (taken);
}

static void
test_drop (void)
{
  LapWindow *window = window_new ();

  drop (window, 75, "burpee");
  assert_plan (window, "m45/0|b40/20 p40/20 g40/20 h40/20*2");
  drop (window, 103, "squat");
  assert_plan (window, "m45/0|b40/20 s40/20 p40/20 g40/20 h40/20*2");
  assert_chosen (window, "1.1/1");
  windows_close (window);
}

static void
test_drop_into_nothing (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Nothing");
  LapWindow *window = windows_show (session);

  drop (window, 0, "squat");
  assert_plan (window, "s40/20");
  windows_close (window);
}

/* The focus stays in the list of warnings when one of them has gone. */
static void
test_focus_stays_in_warnings (void)
{
  LapWindow *window = window_new ();
  GtkWidget *row = lap_warnings_row (lap_window_warnings (window), 0), *list = gtk_widget_get_parent (row);

  g_assert_true (gtk_widget_grab_focus (row));
  gtk_widget_activate_action (row, "warning.fine", NULL);
  windows_settle (window);
  g_assert_nonnull (gtk_widget_get_focus_child (list));
  windows_close (window);
}

/* The status of the warnings, an alert, says a new one, and only a new one. */
static void
test_alert (void)
{
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);
  GtkWidget *counts = windows_find (GTK_WIDGET (lap_window_warnings (window)), GTK_TYPE_LABEL, "counts");
  LapEdits *edits = lap_edits_new ("Target");

  gtk_test_accessible_assert_role (counts, GTK_ACCESSIBLE_ROLE_ALERT);
  gtk_test_accessible_assert_property (counts, GTK_ACCESSIBLE_PROPERTY_LABEL, gtk_label_get_text (GTK_LABEL (counts)));
  lap_edits_set_int (edits, lap_document_session (document), "target", 1200);
  lap_document_apply (document, edits);
  windows_settle (window);
  gtk_test_accessible_assert_property (counts, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "New: Warning 1. The session is 10:10 min too long: 30:10, and it should be 20:00.");
  lap_document_undo (document);
  windows_settle (window);
  gtk_test_accessible_assert_property (counts, GTK_ACCESSIBLE_PROPERTY_LABEL, gtk_label_get_text (GTK_LABEL (counts)));
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/editing/select-several", test_select_several);
  g_test_add_func ("/ui/editing/click-one-of-several", test_click_one_of_several);
  g_test_add_func ("/ui/editing/own-pace", test_own_pace);
  g_test_add_func ("/ui/editing/verbs", test_verbs);
  g_test_add_func ("/ui/editing/refused", test_refused);
  g_test_add_func ("/ui/editing/jumps", test_jumps);
  g_test_add_func ("/ui/editing/from-nothing", test_from_nothing);
  g_test_add_func ("/ui/editing/clipboard", test_clipboard);
  g_test_add_func ("/ui/editing/bad-paste", test_bad_paste);
  g_test_add_func ("/ui/editing/paste-own", test_paste_own);
  g_test_add_func ("/ui/editing/menu", test_menu);
  g_test_add_func ("/ui/editing/drag", test_drag);
  g_test_add_func ("/ui/editing/travel", test_travel);
  g_test_add_func ("/ui/editing/drop", test_drop);
  g_test_add_func ("/ui/editing/drop-into-nothing", test_drop_into_nothing);
  g_test_add_func ("/ui/editing/focus-stays-in-warnings", test_focus_stays_in_warnings);
  g_test_add_func ("/ui/editing/alert", test_alert);
  return g_test_run ();
}
