/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The demo's week is made out of an empty one by somebody with a mouse and no keyboard, and by somebody with a keyboard
 * and no mouse, through the X server: its dates and hours, rooms, coaches, all classes with their sessions, what is
 * different on some dates and who is away. Both save what the demo's file says, but for the ids, which are made up where
 * something is made. A drag of the mouse is given up in its middle.
 *
 * What is to be made is read from that file. A class is a duplicate of the one before that is most like it.
 */
#include "ui/week-hand.h"

#include "model/occurrences.h"
#include "ui/class-date.h"
#include "ui/field-text.h"
#include "ui/week-coaches.h"

#include <string.h>

static const WeekLine week_lines[] = {
  { "title", "Title" }, { "timezone", "Timezone" }, { "from", "First day" }, { "until", "Last day" },
  { "open-mon", "Monday" }, { "open-tue", "Tuesday" }, { "open-wed", "Wednesday" }, { "open-thu", "Thursday" },
  { "open-fri", "Friday" }, { "open-sat", "Saturday" }, { "open-sun", "Sunday" }, { "closed", "Dates" },
};
static const WeekLine room_lines[] = {
  { "name", "Name" }, { "area", "Floor" }, { "places", "Places" }, { "turnaround", "To clear it" },
  { "quiet-hours", "Quiet hours" }, { "kit", "Kit that is there" },
};
static const WeekLine coach_lines[] = {
  { "name", "Name" }, { "most-a-day", "Classes a day" }, { "can", "Trained for" }, { "free-mon", "Free on Monday" },
};
/* In the order of the pane; a class begins where it is placed. */
static const WeekLine class_lines[] = {
  { "title", "Title" }, { "kind", "Kind" }, { "minutes", "Minutes" }, { "for", "For whom" }, { "places", "People" },
  { "fixed", "Fixed" }, { "effort", "Effort" }, { "regions", "Works" }, { "takes-part", "Coach trains along" },
  { "in-out", "To come and go" }, { "wish-days", "Days" }, { "wish-between", "Between" },
};

/* The house */

static void
make_rooms (WeekHand *hand, GtkWidget *dialog)
{
  hand->rows->press (dialog, "Rooms");
  for (guint i = 0; i < lap_list_n (hand->model->rooms); i++) {
    GtkWidget *row;

    hand->rows->press (dialog, "Add a room");
    row = rows_find (dialog, "New room");
    week_hand_set_all (hand, row, room_lines, G_N_ELEMENTS (room_lines), lap_list_nth (week_hand_week (hand)->rooms, i),
             lap_list_nth (hand->model->rooms, i));
  }
}

static void
make_coaches (WeekHand *hand, GtkWidget *dialog)
{
  hand->rows->press (dialog, "Coaches");
  for (guint i = 0; i < lap_list_n (hand->model->coaches); i++) {
    GtkWidget *row;

    hand->rows->press (dialog, "Add a coach");
    row = rows_find (dialog, "New coach");
    week_hand_set_all (hand, row, coach_lines, G_N_ELEMENTS (coach_lines), lap_list_nth (week_hand_week (hand)->coaches, i),
             lap_list_nth (hand->model->coaches, i));
  }
}

static void
make_house (WeekHand *hand)
{
  GtkWidget *dialog;

  week_hand_command (hand, "Properties", "<Alt>Return");
  dialog = week_hand_go_in (hand);
  week_hand_set_all (hand, dialog, week_lines, G_N_ELEMENTS (week_lines), week_hand_week (hand), hand->model);
  make_rooms (hand, dialog);
  make_coaches (hand, dialog);
  week_hand_go_out (hand, dialog);
}

/* Classes on their lines */

static GtkWidget *
strip_of (WeekHand *hand)
{
  return GTK_WIDGET (lap_week_view_strip (hand->view));
}

static LapClass *
nth (WeekHand *hand, guint i)
{
  return lap_list_nth (week_hand_week (hand)->classes, i);
}

