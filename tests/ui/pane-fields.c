/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every field of the pane of a block: what is changed there is one step, named in the undo button and in the toast,
 * whose button undoes it; and where several blocks are selected it is changed in all of them. A field that is added to
 * the pane has to be added to the table: the test looks for those that it doesn't know.
 */
#include "ui/windows.h"

#include "place/plans.h"
#include "ui/chooser.h"
#include "ui/words-row.h"

enum { TALK, PAUSE, SQUAT, PLANK, N_BLOCKS };

typedef struct Field Field;
struct Field {
  const char *id;    /* of the widget */
  int         block; /* on which it is there */
  const char *label; /* of the step */
  void      (*change) (GtkWidget *widget, const Field *field);
  int         number;
  const char *text;
  const char *member; /* in the file; NULL: not shared by several */
};

static void
number (GtkWidget *widget, const Field *field)
{
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (widget), field->number);
}

static void
choice (GtkWidget *widget, const Field *field)
{
  adw_combo_row_set_selected (ADW_COMBO_ROW (widget), field->number);
}

static void
toggle (GtkWidget *widget, const Field *field)
{
  gtk_switch_set_active (GTK_SWITCH (widget), field->number);
}

static void
line (GtkWidget *widget, const Field *field)
{
  gtk_editable_set_text (GTK_EDITABLE (widget), field->text);
  g_signal_emit_by_name (widget, "apply");
}

static void
words (GtkWidget *widget, const Field *field)
{
  lap_words_row_set_text (LAP_WORDS_ROW (widget), field->text);
  g_signal_emit_by_name (widget, "apply");
}

static void
page (GtkWidget *widget, const Field *field)
{
  gtk_text_buffer_set_text (gtk_text_view_get_buffer (GTK_TEXT_VIEW (widget)), field->text, -1);
  lap_pane_commit (LAP_PANE (gtk_widget_get_ancestor (widget, LAP_TYPE_PANE)));
}

static void
exercise (GtkWidget *widget, const Field *field)
{
  g_signal_emit_by_name (widget, "chosen", field->text);
}

static const Field fields[] = {
  { "chooser", SQUAT, "Replace Squat", exercise, 0, "push-up" },
  { "work", SQUAT, "Change the work of Squat", number, 45, NULL, "work" },
  { "rest", SQUAT, "Change the rest of Squat", number, 25, NULL, "rest" },
  { "pace", SQUAT, "Change the pace", choice, 1, NULL, "pace" },
  { "sides", SQUAT, "Change the sides", choice, 2, NULL, "sides" },
  { "option", SQUAT, "Change the option", choice, 1, NULL, "option" },
  { "fixed", SQUAT, "Keep in place", toggle, 1, NULL, "fixed" },
  { "reps", SQUAT, "Change the repetitions", line, 0, "8-12", "reps" },
  { "tempo", SQUAT, "Change the tempo", line, 0, "3-1-1", "tempo" },
  { "load", SQUAT, "Change the load", line, 0, "8 kg", "load" },
  { "partner", SQUAT, "Do it with a partner", toggle, 1, NULL, "with" },
  { "note", SQUAT, "Change the note", line, 0, "Slowly", "note" },
  { "setup", SQUAT, "Change how to set up Squat", words, 0, "Feet apart" },
  { "cues", SQUAT, "Change the cues of Squat", words, 0, "Down / Up" },
  { "fault", SQUAT, "Change the fault of Squat", words, 0, "Knees out" },
  { "easier", SQUAT, "Change the easier words of Squat", words, 0, "Half as low" },
  { "harder", SQUAT, "Change the harder words of Squat", words, 0, "Lower" },
  { "change", PLANK, "Change the time to change sides", number, 4, NULL, "switch" },
  { "talk", TALK, "Change the words", page, 0, "Hello" },
  { "seconds", PAUSE, "Change the length of Pause", number, 50 },
  { "what", PAUSE, "Change the pause", line, 0, "Towels" },
};

typedef struct {
  LapWindow *window;
  LapBlock  *blocks[N_BLOCKS], *more[2]; /* two side planks more */
  guint      boxes[N_BLOCKS];
} Room;

