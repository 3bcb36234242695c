/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/axis.h"
#include "place/ticks.h"

#include <math.h>

#define NEAR(a, b) g_assert_cmpfloat_with_epsilon ((a), (b), 1e-6)

/* Three pieces of 100, 400 and 100 s; the middle one stays open. */
static LapAxis *
axis_of (double zoom, double offset, double view, gboolean mirrored, gboolean folded)
{
  LapAxis *axis = lap_axis_new ();

  lap_axis_set_pieces (axis, (int[]) { 100, 500, 600 }, 3);
  lap_axis_set_view (axis, view, mirrored);
  lap_axis_set_folds (axis, (gboolean[]) { folded, FALSE, folded });
  lap_axis_zoom_at (axis, zoom, mirrored ? view : 0);
  lap_axis_scroll (axis, offset);
  return axis;
}

/* A quarter of 100 s at 1 px a second is 25 px, at 0.2 px a second 5, raised to 14. */
static const struct {
  double zoom, offset, view;
  gboolean mirrored, folded;
  double second, x;
} rows[] = {
  { 1, 0, 300, FALSE, FALSE, 0, 0 },      { 1, 0, 300, FALSE, FALSE, 250, 250 },
  { 1, 120, 300, FALSE, FALSE, 250, 130 }, { 2, 100, 300, FALSE, FALSE, 60, 20 },
  { 1, 0, 300, FALSE, TRUE, 100, 25 },    { 1, 0, 300, FALSE, TRUE, 50, 12.5 },
  { 1, 0, 300, FALSE, TRUE, 200, 125 },   { 1, 50, 300, FALSE, TRUE, 500, 375 },
  { 1, 150, 300, FALSE, TRUE, 600, 300 }, { 0.2, 0, 300, FALSE, TRUE, 100, 14 },
  { 0.2, 0, 300, FALSE, TRUE, 600, 108 }, { 1, 0, 300, TRUE, FALSE, 0, 300 },
  { 1, 0, 300, TRUE, FALSE, 250, 50 },    { 1, 120, 300, TRUE, FALSE, 250, 170 },
  { 1, 0, 300, TRUE, TRUE, 200, 175 },    { 40, 15900, 300, FALSE, TRUE, 500, 216 },
};

static void
test_there_and_back (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (LapAxis) axis = axis_of (rows[i].zoom, rows[i].offset, rows[i].view, rows[i].mirrored, rows[i].folded);

    NEAR (lap_axis_x (axis, rows[i].second), rows[i].x);
    NEAR (lap_axis_second (axis, rows[i].x), rows[i].second);
  }
}

static void
test_held_to_the_session (void)
{
  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) axis = axis_of (0.25, 0, 300, mirrored, FALSE);

    NEAR (lap_axis_second (axis, mirrored ? 999 : -50), 0);
    NEAR (lap_axis_second (axis, mirrored ? 10 : 290), 600);
    lap_axis_scroll (axis, 80);
    NEAR (axis->offset, 0); /* all of it fits */
  }
}

static void
test_zoom_keeps_the_place (void)
{
  for (int mirrored = 0; mirrored < 2; mirrored++)
    for (double x = 20; x < 300; x += 40) {
      g_autoptr (LapAxis) axis = axis_of (2, 300, 300, mirrored, FALSE);
      double second = lap_axis_second (axis, x);

      lap_axis_zoom_at (axis, 3, x);
      NEAR (lap_axis_second (axis, x), second);
    }
}

static void
test_fit (void)
{
  for (int folded = 0; folded < 2; folded++)
    for (double view = 100; view < 3000; view *= 1.7) {
      g_autoptr (LapAxis) axis = axis_of (1, 0, view, FALSE, folded);

      lap_axis_zoom_at (axis, lap_axis_fit (axis), 0);
      g_assert_cmpfloat_with_epsilon (axis->width, view, 1e-3);
      g_assert_cmpfloat (axis->width, <=, view);
    }
}

static void
test_reveal (void)
{
  static const struct { int start, end; double offset, after; } cases[] = {
    { 300, 340, 0, 64 }, { 300, 340, 100, 100 }, { 300, 340, 290, 276 }, { 590, 600, 0, 300 }, { 0, 40, 200, 0 },
  };

  for (int mirrored = 0; mirrored < 2; mirrored++)
    for (guint i = 0; i < G_N_ELEMENTS (cases); i++) {
      g_autoptr (LapAxis) axis = axis_of (1, cases[i].offset, 300, mirrored, FALSE);
      gboolean moved = lap_axis_reveal (axis, cases[i].start, cases[i].end, 24);

      NEAR (axis->offset, cases[i].after);
      g_assert_cmpint (moved, ==, cases[i].after != cases[i].offset);
    }
}

