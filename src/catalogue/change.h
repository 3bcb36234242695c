/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lies between two exercises: the seconds to get from one to the other, and what they share. All seconds
 * are common practice, no source.
 */
#pragma once

#include "catalogue/exercise.h"

G_BEGIN_DECLS

/* The group that has to change: who they are and how quick the coach lets them be. */
typedef struct {
  LapLevel level;
  int      age;
  double   change; /* factor on all change seconds */
} LapChangeRule;

/* New to it, or 60 and over. */
gboolean lap_change_is_tender (const LapChangeRule *rule);

/* Seconds for the change of posture alone, with the factors of @rule, not rounded. */
double   lap_change_posture   (const LapChangeRule *rule,
                               LapPosture           from,
                               LapPosture           to);

/* Seconds to fetch the kit that @to needs and @from did not: the slowest piece. With the factor, not rounded. */
double   lap_change_kit       (const LapChangeRule *rule,
                               guint32              from,
                               guint32              to);

/* Seconds from one exercise to the next, rounded up; at stations at least 10. */
int      lap_change_seconds   (const LapChangeRule *rule,
                               const LapExercise   *from,
                               const LapExercise   *to,
                               gboolean             stations);

/* Steps of height from one posture to the other: up positive, down negative. */
int      lap_change_steps     (LapPosture           from,
                               LapPosture           to);

/* Whether the muscles @shared tire a pair of exercises one after the other: calves, outer hip and forearms only
 * count between two that load them (strength, weights, hold). */
gboolean lap_exercises_tire   (const LapExercise   *a,
                               const LapExercise   *b,
                               guint32             *shared);

G_END_DECLS
