/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a frame costs, in counts: the px of the window that it draws anew, the widgets that show blocks, and the frames
 * from the pointer's motion to the plan that comes of it. The px are those that GTK copies to the window of the X
 * server, which it does by cairo_paint() under a clip; this program has a cairo_paint() of its own that looks at it.
 */
#define _GNU_SOURCE
#include "ui/windows.h"

#include "edit/edit.h"
#include "ui/score/block.h"
#include "ui/warning-row.h"

#include <cairo-xlib.h>
#include <dlfcn.h>
#include <gdk/x11/gdkx.h>

static cairo_region_t *damage; /* px of the window, while somebody looks */
static Window looked_at;       /* the window, but not a tooltip that the pointer may find there */

void
cairo_paint (cairo_t *cr)
{
  static void (*paint) (cairo_t *cr);
  cairo_rectangle_list_t *clip;

  if (paint == NULL)
    *(void **) &paint = dlsym (RTLD_NEXT, "cairo_paint");
  if (damage != NULL && cairo_surface_get_type (cairo_get_target (cr)) == CAIRO_SURFACE_TYPE_XLIB &&
      cairo_xlib_surface_get_drawable (cairo_get_target (cr)) == looked_at) {
    clip = cairo_copy_clip_rectangle_list (cr);
    g_assert_cmpint (clip->status, ==, CAIRO_STATUS_SUCCESS);
    for (int i = 0; i < clip->num_rectangles; i++) {
      const cairo_rectangle_t *r = &clip->rectangles[i];

      cairo_region_union_rectangle (damage, &(cairo_rectangle_int_t) { r->x, r->y, r->width, r->height });
    }
    cairo_rectangle_list_destroy (clip);
  }
  paint (cr);
}

/* Where @widget is in the window of the X server. */
static cairo_rectangle_int_t
place_of (GtkWidget *widget)
{
  GtkNative *native = gtk_widget_get_native (widget);
  graphene_rect_t bounds;
  double x, y;

  gtk_native_get_surface_transform (native, &x, &y);
  g_assert_true (gtk_widget_compute_bounds (widget, GTK_WIDGET (native), &bounds));
  graphene_rect_offset (&bounds, x, y);
  graphene_rect_round_extents (&bounds, &bounds);
  return (cairo_rectangle_int_t) { bounds.origin.x, bounds.origin.y, bounds.size.width, bounds.size.height };
}

static gboolean
is_damaged (GtkWidget *widget)
{
  cairo_rectangle_int_t place = place_of (widget);

  return cairo_region_contains_rectangle (damage, &place) != CAIRO_REGION_OVERLAP_OUT;
}

static void
look_away (void)
{
  g_clear_pointer (&damage, cairo_region_destroy);
}

/* Looks from when the window has come to rest: three frames in which nothing is drawn. */
static void
look (LapWindow *window)
{
  look_away ();
  looked_at = gdk_x11_surface_get_xid (gtk_native_get_surface (GTK_NATIVE (window)));
  for (int still = 0, frames = 0; still < 3; frames++) {
    damage = cairo_region_create ();
    windows_settle (window);
    still = cairo_region_is_empty (damage) ? still + 1 : 0;
    look_away ();
    g_assert_cmpint (frames, <, 500);
  }
  damage = cairo_region_create ();
}

/* Something of @widget is drawn anew, and nothing beside it. */
static void
assert_within (GtkWidget *widget)
{
  cairo_rectangle_int_t place = place_of (widget);

  g_assert_true (is_damaged (widget));
  cairo_region_subtract_rectangle (damage, &place);
  if (!cairo_region_is_empty (damage)) {
    cairo_region_get_extents (damage, &place);
    g_error ("Beside it %d × %d px are drawn anew at %d, %d.", place.width, place.height, place.x, place.y);
  }
}

/* A lane, by its kind. */
static LapLane *
lane_of (LapWindow *window, const LapLaneKind *kind)
{
  return LAP_LANE (windows_find (GTK_WIDGET (lap_window_score (window)), kind->type (), NULL));
}

/* @blocks blocks in @rounds rounds, with rests between: twice as many intervals, but for the last rest. */
static LapWindow *
show_plan (guint blocks, int rounds)
{
  static const char *const circle[] = { "squat", "push-up", "step-jack", "dead-bug", "reverse-lunge" };
  g_autoptr (LapSession) session = lap_session_new ("Circle");
  g_autoptr (LapPart) part = lap_part_new (LAP_PART_MAIN);
  g_autoptr (GPtrArray) parts = g_ptr_array_new (), items = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < blocks; i++)
    g_ptr_array_add (items, lap_block_new_exercise (circle[i % G_N_ELEMENTS (circle)], 1 + i % 3, 1));
  g_object_set (part, "rounds", rounds, NULL);
  lap_list_splice (part->blocks, 0, 0, items);
  g_ptr_array_add (parts, part);
  lap_list_splice (session->parts, 0, 0, parts);
  return windows_show (session);
}

