/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The timetable of a week: what is exposed of it, what keys and drags do, that nothing moves before it is let go, and
 * that mouse and keys come to the same week.
 */
#include "ui/windows.h"

#include "edit/week-many.h"
#include "store/documents.h"
#include "store/week-clip.h"
#include "ui/shortcuts.h"
#include "ui/week/clipboard.h"
#include "ui/week/filter.h"
#include "ui/week/view.h"

#include <string.h>

typedef struct {
  GtkWidget    *window;
  LapWeekView  *view;
  LapWeekScene *scene;
  LapDocument  *document;
} Fixture;

static void
settle (Fixture *f)
{
  gtk_test_widget_wait_for_draw (f->window);
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

static Fixture
show (LapDocument *document, int width, int height)
{
  Fixture f = { .window = adw_window_new (), .view = lap_week_view_new (document), .document = document };

  f.scene = lap_week_view_scene (f.view);
  adw_window_set_content (ADW_WINDOW (f.window), GTK_WIDGET (f.view));
  gtk_window_set_default_size (GTK_WINDOW (f.window), width, height);
  gtk_window_present (GTK_WINDOW (f.window));
  settle (&f);
  settle (&f); /* how much is shown is decided after the first layout */
  return f;
}

/* Nothing of the view outlives its window. */
static void
close_view (Fixture *f)
{
  gpointer view = f->view, scene = f->scene, document = f->document;

  g_object_add_weak_pointer (view, &view);
  g_object_add_weak_pointer (scene, &scene);
  g_object_add_weak_pointer (document, &document);
  gtk_window_destroy (GTK_WINDOW (f->window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_null (view);
  while (scene != NULL) /* a clipboard that is still being read keeps it */
    g_main_context_iteration (NULL, TRUE);
  g_object_unref (f->document);
  g_assert_null (document);
}

static LapDocument *
read_text (const char *text)
{
  g_autofree char *json = g_strdelimit (g_strdup (text), "'", '"');
  g_autoptr (GBytes) bytes = g_bytes_new (json, strlen (json));
  g_autoptr (GError) error = NULL;
  LapWeek *week = lap_week_from_bytes (bytes, &error);
  LapDocument *document;

  g_assert_no_error (error);
  document = lap_document_new (week, &error);
  g_assert_no_error (error);
  return document;
}

#define HEAD "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'Kelpline Studio', 'timezone': 'Europe/Lisbon', " \
             "'open': {'mon': ['06:30', '21:30'], 'tue': ['06:30', '21:30'], 'wed': ['06:30', '21:30'], 'thu': ['06:30', " \
             "'21:30']}, 'rooms': [{'id': 'loft', 'name': 'Loft'}, {'id': 'yard', 'name': 'Yard'}], "                  \
             "'coaches': [{'id': 'mira', 'name': 'Mira'}, {'id': 'teo', 'name': 'Teo'}], 'classes': ["
#define EARLY "{'id': 'early', 'title': 'Early forty', 'kind': 'circuit', 'minutes': 45, 'places': 20, 'effort': 'hard', " \
              "'day': 'mon', 'start': '07:00', 'room': 'loft', 'coach': 'mira'}"
#define NOON  "{'id': 'noon', 'title': 'Lunch legs', 'kind': 'strength', 'minutes': 30, 'day': 'tue', 'start': '12:00', " \
              "'room': 'yard', 'coach': 'teo'}"
#define LATE  "{'id': 'late', 'title': 'Long stretch', 'kind': 'stretch', 'minutes': 60, 'day': 'tue', 'start': '18:00', " \
              "'room': 'loft', 'coach': 'mira'}"
#define WAITS "{'id': 'waits', 'title': 'Quick ten', 'kind': 'circuit', 'minutes': 30, 'coach': 'teo'}"
#define ALL   HEAD EARLY ", " NOON ", " LATE ", " WAITS "]}"

static LapClass *
class_of (Fixture *f, const char *id)
{
  return lap_week_class (lap_document_week (f->document), id);
}

static void
assert_at (Fixture *f, const char *id, int day, int start, int minutes, const char *room)
{
  LapClass *c = class_of (f, id);

  g_assert_cmpint (c->day, ==, day);
  g_assert_cmpint (c->start, ==, start);
  g_assert_cmpint (c->minutes, ==, minutes);
  g_assert_cmpstr (c->room, ==, room);
}

static GtkGesture *
drag_of (GtkWidget *widget)
{
  return windows_controller (widget, GTK_TYPE_GESTURE_DRAG);
}

static GtkGesture *
swipe_of (GtkWidget *widget)
{
  return windows_controller (widget, GTK_TYPE_GESTURE_SWIPE);
}

/* Where a minute of a line is, at the height of bars. */
static graphene_point_t
point_at (Fixture *f, int day, const char *line, int minute)
{
  const LapWeekScore *score = f->scene->score;
  const LapWeekRow *row = &score->rows[lap_week_score_row (score, day, line)];

  return GRAPHENE_POINT_INIT (lap_week_score_x (score, f->scene->axis, minute), row->y + score->crest + score->bar / 2.0);
}

static GtkWidget *
strip_of (Fixture *f)
{
  return GTK_WIDGET (lap_week_view_strip (f->view));
}

/* Holds it at the end of the drag: the caller lets go. */
static GtkGesture *
drag (Fixture *f, graphene_point_t from, graphene_point_t to)
{
  GtkGesture *gesture = drag_of (strip_of (f));

  g_signal_emit_by_name (gesture, "drag-begin", from.x, from.y);
  for (int i = 1; i <= 4; i++)
    g_signal_emit_by_name (gesture, "drag-update", (to.x - from.x) * i / 4, (to.y - from.y) * i / 4);
  return gesture;
}

static void
let_go (GtkGesture *gesture)
{
  g_signal_emit_by_name (gesture, "drag-end", 0.0, 0.0);
}

static void
press (Fixture *f, const char *keys)
{
  GtkWidget *ticket = lap_week_tray_find (lap_week_view_tray (f->view), f->scene->current);

  g_assert_true (windows_press (ticket != NULL ? ticket : strip_of (f), keys));
}

/* What is exposed */

static void
test_exposed (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  LapWeekStrip *strip = lap_week_view_strip (f.view);
  GtkWidget *card = lap_week_strip_find (strip, "early"), *ticket = lap_week_tray_find (lap_week_view_tray (f.view), "waits");

  g_assert_cmpuint (lap_week_strip_n_live (strip), ==, 3);
  gtk_test_accessible_assert_role (strip, GTK_ACCESSIBLE_ROLE_LIST);
  gtk_test_accessible_assert_role (card, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
  gtk_test_accessible_assert_property (card, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Early forty, Monday 07:00 to 07:45, Loft, Mira, 20 places, Hard");
  gtk_test_accessible_assert_relation (card, GTK_ACCESSIBLE_RELATION_POS_IN_SET, 1);
  gtk_test_accessible_assert_relation (card, GTK_ACCESSIBLE_RELATION_SET_SIZE, 3);
  gtk_test_accessible_assert_state (card, GTK_ACCESSIBLE_STATE_SELECTED, FALSE);
  lap_week_view_show (f.view, "early");
  gtk_test_accessible_assert_state (card, GTK_ACCESSIBLE_STATE_SELECTED, TRUE);
  g_assert_true (gtk_widget_has_focus (card));
  gtk_test_accessible_assert_property (ticket, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Quick ten, 30 minutes, no room, Teo, no day yet");
  close_view (&f);
}

/* A new warning is said with the class, and its number is that of the list. */
static void
test_warnings (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  LapPlace place = { LAP_DAY_MON, 7 * 60 + 30, "loft", "teo" };
  guint box;

  lap_document_apply (f.document, lap_verb_place (class_of (&f, "noon"), &place));
  settle (&f);
  box = lap_week_score_find (f.scene->score, "early");
  g_assert_cmpuint (f.scene->score->boxes[box].warning, ==, 1);
  g_assert_cmpuint (f.scene->score->clashes->len, ==, 1);
  gtk_test_accessible_assert_property (lap_week_strip_find (lap_week_view_strip (f.view), "early"),
                                       GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Early forty, Monday 07:00 to 07:45, Loft, Mira, 20 places, Hard, warning 1");
  close_view (&f);
}

/* Keys */

static void
test_every_key (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);

  for (guint i = 0; i < lap_shortcuts_n (); i++) {
    const LapShortcut *shortcut = lap_shortcuts_nth (i);
    g_auto (GStrv) keys = g_strsplit (shortcut->keys, " ", -1);

    for (guint k = 0; shortcut->scope == LAP_SCOPE_WEEK && keys[k] != NULL; k++) {
      while (lap_history_undo_label (lap_document_history (f.document)) != NULL)
        lap_document_undo (f.document);
      lap_week_view_show (f.view, "noon");
      press (&f, keys[k]);
    }
  }
  close_view (&f);
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
press_all (Fixture *f, const char *list)
{
  g_auto (GStrv) keys = g_strsplit (list, " ", -1);

  for (guint i = 0; keys[i] != NULL; i++)
    press (f, keys[i]);
}

static void
test_keys_move (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (moves); i++) {
    Fixture f = show (read_text (ALL), 1300, 900);
    LapPlace was = lap_class_place (class_of (&f, moves[i].id));
    int minutes = class_of (&f, moves[i].id)->minutes;

    lap_week_view_show (f.view, moves[i].id);
    press_all (&f, moves[i].keys);
    assert_at (&f, moves[i].id, moves[i].day, moves[i].start, moves[i].minutes, moves[i].room);
    g_assert_true (gtk_widget_has_focus (lap_week_strip_find (lap_week_view_strip (f.view), moves[i].id)));
    press_all (&f, moves[i].back);
    g_assert_cmpint (class_of (&f, moves[i].id)->day, ==, was.day);
    g_assert_cmpint (class_of (&f, moves[i].id)->start, ==, was.start);
    g_assert_cmpint (class_of (&f, moves[i].id)->minutes, ==, minutes);
    close_view (&f);
  }
}

static void
test_keys_walk (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);

  lap_week_view_show (f.view, "early");
  press (&f, "Right");
  g_assert_cmpstr (f.scene->current, ==, "late"); /* the loft's line of Tuesday comes before the yard's */
  press (&f, "Down");
  g_assert_cmpstr (f.scene->current, ==, "noon");
  press (&f, "Page_Up");
  g_assert_cmpstr (f.scene->current, ==, "early");
  press (&f, "<Shift>Right");
  g_assert_cmpuint (g_hash_table_size (f.scene->chosen), ==, 2);
  press (&f, "<Alt>Right");
  g_assert_cmpint (class_of (&f, "early")->start, ==, 435);
  g_assert_cmpint (class_of (&f, "late")->start, ==, 1095);
  lap_document_undo (f.document);
  g_assert_cmpint (class_of (&f, "early")->start, ==, 420);
  g_assert_cmpint (class_of (&f, "late")->start, ==, 1080);
  press (&f, "Escape");
  g_assert_cmpuint (g_hash_table_size (f.scene->chosen), ==, 0);
  press (&f, "<Control>a");
  g_assert_cmpuint (g_hash_table_size (f.scene->chosen), ==, 3);
  close_view (&f);
}

static void
test_keys_come_and_go (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  LapWeek *week = lap_document_week (f.document);

  lap_week_view_show (f.view, "early");
  press (&f, "<Control>d"); /* on the next day on which loft and Mira are free */
  g_assert_cmpuint (lap_list_n (week->classes), ==, 5);
  g_assert_cmpint (LAP_CLASS (lap_list_nth (week->classes, 4))->day, ==, LAP_DAY_TUE);
  press (&f, "Delete");
  g_assert_cmpuint (lap_list_n (week->classes), ==, 4);
  g_assert_nonnull (f.scene->current);
  lap_week_view_show (f.view, "early");
  press (&f, "<Shift>Delete");
  g_assert_false (lap_class_is_placed (class_of (&f, "early")));
  g_assert_true (gtk_widget_has_focus (lap_week_tray_find (lap_week_view_tray (f.view), "early")));
  press (&f, "Return");
  g_assert_true (lap_class_is_placed (class_of (&f, "early")));
  press (&f, "n");
  g_assert_cmpuint (lap_list_n (week->classes), ==, 5);
  g_assert_cmpstr (LAP_CLASS (lap_list_nth (week->classes, 4))->kind, ==, "circuit");
  close_view (&f);
}

static void
test_clipboard (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  LapWeek *week = lap_document_week (f.document);
  g_autoptr (GPtrArray) two = g_ptr_array_new ();
  g_autoptr (GBytes) bytes = NULL, wrong = g_bytes_new_static ("{}", 2);

  g_ptr_array_add (two, class_of (&f, "early"));
  g_ptr_array_add (two, class_of (&f, "waits"));
  bytes = lap_week_clip_write (week, two);
  g_assert_true (lap_week_paste_bytes (f.scene, bytes));
  g_assert_cmpuint (lap_list_n (week->classes), ==, 6);
  g_assert_cmpint (LAP_CLASS (lap_list_nth (week->classes, 4))->day, ==, LAP_DAY_TUE);
  g_assert_cmpint (LAP_CLASS (lap_list_nth (week->classes, 5))->day, ==, -1);
  g_assert_cmpuint (g_hash_table_size (f.scene->chosen), ==, 2);
  lap_document_undo (f.document);
  g_assert_cmpuint (lap_list_n (week->classes), ==, 4);
  g_assert_false (lap_week_paste_bytes (f.scene, wrong));
  close_view (&f);
}

/* Drags */

static void
test_drag (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  GtkGesture *gesture;

  /* Held 10 minutes after its start; let go where that makes 18:33: the nearest quarter is 18:30. */
  gesture = drag (&f, point_at (&f, LAP_DAY_TUE, "yard", 730), point_at (&f, LAP_DAY_THU, "loft", 18 * 60 + 43));
  assert_at (&f, "noon", LAP_DAY_TUE, 720, 30, "yard"); /* nothing moves before */
  g_assert_nonnull (f.scene->ghosts);
  g_assert_cmpint (g_array_index (f.scene->ghosts, LapWeekGhost, 0).start, ==, 18 * 60 + 30);
  g_assert_cmpint (g_array_index (f.scene->ghosts, LapWeekGhost, 0).day, ==, LAP_DAY_THU);
  g_assert_null (f.scene->ghost_says);
  let_go (gesture);
  assert_at (&f, "noon", LAP_DAY_THU, 18 * 60 + 30, 30, "loft");
  g_assert_null (f.scene->ghosts);
  g_assert_cmpstr (f.scene->current, ==, "noon");
  lap_document_undo (f.document);
  assert_at (&f, "noon", LAP_DAY_TUE, 720, 30, "yard");
  close_view (&f);
}

/* Onto another class of Mira's: it says so before it is let go; and cancelled it has done nothing. */
static void
test_drag_says (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  guint64 revision = lap_history_revision (lap_document_history (f.document));
  GtkGesture *gesture;

  gesture = drag (&f, point_at (&f, LAP_DAY_MON, "loft", 430), point_at (&f, LAP_DAY_TUE, "yard", 18 * 60 + 25));
  g_assert_nonnull (f.scene->ghost_says);
  g_assert_nonnull (strstr (f.scene->ghost_says, "Mira"));
  g_signal_emit_by_name (gesture, "cancel", NULL);
  assert_at (&f, "early", LAP_DAY_MON, 420, 45, "loft");
  g_assert_null (f.scene->ghosts);
  g_assert_cmpuint (lap_history_revision (lap_document_history (f.document)), ==, revision);
  close_view (&f);
}

static void
test_drag_ends (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);

  let_go (drag (&f, point_at (&f, LAP_DAY_TUE, "loft", 19 * 60 - 1), point_at (&f, LAP_DAY_TUE, "loft", 19 * 60 + 32)));
  assert_at (&f, "late", LAP_DAY_TUE, 1080, 90, "loft");
  let_go (drag (&f, point_at (&f, LAP_DAY_TUE, "loft", 18 * 60 + 1), point_at (&f, LAP_DAY_TUE, "loft", 17 * 60 + 31)));
  assert_at (&f, "late", LAP_DAY_TUE, 1050, 120, "loft");
  lap_document_undo (f.document);
  lap_document_undo (f.document);
  assert_at (&f, "late", LAP_DAY_TUE, 1080, 60, "loft");
  close_view (&f);
}

static void
test_drag_several (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);

  lap_week_view_show (f.view, "noon");
  lap_week_scene_pick (f.scene, "late", LAP_PICK_TOGGLE);
  let_go (drag (&f, point_at (&f, LAP_DAY_TUE, "loft", 1090), point_at (&f, LAP_DAY_WED, "loft", 1120)));
  assert_at (&f, "late", LAP_DAY_WED, 1110, 60, "loft");
  assert_at (&f, "noon", LAP_DAY_WED, 750, 30, "yard");
  lap_document_undo (f.document);
  assert_at (&f, "noon", LAP_DAY_TUE, 720, 30, "yard");
  close_view (&f);
}

static void
test_tray (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  GtkWidget *tray = GTK_WIDGET (lap_week_view_tray (f.view)), *ticket = lap_week_tray_find (LAP_WEEK_TRAY (tray), "waits");
  graphene_point_t to = point_at (&f, LAP_DAY_WED, "yard", 9 * 60), from, target;
  GtkGesture *gesture = drag_of (tray);

  g_assert_true (gtk_widget_get_visible (tray));
  g_assert_true (gtk_widget_compute_point (ticket, tray, &GRAPHENE_POINT_INIT (10, 10), &from));
  g_assert_true (gtk_widget_compute_point (strip_of (&f), tray, &to, &target));
  g_signal_emit_by_name (gesture, "drag-begin", from.x, from.y);
  g_signal_emit_by_name (gesture, "drag-update", target.x - from.x, target.y - from.y);
  let_go (gesture);
  assert_at (&f, "waits", LAP_DAY_WED, 540, 30, "yard");
  settle (&f);
  g_assert_false (gtk_widget_get_visible (tray));
  g_assert_null (lap_week_tray_find (LAP_WEEK_TRAY (tray), "waits"));
  lap_document_undo (f.document);
  /* By Enter: the first quarter of an hour with a room and Teo free. */
  lap_week_view_show (f.view, "waits");
  press (&f, "Return");
  assert_at (&f, "waits", LAP_DAY_MON, 390, 30, "loft");
  close_view (&f);
}

/* What is shown */

static void
test_filter (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);

  lap_week_scene_filter (f.scene, LAP_SIEVE_COACHES, "teo", TRUE);
  settle (&f);
  g_assert_cmpuint (lap_week_strip_n_live (lap_week_view_strip (f.view)), ==, 1);
  lap_week_scene_filter (f.scene, LAP_SIEVE_KINDS, "circuit", TRUE);
  g_assert_cmpuint (f.scene->score->n, ==, 0);
  lap_week_view_show (f.view, "early"); /* whatever is filtered */
  g_assert_cmpstr (f.scene->current, ==, "early");
  g_assert_cmpuint (lap_week_scene_box (f.scene), !=, LAP_NO_WEEK_BOX);
  lap_week_scene_set_by_coach (f.scene, TRUE);
  settle (&f);
  press (&f, "<Alt>Down"); /* to the other coach */
  g_assert_cmpstr (class_of (&f, "early")->coach, ==, "teo");
  close_view (&f);
}

/* A tick in the list of a chip shows one coach only, and the chip says so. */
static void
test_chips (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  LapWeekFilter *filter = LAP_WEEK_FILTER (windows_find (GTK_WIDGET (f.view), LAP_TYPE_WEEK_FILTER, NULL));
  GtkWidget *chip = lap_week_filter_chip (filter, LAP_SIEVE_COACHES);
  GtkWidget *popover, *tick;

  gtk_test_accessible_assert_property (chip, GTK_ACCESSIBLE_PROPERTY_LABEL, "Coaches: All coaches");
  g_assert_null (gtk_menu_button_get_popover (GTK_MENU_BUTTON (chip))); /* made when it is opened */
  gtk_menu_button_popup (GTK_MENU_BUTTON (chip));
  popover = GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (chip)));
  tick = windows_find (popover, GTK_TYPE_CHECK_BUTTON, NULL);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (tick), TRUE);
  g_assert_cmpuint (f.scene->score->n, ==, 2);
  gtk_test_accessible_assert_property (chip, GTK_ACCESSIBLE_PROPERTY_LABEL, "Coaches: Mira");
  g_signal_emit_by_name (windows_find (popover, GTK_TYPE_BUTTON, NULL), "clicked");
  g_assert_cmpuint (f.scene->score->n, ==, 3);
  g_assert_false (gtk_check_button_get_active (GTK_CHECK_BUTTON (tick)));
  close_view (&f);
}

