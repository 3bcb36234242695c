/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Seconds to change from one exercise to the next, against the rows of design §4.3; common practice, no
 * source.
 */
#include "catalogue/change.h"

typedef struct {
  LapPosture posture;
  guint32 kit;
} Move;

static const LapChangeRule mixed = { LAP_LEVEL_MIXED, 40, 1.0 };
static const LapChangeRule new_to_it = { LAP_LEVEL_NEW, 40, 1.0 };
static const LapChangeRule sixty = { LAP_LEVEL_MIXED, 60, 1.0 };
static const LapChangeRule trained = { LAP_LEVEL_TRAINED, 40, 1.0 };
static const LapChangeRule trained_sixty = { LAP_LEVEL_TRAINED, 60, 1.0 };

static int
seconds (const LapChangeRule *rule, Move from, Move to, gboolean stations)
{
  const LapExercise a = { .posture = from.posture, .kit_mask = from.kit };
  const LapExercise b = { .posture = to.posture, .kit_mask = to.kit };

  return lap_change_seconds (rule, &a, &b, stations);
}

/* Standing and on a chair 3, kneeling 2, seated, all fours, hands and feet 1, lying 0. */
static void
test_heights (void)
{
  static const int heights[LAP_N_POSTURES] = {
    [LAP_POSTURE_STANDING] = 3, [LAP_POSTURE_ON_CHAIR] = 3, [LAP_POSTURE_KNEELING] = 2,
    [LAP_POSTURE_SEATED] = 1,
    [LAP_POSTURE_ALL_FOURS] = 1, [LAP_POSTURE_HANDS_AND_FEET] = 1, [LAP_POSTURE_PRONE] = 0,
    [LAP_POSTURE_SUPINE] = 0,
    [LAP_POSTURE_SIDE_LYING] = 0,
  };

  for (guint a = 0; a < LAP_N_POSTURES; a++)
    for (guint b = 0; b < LAP_N_POSTURES; b++)
      g_assert_cmpint (lap_change_steps (a, b), ==, heights[b] - heights[a]);
}

static void
test_postures (void)
{
  /* From a height (row) to a height (column), lying first, in another posture. */
  static const int expected[4][4] = {
    { 2, 3, 5, 7 },
    { 2, 2, 3, 5 },
    { 3, 2, 2, 3 },
    { 5, 3, 2, 2 },
  };

  for (guint a = 0; a < LAP_N_POSTURES; a++)
    for (guint b = 0; b < LAP_N_POSTURES; b++)
      g_assert_cmpint (seconds (&mixed, (Move) { a, 0 }, (Move) { b, 0 }, FALSE), ==,
                       a == b ? 0 : expected[lap_posture_height (a)][lap_posture_height (b)]);
}

