/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The wheel of the X server's mouse over the numbers of a pane: the pane scrolls, and no number is another one.
 */
#include "ui/hands.h"
#include "ui/windows.h"

#include "ui/week-window.h"

#define HIGH 2000      /* px of a pane, so that it scrolls */
#define MOST_NOTCHES 3 /* GDK counts from where the wheel was when it first turns over a window */

/* All numbers that can be seen in @widget. */
static void
collect (GtkWidget *widget, GPtrArray *spins)
{
  if (!gtk_widget_get_mapped (widget))
    return;
  if (GTK_IS_SPIN_BUTTON (widget))
    g_ptr_array_add (spins, widget);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    collect (child, spins);
}

static gboolean
is_in_sight (GtkWidget *spin, GtkWidget *scrolled)
{
  graphene_rect_t bounds;

  g_assert_true (gtk_widget_compute_bounds (spin, scrolled, &bounds));
  return bounds.origin.y >= 0 && bounds.origin.y + bounds.size.height <= gtk_widget_get_height (scrolled);
}

/* Over each number in turn. */
static void
turn_over_all (LapWindow *window, GtkWidget *pane)
{
  g_autoptr (GPtrArray) spins = g_ptr_array_new ();
  guint n = 0;

  hands_on (GTK_WINDOW (window));
  collect (pane, spins);
  for (guint i = 0; i < spins->len; i++) {
    GtkWidget *spin = g_ptr_array_index (spins, i);
    GtkWidget *scrolled = gtk_widget_get_ancestor (spin, GTK_TYPE_SCROLLED_WINDOW);
    GtkAdjustment *down = gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (scrolled));
    double value = gtk_spin_button_get_value (GTK_SPIN_BUTTON (spin)), from = gtk_adjustment_get_value (down);

    if (!is_in_sight (spin, scrolled))
      continue;
    n++;
    gtk_widget_set_size_request (gtk_widget_get_first_child (gtk_scrolled_window_get_child (
                                 GTK_SCROLLED_WINDOW (scrolled))), -1, HIGH);
    windows_settle (window);
    hands_point (spin);
    for (int k = 0; k < MOST_NOTCHES && gtk_adjustment_get_value (down) == from; k++)
      hands_wheel (1);
    g_assert_cmpfloat (gtk_adjustment_get_value (down), >, from);
    gtk_adjustment_set_value (down, from);
    g_assert_cmpfloat (gtk_spin_button_get_value (GTK_SPIN_BUTTON (spin)), ==, value);
  }
  g_assert_cmpuint (n, >, 0);
  g_assert_false (lap_document_is_modified (lap_window_document (window)));
}

static LapWindow *
open_demo (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", name, NULL);

  return windows_open (path);
}

static void
test_session (void)
{
  LapWindow *window = open_demo ("thirty-on-the-mat.lapwing");

  windows_click_box (window, 0);
  windows_settle (window);
  turn_over_all (window, GTK_WIDGET (lap_window_pane (window)));
  windows_close (window);
}

static void
test_week (void)
{
  LapWindow *window = open_demo ("kelpline-week.lapweek");
  LapWeekWindow *week = LAP_WEEK_WINDOW (window);
  LapClass *c = lap_list_nth (lap_document_week (lap_window_document (window))->classes, 0);

  lap_week_view_show (lap_week_window_view (week), c->id);
  windows_settle (window);
  turn_over_all (window, GTK_WIDGET (lap_week_window_pane (week)));
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/wheel/session", test_session);
  g_test_add_func ("/ui/wheel/week", test_week);
  return g_test_run ();
}
