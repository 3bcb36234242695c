/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A random walk over the score: keys of the table of shortcuts, clicks, drags, undo, redo, zoom, fold, through the
 * controllers and actions of a real window. After every step boxes and widgets are those of what the session says, in
 * every frame that is drawn widgets lie where their boxes do, and the way back by undo ends at the first bytes.
 * 5,000 steps, 20,000 where LAP_LONG is set; the panes at the sides are shown for every other 250 of them.
 * GLib prints the seed, and each step is in the log: --seed walks the same way again.
 */
#include "ui/walks.h"

#include "ui/desk.h"
#include "ui/score/folds.h"
#include "ui/shortcuts.h"

#include <string.h>

/* As when events come faster than frames. */
#define STEPS_A_FRAME 40
#define STEPS_A_SIDE  250

typedef struct {
  LapWindow       *window;
  LapScoreContext *context;
  GtkWidget       *blocks;
  GPtrArray       *keys;  /* of what the score and the history offer */
  GtkGesture      *drag;
} Walk;

/* What needs the desktop, another window or the pane has tests of its own. */
static gboolean
is_walked (const LapShortcut *shortcut)
{
  static const char *const left_out[] = { "score.menu", "score.paste", "score.copy", "score.cut",
                                           "score.part-properties", "win.fields" };

  for (guint i = 0; i < G_N_ELEMENTS (left_out); i++)
    if (g_str_equal (shortcut->action, left_out[i]))
      return FALSE;
  return shortcut->scope == LAP_SCOPE_SCORE || shortcut->scope == LAP_SCOPE_PART ||
         g_str_has_prefix (shortcut->action, "win.zoom") || g_str_equal (shortcut->action, "win.unfold") ||
         g_str_equal (shortcut->action, "win.undo") || g_str_equal (shortcut->action, "win.redo");
}

static void
walk_init (Walk *walk, LapWindow *window)
{
  walk->window = window;
  walk->context = lap_window_context (window);
  walk->blocks = GTK_WIDGET (windows_blocks (window));
  walk->drag = windows_controller (walk->blocks, GTK_TYPE_GESTURE_DRAG);
  walk->keys = g_ptr_array_new_with_free_func (g_free);
  for (guint i = 0; i < lap_shortcuts_n (); i++) {
    const LapShortcut *shortcut = lap_shortcuts_nth (i);

    if (is_walked (shortcut))
      g_ptr_array_add (walk->keys, g_strndup (shortcut->keys, strcspn (shortcut->keys, " ")));
  }
}

static int
random_x (Walk *walk)
{
  return g_test_rand_int_range (0, MAX (1, gtk_widget_get_width (walk->blocks)));
}

static const char *
random_keys (Walk *walk)
{
  const char *keys = g_ptr_array_index (walk->keys, g_test_rand_int_range (0, walk->keys->len));

  g_test_message ("%s", keys);
  return keys;
}

static void
press (gpointer data)
{
  Walk *walk = data;
  const char *keys = random_keys (walk);
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (walk->window));

  windows_press (focus != NULL ? focus : walk->blocks, keys);
}

static void
click (gpointer data)
{
  Walk *walk = data;

  windows_click (walk->blocks, random_x (walk), 20);
}

/* To another place of the view; one in three is called off. */
static void
drag (gpointer data)
{
  Walk *walk = data;
  int from = random_x (walk), by = random_x (walk) - from;

  g_signal_emit_by_name (walk->drag, "drag-begin", (double) from, 40.0);
  for (int i = 1; i <= 3; i++)
    g_signal_emit_by_name (walk->drag, "drag-update", by * i / 3.0, 0.0);
  if (g_test_rand_int_range (0, 3) == 0)
    g_signal_emit_by_name (walk->drag, "cancel", NULL);
  else
    g_signal_emit_by_name (walk->drag, "drag-end", (double) by, 0.0);
}

static void
zoom (gpointer data)
{
  Walk *walk = data;

  lap_score_zoom (walk->context, g_test_rand_double_range (0.1, 20), random_x (walk));
}

static void
scroll (gpointer data)
{
  Walk *walk = data;

  lap_score_scroll_by (walk->context, g_test_rand_int_range (-900, 900));
}

static void
fold (gpointer data)
{
  Walk *walk = data;
  guint n = walk->context->pieces->len;

  if (n > 0) {
    const LapPiece *piece = lap_folds_nth (walk->context, g_test_rand_int_range (0, n));

    lap_folds_open (walk->context, piece->part, piece->round, g_test_rand_bit ());
  }
}

static const WalksStep steps[] = {
  { 50, "press", press }, { 18, "click", click }, { 14, "drag", drag }, { 7, "zoom", zoom }, { 7, "scroll", scroll },
  { 4, "fold", fold },
};

static void
show_sides (Walk *walk, gboolean shown)
{
  g_object_set (gtk_widget_get_ancestor (walk->blocks, LAP_TYPE_DESK), "show-start", shown, "show-end", shown, NULL);
}

static void
test_walk (void)
{
  guint n = g_getenv ("LAP_LONG") != NULL ? 20000 : 5000;
  Walk walk = { 0 };
  g_autofree char *first = NULL;

  walk_init (&walk, walks_window ());
  first = windows_text (walk.window);
  gtk_widget_grab_focus (walk.blocks);
  for (guint i = 0; i < n; i++) {
    if (i % STEPS_A_SIDE == 0)
      show_sides (&walk, i / STEPS_A_SIDE % 2 == 0);
    walks_take (steps, &walk);
    walks_assert_boxes (walk.window);
    walks_assert_placed (walk.window, FALSE);
    if (i % STEPS_A_FRAME == 0) {
      gtk_test_widget_wait_for_draw (GTK_WIDGET (walk.window));
      walks_assert_placed (walk.window, TRUE);
    }
  }
  walks_back (walk.window, first);
  g_ptr_array_unref (walk.keys);
  windows_close (walk.window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/walk/score", test_walk);
  return g_test_run ();
}