static void
test_kit (void)
{
  static const struct { LapKitWord word; int seconds; } rows[] = {
    { LAP_KIT_DUMBBELLS, 3 }, { LAP_KIT_DUMBBELL, 3 }, { LAP_KIT_KETTLEBELL, 3 }, { LAP_KIT_BALL, 3 },
    { LAP_KIT_MEDICINE_BALL, 3 }, { LAP_KIT_ROPE, 4 }, { LAP_KIT_STRAP, 4 }, { LAP_KIT_STEP, 5 },
    { LAP_KIT_BENCH, 5 },
    { LAP_KIT_CHAIR, 5 }, { LAP_KIT_BAR, 5 }, { LAP_KIT_BIKE, 5 }, { LAP_KIT_ROWER, 5 },
    { LAP_KIT_PARTNER, 5 },
    { LAP_KIT_BAND, 8 }, { LAP_KIT_LOOP_BAND, 8 }, { LAP_KIT_ANCHOR, 8 }, { LAP_KIT_MAT, 0 },
    { LAP_KIT_WALL, 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      Move bare = { LAP_POSTURE_STANDING, 0 }, with = { LAP_POSTURE_STANDING, LAP_BIT (rows[i].word) };

      g_assert_cmpint (seconds (&mixed, bare, with, FALSE), ==, rows[i].seconds);
      /* What is put down or kept takes no time. */
      g_assert_cmpint (seconds (&mixed, with, bare, FALSE), ==, 0);
      g_assert_cmpint (seconds (&mixed, with, with, FALSE), ==, 0);
    }
}

#define BAND  LAP_BIT (LAP_KIT_BAND)
#define BELL  LAP_BIT (LAP_KIT_KETTLEBELL)
#define STEP  LAP_BIT (LAP_KIT_STEP)
#define UP    LAP_POSTURE_STANDING
#define DOWN  LAP_POSTURE_SUPINE
#define KNEEL LAP_POSTURE_KNEELING

static void
test_together (void)
{
  static const struct { const LapChangeRule *rule; Move from, to; int seconds; } rows[] = {
    /* Posture and kit are added; of the kit only the largest. */
    { &mixed, { DOWN, 0 }, { UP, BELL }, 7 + 3 },
    { &mixed, { DOWN, 0 }, { UP, BELL | BAND | STEP }, 7 + 8 },
    { &mixed, { DOWN, BAND }, { UP, BELL | BAND }, 7 + 3 },
    /* The factor of the group is for the posture alone: 7 × 1.5 and 7 × 0.8, rounded up with the kit. */
    { &new_to_it, { DOWN, 0 }, { UP, 0 }, 11 },
    { &new_to_it, { DOWN, 0 }, { UP, BELL }, 14 },
    { &new_to_it, { UP, 0 }, { UP, BELL }, 3 },
    { &sixty, { UP, 0 }, { DOWN, 0 }, 8 },
    { &trained, { DOWN, 0 }, { UP, 0 }, 6 },
    { &trained, { DOWN, 0 }, { UP, BELL }, 9 },
    { &trained, { UP, 0 }, { DOWN, 0 }, 4 },
    { &trained, { UP, 0 }, { KNEEL, 0 }, 2 },
    { &trained_sixty, { UP, 0 }, { KNEEL, 0 }, 3 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpint (seconds (rows[i].rule, rows[i].from, rows[i].to, FALSE), ==, rows[i].seconds);
}

static void
test_factor (void)
{
  static const struct { double change; int seconds; } rows[] = {
    { 0, 0 }, { 0.1, 1 }, { 0.5, 5 }, { 1, 10 }, { 1.01, 11 }, { 1.2, 12 }, { 2, 20 },
  };
  const LapChangeRule fine = { LAP_LEVEL_TRAINED, 40, 1.25 };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      LapChangeRule rule = { LAP_LEVEL_MIXED, 40, rows[i].change };

      /* 7 s up and 3 s for the kettlebell. */
      g_assert_cmpint (seconds (&rule, (Move) { DOWN, 0 }, (Move) { UP, BELL }, FALSE), ==, rows[i].seconds);
    }
  /* 3 × 0.8 × 1.25 is 3, though not in doubles. */
  g_assert_cmpint (seconds (&fine, (Move) { DOWN, 0 }, (Move) { LAP_POSTURE_SEATED, 0 }, FALSE), ==, 3);
}

static void
test_stations (void)
{
  g_assert_cmpint (seconds (&mixed, (Move) { UP, 0 }, (Move) { UP, 0 }, TRUE), ==, 10);
  g_assert_cmpint (seconds (&mixed, (Move) { DOWN, 0 }, (Move) { UP, BELL }, TRUE), ==, 10);
  g_assert_cmpint (seconds (&mixed, (Move) { DOWN, 0 }, (Move) { UP, BAND }, TRUE), ==, 15);
}

/* Calves, outer hip and forearms only between two that load them. */
static void
test_tire (void)
{
  static const struct { LapMuscle muscle; LapMove a, b; gboolean tires; } rows[] = {
    { LAP_MUSCLE_QUADS, LAP_MOVE_DYNAMIC, LAP_MOVE_STRETCH, TRUE },
    { LAP_MUSCLE_CALVES, LAP_MOVE_STRENGTH, LAP_MOVE_HOLD, TRUE },
    { LAP_MUSCLE_CALVES, LAP_MOVE_STRENGTH, LAP_MOVE_DYNAMIC, FALSE },
    { LAP_MUSCLE_OUTER_HIP, LAP_MOVE_WEIGHTS, LAP_MOVE_STRENGTH, TRUE },
    { LAP_MUSCLE_OUTER_HIP, LAP_MOVE_STEP, LAP_MOVE_STRENGTH, FALSE },
    { LAP_MUSCLE_FOREARMS, LAP_MOVE_SWING, LAP_MOVE_WEIGHTS, FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const LapExercise a = { .move = rows[i].a,
                              .primary_mask = LAP_BIT (rows[i].muscle) | LAP_BIT (LAP_MUSCLE_ABS) };
      const LapExercise b = { .move = rows[i].b, .primary_mask = LAP_BIT (rows[i].muscle) };
      const LapExercise other = { .move = rows[i].b, .primary_mask = LAP_BIT (LAP_MUSCLE_NECK) };
      guint32 shared;

      g_assert_cmpint (lap_exercises_tire (&a, &b, &shared), ==, rows[i].tires);
      g_assert_cmpuint (shared, ==, rows[i].tires ? LAP_BIT (rows[i].muscle) : 0);
      g_assert_false (lap_exercises_tire (&a, &other, NULL));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/change/heights", test_heights);
  g_test_add_func ("/change/postures", test_postures);
  g_test_add_func ("/change/kit", test_kit);
  g_test_add_func ("/change/together", test_together);
  g_test_add_func ("/change/factor", test_factor);
  g_test_add_func ("/change/stations", test_stations);
  g_test_add_func ("/change/tire", test_tire);
  return g_test_run ();
}
