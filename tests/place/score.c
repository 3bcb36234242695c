/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/score-drop.h"
#include "place/plans.h"

/* Talk 60; three exercises 40/20, two rounds, 30 s between; a pause of 50 in the second place. The rest of the last
 * block is dropped: 60 + (60 + 50 + 60 + 60) + 30 + (60 + 50 + 60 + 40) = 530 s. */
static LapScore *
score_new (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Rows");
  g_autoptr (LapTimeline) timeline = NULL;
  LapPart *part;

  part = plan_part (session, LAP_PART_OPENING, 1);
  plan_add (part, lap_block_new_talk ("Hello all", 60));
  part = plan_part (session, LAP_PART_MAIN, 2);
  g_object_set (part, "round-rest", 30, NULL);
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_pause ("water", 50));
  plan_add (part, lap_block_new_exercise ("press-up", 40, 20));
  plan_add (part, lap_block_new_exercise ("bridge", 40, 20));
  timeline = plan_timeline (session);
  return lap_score_new (timeline);
}

static LapAxis *
axis_for (LapScore *score, double zoom, double offset, double view, gboolean mirrored)
{
  LapAxis *axis = lap_axis_new ();
  g_autofree int *ends = g_new (int, score->timeline->n_parts);

  for (guint i = 0; i < score->timeline->n_parts; i++)
    ends[i] = score->timeline->parts[i].end;
  lap_axis_set_pieces (axis, ends, score->timeline->n_parts);
  lap_axis_set_view (axis, view, mirrored);
  lap_axis_zoom_at (axis, zoom, mirrored ? view : 0);
  lap_axis_scroll (axis, offset);
  return axis;
}

static const struct { int start, body, end, part, block, round, kind; } boxes[] = {
  { 0, 60, 60, 0, 0, 1, LAP_BOX_TALK },
  { 60, 100, 120, 1, 0, 1, LAP_BOX_EXERCISE },
  { 120, 170, 170, 1, 1, 1, LAP_BOX_PAUSE },
  { 170, 210, 230, 1, 2, 1, LAP_BOX_EXERCISE },
  { 230, 270, 290, 1, 3, 1, LAP_BOX_EXERCISE },
  { 290, 290, 320, 1, LAP_NO_BLOCK, 1, LAP_BOX_GAP },
  { 320, 360, 380, 1, 0, 2, LAP_BOX_EXERCISE },
  { 380, 430, 430, 1, 1, 2, LAP_BOX_PAUSE },
  { 430, 470, 490, 1, 2, 2, LAP_BOX_EXERCISE },
  { 490, 530, 530, 1, 3, 2, LAP_BOX_EXERCISE },
};

static void
test_boxes (void)
{
  g_autoptr (LapScore) score = score_new ();

  g_assert_cmpuint (score->n, ==, G_N_ELEMENTS (boxes));
  for (guint i = 0; i < score->n; i++) {
    const LapBox *box = &score->boxes[i];

    g_assert_cmpint (box->start, ==, boxes[i].start);
    g_assert_cmpint (box->body, ==, boxes[i].body);
    g_assert_cmpint (box->end, ==, boxes[i].end);
    g_assert_cmpint (box->part, ==, boxes[i].part);
    g_assert_cmpint (box->block, ==, boxes[i].block);
    g_assert_cmpint (box->round, ==, boxes[i].round);
    g_assert_cmpint (box->kind, ==, boxes[i].kind);
  }
  g_assert_cmpuint (score->n_rounds, ==, 2);
  g_assert_cmpint (score->rounds[0].end, ==, 290);
  g_assert_cmpint (score->rounds[1].start, ==, 320);
}