static LapClass *
nth_model (WeekHand *hand, guint i)
{
  return lap_list_nth (hand->model->classes, i);
}

static const char *
room_title (LapWeek *week, const char *id)
{
  return id != NULL ? lap_room_title (lap_week_room (week, id)) : "None";
}

static const char *
coach_title (LapWeek *week, const char *id)
{
  return id != NULL ? lap_coach_title (lap_week_coach (week, id)) : "None";
}

/* In px of the strip, which is scrolled until it can be seen. */
static graphene_point_t
point_at (WeekHand *hand, int day, guint room, double minute)
{
  LapWeekScene *scene = lap_week_view_scene (hand->view);
  const LapRoom *line = lap_list_nth (week_hand_week (hand)->rooms, room);
  const LapWeekRow *row = &scene->score->rows[lap_week_score_row (scene->score, day, line->id)];

  return GRAPHENE_POINT_INIT (lap_week_score_x (scene->score, scene->axis, minute),
                              row->y + scene->score->crest + scene->score->bar / 2.0);
}

/* Turns the wheel until y of the strip can be seen. */
static void
see (WeekHand *hand, double y)
{
  GtkAdjustment *across = lap_week_view_across (hand->view);

  for (;;) {
    double top = gtk_adjustment_get_value (across), page = gtk_adjustment_get_page_size (across);

    if (y >= top + 4 && y <= top + page - 4)
      return;
    hands_move (strip_of (hand), 200, top + page / 2);
    hands_wheel (y < top + 4 ? -1 : 1);
  }
}

static gboolean
is_current (gpointer data)
{
  WeekHand *hand = ((gpointer *) data)[0];

  return lap_week_scene_current (lap_week_view_scene (hand->view)) == ((gpointer *) data)[1];
}

static gboolean
is_in_view (gpointer data)
{
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (((WeekHand *) data)->window));

  return focus != NULL && (focus == strip_of (data) ||
                           gtk_widget_is_ancestor (focus, strip_of (data)) ||
                           gtk_widget_is_ancestor (focus, GTK_WIDGET (lap_week_view_tray (((WeekHand *) data)->view))));
}

/* Where a class can be taken hold of: on its line, or in the tray. */
static GtkWidget *
handle_of (WeekHand *hand, LapClass *c, graphene_point_t *point)
{
  GtkWidget *ticket = lap_week_tray_find (lap_week_view_tray (hand->view), c->id);

  if (ticket != NULL) {
    graphene_point_t middle = { gtk_widget_get_width (ticket) / 2.0, gtk_widget_get_height (ticket) / 2.0 };

    g_assert_true (gtk_widget_compute_point (ticket, GTK_WIDGET (lap_week_view_tray (hand->view)), &middle, point));
    return GTK_WIDGET (lap_week_view_tray (hand->view));
  }
  *point = point_at (hand, c->day, week_hand_room_at (week_hand_week (hand), c->room), c->start + c->minutes / 2.0);
  see (hand, point->y);
  return strip_of (hand);
}

static void
go_to (WeekHand *hand, LapClass *c)
{
  gpointer both[2] = { hand, c };
  graphene_point_t point;

  if (hand->mouse) {
    GtkWidget *handle = handle_of (hand, c, &point);

    hands_click_at (handle, point.x, point.y, GDK_BUTTON_PRIMARY, 1);
  } else {
    hands_press_until ("<Shift>Tab", is_in_view, hand);
    if (!is_current (both))
      hands_press ("Home");
    hands_press_until ("Right", is_current, both);
  }
  g_assert_true (is_current (both));
}

