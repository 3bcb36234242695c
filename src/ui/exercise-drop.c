/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/exercise-drop.h"

G_DEFINE_BOXED_TYPE (LapExerciseDrop, lap_exercise_drop, lap_exercise_drop_copy, lap_exercise_drop_free)

LapExerciseDrop *
lap_exercise_drop_new (const char *id)
{
  LapExerciseDrop *drop = g_new (LapExerciseDrop, 1);

  drop->id = g_strdup (id);
  return drop;
}

LapExerciseDrop *
lap_exercise_drop_copy (const LapExerciseDrop *drop)
{
  return lap_exercise_drop_new (drop->id);
}

void
lap_exercise_drop_free (LapExerciseDrop *drop)
{
  g_free (drop->id);
  g_free (drop);
}