static void
test_find (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (guint i = 0; i < score->n; i++) {
    if (lap_box_is_block (&score->boxes[i]))
      g_assert_cmpuint (lap_score_find (score, boxes[i].part, boxes[i].block, boxes[i].round), ==, i);
    g_assert_cmpuint (lap_score_at (score, boxes[i].start), ==, i);
    g_assert_cmpuint (lap_score_at (score, boxes[i].end - 0.25), ==, i);
  }
  g_assert_cmpuint (lap_score_find (score, 1, 4, 1), ==, LAP_NO_BOX);
  g_assert_cmpuint (lap_score_find (score, 1, 0, 3), ==, LAP_NO_BOX);
  g_assert_cmpuint (lap_score_find (score, 2, 0, 1), ==, LAP_NO_BOX);
}

static void
test_step (void)
{
  g_autoptr (LapScore) score = score_new ();

  g_assert_cmpuint (lap_score_step (score, 4, 1), ==, 6); /* over the rest between rounds */
  g_assert_cmpuint (lap_score_step (score, 6, -1), ==, 4);
  g_assert_cmpuint (lap_score_step (score, 9, 1), ==, LAP_NO_BOX);
  g_assert_cmpuint (lap_score_step (score, 0, -1), ==, LAP_NO_BOX);
  g_assert_cmpuint (lap_score_step (score, LAP_NO_BOX, 1), ==, 0);
  g_assert_cmpuint (lap_score_step (score, LAP_NO_BOX, -1), ==, 9);
}

static const struct {
  double zoom, offset, view;
  gboolean mirrored;
  guint box;
  int x, body, width;
} places[] = {
  { 1, 0, 400, FALSE, 1, 60, 40, 60 },    { 1, 100, 400, FALSE, 1, -40, 40, 60 },
  { 2, 0, 400, FALSE, 3, 340, 80, 120 },  { 1, 0, 400, TRUE, 1, 280, 40, 60 },
  { 1, 100, 400, TRUE, 1, 380, 40, 60 },  { 2, 0, 400, TRUE, 3, -60, 80, 120 },
  { 1, 0, 400, FALSE, 5, 290, 0, 30 },    { 0.5, 0, 400, FALSE, 2, 60, 25, 25 },
};

static void
test_place (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    g_autoptr (LapAxis) axis = axis_for (score, places[i].zoom, places[i].offset, places[i].view, places[i].mirrored);
    LapPlaced placed = lap_score_place (score, axis, places[i].box);

    g_assert_cmpint (placed.x, ==, places[i].x);
    g_assert_cmpint (placed.body, ==, places[i].body);
    g_assert_cmpint (placed.width, ==, places[i].width);
  }
}

/* Neighbours share their edge at any zoom, either way round: no seam, no overlap. */
static void
test_neighbours_touch (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (int mirrored = 0; mirrored < 2; mirrored++)
    for (double zoom = 0.03; zoom < 30; zoom *= 1.37) {
      g_autoptr (LapAxis) axis = axis_for (score, zoom, 13.3, 333, mirrored);

      for (guint i = 1; i < score->n; i++) {
        LapPlaced a = lap_score_place (score, axis, i - 1), b = lap_score_place (score, axis, i);

        g_assert_cmpint (mirrored ? b.x + b.width : a.x + a.width, ==, mirrored ? a.x : b.x);
      }
    }
}

static void
test_visible (void)
{
  static const struct { double zoom, offset, view; guint first, end; } cases[] = {
    { 1, 0, 600, 0, 10 }, { 1, 0, 100, 0, 2 }, { 1, 100, 100, 1, 4 }, { 1, 110, 60, 1, 3 }, { 10, 5000, 300, 9, 10 },
  };
  g_autoptr (LapScore) score = score_new ();

  for (int mirrored = 0; mirrored < 2; mirrored++)
    for (guint i = 0; i < G_N_ELEMENTS (cases); i++) {
      g_autoptr (LapAxis) axis = axis_for (score, cases[i].zoom, cases[i].offset, cases[i].view, mirrored);
      guint first, end;

      lap_score_visible (score, axis, &first, &end);
      g_assert_cmpuint (first, ==, cases[i].first);
      g_assert_cmpuint (end, ==, cases[i].end);
    }
}

