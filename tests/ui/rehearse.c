/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The Rehearse view and its window: keys, the clock on the screen, takes, what runs over, and how often it
 * flashes.
 */
#include "ui/windows.h"

#include "ui/rehearse/page.h"
#include "ui/settings.h"

typedef struct {
  LapWindow         *window;
  LapRehearsePage   *page;
  LapRehearseWindow *rehearse;
  LapStage          *stage;
  LapScene          *scene;
} Room;

static Room
room_at (int second)
{
  Room room = { windows_demo () };

  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.view", "s", "rehearse");
  room.page = LAP_REHEARSE_PAGE (windows_find (GTK_WIDGET (room.window), LAP_TYPE_REHEARSE_PAGE, NULL));
  g_assert_nonnull (room.page);
  room.rehearse = lap_rehearse_page_open (room.page, second);
  room.stage = lap_rehearse_window_stage (room.rehearse);
  room.scene = lap_stage_scene (room.stage);
  gtk_test_widget_wait_for_draw (GTK_WIDGET (room.stage));
  return room;
}

static void
leave (Room *room)
{
  g_assert_true (windows_press (GTK_WIDGET (room->stage), "Escape"));
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

/* Closes without the question about what isn't saved. */
static void
room_close (Room *room)
{
  windows_close (room->window);
}

static void
press (Room *room, const char *keys)
{
  g_assert_true (windows_press (GTK_WIDGET (room->stage), keys));
}

static int
second (Room *room)
{
  return room->scene->clock / LAP_SECOND;
}

/* Held all the while, so that no time passes but what the keys make. */
static void
test_keys (void)
{
  Room room = room_at (0);
  const LapTimeline *timeline = room.scene->timeline;

  g_assert_cmpint (room.scene->state, ==, LAP_REHEARSAL_READY);
  press (&room, "space");
  g_assert_cmpint (room.scene->state, ==, LAP_REHEARSAL_COUNT_IN);
  /* The demo's camera runs five seconds before. */
  g_assert_cmpint (room.scene->count_in, >, 4 * LAP_SECOND);
  press (&room, "space");
  g_assert_cmpint (room.scene->state, ==, LAP_REHEARSAL_HELD);
  press (&room, "Page_Down");
  g_assert_cmpint (second (&room), ==, timeline->intervals[1].start);
  press (&room, "Right");
  g_assert_cmpint (second (&room), ==, timeline->intervals[2].start);
  press (&room, "Page_Up");
  press (&room, "Left");
  g_assert_cmpint (second (&room), ==, 0);
  press (&room, "Down");
  press (&room, "Down");
  g_assert_cmpint (second (&room), ==, timeline->parts[2].start);
  press (&room, "Up");
  g_assert_cmpint (second (&room), ==, timeline->parts[1].start);
  press (&room, "Home");
  g_assert_cmpint (second (&room), ==, 0);
  press (&room, "m");
  g_assert_true (lap_stage_mirror (room.stage));
  press (&room, "l");
  g_assert_true (lap_rehearsal_repeat (room.scene->rehearsal));
  leave (&room);
  room_close (&room);
}

/* Every button on the screen is large enough for a finger: WCAG 2.2, 2.5.5 "Target Size (Enhanced)", 44 px. */
static guint
assert_targets (GtkWidget *widget)
{
  graphene_rect_t bounds;
  guint n = 0;

  if (GTK_IS_BUTTON (widget)) {
    g_assert_true (gtk_widget_compute_bounds (widget, widget, &bounds));
    g_assert_cmpfloat (bounds.size.width, >=, 44);
    g_assert_cmpfloat (bounds.size.height, >=, 44);
    n++;
  }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    n += assert_targets (child);
  return n;
}

static void
test_touch (void)
{
  Room room = room_at (0);

  g_assert_cmpuint (assert_targets (GTK_WIDGET (room.rehearse)), >=, 9);
  leave (&room);
  room_close (&room);
}

static void
test_takes (void)
{
  Room room = room_at (0);
  LapSession *session = lap_document_session (lap_window_document (room.window));
  int start = room.scene->timeline->turns[9].start;
  g_autofree char *text = NULL;

  /* Nothing has begun, so there is nothing to mark. */
  press (&room, "g");
  g_assert_cmpuint (lap_rows_n (session->takes), ==, 0);
  lap_rehearsal_jump (room.scene->rehearsal, start + 1);
  press (&room, "space");
  press (&room, "space");
  press (&room, "g");
  g_assert_cmpuint (lap_rows_n (session->takes), ==, 1);
  press (&room, "r");
  g_assert_cmpint (second (&room), ==, room.scene->timeline->turns[8].end);
  g_assert_cmpint (room.scene->state, ==, LAP_REHEARSAL_COUNT_IN);
  g_assert_cmpuint (lap_rows_n (session->takes), ==, 2);
  g_assert_cmpint (lap_rows_nth (session->takes, LapTake, 0)->mark, ==, 1);
  g_assert_cmpint (lap_rows_nth (session->takes, LapTake, 1)->mark, ==, 0);
  g_assert_cmpfloat (lap_rows_nth (session->takes, LapTake, 1)->clock, ==, start + 1);
  g_assert_cmpstr (lap_rows_nth (session->takes, LapTake, 1)->exercise, ==,
                   room.scene->timeline->tasks[room.scene->timeline->turns[9].task].wanted);
  g_assert_nonnull (session->takes_of);
  /* What was written is a session that can be read again. */
  text = windows_text (room.window);
  g_assert_nonnull (strstr (text, "\"takes\""));
  leave (&room);
  /* Each take is one step to undo. */
  g_assert_true (windows_press (GTK_WIDGET (room.window), "<Control>z"));
  g_assert_cmpuint (lap_rows_n (session->takes), ==, 1);
  room_close (&room);
}

/* "All is said" six seconds into the work of a block: its rest is offered six seconds more, on fives. */
static void
test_overrun (void)
{
  Room room = room_at (0);
  const LapTurn *turn = &room.scene->timeline->turns[9];
  g_autoptr (GPtrArray) overruns = NULL;
  LapOverrun *overrun;
  int length = room.scene->timeline->length, rest = turn->start - (turn - 1)->end;

  lap_rehearsal_jump (room.scene->rehearsal, turn->start + 6);
  lap_takes_said (room.scene->takes);
  overruns = lap_rehearse_overruns (room.scene);
  g_assert_cmpuint (overruns->len, ==, 1);
  overrun = g_ptr_array_index (overruns, 0);
  g_assert_nonnull (strstr (overrun->text, "overran by 6 s"));
  g_assert_cmpint (overrun->seconds, ==, (rest + 6 + 4) / 5 * 5);
  leave (&room);
  g_assert_true (lap_document_apply (lap_window_document (room.window), lap_rehearse_mend (overrun)));
  g_assert_cmpint (lap_document_timeline (lap_window_document (room.window))->length, ==,
                   length + 2 * (overrun->seconds - rest)); /* in both rounds */
  room_close (&room);
}

/* A bus of the system with somebody on it who tells that the computer is about to sleep (org.freedesktop.login1, the
 * interface Manager, signal PrepareForSleep): the rehearsal is held at the last boundary. */
static void
test_sleep (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GDBusConnection) bus = g_dbus_connection_new_for_address_sync (
    g_getenv ("DBUS_SYSTEM_BUS_ADDRESS"), G_DBUS_CONNECTION_FLAGS_AUTHENTICATION_CLIENT |
    G_DBUS_CONNECTION_FLAGS_MESSAGE_BUS_CONNECTION, NULL, NULL, &error);
  guint name;
  Room room;
  int work;

  g_assert_no_error (error);
  name = g_bus_own_name_on_connection (bus, "org.freedesktop.login1", G_BUS_NAME_OWNER_FLAGS_NONE, NULL, NULL, NULL, NULL);
  room = room_at (0);
  work = room.scene->timeline->turns[9].start;
  lap_rehearsal_jump (room.scene->rehearsal, work + 5);
  lap_rehearsal_start (room.scene->rehearsal, 0);
  lap_stage_look (room.stage);
  g_assert_cmpint (room.scene->state, ==, LAP_REHEARSAL_RUNNING);
  while (!lap_rehearsal_was_away (room.scene->rehearsal)) {
    g_dbus_connection_emit_signal (bus, NULL, "/org/freedesktop/login1", "org.freedesktop.login1.Manager",
                                   "PrepareForSleep", g_variant_new ("(b)", TRUE), NULL);
    g_main_context_iteration (NULL, TRUE);
  }
  g_assert_cmpint (room.scene->state, ==, LAP_REHEARSAL_HELD);
  g_assert_cmpint (second (&room), ==, work);
  leave (&room);
  room_close (&room);
  g_bus_unown_name (name);
  g_dbus_connection_close_sync (bus, NULL, NULL);
}