static void
room_begin (Room *room)
{
  g_autoptr (LapSession) session = lap_session_new ("Fields");
  LapPart *opening = plan_part (session, LAP_PART_OPENING, 1), *main = plan_part (session, LAP_PART_MAIN, 1);
  LapScore *score;

  room->blocks[TALK] = lap_block_new_talk ("Welcome", 60);
  room->blocks[PAUSE] = lap_block_new_pause ("water", 40);
  room->blocks[SQUAT] = lap_block_new_exercise ("squat", 40, 20);
  room->blocks[PLANK] = lap_block_new_exercise ("side-plank", 40, 20);
  for (guint i = 0; i < N_BLOCKS; i++)
    plan_add (i < SQUAT ? opening : main, room->blocks[i]);
  for (guint i = 0; i < G_N_ELEMENTS (room->more); i++) {
    room->more[i] = lap_block_new_exercise ("side-plank", 30, 30);
    plan_add (main, room->more[i]);
  }
  room->window = windows_show (session);
  score = lap_window_context (room->window)->score;
  for (guint i = 0; i < N_BLOCKS; i++)
    room->boxes[i] = lap_score_find (score, i < SQUAT ? 0 : 1, i < SQUAT ? i : i - SQUAT, 1);
}

static void
room_end (Room *room)
{
  windows_settle (room->window);
  windows_close (room->window);
}

static GtkWidget *
widget_of (Room *room, const Field *field)
{
  GtkWidget *widget = windows_find (GTK_WIDGET (lap_window_pane (room->window)), GTK_TYPE_WIDGET, field->id);

  g_test_message ("%s", field->id);
  g_assert_nonnull (widget);
  return widget;
}

/* What the toast on show says; it is the only one. */
static GtkWidget *
toast (Room *room)
{
  GtkWidget *overlay = windows_find (GTK_WIDGET (room->window), ADW_TYPE_TOAST_OVERLAY, NULL);

  for (GtkWidget *child = gtk_widget_get_first_child (overlay); child != NULL; child = gtk_widget_get_next_sibling (child))
    if (g_str_equal (G_OBJECT_TYPE_NAME (child), "AdwToastWidget") && gtk_widget_get_child_visible (child))
      return child;
  g_assert_not_reached ();
}

static const char *
undo_label (Room *room)
{
  return lap_history_undo_label (lap_document_history (lap_window_document (room->window)));
}

/* The step is called @label wherever it is told, and the toast takes it back. */
static void
undo_by_toast (Room *room, const char *label)
{
  GtkWidget *told, *button;
  GtkLabel *text;

  g_assert_cmpstr (undo_label (room), ==, label);
  windows_settle (room->window);
  told = toast (room);
  text = GTK_LABEL (windows_find (told, GTK_TYPE_LABEL, NULL));
  g_assert_cmpstr (gtk_label_get_text (text), ==, label);
  g_assert_cmpint (pango_layout_get_line_count (gtk_label_get_layout (text)), ==, 1);
  button = windows_find (told, GTK_TYPE_BUTTON, NULL);
  g_assert_cmpstr (gtk_button_get_label (GTK_BUTTON (button)), ==, "Undo");
  gtk_widget_activate_action (button, gtk_actionable_get_action_name (GTK_ACTIONABLE (button)), NULL);
}

static void
test_each (void)
{
  g_autofree char *before = NULL;
  Room room;

  room_begin (&room);
  before = windows_text (room.window);
  for (guint i = 0; i < G_N_ELEMENTS (fields); i++) {
    g_autofree char *now = NULL, *after = NULL;

    windows_click_box (room.window, room.boxes[fields[i].block]);
    fields[i].change (widget_of (&room, &fields[i]), &fields[i]);
    now = windows_text (room.window);
    g_assert_cmpstr (now, !=, before);
    undo_by_toast (&room, fields[i].label);
    after = windows_text (room.window);
    g_assert_cmpstr (after, ==, before);
    g_assert_null (undo_label (&room));
  }
  room_end (&room);
}

static char *
value_of (LapBlock *block, const char *member)
{
  g_auto (GValue) value = G_VALUE_INIT;

  lap_field_get (lap_record_field (lap_object_record (block), member), block, &value);
  return g_strdup_value_contents (&value);
}

