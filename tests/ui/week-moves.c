/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is moved on the timetable of a week: by drags, where nothing moves before it is let go; that mouse and keys come
 * to the same week; and that whatever is done to it at random, all of it agrees and can be undone.
 */
#include "ui/timetable.h"

#include "edit/week-many.h"

#include <string.h>

/* Drags */

static void
test_drag (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  GtkGesture *gesture;

  /* Held 10 minutes after its start; let go where that makes 18:33: the nearest quarter is 18:30. */
  gesture = timetable_drag (&t, timetable_point (&t, LAP_DAY_TUE, "yard", 730),
                            timetable_point (&t, LAP_DAY_THU, "loft", 18 * 60 + 43));
  timetable_assert_at (&t, "noon", LAP_DAY_TUE, 720, 30, "yard"); /* nothing moves before */
  g_assert_nonnull (t.scene->ghosts);
  g_assert_cmpint (g_array_index (t.scene->ghosts, LapWeekGhost, 0).start, ==, 18 * 60 + 30);
  g_assert_cmpint (g_array_index (t.scene->ghosts, LapWeekGhost, 0).day, ==, LAP_DAY_THU);
  g_assert_null (t.scene->ghost_says);
  timetable_let_go (gesture);
  timetable_assert_at (&t, "noon", LAP_DAY_THU, 18 * 60 + 30, 30, "loft");
  g_assert_null (t.scene->ghosts);
  g_assert_cmpstr (t.scene->current, ==, "noon");
  lap_document_undo (t.document);
  timetable_assert_at (&t, "noon", LAP_DAY_TUE, 720, 30, "yard");
  timetable_close (&t);
}

/* Onto another class of Mira's: it says so before it is let go; and cancelled it has done nothing. */
static void
test_drag_says (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  guint64 revision = lap_history_revision (lap_document_history (t.document));
  GtkGesture *gesture;

  gesture = timetable_drag (&t, timetable_point (&t, LAP_DAY_MON, "loft", 430),
                            timetable_point (&t, LAP_DAY_TUE, "yard", 18 * 60 + 25));
  g_assert_nonnull (t.scene->ghost_says);
  g_assert_nonnull (strstr (t.scene->ghost_says, "Mira"));
  g_signal_emit_by_name (gesture, "cancel", NULL);
  timetable_assert_at (&t, "early", LAP_DAY_MON, 420, 45, "loft");
  g_assert_null (t.scene->ghosts);
  g_assert_cmpuint (lap_history_revision (lap_document_history (t.document)), ==, revision);
  timetable_close (&t);
}

static void
test_drag_ends (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);

  timetable_carry (&t, LAP_DAY_TUE, "loft", 19 * 60 - 1, LAP_DAY_TUE, "loft", 19 * 60 + 32);
  timetable_assert_at (&t, "late", LAP_DAY_TUE, 1080, 90, "loft");
  timetable_carry (&t, LAP_DAY_TUE, "loft", 18 * 60 + 1, LAP_DAY_TUE, "loft", 17 * 60 + 31);
  timetable_assert_at (&t, "late", LAP_DAY_TUE, 1050, 120, "loft");
  lap_document_undo (t.document);
  lap_document_undo (t.document);
  timetable_assert_at (&t, "late", LAP_DAY_TUE, 1080, 60, "loft");
  timetable_close (&t);
}

static void
test_drag_several (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);

  lap_week_view_show (t.view, "noon");
  lap_week_scene_pick (t.scene, "late", LAP_PICK_TOGGLE);
  timetable_carry (&t, LAP_DAY_TUE, "loft", 1090, LAP_DAY_WED, "loft", 1120);
  timetable_assert_at (&t, "late", LAP_DAY_WED, 1110, 60, "loft");
  timetable_assert_at (&t, "noon", LAP_DAY_WED, 750, 30, "yard");
  lap_document_undo (t.document);
  timetable_assert_at (&t, "noon", LAP_DAY_TUE, 720, 30, "yard");
  timetable_close (&t);
}

