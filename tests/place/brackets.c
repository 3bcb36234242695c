/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/brackets.h"
#include "place/plans.h"

/* Talk 60; 3 x (40/20 + 40/20) with 10 s between and 30 s after; an empty part; a cool-down of 50. The rest of the last
 * block is dropped: 60 + 120 + 10 + 120 + 10 + 100 + 30 + 50 = 500 s. */
static LapScore *
score_new (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Brackets");
  g_autoptr (LapTimeline) timeline = NULL;
  LapPart *part;

  part = plan_part (session, LAP_PART_OPENING, 1);
  plan_add (part, lap_block_new_talk ("Hello", 60));
  part = plan_part (session, LAP_PART_MAIN, 3);
  g_object_set (part, "round-rest", 10, "rest-after", 30, NULL);
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise ("push-up", 40, 20));
  plan_part (session, LAP_PART_MAIN, 1);
  part = plan_part (session, LAP_PART_COOL_DOWN, 1);
  plan_add (part, lap_block_new_exercise ("bridge", 50, 0));
  timeline = plan_timeline (session);
  return lap_score_new (timeline);
}

static LapAxis *
axis_for (LapScore *score, double zoom, gboolean mirrored)
{
  LapAxis *axis = lap_axis_new ();
  g_autofree int *ends = g_new (int, score->timeline->n_parts);

  for (guint i = 0; i < score->timeline->n_parts; i++)
    ends[i] = score->timeline->parts[i].end;
  lap_axis_set_pieces (axis, ends, score->timeline->n_parts);
  lap_axis_set_view (axis, 500 * zoom, mirrored);
  lap_axis_zoom_at (axis, zoom, 0);
  return axis;
}

static const struct { int start, end; guint part, round, kind; gboolean ends; } rows[] = {
  { 0, 60, 0, 0, LAP_BRACKET_PART, TRUE },
  { 60, 60, 0, 0, LAP_BRACKET_AFTER, FALSE },
  { 60, 420, 1, 0, LAP_BRACKET_PART, TRUE },
  { 60, 180, 1, 1, LAP_BRACKET_ROUND, FALSE },
  { 180, 190, 1, 1, LAP_BRACKET_BETWEEN, FALSE },
  { 190, 310, 1, 2, LAP_BRACKET_ROUND, FALSE },
  { 310, 320, 1, 2, LAP_BRACKET_BETWEEN, FALSE },
  { 320, 420, 1, 3, LAP_BRACKET_ROUND, TRUE },
  { 420, 450, 1, 0, LAP_BRACKET_AFTER, FALSE },
  { 450, 500, 3, 0, LAP_BRACKET_PART, TRUE },
  { 500, 500, 3, 0, LAP_BRACKET_AFTER, FALSE },
};

static void
test_brackets (void)
{
  g_autoptr (LapScore) score = score_new ();
  g_autoptr (LapBrackets) brackets = lap_brackets_new (score);

  g_assert_cmpuint (brackets->n, ==, G_N_ELEMENTS (rows));
  for (guint i = 0; i < brackets->n; i++) {
    const LapBracket *b = &brackets->all[i];

    g_assert_cmpint (b->start, ==, rows[i].start);
    g_assert_cmpint (b->end, ==, rows[i].end);
    g_assert_cmpuint (b->part, ==, rows[i].part);
    g_assert_cmpuint (b->round, ==, rows[i].round);
    g_assert_cmpuint (b->kind, ==, rows[i].kind);
    g_assert_cmpint (b->ends, ==, rows[i].ends);
    g_assert_cmpuint (lap_brackets_find (brackets, b->kind, b->part, b->round), ==, i);
  }
  /* 120 s and 10 s of rest, but for what is dropped of the last: (360 + 10) / 3. */
  g_assert_cmpfloat_with_epsilon (lap_brackets_round_seconds (score, 1), 370 / 3.0, 0.001);
}

