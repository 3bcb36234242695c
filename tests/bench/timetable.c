/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The benchmark of the timetable: processor time a frame while a class is dragged over 200 classes that are all in
 * sight, everything included that a motion of the pointer does, against a flat fill of the same place in the same run.
 * A motion that stays within a quarter of an hour, one that comes to another one (the week is checked for what would
 * be), and letting go with all that follows. The bars are ratios and counts, never times.
 */
#include "bench/flat.h"
#include "bench/measure.h"
#include "ui/palette.h"
#include "ui/week/view.h"

#include <adwaita.h>

#define WIDTH   1600
#define HEIGHT  980
#define FRAMES  100
#define CLASSES 200
#define ROOMS   3
#define COACHES 24

/* Each line full from seven on, an hour a class, so that all have their names. */
static LapWeek *
make (void)
{
  LapWeek *week = lap_week_new ("Benchmark", "UTC");
  g_autoptr (GPtrArray) items = g_ptr_array_new ();

  for (guint i = 0; i < ROOMS; i++)
    g_ptr_array_add (items, lap_room_new ((char[]) { 'a' + i, '\0' }, NULL));
  lap_list_splice (week->rooms, 0, 0, items);
  g_ptr_array_set_size (items, 0);
  for (guint i = 0; i < COACHES; i++)
    g_ptr_array_add (items, lap_coach_new ((char[]) { 'a' + i, '\0' }, NULL));
  lap_list_splice (week->coaches, 0, 0, items);
  g_ptr_array_set_size (items, 0);
  for (guint i = 0; i < CLASSES; i++) {
    LapClass *c = lap_class_new ("circuit", 60);

    c->title = g_strdup_printf ("Class %u", i);
    c->day = i % LAP_N_DAYS;
    c->room = g_strdup ((char[]) { 'a' + i / LAP_N_DAYS % ROOMS, '\0' });
    c->start = (7 + i / LAP_N_DAYS / ROOMS) * 60;
    c->coach = g_strdup ((char[]) { 'a' + i * 7 % COACHES, '\0' });
    c->strain = i % 3;
    g_ptr_array_add (items, c);
  }
  lap_list_splice (week->classes, 0, 0, items);
  return week;
}

typedef void (*Step) (GtkWidget *widget, guint i);

/* The median of the processor time of a step and the frame that follows it, ms. */
static double
measure (GtkWidget *window, GtkWidget *widget, Step step)
{
  double cpu[FRAMES];

  for (guint i = 0; i < FRAMES + 10; i++) {
    double began = measure_cpu ();

    step (widget, i);
    gtk_test_widget_wait_for_draw (window);
    if (i >= 10)
      cpu[i - 10] = measure_cpu () - began;
  }
  measure_sort (cpu, FRAMES);
  return cpu[FRAMES / 2];
}

static GtkWidget *
open_window (GtkWidget *child)
{
  GtkWidget *window = gtk_window_new ();

  gtk_window_set_default_size (GTK_WINDOW (window), WIDTH, HEIGHT);
  gtk_window_set_child (GTK_WINDOW (window), child);
  gtk_window_present (GTK_WINDOW (window));
  for (guint i = 0; i < 5; i++)
    gtk_test_widget_wait_for_draw (window);
  return window;
}

static void
redraw (GtkWidget *widget, guint i)
{
  gtk_widget_queue_draw (widget);
}

static GtkGesture *
drag_of (GtkWidget *widget)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (widget);

  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GObject) item = g_list_model_get_item (controllers, i);

    if (GTK_IS_GESTURE_DRAG (item))
      return GTK_GESTURE (item);
  }
  return NULL;
}

/* A px to and fro: the same quarter of an hour. */
static void
creep (GtkWidget *strip, guint i)
{
  g_signal_emit_by_name (drag_of (strip), "drag-update", 300.0 + i % 2, 200.0);
}