static void
test_tray (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  GtkWidget *tray = GTK_WIDGET (lap_week_view_tray (t.view));
  GtkWidget *ticket = lap_week_tray_find (LAP_WEEK_TRAY (tray), "waits");
  graphene_point_t to = timetable_point (&t, LAP_DAY_WED, "yard", 9 * 60), from, target;
  GtkGesture *gesture = windows_controller (tray, GTK_TYPE_GESTURE_DRAG);

  g_assert_true (gtk_widget_get_visible (tray));
  g_assert_true (gtk_widget_compute_point (ticket, tray, &GRAPHENE_POINT_INIT (10, 10), &from));
  g_assert_true (gtk_widget_compute_point (timetable_strip (&t), tray, &to, &target));
  g_signal_emit_by_name (gesture, "drag-begin", from.x, from.y);
  g_signal_emit_by_name (gesture, "drag-update", target.x - from.x, target.y - from.y);
  timetable_let_go (gesture);
  timetable_assert_at (&t, "waits", LAP_DAY_WED, 540, 30, "yard");
  timetable_settle (&t);
  g_assert_false (gtk_widget_get_visible (tray));
  g_assert_null (lap_week_tray_find (LAP_WEEK_TRAY (tray), "waits"));
  lap_document_undo (t.document);
  /* By Enter: the first quarter of an hour with a room and Teo free. */
  lap_week_view_show (t.view, "waits");
  timetable_press (&t, "Return");
  timetable_assert_at (&t, "waits", LAP_DAY_MON, 390, 30, "loft");
  timetable_close (&t);
}

/* The same week by mouse alone and by keys alone */

static void
double_click (Timetable *t, graphene_point_t at)
{
  GtkGesture *click = windows_controller (timetable_strip (t), GTK_TYPE_GESTURE_CLICK);

  for (int n = 1; n <= 2; n++) {
    g_signal_emit_by_name (click, "pressed", n, (double) at.x, (double) at.y);
    g_signal_emit_by_name (click, "released", n, (double) at.x, (double) at.y);
  }
  timetable_settle (t);
}

/* The file's text without ids, which are other ones each time. */
static char *
text_without_ids (Timetable *t)
{
  LapWeek *week = lap_document_week (t->document);
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
  Timetable t = timetable_show (timetable_read (TIMETABLE_HEAD "]}"), 1300, 900);
  graphene_point_t class;
  char *text;

  double_click (&t, timetable_point (&t, LAP_DAY_MON, "loft", 392)); /* 6:30, 45 minutes */
  timetable_carry (&t, LAP_DAY_MON, "loft", 400, LAP_DAY_TUE, "yard", 1120); /* 18:30 */
  timetable_settle (&t);
  timetable_carry (&t, LAP_DAY_TUE, "yard", 1154, LAP_DAY_TUE, "yard", 1170); /* an hour */
  timetable_settle (&t);
  double_click (&t, timetable_point (&t, LAP_DAY_WED, "loft", 722));
  timetable_carry (&t, LAP_DAY_WED, "loft", 764, LAP_DAY_WED, "loft", 750); /* 30 minutes */
  timetable_settle (&t);
  /* The menu of the class: a copy of all of Tuesday on Thursday. */
  class = timetable_point (&t, LAP_DAY_TUE, "yard", 1120);
  windows_click (timetable_strip (&t), class.x, class.y);
  gtk_widget_activate_action (GTK_WIDGET (t.view), "week.copy-day", "s", "thu");
  text = text_without_ids (&t);
  timetable_close (&t);
  return text;
}

static char *
by_keys (void)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_HEAD "]}"), 1300, 900);
  char *text;

  gtk_widget_grab_focus (timetable_strip (&t));
  timetable_press (&t, "n"); /* when the house opens, in the first room */
  timetable_press (&t, "<Control>Down");
  timetable_press (&t, "<Alt>Down");
  for (int i = 0; i < 48; i++)
    timetable_press (&t, "<Alt>Right");
  timetable_press (&t, "plus");
  timetable_press (&t, "Escape");
  timetable_press (&t, "n");
  timetable_press (&t, "<Control>Down");
  timetable_press (&t, "<Control>Down");
  for (int i = 0; i < 22; i++)
    timetable_press (&t, "<Alt>Right");
  timetable_press (&t, "minus");
  timetable_press (&t, "Up");
  timetable_press (&t, "<Control>d"); /* Wednesday; Thursday it shall be */
  timetable_press (&t, "<Control>Down");
  text = text_without_ids (&t);
  timetable_close (&t);
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
assert_whole (Timetable *t)
{
  LapWeek *week = lap_document_week (t->document);
  g_autoptr (GError) error = NULL;

  g_assert_true (lap_week_check (week, &error));
  g_assert_no_error (error);
  g_assert_true (t->scene->current == NULL || timetable_class (t, t->scene->current) != NULL);
  for (guint i = 0; i < t->scene->score->n; i++)
    g_assert_true (timetable_class (t, t->scene->score->boxes[i].c->id) == t->scene->score->boxes[i].c);
  g_assert_cmpuint (lap_week_strip_n_live (lap_week_view_strip (t->view)), <=, t->scene->score->n);
}