static void
test_pieces_stay_folded (void)
{
  g_autoptr (LapAxis) axis = axis_of (1, 0, 300, FALSE, TRUE);

  lap_axis_set_pieces (axis, (int[]) { 100, 520, 620 }, 3);
  g_assert_true (axis->pieces[0].folded);
  g_assert_false (axis->pieces[1].folded);
  NEAR (axis->width, 470);
  lap_axis_set_pieces (axis, (int[]) { 100, 520 }, 2);
  g_assert_false (axis->pieces[0].folded);
}

static void
test_ticks (void)
{
  static const struct { double zoom; int label, tick; } cases[] = {
    { 1, 60, 10 }, { 0.5, 120, 30 }, { 2, 30, 5 }, { 4, 15, 5 }, { 12, 5, 1 }, { 0.1, 600, 60 }, { 0.02, 3600, 600 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++) {
    g_autoptr (LapAxis) axis = axis_of (cases[i].zoom, 0, 600, FALSE, FALSE);
    g_autoptr (GArray) ticks = lap_ticks (axis, 0, 48);

    g_assert_cmpuint (ticks->len, >, 0);
    for (guint j = 0; j < ticks->len; j++) {
      LapTick *tick = &g_array_index (ticks, LapTick, j);

      g_assert_cmpint (tick->second, ==, (int) j * cases[i].tick);
      g_assert_cmpint (tick->labelled, ==, tick->second % cases[i].label == 0);
      NEAR (tick->x, lap_axis_x (axis, tick->second));
    }
  }
}

/* On a clock that is ahead, labels stand on whole steps of that clock. */
static void
test_ticks_with_lead (void)
{
  g_autoptr (LapAxis) axis = axis_of (1, 0, 600, FALSE, FALSE);
  g_autoptr (GArray) ticks = lap_ticks (axis, 95, 48);

  g_assert_cmpint (g_array_index (ticks, LapTick, 0).second, ==, 5); /* 1:40 */
  for (guint j = 0; j < ticks->len; j++) {
    LapTick *tick = &g_array_index (ticks, LapTick, j);

    g_assert_cmpint (tick->second, ==, 5 + (int) j * 10);
    g_assert_cmpint (tick->labelled, ==, (tick->second + 95) % 60 == 0);
  }
}

static void
test_tick_labels_never_touch (void)
{
  for (double zoom = 0.01; zoom < 40; zoom *= 1.3) {
    g_autoptr (LapAxis) axis = axis_of (zoom, 40, 900, FALSE, TRUE);
    g_autoptr (GArray) ticks = lap_ticks (axis, 0, 48);
    double last = -1000;

    for (guint j = 0; j < ticks->len; j++) {
      LapTick *tick = &g_array_index (ticks, LapTick, j);

      if (!tick->labelled)
        continue;
      g_assert_cmpfloat (tick->x - last, >=, 48 - 1e-6);
      last = tick->x;
    }
  }
}

/* From all open to the outer two folded, and on to twice the zoom: 100 s take 100 px, then 25, half way 62.5. */
static void
test_blend (void)
{
  static const struct { double t, first, middle, width; } steps[] = {
    { 0, 100, 400, 600 }, { 0.5, 0.5 * 150 + 0.5 * 37.5, 600, 787.5 }, { 1, 50, 800, 900 },
  };

  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) axis = axis_of (1, 0, 300, mirrored, FALSE);
    g_autoptr (LapAxis) other = axis_of (2, 40, 300, mirrored, TRUE);
    g_autoptr (LapAxisLook) from = lap_axis_look (axis), to = lap_axis_look (other);

    for (guint i = 0; i < G_N_ELEMENTS (steps); i++) {
      guint serial = axis->serial;

      lap_axis_blend (axis, from, to, steps[i].t);
      NEAR (axis->pieces[0].width, steps[i].first);
      NEAR (axis->pieces[1].width, steps[i].middle);
      NEAR (axis->width, steps[i].width);
      NEAR (axis->offset, 40 * steps[i].t);
      g_assert_cmpuint (axis->serial, !=, serial);
    }
    for (double second = 0; second <= 600; second += 37)
      NEAR (lap_axis_x (axis, second), lap_axis_x (other, second));
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/axis/there-and-back", test_there_and_back);
  g_test_add_func ("/place/axis/held-to-the-session", test_held_to_the_session);
  g_test_add_func ("/place/axis/zoom-keeps-the-place", test_zoom_keeps_the_place);
  g_test_add_func ("/place/axis/fit", test_fit);
  g_test_add_func ("/place/axis/reveal", test_reveal);
  g_test_add_func ("/place/axis/pieces-stay-folded", test_pieces_stay_folded);
  g_test_add_func ("/place/ticks/steps", test_ticks);
  g_test_add_func ("/place/ticks/labels-never-touch", test_tick_labels_never_touch);
  g_test_add_func ("/place/ticks/with-lead", test_ticks_with_lead);
  g_test_add_func ("/place/axis/blend", test_blend);
  return g_test_run ();
}