/* What can be done to the class with the cursor. */
static void
deed (WeekHand *hand, LapClass *c, const char *label, const char *keys)
{
  graphene_point_t point;
  GtkWidget *handle, *menu;

  if (!hand->mouse) {
    hands_press (keys);
    return;
  }
  handle = handle_of (hand, c, &point);
  hands_click_at (handle, point.x, point.y, GDK_BUTTON_SECONDARY, 1);
  menu = windows_find (strip_of (hand), GTK_TYPE_POPOVER_MENU, NULL);
  g_assert_nonnull (menu);
  hands_until (rows_is_mapped, menu);
  rows_click_text (menu, label);
}

static guint
differences (LapClass *a, LapClass *b)
{
  guint n = g_strcmp0 (a->session, b->session) != 0;

  for (guint i = 0; i < G_N_ELEMENTS (class_lines); i++) {
    g_autofree char *one = week_hand_written (a, class_lines[i].property), *two = week_hand_written (b, class_lines[i].property);

    n += !g_str_equal (one, two);
  }
  return n;
}

/* The class before that is most like the model; the nearest of them. */
static guint
most_like (WeekHand *hand, guint i)
{
  guint best = i - 1;

  for (guint k = i - 1; k-- > 0;)
    if (differences (nth_model (hand, k), nth_model (hand, i)) <
        differences (nth_model (hand, best), nth_model (hand, i)))
      best = k;
  return best;
}

static void
carry (WeekHand *hand, LapClass *c, const LapClass *model)
{
  int start = (model->start + 7) / 15 * 15;
  guint room = week_hand_room_at (hand->model, model->room);
  graphene_point_t from, to;
  GtkWidget *handle = handle_of (hand, c, &from);
  gboolean waits = c->day < 0;

  if (c->day == model->day && c->start == start && week_hand_room_at (week_hand_week (hand), c->room) == room)
    return;
  /* One that waits is held where it begins. */
  to = point_at (hand, model->day, room, waits ? start : start + c->minutes / 2.0);
  hands_drag (handle, from.x, from.y, strip_of (hand), to.x + 0.5, to.y);
  g_assert_cmpint (c->day, ==, model->day);
  g_assert_cmpint (c->start, ==, start);
}

static void
press_times (const char *keys, int n)
{
  for (int i = 0; i < n; i++)
    hands_press (keys);
}

static void
shift (WeekHand *hand, LapClass *c, const LapClass *model)
{
  int line = (int) week_hand_room_at (hand->model, model->room) - (int) week_hand_room_at (week_hand_week (hand), c->room);

  press_times (model->day > c->day ? "<Control>Down" : "<Control>Up", ABS (model->day - c->day));
  press_times (line > 0 ? "<Alt>Down" : "<Alt>Up", ABS (line));
  while (model->start - c->start >= 15 || c->start % 5 != 0)
    hands_press ("<Alt>Right");
  while (c->start - model->start >= 15)
    hands_press ("<Alt>Left");
  while (c->start != model->start)
    hands_press (c->start < model->start ? "<Alt><Shift>Right" : "<Alt><Shift>Left");
}

static void
place (WeekHand *hand, LapClass *c, LapClass *model)
{
  static const WeekLine start = { "start", "Start" };

  if (model->day < 0) {
    if (c->day >= 0)
      deed (hand, c, "Take off the week", "<Shift>Delete");
  } else if (hand->mouse) {
    carry (hand, c, model);
    week_hand_set (hand, hand->pane, &start, c, model);
  } else {
    if (c->day < 0) /* to somewhere */
      hands_press ("Return");
    shift (hand, c, model);
  }
  hand->rows->choose (hand->pane, "Room", room_title (hand->model, model->room));
  hand->rows->choose (hand->pane, "Coach", coach_title (hand->model, model->coach));
}

/* Sessions, in the folder of the week */

static gboolean
is_listed (gpointer data)
{
  GtkTreeModel *model = gtk_tree_view_get_model (((gpointer *) data)[0]);
  GtkTreeIter *iter = ((gpointer *) data)[2];

  for (gboolean more = model != NULL && gtk_tree_model_get_iter_first (model, iter); more;
       more = gtk_tree_model_iter_next (model, iter)) {
    g_autofree char *name = NULL;

    gtk_tree_model_get (model, iter, 0, &name, -1);
    if (g_strcmp0 (name, ((gpointer *) data)[1]) == 0)
      return TRUE;
  }
  return FALSE;
}