static void
test_streaks (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) small = axis_for (score, 0.05, 0, 400, mirrored); /* 60 s are 3 px */
    g_autoptr (LapAxis) large = axis_for (score, 1, 0, 400, mirrored);
    g_autoptr (GArray) some = lap_score_streaks (score, small, LAP_MERGE_BELOW);
    g_autoptr (GArray) none = lap_score_streaks (score, large, LAP_MERGE_BELOW);
    int sum = 0;

    g_assert_cmpuint (none->len, ==, 0);
    g_assert_cmpuint (g_array_index (some, LapStreak, 0).kind, ==, LAP_STREAK_TALK);
    g_assert_cmpint (g_array_index (some, LapStreak, 0).width, ==, 3);
    g_assert_cmpint (g_array_index (some, LapStreak, 0).x, ==, mirrored ? 397 : 0);
    for (guint i = 0; i < some->len; i++)
      sum += g_array_index (some, LapStreak, i).width;
    g_assert_cmpint (sum, ==, 27); /* 530 s are 26.5 px: each once */
  }
}

static const struct {
  double x;
  gboolean mirrored;
  double second;
  guint box;
  LapEdge edge;
} hits[] = {
  { 30, FALSE, 30, 0, LAP_EDGE_NONE },     { 80, FALSE, 80, 1, LAP_EDGE_NONE },
  { 98, FALSE, 98, 1, LAP_EDGE_BODY },     { 103, FALSE, 103, 1, LAP_EDGE_BODY },
  { 118, FALSE, 118, 1, LAP_EDGE_TAIL },   { 122, FALSE, 122, 1, LAP_EDGE_TAIL },
  { 57, FALSE, 57, 0, LAP_EDGE_BODY },     { 300, FALSE, 300, 5, LAP_EDGE_NONE },
  { 318, FALSE, 318, 5, LAP_EDGE_NONE },   { 529, FALSE, 529, 9, LAP_EDGE_BODY },
  { 545, FALSE, 530, LAP_NO_BOX, LAP_EDGE_NONE }, { 520, TRUE, 80, 1, LAP_EDGE_NONE },
  { 502, TRUE, 98, 1, LAP_EDGE_BODY },     { 478, TRUE, 122, 1, LAP_EDGE_TAIL },
  { 20, TRUE, 530, LAP_NO_BOX, LAP_EDGE_NONE },
};

static void
test_hit (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (guint i = 0; i < G_N_ELEMENTS (hits); i++) {
    g_autoptr (LapAxis) axis = axis_for (score, 1, 0, 600, hits[i].mirrored);
    LapHit hit = lap_score_hit (score, axis, hits[i].x, 4);

    g_assert_cmpfloat_with_epsilon (hit.second, hits[i].second, 1e-6);
    g_assert_cmpuint (hit.box, ==, hits[i].box);
    g_assert_cmpint (hit.edge, ==, hits[i].edge);
  }
}

/* Shares of a cap of 600: 40, 20 s of talk and 60 once through make 200, 100 and 300. */
static void
test_own_pace (void)
{
  static const int ends[] = { 200, 300, 600 };
  g_autoptr (LapSession) session = lap_session_new ("Own pace");
  g_autoptr (LapTimeline) timeline = NULL, bare_timeline = NULL;
  g_autoptr (LapScore) score = NULL, bare = NULL;
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);

  g_object_set (part, "run", LAP_RUN_OWN_PACE, "cap", 600, NULL);
  bare_timeline = plan_timeline (session);
  bare = lap_score_new (bare_timeline);
  g_assert_cmpuint (bare->n, ==, 1);
  g_assert_false (lap_box_is_block (&bare->boxes[0]));
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_talk ("Drink", 20));
  plan_add (part, lap_block_new_exercise ("push-up", 60, 0));
  timeline = plan_timeline (session);
  score = lap_score_new (timeline);
  g_assert_cmpuint (score->n, ==, G_N_ELEMENTS (ends));
  for (guint i = 0; i < score->n; i++) {
    g_assert_cmpint (score->boxes[i].start, ==, i > 0 ? ends[i - 1] : 0);
    g_assert_cmpint (score->boxes[i].end, ==, ends[i]);
    g_assert_cmpuint (lap_score_find (score, 0, i, 1), ==, i);
  }
}

