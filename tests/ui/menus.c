/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Context menus by the display: opened by a button that is let go at once, and by one that is held and moved on before.
 * Whatever closes them, no widget is left as if it were pressed.
 */
#include "ui/hands.h"
#include "ui/windows.h"

#include "ui/score/parts.h"
#include "ui/week-window.h"

#define MOST_PRESSES 4

static gboolean
is_pressed (GtkWidget *widget)
{
  if (gtk_widget_get_state_flags (widget) & GTK_STATE_FLAG_ACTIVE)
    return TRUE;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    if (is_pressed (child))
      return TRUE;
  return FALSE;
}

/* The one before goes only when the next comes. */
static gboolean
has_menu (gpointer widget)
{
  GtkWidget *menu = windows_find (widget, GTK_TYPE_POPOVER_MENU, NULL);

  return menu != NULL && gtk_widget_get_mapped (menu);
}

static gboolean
is_unmapped (gpointer widget)
{
  return !gtk_widget_get_mapped (widget);
}

/* The pointer comes from beside it: where it doesn't move GTK still looks for it where the menu was before (4.8.3). */
static void
open_menu (GtkWidget *widget, double x, double y, gboolean held)
{
  hands_move (widget, x + 20, y);
  if (!held) {
    hands_click_at (widget, x, y, GDK_BUTTON_SECONDARY, 1);
    return;
  }
  hands_move (widget, x, y);
  hands_button (GDK_BUTTON_SECONDARY, TRUE);
  hands_move (widget, x + 3, y);
  hands_button (GDK_BUTTON_SECONDARY, FALSE);
}

/* One press in some hundreds never comes out of GDK (4.8.3) when Escape closed a menu before it: nothing of the window is
 * told of it. A hand presses again. */
static GtkWidget *
opened (GtkWidget *widget, double x, double y, gboolean held)
{
  for (guint i = 0; i < MOST_PRESSES && !has_menu (widget); i++) {
    gint64 end = g_get_monotonic_time () + G_USEC_PER_SEC;

    open_menu (widget, x, y, held);
    while (!has_menu (widget) && g_get_monotonic_time () < end)
      g_main_context_iteration (NULL, FALSE);
  }
  g_assert_true (has_menu (widget));
  return windows_find (widget, GTK_TYPE_POPOVER_MENU, NULL);
}

/* The menu at x, y of @widget. */
static void
open_and_close (GtkWidget *widget, double x, double y)
{
  GtkWidget *window = GTK_WIDGET (gtk_widget_get_root (widget)), *menu;

  for (guint i = 0; i < 4; i++) {
    menu = opened (widget, x, y, (i & 1) != 0);
    g_assert_false (is_pressed (window));
    if ((i & 2) != 0)
      hands_press ("Escape");
    else
      hands_click_at (widget, x, -8, GDK_BUTTON_PRIMARY, 1); /* above it, where the menu doesn't lie */
    hands_until (is_unmapped, menu);
    g_assert_false (is_pressed (window));
  }
  windows_close (LAP_WINDOW (window));
}

static LapWindow *
open_demo (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", name, NULL);
  LapWindow *window = windows_open (path);

  hands_on (GTK_WINDOW (window));
  return window;
}

static void
test_week (void)
{
  LapWindow *window = open_demo ("kelpline-week.lapweek");
  LapWeekView *view = lap_week_window_view (LAP_WEEK_WINDOW (window));
  LapWeekScene *scene = lap_week_view_scene (view);
  LapWeekPlaced placed = lap_week_score_place (scene->score, scene->axis, 0);

  open_and_close (GTK_WIDGET (lap_week_view_strip (view)), placed.x + placed.width / 2.0,
                  placed.y + scene->score->crest + scene->score->bar / 2.0);
}

static void
test_blocks (void)
{
  open_and_close (GTK_WIDGET (windows_blocks (open_demo ("thirty-on-the-mat.lapwing"))), 60, 20);
}

static void
test_parts (void)
{
  LapWindow *window = open_demo ("thirty-on-the-mat.lapwing");
  GtkWidget *lane = windows_find (GTK_WIDGET (window), LAP_TYPE_PARTS_LANE, NULL);
  graphene_rect_t bounds;

  g_assert_true (gtk_widget_compute_bounds (lap_parts_lane_find (LAP_PARTS_LANE (lane), 0), lane, &bounds));
  open_and_close (lane, bounds.origin.x + bounds.size.width / 2, bounds.origin.y + bounds.size.height / 2);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/menus/week", test_week);
  g_test_add_func ("/ui/menus/blocks", test_blocks);
  g_test_add_func ("/ui/menus/parts", test_parts);
  return g_test_run ();
}
