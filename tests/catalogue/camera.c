/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far a camera must stand back. Outside check: pinhole geometry, as tabled below for a margin of 10 % all
 * round. The table is to the middle of the movement; the distance we give has half of the depth of its
 * footprint on top, because the nearest part must stay in the frame as well.
 */
#include "catalogue/camera.h"

#include <math.h>

/* Metres, two decimals. */
#define assert_near(a, b) g_assert_cmpfloat_with_epsilon ((a), (b), 0.0051)

typedef struct {
  const char *what;
  double across, height;
  double wide[4], high[4]; /* at 24, 26, 28 and 50 mm: what width asks for, and what height does */
  double landscape, portrait; /* at 26 mm */
} Row;

static const double lenses[] = { 24, 26, 28, 50 };

static const Row rows[] = {
  { "jumping jack, front", 2.0, 2.3, { 1.67, 1.81, 1.94, 3.47 }, { 3.41, 3.69, 3.98, 7.10 }, 3.69, 3.21 },
  { "squat", 1.0, 1.9, { 0.83, 0.90, 0.97, 1.74 }, { 2.81, 3.05, 3.28, 5.86 }, 3.05, 1.72 },
  { "push-up, side", 2.0, 0.9, { 1.67, 1.81, 1.94, 3.47 }, { 1.33, 1.44, 1.56, 2.78 }, 1.81, 3.21 },
  { "skater", 2.6, 1.9, { 2.17, 2.35, 2.53, 4.51 }, { 2.81, 3.05, 3.28, 5.86 }, 3.05, 4.17 },
  { "walking lunge, side", 4.0, 1.9, { 3.33, 3.61, 3.89, 6.94 }, { 2.81, 3.05, 3.28, 5.86 }, 3.61, 6.42 },
};

#define DEEP 0.6

static LapExercise
seen_from_front (const Row *row)
{
  return (LapExercise) { .view = LAP_VIEW_FRONT, .width = row->across, .length = DEEP,
                         .height = row->height };
}

static void
test_table (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      LapExercise e = seen_from_front (&rows[i]);

      g_test_message ("%s", rows[i].what);
      for (guint k = 0; k < G_N_ELEMENTS (lenses); k++)
        assert_near (lap_camera_distance (&e, lenses[k], FALSE) - DEEP / 2,
                     MAX (rows[i].wide[k], rows[i].high[k]));
      assert_near (lap_camera_distance (&e, 26, FALSE) - DEEP / 2, rows[i].landscape);
      assert_near (lap_camera_distance (&e, 26, TRUE) - DEEP / 2, rows[i].portrait);
    }
}

/* From the angles of view of the sensor, another way to the same numbers: at a distance d a lens sees 2 d
 * tan(a / 2) across. */
static void
test_angles (void)
{
  static const struct { double lens, horizontal, vertical; } angles[] = {
    { 24, 73.74, 45.75 }, { 26, 69.39, 42.55 }, { 28, 65.47, 39.76 }, { 35, 54.43, 32.27 },
    { 50, 39.60, 22.90 },
    { 18, 90.00, 58.72 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    for (guint k = 0; k < G_N_ELEMENTS (angles); k++)
      {
        LapExercise e = seen_from_front (&rows[i]);
        double d = lap_camera_distance (&e, angles[k].lens, FALSE) - DEEP / 2;
        double across = 2 * d * tan (angles[k].horizontal * G_PI / 360) * 0.8;
        double tall = 2 * d * tan (angles[k].vertical * G_PI / 360) * 0.8;

        /* Both fit, and one of them just so. */
        g_assert_cmpfloat (across, >, rows[i].across - 0.005);
        g_assert_cmpfloat (tall, >, rows[i].height - 0.005);
        g_assert_true (fabs (across - rows[i].across) < 0.005 || fabs (tall - rows[i].height) < 0.005);
      }
}

static void
test_views (void)
{
  static const struct { LapView view; double across, deep; } views[] = {
    { LAP_VIEW_FRONT, 1.0, 2.0 }, { LAP_VIEW_SIDE, 2.0, 1.0 }, { LAP_VIEW_THREE_QUARTER, 2.0, 2.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (views); i++)
    {
      const LapExercise e = { .view = views[i].view, .width = 1.0, .length = 2.0, .height = 0.1 };
      double across, deep;

      lap_camera_extent (&e, &across, &deep);
      g_assert_cmpfloat (across, ==, views[i].across);
      g_assert_cmpfloat (deep, ==, views[i].deep);
      assert_near (lap_camera_distance (&e, 36, FALSE), across / 0.8 + deep / 2);
    }
}

/* Common practice, no source: design §4.3. */
static void
test_heights (void)
{
  static const struct { LapPosture posture; LapImpact impact; double own, height; } heights[] = {
    { LAP_POSTURE_STANDING, LAP_IMPACT_LOW, 0, 1.9 }, { LAP_POSTURE_STANDING, LAP_IMPACT_HIGH, 0, 2.3 },
    { LAP_POSTURE_ON_CHAIR, LAP_IMPACT_NONE, 0, 1.4 }, { LAP_POSTURE_KNEELING, LAP_IMPACT_NONE, 0, 1.4 },
    { LAP_POSTURE_SEATED, LAP_IMPACT_NONE, 0, 1.4 }, { LAP_POSTURE_ALL_FOURS, LAP_IMPACT_NONE, 0, 0.9 },
    { LAP_POSTURE_HANDS_AND_FEET, LAP_IMPACT_HIGH, 0, 1.3 }, { LAP_POSTURE_PRONE, LAP_IMPACT_NONE, 0, 0.5 },
    { LAP_POSTURE_SUPINE, LAP_IMPACT_NONE, 0, 0.5 }, { LAP_POSTURE_SIDE_LYING, LAP_IMPACT_NONE, 0, 0.5 },
    { LAP_POSTURE_SIDE_LYING, LAP_IMPACT_HIGH, 1.2, 1.2 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (heights); i++)
    {
      const LapExercise e = { .posture = heights[i].posture, .impact = heights[i].impact,
                              .height = heights[i].own };

      g_assert_cmpfloat_with_epsilon (lap_exercise_height (&e), heights[i].height, 1e-9);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/camera/table", test_table);
  g_test_add_func ("/camera/angles", test_angles);
  g_test_add_func ("/camera/views", test_views);
  g_test_add_func ("/camera/heights", test_heights);
  return g_test_run ();
}