static gint64 false_time;

static gint64
time_now (gpointer data)
{
  return false_time;
}

/* The whole demo, frame by frame: the edge never flashes more than once a second, three being the most that
 * WCAG 2.2 2.3.1 allows; and on the screen each interval is the plan's. */
static void
flashes (gboolean still, gboolean calm)
{
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);
  LapScene *scene = lap_scene_new (lap_document_timeline (document), lap_document_checkup (document), time_now, NULL);
  gint64 last = -LAP_SECOND;
  double before = 0;

  scene->pulses = TRUE;
  scene->still = still;
  scene->calm = calm;
  lap_rehearsal_start (scene->rehearsal, 0);
  for (lap_scene_tick (scene); scene->state != LAP_REHEARSAL_DONE; false_time += 40000, lap_scene_tick (scene)) {
    double edge = lap_scene_edge (scene);

    if (scene->moment.interval != NULL)
      g_assert_true (scene->moment.interval == lap_timeline_at (scene->timeline, scene->clock / LAP_SECOND));
    if (still || calm)
      g_assert_true (edge == 0 || edge == 1); /* lit or not, and for as long as a second: nothing fades */
    if (edge > before + 0.1) {
      g_assert_cmpint (scene->clock - last, >, LAP_SECOND * 9 / 10);
      last = scene->clock;
    }
    before = edge;
  }
  lap_scene_free (scene);
  windows_close (window);
}

