/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Parts of a window are built when they are first shown, once, and not before the first frame.
 */
#include "ui/later.h"
#include "ui/rehearse/page.h"
#include "ui/script-view.h"
#include "ui/sheets-view.h"
#include "ui/windows.h"

typedef struct {
  LapLater *one, *other;
  guint     built;
  int       at_first_frame; /* how many there were, -1 before it */
} Room;

static GtkWidget *
build (gpointer owner)
{
  Room *room = owner;

  room->built++;
  return gtk_label_new ("here");
}

static void
frame_cb (Room *room)
{
  if (room->at_first_frame < 0)
    room->at_first_frame = (int) room->built;
}

static GtkWidget *
add_page (GtkWidget *stack, const char *name, Room *room)
{
  GtkWidget *later = g_object_new (LAP_TYPE_LATER, "lines", 10.0, NULL);

  lap_later_set (LAP_LATER (later), build, room);
  gtk_stack_add_named (GTK_STACK (stack), later, name);
  return later;
}

static void
test_order (void)
{
  Room room = { .at_first_frame = -1 };
  GtkWidget *window = gtk_window_new (), *stack = gtk_stack_new (), *part;
  GdkFrameClock *clock;
  int width;

  room.one = LAP_LATER (add_page (stack, "one", &room));
  room.other = LAP_LATER (add_page (stack, "other", &room));
  gtk_window_set_child (GTK_WINDOW (window), stack);
  gtk_widget_measure (GTK_WIDGET (room.one), GTK_ORIENTATION_HORIZONTAL, -1, NULL, &width, NULL, NULL);
  gtk_window_present (GTK_WINDOW (window));
  clock = gtk_widget_get_frame_clock (window);
  g_signal_connect_swapped (clock, "after-paint", G_CALLBACK (frame_cb), &room);
  g_assert_cmpuint (room.built, ==, 0);
  while (room.built == 0)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpint (room.at_first_frame, ==, 0);
  g_assert_nonnull (lap_later_peek (room.one));
  g_assert_null (lap_later_peek (room.other));
  gtk_test_widget_wait_for_draw (window);
  gtk_stack_set_visible_child_name (GTK_STACK (stack), "other");
  part = lap_later_peek (room.other);
  g_assert_true (gtk_widget_get_mapped (part));
  g_assert_true (lap_later_get (room.other) == part);
  gtk_stack_set_visible_child_name (GTK_STACK (stack), "one");
  gtk_stack_set_visible_child_name (GTK_STACK (stack), "other");
  g_assert_cmpuint (room.built, ==, 2);
  /* Nothing has moved for it. */
  gtk_test_widget_wait_for_draw (window);
  g_assert_cmpint (gtk_widget_get_width (GTK_WIDGET (room.other)), ==, width);
  g_signal_handlers_disconnect_by_data (clock, &room);
  gtk_window_destroy (GTK_WINDOW (window));
}

/* A window that is closed before its first frame builds nothing any more. */
static void
test_closed (void)
{
  Room room = { .at_first_frame = -1 };
  GtkWidget *window = gtk_window_new (), *stack = gtk_stack_new ();

  add_page (stack, "one", &room);
  gtk_window_set_child (GTK_WINDOW (window), stack);
  gtk_window_present (GTK_WINDOW (window));
  gtk_window_destroy (GTK_WINDOW (window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_cmpuint (room.built, ==, 0);
}

static void
test_views (void)
{
  LapWindow *window = windows_demo ();
  const struct {
    const char *view;
    GType       type;
  } views[] = {
    { "rehearse", LAP_TYPE_REHEARSE_PAGE }, { "sheets", LAP_TYPE_SHEETS_VIEW }, { "script", LAP_TYPE_SCRIPT_VIEW },
  };

  for (guint i = 0; i < G_N_ELEMENTS (views); i++) {
    g_assert_null (windows_find (GTK_WIDGET (window), views[i].type, NULL));
    lap_window_show_view (window, views[i].view);
    g_assert_nonnull (windows_find (GTK_WIDGET (window), views[i].type, NULL));
  }
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/later/order", test_order);
  g_test_add_func ("/ui/later/closed", test_closed);
  g_test_add_func ("/ui/later/views", test_views);
  return g_test_run ();
}
