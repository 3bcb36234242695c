/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/windows.h"

#include "edit/verbs.h"
#include "place/overview.h"
#include "place/plans.h"
#include "ui/score/folds.h"
#include "ui/score/strip.h"

static LapStrip *
strip_of (LapWindow *window)
{
  return LAP_STRIP (windows_find (GTK_WIDGET (lap_window_score (window)), LAP_TYPE_STRIP, NULL));
}

static void
drag (LapStrip *strip, double x, double dx)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (GTK_WIDGET (strip));

  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GObject) item = g_list_model_get_item (controllers, i);

    if (!GTK_IS_GESTURE_DRAG (item))
      continue;
    g_signal_emit_by_name (item, "drag-begin", x, 10.0);
    if (dx != 0)
      g_signal_emit_by_name (item, "drag-update", dx, 0.0);
    g_signal_emit_by_name (item, "drag-end", dx, 0.0);
  }
}

/* The demo, so far in that there is somewhere to go. */
static LapWindow *
open_zoomed (void)
{
  LapWindow *window = windows_demo ();

  lap_score_zoom (lap_window_context (window), 4, 0);
  windows_settle (window);
  return window;
}

/* A press beside the window brings its place into the middle; one on it moves nothing, and dragging it by the whole
 * strip leads to the end. */
static void
test_pointer (void)
{
  LapWindow *window = open_zoomed ();
  LapScoreContext *context = lap_window_context (window);
  LapStrip *strip = strip_of (window);
  int width = gtk_widget_get_width (GTK_WIDGET (strip));
  g_autoptr (LapAxis) axis = lap_overview_axis (context->score, width, FALSE);
  double second;

  g_assert_cmpfloat (context->axis->offset, ==, 0);
  drag (strip, 2, 0);
  g_assert_cmpfloat (context->axis->offset, ==, 0);
  drag (strip, width / 2, 0);
  second = lap_axis_second (context->axis, context->axis->view / 2);
  g_assert_cmpfloat_with_epsilon (second, lap_axis_second (axis, width / 2), 0.01);
  drag (strip, width / 2, width);
  g_assert_cmpfloat_with_epsilon (context->axis->offset, context->axis->width - context->axis->view, 0.01);
  drag (strip, width - 2, -width);
  g_assert_cmpfloat (context->axis->offset, ==, 0);
  windows_close (window);
}

/* To drag the window by some px and back leads back, also where parts are folded. */
static void
test_there_and_back (void)
{
  LapWindow *window = open_zoomed ();
  LapScoreContext *context = lap_window_context (window);
  LapOverviewWindow at;
  double was;

  lap_folds_open (context, 2, 1, FALSE);
  lap_score_zoom (context, 8, 0);
  lap_score_scroll_by (context, 500);
  was = context->axis->offset;
  for (int there = 0; there < 2; there++) {
    g_autoptr (LapAxis) axis = lap_overview_axis (context->score, gtk_widget_get_width (GTK_WIDGET (strip_of (window))),
                                                  FALSE);

    at = lap_overview_window (axis, context->axis);
    drag (strip_of (window), at.x + 3, there ? -40 : 40);
    if (!there)
      g_assert_cmpfloat (context->axis->offset, >, was);
  }
  g_assert_cmpfloat_with_epsilon (context->axis->offset, was, 0.01);
  windows_close (window);
}

static void
test_keys (void)
{
  LapWindow *window = open_zoomed ();
  LapScoreContext *context = lap_window_context (window);
  const LapAxis *axis = context->axis;
  GtkWidget *strip = GTK_WIDGET (strip_of (window));

  g_assert_true (gtk_widget_get_focusable (strip));
  g_assert_true (windows_press (strip, "Right"));
  g_assert_cmpfloat_with_epsilon (axis->offset, axis->view * 0.1, 0.01);
  g_assert_true (windows_press (strip, "Left"));
  g_assert_cmpfloat_with_epsilon (axis->offset, 0, 0.01);
  g_assert_true (windows_press (strip, "Page_Down"));
  g_assert_cmpfloat_with_epsilon (axis->offset, axis->view * 0.9, 0.01);
  g_assert_true (windows_press (strip, "End"));
  g_assert_cmpfloat_with_epsilon (axis->offset, axis->width - axis->view, 0.01);
  g_assert_true (windows_press (strip, "Page_Up"));
  g_assert_cmpfloat_with_epsilon (axis->offset, axis->width - axis->view * 1.9, 0.01);
  g_assert_true (windows_press (strip, "Home"));
  g_assert_cmpfloat (axis->offset, ==, 0);
  windows_close (window);
}

/* Role, name and value follow the view. */
static void
test_accessible (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  LapStrip *strip = strip_of (window);
  g_autofree char *all = lap_clock_text (context->axis->length), *whole = g_strdup_printf ("0:00 to %s of %s", all, all);

  g_assert_true (gtk_accessible_get_accessible_role (GTK_ACCESSIBLE (strip)) == GTK_ACCESSIBLE_ROLE_SCROLLBAR);
  lap_score_fit (context);
  g_assert_cmpstr (lap_strip_words (strip), ==, whole);
  gtk_test_accessible_assert_property (strip, GTK_ACCESSIBLE_PROPERTY_VALUE_TEXT, whole);
  lap_score_zoom (context, context->axis->view / 300, 0); /* five minutes wide */
  lap_score_scroll_by (context, context->axis->view);
  g_assert_true (g_str_has_prefix (lap_strip_words (strip), "5:00 to 10:00 of "));
  g_autofree char *label = g_strdup_printf ("Overview, %s", lap_strip_words (strip));
  gtk_test_accessible_assert_property (strip, GTK_ACCESSIBLE_PROPERTY_LABEL, label);
  windows_close (window);
}

/* To travel paints no miniature; another plan does. */
static void
test_painted_once (void)
{
  LapWindow *window = open_zoomed ();
  LapScoreContext *context = lap_window_context (window);
  LapStrip *strip = strip_of (window);
  guint before;

  lap_score_scroll_by (context, 3);
  windows_settle (window); /* pictures of all of it are there now */
  before = lap_strip_n_painted (strip);
  for (guint i = 0; i < 10; i++) {
    lap_score_scroll_by (context, 20);
    windows_settle (window);
  }
  g_assert_cmpuint (lap_strip_n_painted (strip), ==, before);
  lap_document_apply (lap_window_document (window),
                      lap_verb_set_rounds (lap_session_nth (lap_document_session (context->document), 2), 3));
  windows_settle (window);
  g_assert_cmpuint (lap_strip_n_painted (strip), >, before);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/overview/pointer", test_pointer);
  g_test_add_func ("/ui/overview/there-and-back", test_there_and_back);
  g_test_add_func ("/ui/overview/keys", test_keys);
  g_test_add_func ("/ui/overview/accessible", test_accessible);
  g_test_add_func ("/ui/overview/painted-once", test_painted_once);
  return g_test_run ();
}
