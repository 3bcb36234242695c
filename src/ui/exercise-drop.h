/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An exercise on its way from the catalogue to the score: what a drag carries within the program. It is a type of
 * its own, so that the score takes an exercise and never a text that happens to look like one.
 *
 * A source provides it by gdk_content_provider_new_typed (LAP_TYPE_EXERCISE_DROP, drop), which copies it; a target
 * asks for LAP_TYPE_EXERCISE_DROP.
 */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

typedef struct {
  char *id; /* of the exercise in the catalogue */
} LapExerciseDrop;

#define LAP_TYPE_EXERCISE_DROP (lap_exercise_drop_get_type ())
GType            lap_exercise_drop_get_type (void);

LapExerciseDrop *lap_exercise_drop_new      (const char            *id);
LapExerciseDrop *lap_exercise_drop_copy     (const LapExerciseDrop *drop);
void             lap_exercise_drop_free     (LapExerciseDrop       *drop);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapExerciseDrop, lap_exercise_drop_free)

G_END_DECLS