/* 2 px a second. Where the pointer is, the row, what is there and whether it can be drawn. */
static const struct { double x; gboolean upper; guint found; gboolean at_end; } hits[] = {
  { 20, TRUE, 0, FALSE }, { 115, TRUE, 0, TRUE },
  { 124, TRUE, 1, TRUE },                           /* the rest of none after the opening, behind its end */
  { 140, TRUE, 2, FALSE }, { 834, TRUE, 2, TRUE }, { 870, TRUE, 8, TRUE }, { 905, TRUE, 9, FALSE },
  { 988, TRUE, 9, TRUE }, { 996, TRUE, 10, TRUE }, /* within the session, behind which nothing can be pressed */
  { 200, FALSE, 3, FALSE }, { 357, FALSE, 3, FALSE }, /* only the last round has an end that adds rounds */
  { 370, FALSE, 4, TRUE }, { 400, FALSE, 5, FALSE }, { 700, FALSE, 7, FALSE }, { 837, FALSE, 7, TRUE },
  { 50, FALSE, LAP_NO_BRACKET, FALSE }, { 950, FALSE, LAP_NO_BRACKET, FALSE },
};

static void
test_hit (void)
{
  g_autoptr (LapScore) score = score_new ();
  g_autoptr (LapBrackets) brackets = lap_brackets_new (score);

  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) axis = axis_for (score, 2, mirrored);

    for (guint i = 0; i < G_N_ELEMENTS (hits); i++) {
      gboolean at_end;
      double x = mirrored ? axis->view - hits[i].x : hits[i].x;

      g_assert_cmpuint (lap_brackets_hit (brackets, axis, x, hits[i].upper, &at_end), ==, hits[i].found);
      g_assert_cmpint (at_end, ==, hits[i].at_end);
    }
  }
}

/* All that touch the view, however it is scrolled, are among those that are looked at. */
static void
test_visible (void)
{
  g_autoptr (LapScore) score = score_new ();
  g_autoptr (LapBrackets) brackets = lap_brackets_new (score);

  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) axis = axis_for (score, 2, mirrored);

    lap_axis_set_view (axis, 60, mirrored);
    for (int offset = 0; offset <= 940; offset += 10) {
      guint first, end;

      lap_axis_scroll (axis, offset);
      lap_brackets_visible (brackets, axis, &first, &end);
      for (guint i = 0; i < brackets->n; i++) {
        LapBracketPlace place = lap_bracket_place (&brackets->all[i], axis);

        if (place.x < axis->view && place.x + place.width > 0) {
          g_assert_cmpuint (i, >=, first);
          g_assert_cmpuint (i, <, end);
        }
      }
    }
  }
}

/* Folded, there is nothing to draw by. */
static void
test_folded (void)
{
  g_autoptr (LapScore) score = score_new ();
  g_autoptr (LapBrackets) brackets = lap_brackets_new (score);
  g_autoptr (LapAxis) axis = axis_for (score, 2, FALSE);
  g_autofree gboolean *folded = g_new0 (gboolean, axis->n);
  gboolean at_end;

  folded[1] = TRUE;
  lap_axis_set_folds (axis, folded);
  g_assert_false (lap_bracket_is_open (&brackets->all[2], axis));
  g_assert_true (lap_bracket_is_open (&brackets->all[0], axis));
  lap_brackets_hit (brackets, axis, lap_axis_x (axis, 419), TRUE, &at_end);
  g_assert_false (at_end);
}

static void
test_step (void)
{
  static const struct { guint from; int by; guint to; } steps[] = {
    { 0, 1, 1 }, { 1, 1, 2 }, { 2, 1, 8 }, { 9, -1, 8 }, { 10, 1, LAP_NO_BRACKET }, { 0, -1, LAP_NO_BRACKET },
    { 3, 1, 4 }, { 7, 1, LAP_NO_BRACKET }, { 7, -1, 6 }, { LAP_NO_BRACKET, 1, LAP_NO_BRACKET },
  };
  g_autoptr (LapScore) score = score_new ();
  g_autoptr (LapBrackets) brackets = lap_brackets_new (score);

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    g_assert_cmpuint (lap_brackets_step (brackets, steps[i].from, steps[i].by), ==, steps[i].to);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/brackets/brackets", test_brackets);
  g_test_add_func ("/place/brackets/hit", test_hit);
  g_test_add_func ("/place/brackets/visible", test_visible);
  g_test_add_func ("/place/brackets/folded", test_folded);
  g_test_add_func ("/place/brackets/step", test_step);
  return g_test_run ();
}
