/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "timeline/task.h"

#include <glib/gi18n-lib.h>
#include <math.h>

int
lap_reps_seconds (guint reps, const char *tempo, const LapExercise *exercise, gboolean split)
{
  double each = lap_tempo_seconds (tempo);

  if (each == 0 && exercise != NULL)
    each = exercise->seconds_per_rep;
  return (int) ceil (LAP_REPS_HIGH (reps) * each * (split ? 2 : 1) - 1e-9);
}

/* The members of a block that a round may change, as they are in that round. */
static void
apply_round (LapTask *task, const LapBlock *block, const LapChange *change, const LapStep *step)
{
  task->wanted = block->exercise;
  task->work = step != NULL ? step->work : block->work;
  task->rest = step != NULL ? step->rest : block->rest;
  task->reps = block->reps;
  task->load = block->load;
  task->pace = block->pace;
  task->option = block->option;
  task->sides = block->sides;
  task->say = block->say;
  task->note = block->note;
  if (change == NULL)
    return;
#define TAKE(bit, field) if (LAP_CHANGE_HAS (change, bit)) task->field = change->field
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_EXERCISE))
    task->wanted = change->exercise;
  TAKE (LAP_CHANGE_WORK, work);
  TAKE (LAP_CHANGE_REST, rest);
  TAKE (LAP_CHANGE_REPS, reps);
  TAKE (LAP_CHANGE_LOAD, load);
  TAKE (LAP_CHANGE_PACE, pace);
  TAKE (LAP_CHANGE_OPTION, option);
  TAKE (LAP_CHANGE_SIDES, sides);
  TAKE (LAP_CHANGE_SAY, say);
  TAKE (LAP_CHANGE_NOTE, note);
#undef TAKE
}

/* The exercise after its option, and what follows from it. */
static void
apply_exercise (LapTask *task, LapCatalogue *catalogue)
{
  double factor = 1;

  task->exercise = task->wanted != NULL ? lap_catalogue_find (catalogue, task->wanted) : NULL;
  if (task->exercise == NULL)
    return;
  task->shown = lap_catalogue_shown (catalogue, task->exercise, task->option, &factor);
  task->met = (task->pace == LAP_PACE_HARD ? task->shown->met_hard : task->shown->met_steady) * factor;
  task->primary = task->shown->primary_mask;
  task->secondary = task->shown->secondary_mask;
  task->care = task->shown->care_mask;
  task->load_mask = task->shown->load_mask;
  task->kit = task->shown->kit_mask;
  if (task->sides < 0)
    task->sides = task->shown->sides;
}

LapTask
lap_task_resolve (LapCatalogue *catalogue, const LapPart *part, LapBlock *block, int round, const LapStep *step)
{
  LapTask task = { .block = block, .met = 1.3, .sides = -1 };

  if (block->kind != LAP_BLOCK_EXERCISE) {
    task.work = block->seconds;
    task.note = block->note;
    return task;
  }
  apply_round (&task, block, lap_changes_find (block->in_round, round), step);
  if (task.pace < 0)
    task.pace = part->kind == LAP_PART_MAIN ? LAP_PACE_HARD : LAP_PACE_STEADY;
  apply_exercise (&task, catalogue);
  if (task.sides < 0)
    task.sides = LAP_SIDES_BOTH;
  if (task.reps != 0)
    task.estimate = lap_reps_seconds (task.reps, block->tempo, task.shown, task.sides == LAP_SIDES_SPLIT);
  return task;
}

const char *
lap_task_name (const LapTask *task)
{
  if (task->shown != NULL)
    return lap_exercise_name (task->shown);
  if (task->block->kind == LAP_BLOCK_TALK)
    return _("Talk");
  if (task->block->kind == LAP_BLOCK_PAUSE)
    return task->block->pause != NULL && *task->block->pause != '\0' ? task->block->pause : _("Pause");
  return task->wanted != NULL ? task->wanted : _("Not chosen yet");
}