static void
click_file (GtkWidget *dialog, char *name)
{
  GtkTreeIter iter;
  gpointer data[3] = { windows_find (dialog, GTK_TYPE_TREE_VIEW, "browse_files_tree_view"), name, &iter };
  g_autoptr (GtkTreePath) path = NULL;
  GdkRectangle area;
  int x, y;

  g_assert_nonnull (data[0]);
  hands_until (is_listed, data);
  path = gtk_tree_model_get_path (gtk_tree_view_get_model (data[0]), &iter);
  gtk_tree_view_get_cell_area (data[0], path, gtk_tree_view_get_column (data[0], 0), &area);
  gtk_tree_view_convert_bin_window_to_widget_coords (data[0], area.x + 20, area.y + area.height / 2, &x, &y);
  hands_click_at (data[0], x, y, GDK_BUTTON_PRIMARY, 1);
}

static void
choose_session (WeekHand *hand, LapClass *c, const LapClass *model)
{
  g_autofree char *name = g_path_get_basename (model->session), *path = g_build_filename (hand->folder, name, NULL);
  GtkWidget *dialog;

  if (g_strcmp0 (c->session, model->session) == 0)
    return;
  hand->rows->press (hand->pane, "Choose a session");
  dialog = week_hand_go_in (hand);
  if (hand->mouse) {
    click_file (dialog, name);
    hand->rows->press (dialog, "Open");
  } else {
    hands_type (path);
    hands_press ("Return");
  }
  week_hand_go_out (hand, NULL);
  g_assert_cmpstr (c->session, ==, model->session);
}

/* By a double click where nothing is: in the demo, in the yard on Saturday at noon. */
static void
make_new (WeekHand *hand)
{
  graphene_point_t point;

  if (!hand->mouse) {
    hands_press_until ("<Shift>Tab", is_in_view, hand);
    hands_press ("n");
    return;
  }
  point = point_at (hand, LAP_DAY_SAT, 1, 12 * 60 + 32);
  see (hand, point.y);
  hands_click_at (strip_of (hand), point.x, point.y, GDK_BUTTON_PRIMARY, 2);
}

/* Whether the class is made from another one: with a mouse, when it is for the same people and not at the weekend. */
static gboolean
has_like (WeekHand *hand, guint i)
{
  LapClass *like = i > 0 ? nth_model (hand, most_like (hand, i)) : NULL;

  return like != NULL && (!hand->mouse || (g_strcmp0 (nth_model (hand, i)->for_whom, like->for_whom) == 0 &&
                                           like->day <= LAP_DAY_FRI));
}

static void
make_class (WeekHand *hand, guint i)
{
  LapClass *model = nth_model (hand, i), *c;

  if (!has_like (hand, i))
    make_new (hand);
  else {
    LapClass *like = nth (hand, most_like (hand, i));

    go_to (hand, like);
    deed (hand, like, "Duplicate", "<Control>d");
  }
  g_assert_cmpuint (lap_list_n (week_hand_week (hand)->classes), ==, i + 1);
  c = nth (hand, i);
  place (hand, c, model);
  week_hand_set_all (hand, hand->pane, class_lines, G_N_ELEMENTS (class_lines), c, model);
  if (model->session != NULL)
    choose_session (hand, c, model);
}

/* On some dates */

static gboolean
is_on (gpointer data)
{
  return lap_document_date (((gpointer *) data)[0]) == *(int *) ((gpointer *) data)[1];
}