static void
test_narrow (void)
{
  Fixture f = show (read_text (ALL), 360, 640);

  g_assert_cmpint (gtk_widget_get_width (GTK_WIDGET (f.view)), <=, 360);
  g_assert_cmpint (f.scene->look.day, ==, LAP_DAY_MON);
  g_assert_true (f.scene->look.detailed);
  lap_week_view_show (f.view, "noon");
  settle (&f);
  g_assert_cmpint (f.scene->look.day, ==, LAP_DAY_TUE);
  press (&f, "Page_Down");
  g_assert_cmpint (f.scene->look.day, ==, LAP_DAY_WED);
  g_assert_cmpuint (f.scene->score->n, ==, 0);
  press (&f, "n");
  g_assert_cmpint (LAP_CLASS (lap_list_nth (lap_document_week (f.document)->classes, 4))->day, ==, LAP_DAY_WED);
  g_signal_emit_by_name (swipe_of (strip_of (&f)), "swipe", -900.0, 20.0); /* px a second: the page goes left */
  g_assert_cmpint (f.scene->look.day, ==, LAP_DAY_THU);
  g_signal_emit_by_name (swipe_of (strip_of (&f)), "swipe", 30.0, 900.0);
  g_assert_cmpint (f.scene->look.day, ==, LAP_DAY_THU);
  close_view (&f);
}

