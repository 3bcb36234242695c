/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The timetable of a week: what is exposed of it, what keys do, and what is shown of which week.
 */
#include "ui/timetable.h"

#include "store/week-clip.h"
#include "ui/shortcuts.h"
#include "ui/week/clipboard.h"
#include "ui/week/filter.h"

/* What is exposed */

static void
test_exposed (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  LapWeekStrip *strip = lap_week_view_strip (t.view);
  GtkWidget *card = lap_week_strip_find (strip, "early");
  GtkWidget *ticket = lap_week_tray_find (lap_week_view_tray (t.view), "waits");

  g_assert_cmpuint (lap_week_strip_n_live (strip), ==, 3);
  gtk_test_accessible_assert_role (strip, GTK_ACCESSIBLE_ROLE_LIST);
  gtk_test_accessible_assert_role (card, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
  gtk_test_accessible_assert_property (card, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Early forty, Monday 07:00 to 07:45, Loft, Mira, 20 places, Hard");
  gtk_test_accessible_assert_relation (card, GTK_ACCESSIBLE_RELATION_POS_IN_SET, 1);
  gtk_test_accessible_assert_relation (card, GTK_ACCESSIBLE_RELATION_SET_SIZE, 3);
  gtk_test_accessible_assert_state (card, GTK_ACCESSIBLE_STATE_SELECTED, FALSE);
  lap_week_view_show (t.view, "early");
  gtk_test_accessible_assert_state (card, GTK_ACCESSIBLE_STATE_SELECTED, TRUE);
  g_assert_true (gtk_widget_has_focus (card));
  gtk_test_accessible_assert_property (ticket, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Quick ten, 30 minutes, no room, Teo, no day yet");
  timetable_close (&t);
}

/* A new warning is said with the class, and its number is that of the list. */
static void
test_warnings (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  LapPlace place = { LAP_DAY_MON, 7 * 60 + 30, "loft", "teo" };
  guint box;

  lap_document_apply (t.document, lap_verb_place (timetable_class (&t, "noon"), &place));
  timetable_settle (&t);
  box = lap_week_score_find (t.scene->score, "early");
  g_assert_cmpuint (t.scene->score->boxes[box].warning, ==, 1);
  g_assert_cmpuint (t.scene->score->clashes->len, ==, 1);
  gtk_test_accessible_assert_property (lap_week_strip_find (lap_week_view_strip (t.view), "early"),
                                       GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Early forty, Monday 07:00 to 07:45, Loft, Mira, 20 places, Hard, warning 1");
  timetable_close (&t);
}

/* Keys */

static void
test_every_key (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);

  for (guint i = 0; i < lap_shortcuts_n (); i++) {
    const LapShortcut *shortcut = lap_shortcuts_nth (i);
    g_auto (GStrv) keys = g_strsplit (shortcut->keys, " ", -1);

    for (guint k = 0; shortcut->scope == LAP_SCOPE_WEEK && keys[k] != NULL; k++) {
      while (lap_history_undo_label (lap_document_history (t.document)) != NULL)
        lap_document_undo (t.document);
      lap_week_view_show (t.view, "noon");
      timetable_press (&t, keys[k]);
    }
  }
  timetable_close (&t);
}

static const struct {
  const char *id, *keys, *back; /* keys with blanks between */
  int         day, start, minutes;
  const char *room;
} moves[] = {
  { "noon", "<Alt>Right", "<Alt>Left", LAP_DAY_TUE, 735, 30, "yard" },
  { "noon", "<Alt><Shift>Left", "<Alt><Shift>Right", LAP_DAY_TUE, 715, 30, "yard" },
  { "noon", "<Alt>Up", "<Alt>Down", LAP_DAY_TUE, 720, 30, "loft" },
  { "noon", "<Control>Down <Control>Down", "<Control>Up <Control>Up", LAP_DAY_THU, 720, 30, "yard" },
  { "noon", "plus", "minus", LAP_DAY_TUE, 720, 45, "yard" },
  { "noon", "<Alt>minus", "<Alt>plus", LAP_DAY_TUE, 720, 25, "yard" },
  { "early", "<Alt><Shift>Right <Alt>Right", "<Alt>Left <Alt>Left <Alt>Right", LAP_DAY_MON, 435, 45, "loft" },
};

static void
press_all (Timetable *t, const char *list)
{
  g_auto (GStrv) keys = g_strsplit (list, " ", -1);

  for (guint i = 0; keys[i] != NULL; i++)
    timetable_press (t, keys[i]);
}

static void
test_keys_move (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (moves); i++) {
    Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
    LapPlace was = lap_class_place (timetable_class (&t, moves[i].id));
    int minutes = timetable_class (&t, moves[i].id)->minutes;

    lap_week_view_show (t.view, moves[i].id);
    press_all (&t, moves[i].keys);
    timetable_assert_at (&t, moves[i].id, moves[i].day, moves[i].start, moves[i].minutes, moves[i].room);
    g_assert_true (gtk_widget_has_focus (lap_week_strip_find (lap_week_view_strip (t.view), moves[i].id)));
    press_all (&t, moves[i].back);
    g_assert_cmpint (timetable_class (&t, moves[i].id)->day, ==, was.day);
    g_assert_cmpint (timetable_class (&t, moves[i].id)->start, ==, was.start);
    g_assert_cmpint (timetable_class (&t, moves[i].id)->minutes, ==, minutes);
    timetable_close (&t);
  }
}

static void
test_keys_walk (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);

  lap_week_view_show (t.view, "early");
  timetable_press (&t, "Right");
  g_assert_cmpstr (t.scene->current, ==, "late"); /* the loft's line of Tuesday comes before the yard's */
  timetable_press (&t, "Down");
  g_assert_cmpstr (t.scene->current, ==, "noon");
  timetable_press (&t, "Page_Up");
  g_assert_cmpstr (t.scene->current, ==, "early");
  timetable_press (&t, "<Shift>Right");
  g_assert_cmpuint (g_hash_table_size (t.scene->chosen), ==, 2);
  timetable_press (&t, "<Alt>Right");
  g_assert_cmpint (timetable_class (&t, "early")->start, ==, 435);
  g_assert_cmpint (timetable_class (&t, "late")->start, ==, 1095);
  lap_document_undo (t.document);
  g_assert_cmpint (timetable_class (&t, "early")->start, ==, 420);
  g_assert_cmpint (timetable_class (&t, "late")->start, ==, 1080);
  timetable_press (&t, "Escape");
  g_assert_cmpuint (g_hash_table_size (t.scene->chosen), ==, 0);
  timetable_press (&t, "<Control>a");
  g_assert_cmpuint (g_hash_table_size (t.scene->chosen), ==, 3);
  timetable_close (&t);
}

static void
test_keys_come_and_go (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  LapWeek *week = lap_document_week (t.document);

  lap_week_view_show (t.view, "early");
  timetable_press (&t, "<Control>d"); /* on the next day on which loft and Mira are free */
  g_assert_cmpuint (lap_list_n (week->classes), ==, 5);
  g_assert_cmpint (LAP_CLASS (lap_list_nth (week->classes, 4))->day, ==, LAP_DAY_TUE);
  timetable_press (&t, "Delete");
  g_assert_cmpuint (lap_list_n (week->classes), ==, 4);
  g_assert_nonnull (t.scene->current);
  lap_week_view_show (t.view, "early");
  timetable_press (&t, "<Shift>Delete");
  g_assert_false (lap_class_is_placed (timetable_class (&t, "early")));
  g_assert_true (gtk_widget_has_focus (lap_week_tray_find (lap_week_view_tray (t.view), "early")));
  timetable_press (&t, "Return");
  g_assert_true (lap_class_is_placed (timetable_class (&t, "early")));
  timetable_press (&t, "n");
  g_assert_cmpuint (lap_list_n (week->classes), ==, 5);
  g_assert_cmpstr (LAP_CLASS (lap_list_nth (week->classes, 4))->kind, ==, "circuit");
  timetable_close (&t);
}

static void
test_clipboard (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  LapWeek *week = lap_document_week (t.document);
  g_autoptr (GPtrArray) two = g_ptr_array_new ();
  g_autoptr (GBytes) bytes = NULL, wrong = g_bytes_new_static ("{}", 2);

  g_ptr_array_add (two, timetable_class (&t, "early"));
  g_ptr_array_add (two, timetable_class (&t, "waits"));
  bytes = lap_week_clip_write (week, two);
  g_assert_true (lap_week_paste_bytes (t.scene, bytes));
  g_assert_cmpuint (lap_list_n (week->classes), ==, 6);
  g_assert_cmpint (LAP_CLASS (lap_list_nth (week->classes, 4))->day, ==, LAP_DAY_TUE);
  g_assert_cmpint (LAP_CLASS (lap_list_nth (week->classes, 5))->day, ==, -1);
  g_assert_cmpuint (g_hash_table_size (t.scene->chosen), ==, 2);
  lap_document_undo (t.document);
  g_assert_cmpuint (lap_list_n (week->classes), ==, 4);
  g_assert_false (lap_week_paste_bytes (t.scene, wrong));
  timetable_close (&t);
}

/* What is shown */

static void
test_filter (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);

  lap_week_scene_filter (t.scene, LAP_SIEVE_COACHES, "teo", TRUE);
  timetable_settle (&t);
  g_assert_cmpuint (lap_week_strip_n_live (lap_week_view_strip (t.view)), ==, 1);
  lap_week_scene_filter (t.scene, LAP_SIEVE_KINDS, "circuit", TRUE);
  g_assert_cmpuint (t.scene->score->n, ==, 0);
  lap_week_view_show (t.view, "early"); /* whatever is filtered */
  g_assert_cmpstr (t.scene->current, ==, "early");
  g_assert_cmpuint (lap_week_scene_box (t.scene), !=, LAP_NO_WEEK_BOX);
  lap_week_scene_set_by_coach (t.scene, TRUE);
  timetable_settle (&t);
  timetable_press (&t, "<Alt>Down"); /* to the other coach */
  g_assert_cmpstr (timetable_class (&t, "early")->coach, ==, "teo");
  timetable_close (&t);
}