static gboolean
is_same (LapBlock *a, LapBlock *b, const char *member)
{
  g_autofree char *one = value_of (a, member), *two = value_of (b, member);

  return g_str_equal (one, two);
}

/* Of the squat and three planks all but the last are selected: one step for all of them, and nothing for the others. The
 * seconds to change sides are there where work is split, so the squat has none. */
static void
test_several (void)
{
  g_autofree char *before = NULL;
  LapScoreContext *context;
  Room room;

  room_begin (&room);
  context = lap_window_context (room.window);
  before = windows_text (room.window);
  for (guint i = 0; i < G_N_ELEMENTS (fields); i++) {
    const char *member = fields[i].member;
    g_autofree char *after = NULL;

    if (member == NULL)
      continue;
    windows_click_box (room.window, room.boxes[SQUAT]);
    lap_score_choose (context, room.boxes[PLANK] + 1, LAP_CHOOSE_TO);
    fields[i].change (widget_of (&room, &fields[i]), &fields[i]);
    g_assert_true (is_same (room.more[0], room.blocks[PLANK], member));
    g_assert_true (is_same (room.more[0], room.blocks[SQUAT], member) == !g_str_equal (member, "switch"));
    g_assert_false (is_same (room.more[0], room.more[1], member));
    windows_settle (room.window);
    lap_document_undo (lap_window_document (room.window));
    after = windows_text (room.window);
    g_assert_cmpstr (after, ==, before);
    g_assert_null (undo_label (&room));
  }
  room_end (&room);
}

/* Two talks or pauses take a length together; an exercise among them does not. */
static void
test_several_still (void)
{
  Room room;
  LapScoreContext *context;

  room_begin (&room);
  context = lap_window_context (room.window);
  windows_click_box (room.window, room.boxes[SQUAT]);
  lap_score_choose (context, room.boxes[TALK], LAP_CHOOSE_TO);
  number (windows_find (GTK_WIDGET (lap_window_pane (room.window)), GTK_TYPE_SPIN_BUTTON, "seconds"),
          &(Field) { .number = 70 });
  g_assert_cmpint (room.blocks[TALK]->seconds, ==, 70);
  g_assert_cmpint (room.blocks[PAUSE]->seconds, ==, 70);
  g_assert_cmpint (room.blocks[SQUAT]->work, ==, 40);
  undo_by_toast (&room, "Change the length");
  g_assert_cmpint (room.blocks[TALK]->seconds, ==, 60);
  g_assert_cmpint (room.blocks[PAUSE]->seconds, ==, 40);
  room_end (&room);
}

static const char *
subtitle (GtkWidget *control)
{
  return adw_action_row_get_subtitle (ADW_ACTION_ROW (gtk_widget_get_ancestor (control, ADW_TYPE_ACTION_ROW)));
}

/* Where they differ the pane says so, and what one of them has can be chosen for all. */
static void
test_different (void)
{
  GtkWidget *pane, *pace, *note, *work, *fixed;
  LapScoreContext *context;
  Room room;

  room_begin (&room);
  context = lap_window_context (room.window);
  pane = GTK_WIDGET (lap_window_pane (room.window));
  pace = windows_find (pane, ADW_TYPE_COMBO_ROW, "pace");
  note = windows_find (pane, ADW_TYPE_ENTRY_ROW, "note");
  work = windows_find (pane, GTK_TYPE_SPIN_BUTTON, "work");
  fixed = windows_find (pane, GTK_TYPE_SWITCH, "fixed");
  windows_click_box (room.window, room.boxes[SQUAT]);
  choice (pace, &(Field) { .number = 1 });
  toggle (fixed, &(Field) { .number = 1 });
  line (note, &(Field) { .text = "Slowly" });
  number (work, &(Field) { .number = 45 });
  windows_click_box (room.window, room.boxes[PLANK]);
  g_assert_cmpstr (adw_action_row_get_subtitle (ADW_ACTION_ROW (pace)), ==, "");
  lap_score_choose (context, room.boxes[SQUAT], LAP_CHOOSE_TO);
  g_assert_cmpuint (adw_combo_row_get_selected (ADW_COMBO_ROW (pace)), ==, GTK_INVALID_LIST_POSITION);
  g_assert_cmpstr (adw_action_row_get_subtitle (ADW_ACTION_ROW (pace)), ==, "Different");
  g_assert_cmpstr (subtitle (fixed), ==, "Different");
  g_assert_cmpstr (subtitle (work), ==, "Different");
  g_assert_cmpstr (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (note)), ==, "Note (different)");
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (note)), ==, "");
  lap_pane_commit (LAP_PANE (pane)); /* looking on changes nothing */
  g_assert_null (room.blocks[PLANK]->note);
  g_assert_cmpstr (room.blocks[SQUAT]->note, ==, "Slowly");
  choice (pace, &(Field) { .number = 1 }); /* as the squat has it already */
  g_assert_cmpint (room.blocks[PLANK]->pace, ==, room.blocks[SQUAT]->pace);
  g_assert_cmpstr (adw_action_row_get_subtitle (ADW_ACTION_ROW (pace)), ==, "");
  room_end (&room);
}