static void
turn_to (WeekHand *hand, int date)
{
  int monday = lap_date_monday (date);
  gpointer data[2] = { lap_window_document (hand->window), &monday };

  while (!is_on (data)) {
    gboolean back = lap_document_date (data[0]) > monday;

    if (hand->mouse)
      hand->rows->press (GTK_WIDGET (hand->window), back ? "The week before" : "The next week");
    else
      hands_press (back ? "<Alt>Page_Up" : "<Alt>Page_Down");
  }
}

static void
make_exception (WeekHand *hand, const LapException *e)
{
  LapClass *model = lap_week_class (hand->model, e->class_id);
  GtkWidget *date;

  turn_to (hand, e->date);
  go_to (hand, nth (hand, lap_list_find (hand->model->classes, model)));
  date = windows_find (hand->pane, LAP_TYPE_CLASS_DATE, NULL);
  if (e->cancelled)
    hand->rows->flag (date, "Held", FALSE);
  if (e->start >= 0) {
    g_autofree char *start = lap_time_text (e->start);

    hand->rows->line (date, "Start", start);
  }
  if (e->note != NULL)
    hand->rows->line (date, "Note for the door", e->note);
}

static void
make_away (WeekHand *hand, const LapAway *away)
{
  GtkWidget *coaches = windows_find (hand->pane, LAP_TYPE_WEEK_COACHES, NULL);
  g_autofree char *from = lap_date_text (away->from), *until = lap_date_text (away->until);
  g_autofree char *dates = g_strdup_printf ("%s–%s", from, until);
  const char *title = coach_title (hand->model, away->coach);

  hand->rows->press (hand->pane, "Load");
  hand->rows->expand (coaches, title);
  hand->rows->line (rows_find (coaches, title), "Away on", dates);
}

static void
test_demo (gconstpointer mouse)
{
  WeekHand hand;

  week_hand_start (&hand, mouse != NULL);
  make_house (&hand);
  for (guint i = 0; i < lap_list_n (hand.model->classes); i++)
    make_class (&hand, i);
  for (guint i = 0; i < lap_list_n (hand.model->exceptions); i++)
    make_exception (&hand, lap_list_nth (hand.model->exceptions, i));
  for (guint i = 0; i < lap_list_n (hand.model->aways); i++)
    make_away (&hand, lap_list_nth (hand.model->aways, i));
  week_hand_end (&hand);
}

/* Escape in the middle of a drag: all is as it was, whatever is let go afterwards. */
static void
test_escape (void)
{
  WeekHand hand;
  graphene_point_t from, to;

  week_hand_start (&hand, TRUE);
  lap_document_apply (lap_window_document (hand.window), lap_verb_add_room (week_hand_week (&hand), "Yard"));
  windows_settle (hand.window);
  from = point_at (&hand, LAP_DAY_MON, 0, 7 * 60 + 2);
  hands_click_at (strip_of (&hand), from.x, from.y, GDK_BUTTON_PRIMARY, 2);
  from = point_at (&hand, LAP_DAY_MON, 0, 7 * 60 + 20);
  to = point_at (&hand, LAP_DAY_THU, 0, 12 * 60);
  hands_move (strip_of (&hand), from.x, from.y);
  hands_button (GDK_BUTTON_PRIMARY, TRUE);
  hands_move (strip_of (&hand), from.x + 20, from.y);
  hands_move (strip_of (&hand), to.x, to.y);
  g_assert_nonnull (lap_week_view_scene (hand.view)->ghosts);
  hands_press ("Escape");
  g_assert_null (lap_week_view_scene (hand.view)->ghosts);
  hands_button (GDK_BUTTON_PRIMARY, FALSE);
  g_assert_cmpint (nth (&hand, 0)->day, ==, LAP_DAY_MON);
  g_assert_cmpint (nth (&hand, 0)->start, ==, 7 * 60);
  week_hand_drop (&hand);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_data_func ("/week-by-hand/keyboard", NULL, test_demo);
  g_test_add_data_func ("/week-by-hand/mouse", "mouse", test_demo);
  g_test_add_func ("/week-by-hand/escape", test_escape);
  return g_test_run ();
}