/* A tick in the list of a chip shows one coach only, and the chip says so. */
static void
test_chips (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  LapWeekFilter *filter = LAP_WEEK_FILTER (windows_find (GTK_WIDGET (t.view), LAP_TYPE_WEEK_FILTER, NULL));
  GtkWidget *chip = lap_week_filter_chip (filter, LAP_SIEVE_COACHES);
  GtkWidget *popover, *tick;

  gtk_test_accessible_assert_property (chip, GTK_ACCESSIBLE_PROPERTY_LABEL, "Coaches: All coaches");
  g_assert_null (gtk_menu_button_get_popover (GTK_MENU_BUTTON (chip))); /* made when it is opened */
  gtk_menu_button_popup (GTK_MENU_BUTTON (chip));
  popover = GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (chip)));
  tick = windows_find (popover, GTK_TYPE_CHECK_BUTTON, NULL);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (tick), TRUE);
  g_assert_cmpuint (t.scene->score->n, ==, 2);
  gtk_test_accessible_assert_property (chip, GTK_ACCESSIBLE_PROPERTY_LABEL, "Coaches: Mira");
  g_signal_emit_by_name (windows_find (popover, GTK_TYPE_BUTTON, NULL), "clicked");
  g_assert_cmpuint (t.scene->score->n, ==, 3);
  g_assert_false (gtk_check_button_get_active (GTK_CHECK_BUTTON (tick)));
  timetable_close (&t);
}

