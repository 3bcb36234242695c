/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/muscles.h"
#include "place/plans.h"

/* Two rounds of squat, forward lunge (thighs and seat again), push-up and tuck jump, each 40/20; the last rest is
 * dropped. */
static LapScore *
score_new (void)
{
  static const char *const ids[] = { "squat", "forward-lunge", "push-up", "tuck-jump" };
  g_autoptr (LapSession) session = lap_session_new ("Rows");
  g_autoptr (LapTimeline) timeline = NULL;
  LapPart *part = plan_part (session, LAP_PART_MAIN, 2);

  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    plan_add (part, lap_block_new_exercise (ids[i], 40, 20));
  timeline = plan_timeline (session);
  return lap_score_new (timeline);
}

static LapAxis *
axis_for (LapScore *score, double zoom, double offset, double view, gboolean mirrored)
{
  LapAxis *axis = lap_axis_new ();

  lap_axis_set_pieces (axis, &score->timeline->length, 1);
  lap_axis_set_view (axis, view, mirrored);
  lap_axis_zoom_at (axis, zoom, mirrored ? view : 0);
  lap_axis_scroll (axis, offset);
  return axis;
}

/* What of @loads lies in @row at @x. */
static const LapLoad *
find (GArray *loads, guint row, int x)
{
  for (guint i = 0; i < loads->len; i++) {
    const LapLoad *load = &g_array_index (loads, LapLoad, i);

    if (load->row == row && x >= load->x && x < load->x + load->width)
      return load;
  }
  return NULL;
}

static const struct {
  guint row;
  int second; /* somewhere in it */
  int x, width, fade; /* at a px a second from the left */
  gboolean helps, later;
} rows[] = {
  { LAP_REGION_THIGHS, 10, 0, 40, 20, FALSE, FALSE },     /* squat; lunge is next after 20 s */
  { LAP_REGION_THIGHS, 70, 60, 40, 45, FALSE, FALSE },    /* lunge; tuck jump is next after 80 s */
  { LAP_REGION_CHEST, 130, 120, 40, 45, FALSE, FALSE },   /* push-up */
  { LAP_REGION_FRONT_CORE, 130, 120, 40, 0, TRUE, FALSE },
  { LAP_ROW_BREATHLESS, 190, 180, 40, 45, FALSE, FALSE }, /* tuck jump */
  { LAP_REGION_THIGHS, 250, 240, 40, 20, FALSE, TRUE },   /* squat again */
};

static void
test_loads (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) axis = axis_for (score, 1, 0, 600, mirrored);
    g_autoptr (GArray) loads = lap_score_loads (score, axis);

    for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
      const LapLoad *load = find (loads, rows[i].row, mirrored ? 600 - rows[i].second : rows[i].second);

      g_assert_nonnull (load);
      g_assert_cmpint (load->x, ==, mirrored ? 600 - rows[i].x - rows[i].width : rows[i].x);
      g_assert_cmpint (load->width, ==, rows[i].width);
      g_assert_cmpint (load->fade, ==, rows[i].fade);
      g_assert_cmpint (load->helps, ==, rows[i].helps);
      g_assert_cmpint (load->later, ==, rows[i].later);
    }
    g_assert_null (find (loads, LAP_REGION_CHEST, mirrored ? 590 : 10));
    g_assert_null (find (loads, LAP_REGION_THIGHS, mirrored ? 550 : 50)); /* a rest */
  }
}

/* A bar lies under the body of its block, wherever the view is. */
static void
test_loads_lie_under_bodies (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (int mirrored = 0; mirrored < 2; mirrored++)
    for (double zoom = 0.4; zoom < 12; zoom *= 1.7) {
      g_autoptr (LapAxis) axis = axis_for (score, zoom, 31.7, 500, mirrored);
      g_autoptr (GArray) loads = lap_score_loads (score, axis);
      LapPlaced squat = lap_score_place (score, axis, 0);
      int x = mirrored ? squat.x + squat.width - squat.body : squat.x;
      const LapLoad *load = find (loads, LAP_REGION_THIGHS, x);

      g_assert_nonnull (load);
      g_assert_cmpint (load->x, ==, x);
      g_assert_cmpint (load->width, ==, squat.body);
    }
}