/* At 1 px a second: x and second are one, or x is 600 - second. */
static const struct { double second; gboolean replace; guint part, position, round; double caret; guint onto; } drops[] = {
  { 70, FALSE, 1, 0, 1, 60, LAP_NO_BOX },   { 110, FALSE, 1, 1, 1, 120, LAP_NO_BOX }, { 80, TRUE, 1, 0, 1, 60, 1 },
  { 63, TRUE, 1, 0, 1, 60, LAP_NO_BOX },    { 118, TRUE, 1, 1, 1, 120, LAP_NO_BOX },  { 10, FALSE, 0, 0, 1, 0, LAP_NO_BOX },
  { 300, FALSE, 1, 4, 1, 290, LAP_NO_BOX }, { 440, FALSE, 1, 2, 2, 430, LAP_NO_BOX }, { 480, FALSE, 1, 3, 2, 490, LAP_NO_BOX },
  { 560, FALSE, 1, 4, 1, 530, LAP_NO_BOX },
};

static void
test_drop_place (void)
{
  g_autoptr (LapScore) score = score_new ();

  for (int mirrored = 0; mirrored < 2; mirrored++)
    for (guint i = 0; i < G_N_ELEMENTS (drops); i++) {
      g_autoptr (LapAxis) axis = axis_for (score, 1, 0, 600, mirrored);
      double x = mirrored ? 600 - drops[i].second : drops[i].second;
      LapDropPlace place = lap_score_drop_place (score, axis, x, drops[i].replace);

      g_assert_cmpuint (place.part, ==, drops[i].part);
      g_assert_cmpuint (place.position, ==, drops[i].position);
      g_assert_cmpuint (place.round, ==, drops[i].round);
      g_assert_cmpfloat (place.second, ==, drops[i].caret);
      g_assert_cmpuint (place.onto, ==, drops[i].onto);
    }
}

static void
test_empty (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Empty");
  g_autoptr (LapTimeline) timeline = plan_timeline (session);
  g_autoptr (LapScore) score = lap_score_new (timeline);
  g_autoptr (LapAxis) axis = axis_for (score, 1, 0, 300, FALSE);
  g_autoptr (GArray) streaks = lap_score_streaks (score, axis, LAP_MERGE_BELOW);
  guint first, end;

  lap_score_visible (score, axis, &first, &end);
  g_assert_cmpuint (end, ==, 0);
  g_assert_cmpuint (streaks->len, ==, 0);
  g_assert_cmpuint (lap_score_hit (score, axis, 10, 4).box, ==, LAP_NO_BOX);
  g_assert_cmpuint (lap_score_step (score, LAP_NO_BOX, 1), ==, LAP_NO_BOX);
  g_assert_cmpuint (lap_score_drop_place (score, axis, 10, TRUE).part, ==, G_MAXUINT);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/score/boxes", test_boxes);
  g_test_add_func ("/place/score/find", test_find);
  g_test_add_func ("/place/score/step", test_step);
  g_test_add_func ("/place/score/place", test_place);
  g_test_add_func ("/place/score/neighbours-touch", test_neighbours_touch);
  g_test_add_func ("/place/score/visible", test_visible);
  g_test_add_func ("/place/score/streaks", test_streaks);
  g_test_add_func ("/place/score/hit", test_hit);
  g_test_add_func ("/place/score/own-pace", test_own_pace);
  g_test_add_func ("/place/score/drop-place", test_drop_place);
  g_test_add_func ("/place/score/empty", test_empty);
  return g_test_run ();
}