static void
test_scroll_and_zoom (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *view = GTK_WIDGET (lap_window_score (window));

  lap_score_zoom (context, 4, 0);
  for (int i = 0; i < 4; i++) {
    look (window);
    lap_score_scroll_by (context, 11);
    windows_settle (window);
    assert_within (view);
    look_away ();
    look (window);
    lap_score_zoom (context, 5 + i, 100);
    windows_settle (window);
    assert_within (view);
    look_away ();
  }
  windows_close (window);
}

/* The x of a block's end of work where @end, else of the middle of the work, of the first block that is wide enough. */
static double
hold_of (LapScoreContext *context, gboolean end)
{
  LapPlaced placed;
  guint box = LAP_NO_BOX;

  do {
    box = lap_score_step (context->score, box, 1);
    placed = lap_score_place (context->score, context->axis, box);
  } while (placed.body < 28);
  return placed.x + (end ? placed.body : placed.body / 2.0);
}

/* What is carried shows where it would land in every lane, and nothing beside them is drawn. */
static void
test_carry (void)
{
  LapWindow *window = show_plan (20, 10);
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *view = GTK_WIDGET (lap_window_score (window));
  GtkGesture *drag = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_GESTURE_DRAG);

  lap_score_zoom (context, 14, 0);
  g_signal_emit_by_name (drag, "drag-begin", hold_of (context, FALSE), 40.0);
  for (int i = 0; i < 4; i++) {
    look (window);
    g_signal_emit_by_name (drag, "drag-update", 90.0 + 40 * i, 0.0);
    windows_settle (window);
    g_assert_nonnull (context->landing);
    assert_within (view);
    look_away ();
  }
  g_signal_emit_by_name (drag, "cancel", NULL);
  windows_close (window);
}

/* px of @widget that are drawn anew. */
static int
damaged_px (GtkWidget *widget)
{
  cairo_region_t *region = cairo_region_copy (damage);
  cairo_rectangle_int_t place = place_of (widget);
  int px = 0;

  cairo_region_intersect_rectangle (region, &place);
  for (int i = 0; i < cairo_region_num_rectangles (region); i++) {
    cairo_region_get_rectangle (region, i, &place);
    px += place.width * place.height;
  }
  cairo_region_destroy (region);
  return px;
}

static void
set_number (LapWindow *window, const char *member, double number)
{
  LapEdits *edits = lap_edits_new ("Number");

  lap_edits_set_double (edits, lap_document_session (lap_window_document (window)), member, number);
  g_assert_true (lap_document_apply (lap_window_document (window), edits));
  windows_settle (window);
}

/* The lanes there and back: what scrolls is kept as pictures. */
static void
keep_pictures (LapWindow *window)
{
  for (int i = 0; i < 2; i++) {
    lap_score_scroll_by (lap_window_context (window), i == 0 ? 1 : -1);
    windows_settle (window);
  }
}

/* What no lane shows draws none of them anew, though it is the first edit: undo can be pressed, and a toast comes. */
static void
test_first_edit (void)
{
  LapWindow *window = windows_demo ();

  keep_pictures (window);
  look (window);
  set_number (window, "group-mass", 81);
  g_assert_false (cairo_region_is_empty (damage));
  g_assert_false (is_damaged (GTK_WIDGET (lane_of (window, &lap_lane_ruler))));
  g_assert_false (is_damaged (GTK_WIDGET (lane_of (window, &lap_lane_blocks))));
  look_away ();
  windows_close (window);
}

/* An edit that only the lane of effort shows draws that lane anew and none of the others, but for the small signs of
 * brackets. */
static void
test_one_lane (void)
{
  static const LapLaneKind *const others[] = { &lap_lane_ruler, &lap_lane_blocks, &lap_lane_muscles, &lap_lane_posture,
                                               &lap_lane_talk };
  LapWindow *window = windows_demo ();
  GtkWidget *parts = GTK_WIDGET (lane_of (window, &lap_lane_parts));

  keep_pictures (window);
  set_number (window, "band-high", 0.85); /* with a band of its own the session has other warnings */
  look (window);
  set_number (window, "band-high", 0.9);
  g_assert_true (is_damaged (GTK_WIDGET (lane_of (window, &lap_lane_effort))));
  for (guint i = 0; i < G_N_ELEMENTS (others); i++)
    g_assert_cmpstr (is_damaged (GTK_WIDGET (lane_of (window, others[i]))) ? others[i]->id : NULL, ==, NULL);
  g_assert_cmpint (20 * damaged_px (parts), <, gtk_widget_get_width (parts) * gtk_widget_get_height (parts));
  look_away ();
  windows_close (window);
}

/* Boxes in view that are large enough for a widget, found without what the lane asks. */
static guint
count_visible (LapScoreContext *context)
{
  guint n = 0;

  for (guint i = 0; i < context->score->n; i++) {
    double a = lap_axis_x (context->axis, context->score->boxes[i].start);
    double b = lap_axis_x (context->axis, context->score->boxes[i].end);

    n += b > 0 && a < context->axis->view && b - a >= LAP_MERGE_BELOW;
  }
  return n;
}