/* Where the house is open all day and all night, a narrow window begins with a class and not with midnight, on each day. */
static void
test_first_class (void)
{
  static const char text[] =
    "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'T', 'timezone': 'Europe/Lisbon', "
    "'open': {'mon': ['00:00', '24:00'], 'tue': ['00:00', '24:00']}, 'rooms': [{'id': 'r', 'name': 'Loft'}], 'classes': ["
    "{'id': 'a', 'kind': 'k', 'minutes': 45, 'day': 'mon', 'start': '18:00', 'room': 'r'}]}";
  g_autofree char *json = g_strdelimit (g_strdup (text), "'", '"');
  Fixture f = show (read_text (json), 360, 640);
  LapAxis *axis = f.scene->axis;

  g_assert_cmpfloat (axis->width, >, axis->view);
  g_assert_cmpfloat (lap_week_score_x (f.scene->score, axis, 18 * 60), >=, 0);
  g_assert_cmpfloat (lap_week_score_x (f.scene->score, axis, 18 * 60), <, axis->view);
  lap_week_scene_set_day (f.scene, LAP_DAY_WED);
  lap_week_scene_scroll_by (f.scene, -5000);
  lap_week_scene_set_day (f.scene, LAP_DAY_MON);
  g_assert_cmpfloat (axis->offset, >, 0);
  g_assert_cmpfloat (lap_week_score_x (f.scene->score, axis, 18 * 60), <, axis->view);
  close_view (&f);
}

