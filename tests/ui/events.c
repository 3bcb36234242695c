/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A random walk over the score by the display: pointer, buttons, wheel and keys of the X server, as somebody would who
 * tries everything. After each event that is over boxes and widgets are those of what the session says, and the way back by
 * undo ends at the first bytes. 500 events of one seed, so that a failure comes again; --seed walks elsewhere.
 */
#include "ui/hands.h"
#include "ui/walks.h"

#include "ui/score/parts.h"
#include "ui/score/strip.h"
#include "ui/shortcuts.h"

#include <string.h>

#define EVENTS 500
/* As GLib writes one. */
#define SEED   "R02S00000000000000000000000000000001"

typedef struct {
  LapWindow *window;
  GPtrArray *keys; /* of what the score and the history offer */
} Walk;

/* What needs another window or the pane has tests of its own, and pasting, which comes when the desktop has answered. */
static gboolean
is_walked (const LapShortcut *shortcut)
{
  if (g_str_equal (shortcut->action, "score.paste") || g_str_equal (shortcut->action, "score.part-properties") ||
      g_str_equal (shortcut->action, "win.fields"))
    return FALSE;
  return shortcut->scope == LAP_SCOPE_SCORE || shortcut->scope == LAP_SCOPE_PART ||
         g_str_has_prefix (shortcut->action, "win.zoom") || g_str_equal (shortcut->action, "win.unfold") ||
         g_str_equal (shortcut->action, "win.undo") || g_str_equal (shortcut->action, "win.redo");
}

static GPtrArray *
keys_new (void)
{
  GPtrArray *keys = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; i < lap_shortcuts_n (); i++)
    if (is_walked (lap_shortcuts_nth (i)))
      g_ptr_array_add (keys, g_strndup (lap_shortcuts_nth (i)->keys, strcspn (lap_shortcuts_nth (i)->keys, " ")));
  g_ptr_array_add (keys, g_strdup ("Tab"));
  g_ptr_array_add (keys, g_strdup ("Escape"));
  return keys;
}

/* One of the places that the pointer goes to; more often than others the blocks. */
static GtkWidget *
random_widget (Walk *walk)
{
  static GType (*const types[]) (void) = { lap_blocks_lane_get_type, lap_blocks_lane_get_type, lap_parts_lane_get_type,
                                           lap_strip_get_type };

  return windows_find (GTK_WIDGET (walk->window), types[g_test_rand_int_range (0, G_N_ELEMENTS (types))] (), NULL);
}

static double
random_x (GtkWidget *widget)
{
  return g_test_rand_double_range (0, gtk_widget_get_width (widget));
}

static double
random_y (GtkWidget *widget)
{
  return g_test_rand_double_range (0, gtk_widget_get_height (widget));
}

/* x, y of @widget is a place of the score that nothing lies over: it may have been scrolled away. The header above is
 * left alone: without a window manager GTK moves the window itself, and then loses count of what is pressed, also in a
 * window of nothing but a GtkHeaderBar (4.8.3, "Broken accounting of active state"). */
static gboolean
is_bare (Walk *walk, GtkWidget *widget, double x, double y)
{
  GtkWidget *window = GTK_WIDGET (walk->window), *picked;
  graphene_point_t point;

  if (!gtk_widget_get_mapped (widget) ||
      !gtk_widget_compute_point (widget, window, &GRAPHENE_POINT_INIT (x, y), &point))
    return FALSE;
  picked = gtk_widget_pick (window, point.x, point.y, GTK_PICK_DEFAULT);
  return picked != NULL && (picked == widget || gtk_widget_is_ancestor (picked, widget));
}

static GtkWidget *
move (Walk *walk)
{
  GtkWidget *widget = random_widget (walk);
  double x = random_x (widget), y = random_y (widget);

  while (!is_bare (walk, widget, x, y)) {
    /* Far down among the warnings there may be none. */
    hands_point (gtk_widget_get_ancestor (GTK_WIDGET (windows_blocks (walk->window)), GTK_TYPE_SCROLLED_WINDOW));
    hands_wheel (-1);
    widget = random_widget (walk);
    x = random_x (widget);
    y = random_y (widget);
  }
  g_test_message ("  to %.0f, %.0f of %s", x, y, G_OBJECT_TYPE_NAME (widget));
  hands_move (widget, x, y);
  return widget;
}

static void
press (gpointer data)
{
  Walk *walk = data;
  const char *keys = g_ptr_array_index (walk->keys, g_test_rand_int_range (0, walk->keys->len));

  g_test_message ("  %s", keys);
  hands_press (keys);
}

static void
click (gpointer walk)
{
  move (walk);
  hands_click (1, g_test_rand_int_range (1, 3));
}

/* One in four is called off by Escape before the button is released. */
static void
drag (gpointer walk)
{
  GtkWidget *widget = move (walk);
  gboolean escaped = g_test_rand_int_range (0, 4) == 0;

  g_test_message ("  presses, to be %s", escaped ? "escaped" : "kept");
  hands_button (1, TRUE);
  for (int i = 0; i < 4; i++) {
    double x = random_x (widget), y = random_y (widget);

    g_test_message ("  by %.0f, %.0f", x, y);
    hands_move (widget, x, y);
  }
  if (escaped)
    hands_press ("Escape");
  hands_button (1, FALSE);
}

/* The menu goes away by a key or by a press elsewhere. */
static void
menu (gpointer walk)
{
  move (walk);
  hands_click (3, 1);
  if (g_test_rand_bit ())
    hands_press ("Escape");
  else
    click (walk);
}

static void
wheel (gpointer walk)
{
  static const GdkModifierType held[] = { 0, GDK_CONTROL_MASK, GDK_SHIFT_MASK };
  GdkModifierType modifiers = held[g_test_rand_int_range (0, G_N_ELEMENTS (held))];

  move (walk);
  hands_hold (modifiers, TRUE);
  hands_wheel (g_test_rand_int_range (-4, 5));
  hands_hold (modifiers, FALSE);
}

static void
travel (gpointer walk)
{
  move (walk);
}

static const WalksStep events[] = {
  { 35, "press", press }, { 20, "click", click }, { 22, "drag", drag }, { 6, "menu", menu }, { 12, "wheel", wheel },
  { 5, "travel", travel },
};

static void
test_events (void)
{
  Walk walk = { walks_window (), keys_new () };
  g_autofree char *first = windows_text (walk.window);

  hands_on (GTK_WINDOW (walk.window));
  gtk_widget_grab_focus (GTK_WIDGET (windows_blocks (walk.window)));
  for (guint i = 0; i < EVENTS; i++) {
    walks_take (events, &walk);
    walks_assert_boxes (walk.window);
    walks_assert_placed (walk.window, TRUE);
    g_test_message ("  %u boxes, %u selected", lap_window_context (walk.window)->score->n,
                    lap_window_context (walk.window)->marked->len);
  }
  walks_back (walk.window, first);
  g_ptr_array_unref (walk.keys);
  windows_close (walk.window);
}

int
main (int argc, char **argv)
{
  char *fixed[] = { argv[0], (char *) "--seed", (char *) SEED, NULL };

  if (argc == 1) {
    argc = G_N_ELEMENTS (fixed) - 1;
    argv = fixed;
  }
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/events/score", test_events);
  return g_test_run ();
}
