/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/marks.h"
#include "place/plans.h"

/* Squat and forward lunge by turns: the same muscles in each pair, at 0:00-1:40, 1:00-2:40 and so on. */
static LapCheckup *
checkup_new (guint n)
{
  g_autoptr (LapSession) session = lap_session_new ("Marks");
  g_autoptr (LapTimeline) timeline = NULL;
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);

  for (guint i = 0; i < n; i++)
    plan_add (part, lap_block_new_exercise (i % 2 == 0 ? "squat" : "forward-lunge", 40, 20));
  timeline = plan_timeline (session);
  return lap_checkup_new (timeline);
}

static LapAxis *
axis_for (const LapCheckup *checkup, double zoom, double offset, double view, gboolean mirrored)
{
  LapAxis *axis = lap_axis_new ();

  lap_axis_set_pieces (axis, &lap_checkup_timeline (checkup)->length, 1);
  lap_axis_set_view (axis, view, mirrored);
  lap_axis_zoom_at (axis, zoom, mirrored ? view : 0);
  lap_axis_scroll (axis, offset);
  return axis;
}

static gboolean
is_muscle (const LapWarning *warning, gconstpointer data)
{
  return g_str_equal (warning->check->id, "same-muscle");
}

static const LapMarkPlace *
place (LapMarks *marks, guint i)
{
  return &g_array_index (marks->places, LapMarkPlace, i);
}

/* Over the middle of each pair: 50, 110 and 170 s. */
static void
test_places (void)
{
  static const struct { double zoom, offset; int x[3]; } rows[] = {
    { 2, 0, { 100, 220, 340 } }, { 2, 30, { 70, 190, 310 } }, { 4, 0, { 200, 440, 680 } },
  };
  g_autoptr (LapCheckup) checkup = checkup_new (4);

  for (int mirrored = 0; mirrored < 2; mirrored++)
    for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
      g_autoptr (LapAxis) axis = axis_for (checkup, rows[i].zoom, rows[i].offset, 300, mirrored);
      g_autoptr (LapMarks) marks = lap_marks_new (checkup, axis, 20, 20, 0.5, is_muscle, NULL);

      g_assert_cmpuint (marks->places->len, ==, 3);
      for (guint m = 0; m < 3; m++) {
        g_assert_cmpint (place (marks, m)->x, ==, mirrored ? 300 - rows[i].x[m] : rows[i].x[m]);
        g_assert_cmpuint (place (marks, m)->n, ==, 1);
        g_assert_cmpuint (lap_marks_at (marks, place (marks, m)->x + 9), ==, m);
        g_assert_cmpuint (lap_marks_at (marks, place (marks, m)->x + 12), ==, LAP_NO_WARNING);
      }
    }
}

/* Those at the ends of the session stand inside it, whole; and at the end of what a warning is about, when that is
 * asked for. The session lasts 220 s, the pairs to 100, 160 and 220. */
static void
test_ends (void)
{
  g_autoptr (LapCheckup) checkup = checkup_new (4);

  for (int mirrored = 0; mirrored < 2; mirrored++) {
    g_autoptr (LapAxis) axis = axis_for (checkup, 2, 0, 440, mirrored);
    g_autoptr (LapMarks) all = lap_marks_new (checkup, axis, 20, 20, 0.5, NULL, NULL);
    g_autoptr (LapMarks) at_end = lap_marks_new (checkup, axis, 20, 20, 1, is_muscle, NULL);
    static const int ends[] = { 200, 320, 430 };

    for (guint i = 0; i < all->places->len; i++) {
      g_assert_cmpint (place (all, i)->x, >=, 10);
      g_assert_cmpint (place (all, i)->x, <=, 430);
    }
    for (guint i = 0; i < 3; i++)
      g_assert_cmpint (place (at_end, i)->x, ==, mirrored ? 440 - ends[i] : ends[i]);
  }
}

/* One for several stands where the first of them would, and what it has more lies where time goes to. */
static void
check_stands (const LapMarkPlace *mark, const LapCheckup *checkup, const LapAxis *axis)
{
  const LapWarning *first = lap_checkup_nth (checkup, mark->first);
  double middle = lap_axis_x (axis, (first->start + first->end) / 2.0);
  double a = lap_axis_x (axis, 0), b = lap_axis_x (axis, axis->length);

  if (mark->n > 1 && mark->x > MIN (a, b) + 18 && mark->x < MAX (a, b) - 18)
    g_assert_cmpfloat_with_epsilon (mark->x + (axis->mirrored ? 7 : -7), middle, 1);
}

/* Marks never overlap, stand for every warning once, and are the same wherever the view begins. */
static void
test_near_ones_join (void)
{
  g_autoptr (LapCheckup) checkup = checkup_new (60);

  for (int mirrored = 0; mirrored < 2; mirrored++)
    for (double zoom = 0.05; zoom < 3; zoom *= 1.6) {
      g_autoptr (LapAxis) axis = axis_for (checkup, zoom, 0, 100, mirrored);
      g_autoptr (LapAxis) further = axis_for (checkup, zoom, 37, 100, mirrored);
      g_autoptr (LapMarks) marks = lap_marks_new (checkup, axis, 20, 34, 0.5, is_muscle, NULL);
      g_autoptr (LapMarks) others = lap_marks_new (checkup, further, 20, 34, 0.5, is_muscle, NULL);
      guint sum = 0;

      g_assert_cmpuint (marks->places->len, ==, others->places->len);
      for (guint i = 0; i < marks->places->len; i++) {
        sum += place (marks, i)->n;
        g_assert_cmpuint (place (marks, i)->first, ==, place (others, i)->first);
        g_assert_cmpint (place (marks, i)->width, ==, place (marks, i)->n > 1 ? 34 : 20);
        check_stands (place (marks, i), checkup, axis);
        for (guint j = 0; j < i; j++) {
          g_assert_cmpint (place (marks, i)->first, >, place (marks, j)->first);
          g_assert_cmpint (2 * ABS (place (marks, i)->x - place (marks, j)->x), >=,
                           place (marks, i)->width + place (marks, j)->width);
        }
      }
      g_assert_cmpuint (sum, ==, marks->members->len);
      g_assert_cmpuint (sum, ==, 59);
    }
}

/* From the right the same marks stand for the same warnings, where a mirror shows them. */
static void
test_mirrored (void)
{
  g_autoptr (LapCheckup) checkup = checkup_new (60);

  for (double zoom = 0.05; zoom < 3; zoom *= 1.6) {
    g_autoptr (LapAxis) left = axis_for (checkup, zoom, 0, 100, FALSE), right = axis_for (checkup, zoom, 0, 100, TRUE);
    g_autoptr (LapMarks) marks = lap_marks_new (checkup, left, 20, 34, 0.5, is_muscle, NULL);
    g_autoptr (LapMarks) others = lap_marks_new (checkup, right, 20, 34, 0.5, is_muscle, NULL);

    g_assert_cmpuint (marks->places->len, ==, others->places->len);
    for (guint i = 0; i < marks->places->len; i++) {
      g_assert_cmpuint (place (marks, i)->first, ==, place (others, i)->first);
      g_assert_cmpuint (place (marks, i)->n, ==, place (others, i)->n);
      g_assert_cmpint (100 - place (others, i)->x, ==, place (marks, i)->x);
    }
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/marks/places", test_places);
  g_test_add_func ("/place/marks/ends", test_ends);
  g_test_add_func ("/place/marks/near-ones-join", test_near_ones_join);
  g_test_add_func ("/place/marks/mirrored", test_mirrored);
  return g_test_run ();
}