/* What was typed in several fields goes to the block it was typed for, when a click on another ends the typing. */
static void
test_left (void)
{
  GtkWidget *pane;
  Room room;

  room_begin (&room);
  pane = GTK_WIDGET (lap_window_pane (room.window));
  windows_click_box (room.window, room.boxes[SQUAT]);
  lap_words_row_set_text (LAP_WORDS_ROW (windows_find (pane, LAP_TYPE_WORDS_ROW, "cues")), "Down / Up");
  gtk_editable_set_text (GTK_EDITABLE (windows_find (pane, ADW_TYPE_ENTRY_ROW, "load")), "8 kg");
  gtk_editable_set_text (GTK_EDITABLE (windows_find (pane, ADW_TYPE_ENTRY_ROW, "note")), "Slowly");
  windows_click_box (room.window, room.boxes[PLANK]);
  g_assert_cmpstr (room.blocks[SQUAT]->note, ==, "Slowly");
  g_assert_cmpstr (room.blocks[SQUAT]->load, ==, "8 kg");
  g_assert_cmpstr (room.blocks[SQUAT]->say->cues[0], ==, "Down");
  g_assert_null (room.blocks[PLANK]->note);
  g_assert_null (room.blocks[PLANK]->load);
  g_assert_null (room.blocks[PLANK]->say);
  room_end (&room);
}

/* A row that opens has a switch of libadwaita's that is never shown. */
static gboolean
is_field (GtkWidget *widget)
{
  if (g_strcmp0 (gtk_buildable_get_buildable_id (GTK_BUILDABLE (widget)), "enable_switch") == 0)
    return FALSE;
  return GTK_IS_SPIN_BUTTON (widget) || GTK_IS_SWITCH (widget) || GTK_IS_TEXT_VIEW (widget) || ADW_IS_ENTRY_ROW (widget) ||
         ADW_IS_COMBO_ROW (widget) || LAP_IS_WORDS_ROW (widget) || LAP_IS_CHOOSER (widget);
}

static void
assert_known (GtkWidget *widget)
{
  if (is_field (widget)) {
    const char *id = gtk_buildable_get_buildable_id (GTK_BUILDABLE (widget));
    gboolean known = FALSE;

    for (guint i = 0; i < G_N_ELEMENTS (fields); i++)
      known |= g_strcmp0 (fields[i].id, id) == 0;
    g_test_message ("%s “%s”", G_OBJECT_TYPE_NAME (widget), id);
    g_assert_true (known);
    return;
  }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    assert_known (child);
}

static void
test_all_known (void)
{
  Room room;

  room_begin (&room);
  assert_known (GTK_WIDGET (lap_window_pane (room.window)));
  room_end (&room);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/pane-fields/all-known", test_all_known);
  g_test_add_func ("/pane-fields/each", test_each);
  g_test_add_func ("/pane-fields/several", test_several);
  g_test_add_func ("/pane-fields/several-still", test_several_still);
  g_test_add_func ("/pane-fields/different", test_different);
  g_test_add_func ("/pane-fields/left", test_left);
  return g_test_run ();
}