/* 19 January 2027 is a Tuesday. */
static void
test_dates (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  LapWeek *week = lap_document_week (f.document);
  guint n_classes;
  GDate date;

  g_date_clear (&date, 1);
  g_date_set_dmy (&date, 20, G_DATE_JANUARY, 2027);
  lap_week_view_set_date (f.view, &date);
  settle (&f);
  lap_week_view_show (f.view, "noon");
  press (&f, "Delete");
  g_assert_true (f.scene->score->boxes[lap_week_score_find (f.scene->score, "noon")].off);
  g_assert_true (lap_week_exception (week, "noon", lap_date_parse ("2027-01-19"))->cancelled);
  press (&f, "<Control>BackSpace");
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
  press (&f, "<Control>a");
  press (&f, "Delete"); /* all of the week, in one step */
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 3);
  lap_document_undo (f.document);
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
  press (&f, "<Control>a");
  press (&f, "<Alt>Right"); /* and later, too */
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 3);
  for (guint i = 0; i < 3; i++) {
    LapException *e = lap_list_nth (week->exceptions, i);

    g_assert_cmpint (e->start, ==, lap_week_class (week, e->class_id)->start + 15);
  }
  press (&f, "<Alt>Left"); /* as every week: nothing is left to be said */
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
  lap_document_undo (f.document);
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 3);
  lap_document_undo (f.document);
  g_assert_cmpuint (lap_list_n (week->exceptions), ==, 0);
  n_classes = lap_list_n (week->classes);
  press (&f, "n"); /* what is added is there every week: not from here */
  press (&f, "<Control>d");
  g_assert_cmpuint (lap_list_n (week->classes), ==, n_classes);
  lap_week_view_show (f.view, "noon");
  let_go (drag (&f, point_at (&f, LAP_DAY_TUE, "yard", 730), point_at (&f, LAP_DAY_THU, "loft", 760)));
  assert_at (&f, "noon", LAP_DAY_TUE, 720, 30, "yard"); /* every other week */
  g_assert_cmpint (lap_week_exception (week, "noon", lap_date_parse ("2027-01-19"))->to, ==, lap_date_parse ("2027-01-21"));
  g_assert_true (f.scene->score->boxes[lap_week_score_find (f.scene->score, "noon")].changed);
  lap_week_view_set_date (f.view, NULL);
  g_assert_cmpint (f.scene->score->bands[0].date, ==, 0);
  close_view (&f);
}

