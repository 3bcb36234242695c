/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/overview.h"
#include "place/plans.h"

#define NEAR(a, b) g_assert_cmpfloat_with_epsilon ((a), (b), 1e-6)

/* A talk of 100 s, an exercise of 400 in the main part, a talk of 100: 600 s. */
static LapScore *
score_new (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Overview");
  g_autoptr (LapTimeline) timeline = NULL;

  plan_add (plan_part (session, LAP_PART_OPENING, 1), lap_block_new_talk ("Hello", 100));
  plan_add (plan_part (session, LAP_PART_MAIN, 1), lap_block_new_exercise ("squat", 400, 0));
  plan_add (plan_part (session, LAP_PART_CLOSING, 1), lap_block_new_talk ("Bye", 100));
  timeline = plan_timeline (session);
  return lap_score_new (timeline);
}

static LapAxis *
axis_new (double zoom, double offset, gboolean mirrored, gboolean folded)
{
  LapAxis *axis = lap_axis_new ();

  lap_axis_set_pieces (axis, (int[]) { 100, 500, 600 }, 3);
  lap_axis_set_view (axis, 300, mirrored);
  lap_axis_set_folds (axis, (gboolean[]) { folded, FALSE, folded });
  lap_axis_zoom_at (axis, zoom, mirrored ? 300 : 0);
  lap_axis_scroll (axis, offset);
  return axis;
}

/* The strip is 300 px for 600 s: half a px a second. Folded at 1 px a second, the first and the last 100 s take 25 px
 * each, so that 450 px hold all and the view of 300 begins in the fold or at 100 + (offset - 25) s. */
static const struct {
  double zoom, offset;
  gboolean mirrored, folded;
  int x, width;
} windows[] = {
  { 1, 0, FALSE, FALSE, 0, 150 },    { 1, 120, FALSE, FALSE, 60, 150 },  { 1, 300, FALSE, FALSE, 150, 150 },
  { 1, 0, TRUE, FALSE, 150, 150 },   { 1, 120, TRUE, FALSE, 90, 150 },   { 0.5, 0, FALSE, FALSE, 0, 300 },
  { 0.5, 0, TRUE, FALSE, 0, 300 },   { 1, 1, FALSE, TRUE, 2, 186 },      { 1, 125, FALSE, TRUE, 100, 150 },
  { 1, 149, FALSE, TRUE, 112, 186 }, { 1, 125, TRUE, TRUE, 50, 150 },
  /* 30 s are 15 px; 10 s would be 5, and are 12 about the same place, but on the strip. */
  { 10, 1000, FALSE, FALSE, 50, 15 }, { 30, 3000, FALSE, FALSE, 47, 12 }, { 30, 0, FALSE, FALSE, 0, 12 },
  { 30, 17700, FALSE, FALSE, 288, 12 }, { 30, 0, TRUE, FALSE, 288, 12 },
};

static void
test_window (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (guint i = 0; i < G_N_ELEMENTS (windows); i++) {
    g_autoptr (LapAxis) strip = lap_overview_axis (score, 300, windows[i].mirrored);
    g_autoptr (LapAxis) axis = axis_new (windows[i].zoom, windows[i].offset, windows[i].mirrored, windows[i].folded);
    LapOverviewWindow window = lap_overview_window (strip, axis);

    NEAR (strip->width, 300);
    g_assert_cmpint (window.x, ==, windows[i].x);
    g_assert_cmpint (window.width, ==, windows[i].width);
  }
}

/* Where the window is, a press grabs it; beside it, it doesn't: every px of the strip. */
static void
test_hit (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (guint i = 0; i < G_N_ELEMENTS (windows); i++) {
    gboolean mirrored = windows[i].mirrored;
    g_autoptr (LapAxis) strip = lap_overview_axis (score, 300, mirrored);
    g_autoptr (LapAxis) axis = axis_new (windows[i].zoom, windows[i].offset, mirrored, windows[i].folded);

    for (int x = 0; x < 300; x++) {
      LapOverviewHit left = mirrored ? LAP_OVERVIEW_AFTER : LAP_OVERVIEW_BEFORE;
      LapOverviewHit right = mirrored ? LAP_OVERVIEW_BEFORE : LAP_OVERVIEW_AFTER;
      LapOverviewHit want = x < windows[i].x ? left
                            : x < windows[i].x + windows[i].width ? LAP_OVERVIEW_WINDOW : right;

      g_assert_cmpint (lap_overview_hit (strip, axis, x), ==, want);
    }
  }
}

static const struct {
  gboolean mirrored, folded;
  double x, offset, centre;
} presses[] = {
  { FALSE, FALSE, 0, 0, 0 },      { FALSE, FALSE, 60, 120, 0 },   { FALSE, FALSE, 100, 200, 50 },
  { FALSE, FALSE, 250, 300, 300 }, { TRUE, FALSE, 300, 0, 0 },    { TRUE, FALSE, 240, 120, 0 },
  { TRUE, FALSE, 200, 200, 50 },  { TRUE, FALSE, 0, 300, 300 },   { FALSE, TRUE, 25, 12.5, 0 },
  { FALSE, TRUE, 50, 25, 0 },     { FALSE, TRUE, 100, 125, 0 },   { FALSE, TRUE, 150, 150, 75 },
  { TRUE, TRUE, 200, 125, 0 },    { TRUE, TRUE, 275, 12.5, 0 },
};

/* The offset doesn't depend on where the score was before. */
static void
test_travel (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (guint i = 0; i < G_N_ELEMENTS (presses); i++)
    for (int was = 0; was < 150; was += 50) {
      g_autoptr (LapAxis) strip = lap_overview_axis (score, 300, presses[i].mirrored);
      g_autoptr (LapAxis) axis = axis_new (1, was, presses[i].mirrored, presses[i].folded);

      NEAR (lap_overview_offset (strip, axis, presses[i].x), presses[i].offset);
      NEAR (lap_overview_centre (strip, axis, presses[i].x), presses[i].centre);
    }
}

/* The longest session there is, on the narrowest strip. */
static void
test_longest (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Long");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapScore) score = NULL;
  g_autoptr (LapAxis) strip = NULL;

  for (guint i = 0; i < 4; i++)
    plan_add (part, lap_block_new_pause ("water", 10800));
  timeline = plan_timeline (session);
  score = lap_score_new (timeline);
  strip = lap_overview_axis (score, 80, FALSE);
  g_assert_cmpint (strip->length, ==, 43200);
  NEAR (lap_axis_x (strip, 43200), 80);
}

/* Without anything there is nothing to travel to. */
static void
test_empty (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Empty");
  g_autoptr (LapTimeline) timeline = plan_timeline (session);
  g_autoptr (LapScore) score = lap_score_new (timeline);
  g_autoptr (LapAxis) strip = lap_overview_axis (score, 300, FALSE), axis = lap_overview_axis (score, 300, FALSE);

  g_assert_cmpint (strip->length, ==, 0);
  NEAR (lap_overview_centre (strip, axis, 150), 0);
  g_assert_cmpint (lap_overview_window (strip, axis).x, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/overview/window", test_window);
  g_test_add_func ("/place/overview/hit", test_hit);
  g_test_add_func ("/place/overview/travel", test_travel);
  g_test_add_func ("/place/overview/longest", test_longest);
  g_test_add_func ("/place/overview/empty", test_empty);
  return g_test_run ();
}
