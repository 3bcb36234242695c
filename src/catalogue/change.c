/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/change.h"

#include <math.h>

static const double down_seconds[] = { 2, 2, 3, 5 }, up_seconds[] = { 2, 3, 5, 7 };

static const double kit_seconds[LAP_N_KIT] = {
  [LAP_KIT_MAT] = 0, [LAP_KIT_WALL] = 0,
  [LAP_KIT_DUMBBELLS] = 3, [LAP_KIT_DUMBBELL] = 3, [LAP_KIT_KETTLEBELL] = 3, [LAP_KIT_BALL] = 3,
  [LAP_KIT_MEDICINE_BALL] = 3, [LAP_KIT_ROLLER] = 3,
  [LAP_KIT_ROPE] = 4, [LAP_KIT_STRAP] = 4,
  [LAP_KIT_STEP] = 5, [LAP_KIT_BENCH] = 5, [LAP_KIT_CHAIR] = 5, [LAP_KIT_BAR] = 5, [LAP_KIT_BIKE] = 5,
  [LAP_KIT_ROWER] = 5, [LAP_KIT_PARTNER] = 5,
  [LAP_KIT_BAND] = 8, [LAP_KIT_LOOP_BAND] = 8, [LAP_KIT_ANCHOR] = 8,
};

gboolean
lap_change_is_tender (const LapChangeRule *rule)
{
  return rule->level == LAP_LEVEL_NEW || rule->age >= 60;
}

int
lap_change_steps (LapPosture from, LapPosture to)
{
  return lap_posture_height (to) - lap_posture_height (from);
}

double
lap_change_posture (const LapChangeRule *rule, LapPosture from, LapPosture to)
{
  int steps = lap_change_steps (from, to);
  double seconds, factor;

  if (from == to)
    return 0;
  seconds = steps > 0 ? up_seconds[steps] : down_seconds[-steps];
  factor = lap_change_is_tender (rule) ? 1.5 : rule->level == LAP_LEVEL_TRAINED ? 0.8 : 1;
  return seconds * factor * rule->change;
}

double
lap_change_kit (const LapChangeRule *rule, guint32 from, guint32 to)
{
  double slowest = 0;

  for (guint32 fetched = to & ~from; fetched != 0; fetched &= fetched - 1)
    slowest = MAX (slowest, kit_seconds[g_bit_nth_lsf (fetched, -1)]);
  return slowest * rule->change;
}

int
lap_change_seconds (const LapChangeRule *rule, const LapExercise *from, const LapExercise *to, gboolean stations)
{
  double seconds = lap_change_posture (rule, from->posture, to->posture) +
                   lap_change_kit (rule, from->kit_mask, to->kit_mask);
  /* 3 × 0.8 × 1 is 2.4000000000000004: rounding up must not see the last bit. */
  int whole = (int) ceil (seconds - 1e-9);

  return stations ? MAX (whole, 10) : whole;
}

static gboolean
loads (const LapExercise *e)
{
  return e->move == LAP_MOVE_STRENGTH || e->move == LAP_MOVE_WEIGHTS || e->move == LAP_MOVE_HOLD;
}

gboolean
lap_exercises_tire (const LapExercise *a, const LapExercise *b, guint32 *shared)
{
  const guint32 small = LAP_BIT (LAP_MUSCLE_CALVES) | LAP_BIT (LAP_MUSCLE_OUTER_HIP) | LAP_BIT (LAP_MUSCLE_FOREARMS);
  guint32 both = a->primary_mask & b->primary_mask;

  if (!(loads (a) && loads (b)))
    both &= ~small;
  if (shared != NULL)
    *shared = both;
  return both != 0;
}