/* A class that another week sends here stands beside its own. */
static void
test_twice (void)
{
  Fixture f = show (read_text (HEAD EARLY ", " NOON "], 'except': [{'class': 'early', 'date': '2027-01-11', 'to': "
                               "'2027-01-20'}]}"), 1300, 900);

  g_assert_cmpuint (lap_week_strip_n_live (lap_week_view_strip (f.view)), ==, 2);
  lap_document_set_date (f.document, lap_date_parse ("2027-01-20"));
  settle (&f);
  g_assert_cmpuint (lap_week_strip_n_live (lap_week_view_strip (f.view)), ==, 3);
  g_assert_cmpuint (f.scene->score->boxes[2].nth, ==, 1);
  close_view (&f);
}

/* A remedy is drawn before it is taken, and the week isn't another one for that. */
static void
test_preview (void)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  LapPlace place = { LAP_DAY_WED, 600, "yard", "mira" };
  g_autoptr (LapEdits) edits = lap_verb_place (class_of (&f, "early"), &place);

  lap_week_view_preview (f.view, edits);
  g_assert_cmpuint (f.scene->ghosts->len, ==, 1);
  g_assert_cmpint (g_array_index (f.scene->ghosts, LapWeekGhost, 0).day, ==, LAP_DAY_WED);
  assert_at (&f, "early", LAP_DAY_MON, 420, 45, "loft");
  settle (&f);
  lap_week_view_preview (f.view, NULL);
  g_assert_null (f.scene->ghosts);
  close_view (&f);
}