static void
random_drag (Timetable *t, GRand *rand)
{
  const LapWeekScore *score = t->scene->score;
  int width = gtk_widget_get_width (timetable_strip (t));
  graphene_point_t from = GRAPHENE_POINT_INIT (g_rand_int_range (rand, 0, width), g_rand_int_range (rand, 0, score->height));
  graphene_point_t to = GRAPHENE_POINT_INIT (g_rand_int_range (rand, -50, width + 50),
                                             g_rand_int_range (rand, -50, score->height + 50));
  GtkGesture *gesture;

  if (score->n > 0) {
    LapWeekPlaced placed = lap_week_score_place (score, t->scene->axis, g_rand_int_range (rand, 0, score->n));

    from = GRAPHENE_POINT_INIT (placed.x + g_rand_int_range (rand, 0, MAX (placed.width, 1)), placed.y + score->crest + 2);
  }
  gesture = timetable_drag (t, from, to);
  if (g_rand_int_range (rand, 0, 4) == 0)
    g_signal_emit_by_name (gesture, "cancel", NULL);
  else
    timetable_let_go (gesture);
}

static void
random_step (Timetable *t, GRand *rand)
{
  int what = g_rand_int_range (rand, 0, 20);
  static const char *const ids[] = { "mira", "teo", NULL };

  if (what < 10) {
    gtk_widget_grab_focus (timetable_strip (t));
    timetable_press (t, walk_keys[g_rand_int_range (rand, 0, G_N_ELEMENTS (walk_keys))]);
  } else if (what < 14)
    random_drag (t, rand);
  else if (what == 14)
    lap_document_undo (t->document);
  else if (what == 15)
    lap_document_redo (t->document);
  else if (what == 16)
    lap_week_scene_filter (t->scene, LAP_SIEVE_COACHES, ids[g_rand_int_range (rand, 0, 3)], g_rand_boolean (rand));
  else if (what == 17)
    lap_week_scene_set_by_coach (t->scene, g_rand_boolean (rand));
  else if (what == 18)
    lap_document_set_date (t->document, g_rand_boolean (rand) ? lap_date_parse ("2027-01-20") : 0);
  else
    lap_week_view_zoom (t->view, g_rand_boolean (rand) ? 1.4 : 0.6);
}

static void
walk (guint32 seed)
{
  Timetable t = timetable_show (timetable_read (TIMETABLE_ALL), 1300, 900);
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);

  for (int i = 0; i < 400; i++) {
    random_step (&t, rand);
    assert_whole (&t);
    if (i % 5 == 0)
      timetable_settle (&t);
  }
  while (lap_history_undo_label (lap_document_history (t.document)) != NULL)
    lap_document_undo (t.document);
  g_assert_cmpuint (lap_list_n (lap_document_week (t.document)->classes), ==, 4);
  timetable_assert_at (&t, "early", LAP_DAY_MON, 420, 45, "loft");
  timetable_close (&t);
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
  g_test_add_func ("/week-moves/drag", test_drag);
  g_test_add_func ("/week-moves/drag-says", test_drag_says);
  g_test_add_func ("/week-moves/drag-ends", test_drag_ends);
  g_test_add_func ("/week-moves/drag-several", test_drag_several);
  g_test_add_func ("/week-moves/tray", test_tray);
  g_test_add_func ("/week-moves/mouse-and-keys", test_mouse_and_keys);
  g_test_add_func ("/week-moves/walk", test_walk);
  g_test_add_func ("/week-moves/walk-mirrored", test_walk_mirrored);
  return g_test_run ();
}
