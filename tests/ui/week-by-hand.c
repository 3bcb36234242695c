/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A handful of classes of the demo's week is made out of an empty one by somebody with a mouse and no keyboard, and by
 * somebody with a keyboard and no mouse, through the X server. Both make the same bytes, but for the ids.
 */
#include "ui/hands.h"
#include "ui/windows.h"

#include "store/documents.h"
#include "ui/week/view.h"

#include <string.h>

typedef struct {
  GtkWidget    *window;
  LapDocument  *document;
  LapWeekView  *view;
} Hand;

static const char empty[] =
  "{\"format\": \"lapwing-week\", \"version\": 1, \"id\": \"w\", \"title\": \"Kelpline Studio\", \"timezone\": "
  "\"Europe/Lisbon\", \"open\": {\"mon\": [\"06:30\", \"21:30\"], \"tue\": [\"06:30\", \"21:30\"], \"wed\": [\"06:30\", "
  "\"21:30\"], \"thu\": [\"06:30\", \"21:30\"]}, \"rooms\": [{\"id\": \"loft\", \"name\": \"Loft\"}, {\"id\": \"yard\", "
  "\"name\": \"Yard\"}], \"coaches\": [{\"id\": \"mira\", \"name\": \"Mira\"}], \"classes\": []}";

static Hand
hand_new (void)
{
  g_autoptr (GBytes) bytes = g_bytes_new_static (empty, strlen (empty));
  g_autoptr (GError) error = NULL;
  LapWeek *week = lap_week_from_bytes (bytes, &error);
  Hand hand = { .window = adw_window_new () };

  g_assert_no_error (error);
  hand.document = lap_document_new (week, &error);
  g_assert_no_error (error);
  hand.view = lap_week_view_new (hand.document);
  adw_window_set_content (ADW_WINDOW (hand.window), GTK_WIDGET (hand.view));
  gtk_window_set_default_size (GTK_WINDOW (hand.window), 1300, 900);
  gtk_window_present (GTK_WINDOW (hand.window));
  for (guint i = 0; i < 3; i++)
    gtk_test_widget_wait_for_draw (hand.window);
  hands_on (GTK_WINDOW (hand.window));
  return hand;
}

/* The text of the week, each id its place in the list; all is closed. */
static char *
hand_end (Hand *hand)
{
  g_autoptr (LapWeek) copy = lap_object_copy (lap_document_week (hand->document));
  g_autoptr (GBytes) bytes = NULL;

  for (guint i = 0; i < lap_list_n (copy->classes); i++) {
    LapClass *c = lap_list_nth (copy->classes, i);

    g_free (c->id);
    c->id = g_strdup_printf ("%u", i);
  }
  bytes = lap_week_to_bytes (copy);
  gtk_window_destroy (GTK_WINDOW (hand->window));
  g_object_unref (hand->document);
  return g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
}

static GtkWidget *
strip_of (Hand *hand)
{
  return GTK_WIDGET (lap_week_view_strip (hand->view));
}

static LapClass *
nth (Hand *hand, guint i)
{
  return lap_list_nth (lap_document_week (hand->document)->classes, i);
}

/* With the mouse */

static graphene_point_t
point_at (Hand *hand, int day, const char *room, int minute)
{
  LapWeekScene *scene = lap_week_view_scene (hand->view);
  const LapWeekRow *row = &scene->score->rows[lap_week_score_row (scene->score, day, room)];

  return GRAPHENE_POINT_INIT (lap_week_score_x (scene->score, scene->axis, minute),
                              row->y + scene->score->crest + scene->score->bar / 2.0);
}

static void
double_click (Hand *hand, int day, const char *room, int minute)
{
  graphene_point_t at = point_at (hand, day, room, minute);

  hands_move (strip_of (hand), at.x, at.y);
  hands_click (GDK_BUTTON_PRIMARY, 2);
}