/* The same week by mouse alone and by keys alone */

static void
double_click (Fixture *f, graphene_point_t at)
{
  GtkGesture *click = windows_controller (strip_of (f), GTK_TYPE_GESTURE_CLICK);

  for (int n = 1; n <= 2; n++) {
    g_signal_emit_by_name (click, "pressed", n, (double) at.x, (double) at.y);
    g_signal_emit_by_name (click, "released", n, (double) at.x, (double) at.y);
  }
  settle (f);
}

/* The file's text without ids, which are other ones each time. */
static char *
text_without_ids (Fixture *f)
{
  LapWeek *week = lap_document_week (f->document);
  g_autoptr (LapWeek) copy = lap_object_copy (week);
  g_autoptr (GBytes) bytes = NULL;

  for (guint i = 0; i < lap_list_n (copy->classes); i++) {
    LapClass *c = lap_list_nth (copy->classes, i);

    g_free (c->id);
    c->id = g_strdup_printf ("%u", i);
  }
  bytes = lap_object_bytes (copy);
  return g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
}

static char *
by_mouse (void)
{
  Fixture f = show (read_text (HEAD "]}"), 1300, 900);
  char *text;

  double_click (&f, point_at (&f, LAP_DAY_MON, "loft", 392)); /* 6:30, 45 minutes */
  let_go (drag (&f, point_at (&f, LAP_DAY_MON, "loft", 400), point_at (&f, LAP_DAY_TUE, "yard", 1120))); /* 18:30 */
  settle (&f);
  let_go (drag (&f, point_at (&f, LAP_DAY_TUE, "yard", 1154), point_at (&f, LAP_DAY_TUE, "yard", 1170))); /* an hour */
  settle (&f);
  double_click (&f, point_at (&f, LAP_DAY_WED, "loft", 722));
  let_go (drag (&f, point_at (&f, LAP_DAY_WED, "loft", 764), point_at (&f, LAP_DAY_WED, "loft", 750))); /* 30 minutes */
  settle (&f);
  /* The menu of the class: a copy of all of Tuesday on Thursday. */
  windows_click (strip_of (&f), point_at (&f, LAP_DAY_TUE, "yard", 1120).x, point_at (&f, LAP_DAY_TUE, "yard", 1120).y);
  gtk_widget_activate_action (GTK_WIDGET (f.view), "week.copy-day", "s", "thu");
  text = text_without_ids (&f);
  close_view (&f);
  return text;
}