static const struct { int x, width, start, end; } clashes[] = {
  { 40, 20, 0, 100 },    /* squat and lunge */
  { 220, 20, 180, 280 }, /* tuck jump and, over the seam, squat */
  { 280, 20, 240, 340 },
};

static void
test_clashes (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) axis = axis_for (score, 1, 0, 600, mirrored);
    g_autoptr (GArray) found = lap_score_clashes (score, axis);

    g_assert_cmpuint (found->len, ==, G_N_ELEMENTS (clashes));
    for (guint i = 0; i < found->len; i++) {
      const LapClash *clash = &g_array_index (found, LapClash, i);

      g_assert_cmpint (clash->x, ==, mirrored ? 600 - clashes[i].x - clashes[i].width : clashes[i].x);
      g_assert_cmpint (clash->width, ==, clashes[i].width);
      g_assert_cmpint (clash->start, ==, clashes[i].start);
      g_assert_cmpint (clash->end, ==, clashes[i].end);
      g_assert_cmpuint (clash->rows & LAP_BIT (LAP_REGION_THIGHS), !=, 0);
      g_assert_cmpuint (clash->rows & LAP_BIT (LAP_REGION_CHEST), ==, 0);
      g_assert_cmpint (clash->later, ==, i > 0);
    }
  }
}

/* However many blocks there are, a row holds no more bars than pixels, and bars of a row don't overlap. */
static void
test_small_loads_join (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Many");
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapScore) score = NULL;
  LapPart *part = plan_part (session, LAP_PART_MAIN, 100);

  for (guint i = 0; i < 50; i++)
    plan_add (part, lap_block_new_exercise (i % 2 != 0 ? "squat" : "push-up", 2, 1));
  timeline = plan_timeline (session);
  score = lap_score_new (timeline);
  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) axis = axis_for (score, 0.02, 0, 400, mirrored);
    g_autoptr (GArray) loads = lap_score_loads (score, axis);
    int edge[LAP_N_ROWS];

    for (guint row = 0; row < LAP_N_ROWS; row++)
      edge[row] = mirrored ? 401 : -1;
    g_assert_cmpuint (loads->len, <, 400);
    for (guint i = 0; i < loads->len; i++) {
      const LapLoad *load = &g_array_index (loads, LapLoad, i);

      if (mirrored)
        g_assert_cmpint (load->x + load->width, <=, edge[load->row]);
      else
        g_assert_cmpint (load->x, >=, edge[load->row]);
      edge[load->row] = mirrored ? load->x : load->x + load->width;
    }
  }
}

static void
test_rows (void)
{
  int last = 0;

  for (guint row = 0; row < LAP_N_ROWS; row++) {
    int top, height;

    lap_load_rows_place (14, TRUE, row, &top, &height);
    g_assert_cmpint (height, ==, 14);
    g_assert_cmpint (top, >=, last);
    last = top + height;
  }
  g_assert_cmpint (lap_load_rows_height (14, TRUE), >, last);
  g_assert_cmpint (lap_load_rows_height (14, FALSE), <, 3 * 14);
  g_assert_cmpstr (lap_load_row_label (LAP_ROW_BREATHLESS), ==, "Breathless");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/muscles/loads", test_loads);
  g_test_add_func ("/place/muscles/loads-lie-under-bodies", test_loads_lie_under_bodies);
  g_test_add_func ("/place/muscles/clashes", test_clashes);
  g_test_add_func ("/place/muscles/small-loads-join", test_small_loads_join);
  g_test_add_func ("/place/muscles/rows", test_rows);
  return g_test_run ();
}