static guint
count_widgets (LapWindow *window, gboolean live)
{
  guint n = 0;

  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (windows_blocks (window))); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    n += LAP_IS_BLOCK_WIDGET (child) && (!live || gtk_widget_get_child_visible (child));
  return n;
}

/* As many widgets as blocks are seen, and no more than a quarter beside; what is selected or has the focus stays. */
static void
test_live_widgets (void)
{
  static const double zooms[] = { 0.001, 0.5, 1, 2, 3, 6, 14, 40 };
  LapWindow *window = show_plan (100, 100);
  LapScoreContext *context = lap_window_context (window);
  guint most = 0;

  g_assert_cmpuint (context->score->timeline->n, ==, 19999);
  lap_blocks_lane_go (windows_blocks (window), 3);
  for (guint i = 0; i < G_N_ELEMENTS (zooms); i++)
    for (int k = 0; k < 6; k++) {
      guint visible, live;

      lap_score_zoom (context, zooms[i], 300);
      lap_score_scroll_by (context, k * 997);
      windows_settle (window);
      visible = count_visible (context);
      live = count_widgets (window, TRUE);
      most = MAX (most, visible);
      g_assert_nonnull (lap_blocks_lane_find (windows_blocks (window), 3));
      g_assert_cmpuint (live, >=, visible);
      g_assert_cmpfloat (live, <=, 1.25 * visible + 1);
    }
  g_assert_cmpuint (most, >, 20);
  g_assert_cmpfloat (count_widgets (window, FALSE), <=, 1.25 * most + 1); /* those that are kept for later, too */
  windows_close (window);
}

static void
count_cb (guint *frames)
{
  ++*frames;
}

/* The list has the rows of @checkup, from its beginning. */
static void
assert_rows (LapWindow *window, LapCheckup *checkup)
{
  GtkWidget *row = windows_find (GTK_WIDGET (lap_window_warnings (window)), LAP_TYPE_WARNING_ROW, NULL);
  guint n = 0;

  for (; row != NULL; row = gtk_widget_get_next_sibling (row))
    g_assert_true (lap_warning_row_warning (LAP_WARNING_ROW (row)) == lap_checkup_nth (checkup, n++));
  g_assert_cmpuint (n, >, 3);
}

/* In the frame that follows the motion of the pointer there is the new plan with all of its warnings, in every lane. */
static void
test_same_frame (void)
{
  static const LapLaneKind *const painted[] = { &lap_lane_ruler, &lap_lane_blocks, &lap_lane_posture, &lap_lane_effort,
                                                &lap_lane_talk };
  LapWindow *window = show_plan (20, 10);
  LapDocument *document = lap_window_document (window);
  LapScoreContext *context = lap_window_context (window);
  GtkGesture *drag = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_GESTURE_DRAG);
  guint before[G_N_ELEMENTS (painted)], frames = 0;
  GdkFrameClock *clock = gtk_widget_get_frame_clock (GTK_WIDGET (window));
  LapTimeline *was;
  gulong handler;

  lap_score_zoom (context, 14, 0);
  windows_settle (window);
  g_signal_emit_by_name (drag, "drag-begin", hold_of (context, TRUE), 40.0);
  windows_settle (window);
  was = lap_timeline_ref (lap_document_timeline (document));
  handler = g_signal_connect_swapped (clock, "after-paint", G_CALLBACK (count_cb), &frames);
  for (guint i = 0; i < G_N_ELEMENTS (painted); i++)
    before[i] = lap_lane_n_painted (lane_of (window, painted[i]));
  g_signal_emit_by_name (drag, "drag-update", 30 * 14.0, 0.0);
  while (frames == 0)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpuint (frames, ==, 1);
  g_assert_true (lap_document_timeline (document) != was);
  g_assert_true (context->score->timeline == lap_document_timeline (document));
  g_assert_true (lap_checkup_timeline (lap_document_checkup (document)) == context->score->timeline);
  for (guint i = 0; i < G_N_ELEMENTS (painted); i++)
    g_assert_cmpuint (lap_lane_n_painted (lane_of (window, painted[i])), >, before[i]);
  assert_rows (window, lap_document_checkup (document));
  g_signal_handler_disconnect (clock, handler);
  lap_timeline_unref (was);
  g_signal_emit_by_name (drag, "cancel", NULL);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/frames/scroll-and-zoom", test_scroll_and_zoom);
  g_test_add_func ("/ui/frames/carry", test_carry);
  g_test_add_func ("/ui/frames/first-edit", test_first_edit);
  g_test_add_func ("/ui/frames/one-lane", test_one_lane);
  g_test_add_func ("/ui/frames/live-widgets", test_live_widgets);
  g_test_add_func ("/ui/frames/same-frame", test_same_frame);
  return g_test_run ();
}