static char *
by_keys (void)
{
  Fixture f = show (read_text (HEAD "]}"), 1300, 900);
  char *text;

  gtk_widget_grab_focus (strip_of (&f));
  press (&f, "n"); /* when the house opens, in the first room */
  press (&f, "<Control>Down");
  press (&f, "<Alt>Down");
  for (int i = 0; i < 48; i++)
    press (&f, "<Alt>Right");
  press (&f, "plus");
  press (&f, "Escape");
  press (&f, "n");
  press (&f, "<Control>Down");
  press (&f, "<Control>Down");
  for (int i = 0; i < 22; i++)
    press (&f, "<Alt>Right");
  press (&f, "minus");
  press (&f, "Up");
  press (&f, "<Control>d"); /* Wednesday; Thursday it shall be */
  press (&f, "<Control>Down");
  text = text_without_ids (&f);
  close_view (&f);
  return text;
}

static void
test_mouse_and_keys (void)
{
  g_autofree char *mouse = by_mouse (), *keys = by_keys ();

  g_assert_nonnull (strstr (mouse, "18:30"));
  g_assert_cmpstr (mouse, ==, keys);
}

/* A random walk */

static const char *const walk_keys[] = {
  "Left", "Right", "Up", "Down", "Home", "End", "Page_Down", "Page_Up", "<Shift>Right", "<Shift>Left", "<Control>a",
  "Escape", "<Alt>Left", "<Alt>Right", "<Alt><Shift>Left", "<Alt><Shift>Right", "<Alt>Up", "<Alt>Down", "<Control>Up",
  "<Control>Down", "plus", "minus", "<Alt>plus", "<Alt>minus", "n", "<Control>d", "Delete", "<Shift>Delete", "Return",
  "F7", "<Control>BackSpace",
};