static void
test_narrow (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 360, 640);
  GtkGesture *swipe = windows_controller (timetable_strip (&t), GTK_TYPE_GESTURE_SWIPE);

  g_assert_cmpint (gtk_widget_get_width (GTK_WIDGET (t.view)), <=, 360);
  g_assert_cmpint (t.scene->look.day, ==, LAP_DAY_MON);
  g_assert_true (t.scene->look.detailed);
  lap_week_view_show (t.view, "noon");
  timetable_settle (&t);
  g_assert_cmpint (t.scene->look.day, ==, LAP_DAY_TUE);
  timetable_press (&t, "Page_Down");
  g_assert_cmpint (t.scene->look.day, ==, LAP_DAY_WED);
  g_assert_cmpuint (t.scene->score->n, ==, 0);
  timetable_press (&t, "n");
  g_assert_cmpint (LAP_CLASS (lap_list_nth (lap_document_week (t.document)->classes, 4))->day, ==, LAP_DAY_WED);
  g_signal_emit_by_name (swipe, "swipe", -900.0, 20.0); /* px a second: the page goes left */
  g_assert_cmpint (t.scene->look.day, ==, LAP_DAY_THU);
  g_signal_emit_by_name (swipe, "swipe", 30.0, 900.0);
  g_assert_cmpint (t.scene->look.day, ==, LAP_DAY_THU);
  timetable_close (&t);
}

