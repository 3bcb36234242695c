/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "effort/balance.h"

#include "effort/demand.h"

#define FRONT (LAP_BIT (LAP_MUSCLE_QUADS) | LAP_BIT (LAP_MUSCLE_HIP_FLEXORS) | LAP_BIT (LAP_MUSCLE_SHINS))
#define BACK (LAP_BIT (LAP_MUSCLE_GLUTES) | LAP_BIT (LAP_MUSCLE_HAMSTRINGS) | LAP_BIT (LAP_MUSCLE_CALVES))
#define PUSH (LAP_BIT (LAP_PATTERN_PUSH_HORIZONTAL) | LAP_BIT (LAP_PATTERN_PUSH_VERTICAL))
#define PULL (LAP_BIT (LAP_PATTERN_PULL_HORIZONTAL) | LAP_BIT (LAP_PATTERN_PULL_VERTICAL))

static void
add_where (int *seconds, guint n, guint32 mask, int work)
{
  for (guint i = 0; i < n; i++)
    if (mask & LAP_BIT (i))
      seconds[i] += work;
}

static void
add (LapBalance *balance, const LapTask *task, int work)
{
  const LapExercise *exercise = task->shown;
  guint32 hard = lap_muscle_regions (task->primary);

  balance->work += work;
  add_where (balance->primary, LAP_N_REGIONS, hard, work);
  add_where (balance->secondary, LAP_N_REGIONS, lap_muscle_regions (task->secondary) & ~hard, work);
  add_where (balance->posture, LAP_N_POSTURES, LAP_BIT (exercise->posture), work);
  add_where (balance->care, LAP_N_CARE, task->load_mask, work);
  add_where (&balance->push, 1, (LAP_BIT (exercise->pattern) & PUSH) != 0, work);
  add_where (&balance->pull, 1, (LAP_BIT (exercise->pattern) & PULL) != 0, work);
  add_where (&balance->front, 1, (task->primary & FRONT) != 0, work);
  add_where (&balance->back, 1, (task->primary & BACK) != 0, work);
}

static double
weights_of (const LapTimeline *timeline, const LapStretch *stretch)
{
  double sum = 0;

  for (guint i = 0; i < stretch->n_turns; i++)
    sum += lap_demand_weight (timeline, &timeline->turns[stretch->turn + i]);
  return sum;
}

void
lap_balance_of (const LapTimeline *timeline, guint32 kinds, LapBalance *balance)
{
  *balance = (LapBalance) { 0 };
  for (guint p = 0; p < timeline->n_parts; p++) {
    const LapStretch *stretch = &timeline->parts[p];
    gboolean shares = stretch->part->run == LAP_RUN_OWN_PACE;
    double weights = shares ? weights_of (timeline, stretch) : 0;

    if (!(kinds & LAP_BIT (stretch->part->kind)))
      continue;
    for (guint i = 0; i < stretch->n_turns; i++) {
      const LapTurn *turn = &timeline->turns[stretch->turn + i];
      const LapTask *task = &timeline->tasks[turn->task];

      if (task->shown != NULL)
        add (balance, task, shares ? (int) (stretch->work * lap_demand_weight (timeline, turn) / weights + 0.5)
                                   : turn->work);
    }
  }
}