/* Everything agrees: what is on the lines is in the week, what has the cursor exists, the file can be written. */
static void
assert_whole (Fixture *f)
{
  LapWeek *week = lap_document_week (f->document);
  g_autoptr (GError) error = NULL;

  g_assert_true (lap_week_check (week, &error));
  g_assert_no_error (error);
  g_assert_true (f->scene->current == NULL || class_of (f, f->scene->current) != NULL);
  for (guint i = 0; i < f->scene->score->n; i++)
    g_assert_true (class_of (f, f->scene->score->boxes[i].c->id) == f->scene->score->boxes[i].c);
  g_assert_cmpuint (lap_week_strip_n_live (lap_week_view_strip (f->view)), <=, f->scene->score->n);
}

static void
random_drag (Fixture *f, GRand *rand)
{
  const LapWeekScore *score = f->scene->score;
  int width = gtk_widget_get_width (strip_of (f));
  graphene_point_t from = GRAPHENE_POINT_INIT (g_rand_int_range (rand, 0, width), g_rand_int_range (rand, 0, score->height));
  graphene_point_t to = GRAPHENE_POINT_INIT (g_rand_int_range (rand, -50, width + 50),
                                             g_rand_int_range (rand, -50, score->height + 50));
  GtkGesture *gesture;

  if (score->n > 0) {
    LapWeekPlaced placed = lap_week_score_place (score, f->scene->axis, g_rand_int_range (rand, 0, score->n));

    from = GRAPHENE_POINT_INIT (placed.x + g_rand_int_range (rand, 0, MAX (placed.width, 1)), placed.y + score->crest + 2);
  }
  gesture = drag (f, from, to);
  if (g_rand_int_range (rand, 0, 4) == 0)
    g_signal_emit_by_name (gesture, "cancel", NULL);
  else
    let_go (gesture);
}

static void
random_step (Fixture *f, GRand *rand)
{
  int what = g_rand_int_range (rand, 0, 20);
  static const char *const ids[] = { "mira", "teo", NULL };

  if (what < 10) {
    gtk_widget_grab_focus (strip_of (f));
    press (f, walk_keys[g_rand_int_range (rand, 0, G_N_ELEMENTS (walk_keys))]);
  } else if (what < 14)
    random_drag (f, rand);
  else if (what == 14)
    lap_document_undo (f->document);
  else if (what == 15)
    lap_document_redo (f->document);
  else if (what == 16)
    lap_week_scene_filter (f->scene, LAP_SIEVE_COACHES, ids[g_rand_int_range (rand, 0, 3)], g_rand_boolean (rand));
  else if (what == 17)
    lap_week_scene_set_by_coach (f->scene, g_rand_boolean (rand));
  else if (what == 18)
    lap_document_set_date (f->document, g_rand_boolean (rand) ? lap_date_parse ("2027-01-20") : 0);
  else
    lap_week_view_zoom (f->view, g_rand_boolean (rand) ? 1.4 : 0.6);
}

static void
walk (guint32 seed)
{
  Fixture f = show (read_text (ALL), 1300, 900);
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);

  for (int i = 0; i < 400; i++) {
    random_step (&f, rand);
    assert_whole (&f);
    if (i % 5 == 0)
      settle (&f);
  }
  while (lap_history_undo_label (lap_document_history (f.document)) != NULL)
    lap_document_undo (f.document);
  g_assert_cmpuint (lap_list_n (lap_document_week (f.document)->classes), ==, 4);
  assert_at (&f, "early", LAP_DAY_MON, 420, 45, "loft");
  close_view (&f);
}

static void
test_walk (void)
{
  walk (19);
}

static void
test_walk_mirrored (void)
{
  gtk_widget_set_default_direction (GTK_TEXT_DIR_RTL);
  walk (91);
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
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
  g_test_add_func ("/week-view/drag", test_drag);
  g_test_add_func ("/week-view/drag-says", test_drag_says);
  g_test_add_func ("/week-view/drag-ends", test_drag_ends);
  g_test_add_func ("/week-view/drag-several", test_drag_several);
  g_test_add_func ("/week-view/tray", test_tray);
  g_test_add_func ("/week-view/filter", test_filter);
  g_test_add_func ("/week-view/chips", test_chips);
  g_test_add_func ("/week-view/narrow", test_narrow);
  g_test_add_func ("/week-view/first-class", test_first_class);
  g_test_add_func ("/week-view/dates", test_dates);
  g_test_add_func ("/week-view/twice", test_twice);
  g_test_add_func ("/week-view/preview", test_preview);
  g_test_add_func ("/week-view/mouse-and-keys", test_mouse_and_keys);
  g_test_add_func ("/week-view/walk", test_walk);
  g_test_add_func ("/week-view/walk-mirrored", test_walk_mirrored);
  return g_test_run ();
}