static void
drag (Hand *hand, int day, const char *room, int minute, int to_day, const char *to_room, int to_minute)
{
  graphene_point_t from = point_at (hand, day, room, minute), to = point_at (hand, to_day, to_room, to_minute);

  hands_drag (strip_of (hand), from.x, from.y, strip_of (hand), to.x, to.y);
}

static char *
by_mouse (void)
{
  Hand hand = hand_new ();

  double_click (&hand, LAP_DAY_MON, "yard", 6 * 60 + 50); /* 6:45 */
  drag (&hand, LAP_DAY_MON, "yard", 7 * 60 + 29, LAP_DAY_MON, "yard", 7 * 60 + 45); /* an hour */
  double_click (&hand, LAP_DAY_TUE, "loft", 10 * 60 + 5);
  drag (&hand, LAP_DAY_TUE, "loft", 10 * 60 + 20, LAP_DAY_WED, "yard", 12 * 60 + 20); /* to 12:00 */
  drag (&hand, LAP_DAY_WED, "yard", 12 * 60 + 44, LAP_DAY_WED, "yard", 12 * 60 + 30); /* half an hour */
  double_click (&hand, LAP_DAY_THU, "loft", 18 * 60 + 5);
  return hand_end (&hand);
}

/* With the keyboard */

static void
press (const char *keys, guint times)
{
  for (guint i = 0; i < times; i++)
    hands_press (keys);
}

static gboolean
is_in_strip (gpointer data)
{
  Hand *hand = data;
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (hand->window));

  return focus != NULL && (focus == strip_of (hand) || gtk_widget_is_ancestor (focus, strip_of (hand)));
}

static char *
by_keys (void)
{
  Hand hand = hand_new ();

  hands_press_until ("Tab", is_in_strip, &hand);
  press ("n", 1); /* Monday in the loft at 6:30 */
  press ("<Alt>Right", 1);
  press ("<Alt>Down", 1);
  press ("plus", 1);
  press ("Escape", 1);
  press ("n", 1);
  press ("<Control>Down", 2);
  press ("<Alt>Down", 1);
  press ("<Alt>Right", 22); /* 12:00 */
  press ("minus", 1);
  press ("Escape", 1);
  press ("n", 1);
  press ("<Control>Down", 3);
  press ("<Alt>Right", 46); /* 18:00 */
  return hand_end (&hand);
}

static void
test_the_same (void)
{
  g_autofree char *mouse = by_mouse (), *keys = by_keys ();

  g_assert_nonnull (strstr (mouse, "\"18:00\""));
  g_assert_cmpstr (mouse, ==, keys);
}

/* Escape in the middle of a drag: all is as it was, whatever is let go afterwards. */
static void
test_escape (void)
{
  Hand hand = hand_new ();
  graphene_point_t from, to;
  g_autofree char *text = NULL;

  double_click (&hand, LAP_DAY_MON, "yard", 6 * 60 + 50);
  from = point_at (&hand, LAP_DAY_MON, "yard", 7 * 60);
  to = point_at (&hand, LAP_DAY_THU, "loft", 12 * 60);
  hands_move (strip_of (&hand), from.x, from.y);
  hands_button (GDK_BUTTON_PRIMARY, TRUE);
  hands_move (strip_of (&hand), from.x + 20, from.y);
  hands_move (strip_of (&hand), to.x, to.y);
  g_assert_nonnull (lap_week_view_scene (hand.view)->ghosts);
  hands_press ("Escape");
  g_assert_null (lap_week_view_scene (hand.view)->ghosts);
  hands_button (GDK_BUTTON_PRIMARY, FALSE);
  g_assert_cmpint (nth (&hand, 0)->day, ==, LAP_DAY_MON);
  g_assert_cmpint (nth (&hand, 0)->start, ==, 6 * 60 + 45);
  text = hand_end (&hand);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/week-by-hand/the-same", test_the_same);
  g_test_add_func ("/week-by-hand/escape", test_escape);
  return g_test_run ();
}