/* Where the house is open all day and all night, a narrow window begins with a class and not with midnight, on each day. */
static void
test_first_class (void)
{
  static const char text[] =
    "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'T', 'timezone': 'Europe/Lisbon', "
    "'open': {'mon': ['00:00', '24:00'], 'tue': ['00:00', '24:00']}, 'rooms': [{'id': 'r', 'name': 'Loft'}], 'classes': ["
    "{'id': 'a', 'kind': 'k', 'minutes': 45, 'day': 'mon', 'start': '18:00', 'room': 'r'}]}";
  Timetable t = timetable_show (timetable_read (text), 360, 640);
  LapAxis *axis = t.scene->axis;

  g_assert_cmpfloat (axis->width, >, axis->view);
  g_assert_cmpfloat (lap_week_score_x (t.scene->score, axis, 18 * 60), >=, 0);
  g_assert_cmpfloat (lap_week_score_x (t.scene->score, axis, 18 * 60), <, axis->view);
  lap_week_scene_set_day (t.scene, LAP_DAY_WED);
  lap_week_scene_scroll_by (t.scene, -5000);
  lap_week_scene_set_day (t.scene, LAP_DAY_MON);
  g_assert_cmpfloat (axis->offset, >, 0);
  g_assert_cmpfloat (lap_week_score_x (t.scene->score, axis, 18 * 60), <, axis->view);
  timetable_close (&t);
}

