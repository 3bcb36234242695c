/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Work costs what the shown exercise costs at its pace. A rest, a set rest and a change of sides cost standing about,
 * or what is done in rests; a talk means showing, but for the first and last words of a session.
 */
#include "effort/demand.h"

#define STANDING 1.3 /* METs: 07040 of the 2011 Compendium, standing quietly */
#define SHOWING  2.0 /* METs of a talk between work: the group follows the coach's showing; common practice */

/* What goes on while a part is run. */
typedef struct {
  const LapTimeline *timeline;
  const LapStretch  *stretch;
  guint              station;
  double             rest, talk, own_pace;
  guint              turn; /* of the interval at hand, counted in the part */
} Walk;

static double
met_hard (const LapTask *task)
{
  if (task->shown == NULL || task->pace == LAP_PACE_HARD)
    return task->met;
  return task->met / task->shown->met_steady * task->shown->met_hard;
}

double
lap_demand_weight (const LapTimeline *timeline, const LapTurn *turn)
{
  const LapTask *task = &timeline->tasks[turn->task];

  return task->estimate > 0 ? task->estimate : task->work;
}

static double
own_pace_met (const LapTimeline *timeline, const LapStretch *stretch)
{
  double sum = 0, weights = 0;

  for (guint i = 0; i < stretch->n_turns; i++) {
    const LapTurn *turn = &timeline->turns[stretch->turn + i];
    double weight = lap_demand_weight (timeline, turn);

    sum += weight * met_hard (&timeline->tasks[turn->task]);
    weights += weight;
  }
  return weights > 0 ? sum / weights : STANDING;
}

static void
begin_part (Walk *walk, const LapStretch *stretch)
{
  const LapPart *part = stretch->part;
  const LapExercise *exercise;

  exercise = part->rest_as != NULL ? lap_catalogue_find (walk->timeline->catalogue, part->rest_as) : NULL;
  walk->stretch = stretch;
  walk->turn = 0;
  walk->rest = exercise != NULL ? exercise->met_steady : STANDING;
  walk->talk = part->kind == LAP_PART_OPENING || part->kind == LAP_PART_CLOSING ? STANDING : SHOWING;
  walk->own_pace = part->run == LAP_RUN_OWN_PACE ? own_pace_met (walk->timeline, stretch) : 0;
}

guint
lap_demand_stations (const LapStretch *stretch)
{
  return stretch->part->run == LAP_RUN_STATIONS ? stretch->n_turns / stretch->part->rounds : 0;
}

static double
work_met (Walk *walk, guint index)
{
  const LapTimeline *t = walk->timeline;
  const LapStretch *stretch = walk->stretch;
  guint stations = lap_demand_stations (stretch), round;

  if (t->intervals[index].task == LAP_NO_TASK)
    return walk->own_pace;
  if (stations == 0)
    return t->tasks[t->intervals[index].task].met;
  while (walk->turn + 1 < stretch->n_turns && t->turns[stretch->turn + walk->turn + 1].interval <= index)
    walk->turn++;
  round = walk->turn / stations * stations;
  return t->tasks[t->turns[stretch->turn + round + (walk->turn + walk->station) % stations].task].met;
}

static double
interval_met (Walk *walk, guint index)
{
  switch (walk->timeline->intervals[index].kind) {
    case LAP_INTERVAL_WORK:
      return work_met (walk, index);
    case LAP_INTERVAL_REST:
    case LAP_INTERVAL_SET_REST:
    case LAP_INTERVAL_SWITCH:
      return walk->rest;
    case LAP_INTERVAL_TALK:
      return walk->talk;
    default:
      return STANDING;
  }
}

double *
lap_demand_mets (const LapTimeline *timeline, guint station)
{
  double *mets = g_new (double, MAX (1, timeline->n));
  Walk walk = { .timeline = timeline, .station = station };

  for (guint p = 0; p < timeline->n_parts; p++) {
    const LapStretch *stretch = &timeline->parts[p];

    begin_part (&walk, stretch);
    for (guint i = stretch->interval; i < stretch->interval + stretch->n_intervals; i++)
      mets[i] = interval_met (&walk, i);
  }
  return mets;
}