/* Another quarter of an hour each time, over several days. */
static void
stride (GtkWidget *strip, guint i)
{
  g_signal_emit_by_name (drag_of (strip), "drag-update", 200 + 30.0 * (i % 20), 40.0 * (i % 10));
  g_assert_nonnull (lap_week_strip_scene (LAP_WEEK_STRIP (strip))->ghosts);
}

static void
let_go (GtkWidget *strip, guint i)
{
  GtkGesture *gesture = drag_of (strip);

  g_signal_emit_by_name (gesture, "drag-begin", 20.0 + 60, 20.0);
  g_signal_emit_by_name (gesture, "drag-update", 200.0 + 60.0 * (i % 8), 40.0 * (i % 10));
  g_signal_emit_by_name (gesture, "drag-end", 0.0, 0.0);
  lap_document_undo (lap_week_strip_scene (LAP_WEEK_STRIP (strip))->document);
}

static void
scroll (GtkWidget *strip, guint i)
{
  lap_week_scene_scroll_by (lap_week_strip_scene (LAP_WEEK_STRIP (strip)), i / 40 % 2 == 0 ? 11 : -11);
}

static void
zoom (GtkWidget *strip, guint i)
{
  LapWeekScene *scene = lap_week_strip_scene (LAP_WEEK_STRIP (strip));

  lap_week_scene_zoom (scene, scene->axis->zoom * (i / 20 % 2 == 0 ? 1.03 : 1 / 1.03), WIDTH / 2);
}

static gboolean
hold (const char *what, double is, double bar)
{
  g_print ("  %-34s %6.2f  (at most %.2f)%s\n", what, is, bar, is <= bar ? "" : "  TOO MUCH");
  return is <= bar;
}

int
main (int argc, char **argv)
{
  g_autoptr (LapDocument) document = NULL;
  g_autoptr (LapWeek) week = NULL;
  GtkWidget *window, *strip, *flat;
  LapWeekView *view;
  double fill, small, large, whole, scrolled, zoomed;
  gboolean good = TRUE;

  gtk_init ();
  adw_init ();
  lap_palette_install (gdk_display_get_default ());
  week = make ();
  document = lap_document_new (week, NULL);
  view = lap_week_view_new (document);
  window = open_window (GTK_WIDGET (view));
  strip = GTK_WIDGET (lap_week_view_strip (view));
  g_print ("%u classes in sight, a strip of %d × %d px\n", lap_week_strip_n_live (LAP_WEEK_STRIP (strip)),
           gtk_widget_get_width (strip), gtk_widget_get_height (strip));
  good &= hold ("classes / widgets", CLASSES / (double) MAX (1, lap_week_strip_n_live (LAP_WEEK_STRIP (strip))), 1);
  flat = g_object_new (BENCH_TYPE_FLAT, NULL);
  gtk_widget_set_size_request (flat, gtk_widget_get_width (strip), gtk_widget_get_height (strip));
  g_signal_emit_by_name (drag_of (strip), "drag-begin", 80.0, 20.0);
  small = measure (window, strip, creep);
  large = measure (window, strip, stride);
  g_signal_emit_by_name (drag_of (strip), "cancel", NULL);
  whole = measure (window, strip, let_go);
  zoomed = measure (window, strip, zoom);
  lap_week_view_zoom (view, 3);
  scrolled = measure (window, strip, scroll);
  gtk_window_destroy (GTK_WINDOW (window));
  window = open_window (flat);
  fill = measure (window, flat, redraw);
  gtk_window_destroy (GTK_WINDOW (window));
  g_print ("  flat fill %.2f ms, within a quarter %.2f ms, to another %.2f ms, let go and undone %.2f ms, scroll %.2f ms, "
           "zoom %.2f ms\n", fill, small, large, whole, scrolled, zoomed);
  good &= hold ("drag within a quarter / fill", small / fill, 1);
  good &= hold ("drag to another quarter / fill", large / fill, 2);
  good &= hold ("scroll / fill", scrolled / fill, 4);
  good &= hold ("zoom / fill", zoomed / fill, 8);
  return good ? 0 : 1;
}