/* 19 January 2027 is a Tuesday. */
static void
test_dates (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  LapWeek *week = lap_document_week (t.document);
  guint n_classes;

  lap_document_set_date (t.document, lap_date_parse ("2027-01-20"));
  timetable_settle (&t);
  lap_week_view_show (t.view, "noon");
  timetable_press (&t, "Delete");
  g_assert_true (t.scene->score->boxes[lap_week_score_find (t.scene->score, "noon")].off);
  g_assert_true (lap_week_exception (week, "noon", lap_date_parse ("2027-01-19"))->cancelled);
  timetable_press (&t, "<Control>BackSpace");
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
  timetable_press (&t, "<Control>a");
  timetable_press (&t, "Delete"); /* all of the week, in one step */
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 3);
  lap_document_undo (t.document);
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
  timetable_press (&t, "<Control>a");
  timetable_press (&t, "<Alt>Right"); /* and later, too */
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 3);
  for (guint i = 0; i < 3; i++) {
    LapException *e = lap_list_nth (week->exceptions, i);

    g_assert_cmpint (e->start, ==, lap_week_class (week, e->class_id)->start + 15);
  }
  timetable_press (&t, "<Alt>Left"); /* as every week: nothing is left to be said */
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
  lap_document_undo (t.document);
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 3);
  lap_document_undo (t.document);
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
  n_classes = lap_list_n (week->classes);
  timetable_press (&t, "n"); /* what is added is there every week: not from here */
  timetable_press (&t, "<Control>d");
  g_assert_cmpuint (lap_list_n (week->classes), ==, n_classes);
  lap_week_view_show (t.view, "noon");
  timetable_carry (&t, LAP_DAY_TUE, "yard", 730, LAP_DAY_THU, "loft", 760);
  timetable_assert_at (&t, "noon", LAP_DAY_TUE, 720, 30, "yard"); /* every other week */
  g_assert_cmpint (lap_week_exception (week, "noon", lap_date_parse ("2027-01-19"))->to, ==, lap_date_parse ("2027-01-21"));
  g_assert_true (t.scene->score->boxes[lap_week_score_find (t.scene->score, "noon")].changed);
  lap_document_set_date (t.document, 0);
  g_assert_cmpint (t.scene->score->bands[0].date, ==, 0);
  timetable_close (&t);
}

/* A class that another week sends here stands beside its own. */
static void
test_twice (void)
{
  static const char text[] = TIMETABLE_HEAD TIMETABLE_EARLY ", " TIMETABLE_NOON
                             "], 'except': [{'class': 'early', 'date': '2027-01-11', 'to': '2027-01-20'}]}";
  Timetable t = timetable_show (timetable_read (text), 1300, 900);

  g_assert_cmpuint (lap_week_strip_n_live (lap_week_view_strip (t.view)), ==, 2);
  lap_document_set_date (t.document, lap_date_parse ("2027-01-20"));
  timetable_settle (&t);
  g_assert_cmpuint (lap_week_strip_n_live (lap_week_view_strip (t.view)), ==, 3);
  g_assert_cmpuint (t.scene->score->boxes[2].nth, ==, 1);
  timetable_close (&t);
}

/* A remedy is drawn before it is taken, and the week isn't another one for that. */
static void
test_preview (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  LapPlace place = { LAP_DAY_WED, 600, "yard", "mira" };
  g_autoptr (LapEdits) edits = lap_verb_place (timetable_class (&t, "early"), &place);

  lap_week_view_preview (t.view, edits);
  g_assert_cmpuint (t.scene->ghosts->len, ==, 1);
  g_assert_cmpint (g_array_index (t.scene->ghosts, LapWeekGhost, 0).day, ==, LAP_DAY_WED);
  timetable_assert_at (&t, "early", LAP_DAY_MON, 420, 45, "loft");
  timetable_settle (&t);
  lap_week_view_preview (t.view, NULL);
  g_assert_null (t.scene->ghosts);
  timetable_close (&t);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/week-view/exposed", test_exposed);
  g_test_add_func ("/week-view/warnings", test_warnings);
  g_test_add_func ("/week-view/every-key", test_every_key);
  g_test_add_func ("/week-view/keys-move", test_keys_move);
  g_test_add_func ("/week-view/keys-walk", test_keys_walk);
  g_test_add_func ("/week-view/keys-come-and-go", test_keys_come_and_go);
  g_test_add_func ("/week-view/clipboard", test_clipboard);
  g_test_add_func ("/week-view/filter", test_filter);
  g_test_add_func ("/week-view/chips", test_chips);
  g_test_add_func ("/week-view/narrow", test_narrow);
  g_test_add_func ("/week-view/first-class", test_first_class);
  g_test_add_func ("/week-view/dates", test_dates);
  g_test_add_func ("/week-view/twice", test_twice);
  g_test_add_func ("/week-view/preview", test_preview);
  return g_test_run ();
}