static void
test_flashes (void)
{
  Room room;

  flashes (FALSE, FALSE);
  flashes (TRUE, FALSE);
  flashes (FALSE, TRUE);
  lap_settings_keep ("rehearse-calm", g_variant_new_boolean (TRUE));
  room = room_at (0);
  g_assert_true (room.scene->calm);
  leave (&room);
  room_close (&room);
  lap_settings_keep ("rehearse-calm", g_variant_new_boolean (FALSE));
}

/* Lets it run at @speed until @until, with everything that is drawn on the way. Gives how late, in microseconds, the
 * latest boundary came to the screen of those that were not held. */
static gint64
run_to (Room *room, int speed, int until)
{
  const LapInterval *shown = room->scene->moment.interval;
  gint64 latest = 0;

  lap_rehearsal_set_speed (room->scene->rehearsal, speed);
  while (second (room) < until) {
    const LapInterval *now = room->scene->moment.interval;

    if (now != NULL && now != shown && room->scene->state == LAP_REHEARSAL_RUNNING)
      latest = MAX (latest, room->scene->clock - now->start * LAP_SECOND);
    shown = now;
    /* A machine that is busy with something else must not look as if it had slept. */
    if (room->scene->state != LAP_REHEARSAL_RUNNING)
      lap_rehearsal_start (room->scene->rehearsal, 0);
    g_main_context_iteration (NULL, TRUE);
  }
  return latest;
}

/* The demo from its first word to its last: many times as fast, or, asked for long tests, a minute as it is
 * and the rest twenty times as fast. */
static void
test_whole (void)
{
  Room room = room_at (0);
  gboolean slow = g_getenv ("LAP_LONG") != NULL;

  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", TRUE, NULL);
  if (slow)
    g_test_message ("in a minute as it is the latest boundary was %.1f ms late", run_to (&room, 1, 60) / 1000.0);
  run_to (&room, slow ? 20 : 200, room.scene->timeline->length);
  g_assert_cmpint (room.scene->state, ==, LAP_REHEARSAL_DONE);
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", FALSE, NULL);
  leave (&room);
  room_close (&room);
}

int
main (int argc, char **argv)
{
  /* The test's own bus serves for the system's as well. */
  g_setenv ("DBUS_SYSTEM_BUS_ADDRESS", g_getenv ("DBUS_SESSION_BUS_ADDRESS"), TRUE);
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/rehearse/keys", test_keys);
  g_test_add_func ("/ui/rehearse/touch", test_touch);
  g_test_add_func ("/ui/rehearse/takes", test_takes);
  g_test_add_func ("/ui/rehearse/overrun", test_overrun);
  g_test_add_func ("/ui/rehearse/sleep", test_sleep);
  g_test_add_func ("/ui/rehearse/flashes", test_flashes);
  g_test_add_func ("/ui/rehearse/whole", test_whole);
  return g_test_run ();
}
