/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/scene.h"

#include <glib/gi18n-lib.h>

#define FLASH 0.4  /* seconds that the edge takes to fade */
#define SYNC  0.12 /* seconds of the flash at 0:00 */
#define LAST  3    /* seconds before a boundary that are told one by one */

LapScene *
lap_scene_new (LapTimeline *timeline, LapCheckup *checkup, LapTimeSource source, gpointer data)
{
  LapScene *scene = g_new0 (LapScene, 1);

  scene->timeline = lap_timeline_ref (timeline);
  scene->checkup = lap_checkup_ref (checkup);
  scene->script = lap_script_new (lap_checkup_talk (checkup));
  scene->rehearsal = lap_rehearsal_new (timeline, source, data);
  scene->takes = lap_takes_new (scene->rehearsal);
  scene->unit = 8;
  lap_scene_tick (scene);
  return scene;
}

void
lap_scene_free (LapScene *scene)
{
  lap_takes_free (scene->takes);
  lap_rehearsal_free (scene->rehearsal);
  lap_script_free (scene->script);
  lap_checkup_unref (scene->checkup);
  lap_timeline_unref (scene->timeline);
  g_free (scene);
}

void
lap_scene_tick (LapScene *scene)
{
  lap_rehearsal_tick (scene->rehearsal);
  lap_takes_look (scene->takes);
  scene->state = lap_rehearsal_state (scene->rehearsal);
  scene->clock = lap_rehearsal_clock (scene->rehearsal);
  scene->count_in = lap_rehearsal_count_in (scene->rehearsal);
  scene->moment = lap_moment_at (scene->timeline, scene->script, scene->clock);
}

const LapTask *
lap_scene_task (const LapScene *scene, const LapTurn *turn)
{
  return turn != NULL ? &scene->timeline->tasks[turn->task] : NULL;
}

gboolean
lap_scene_works (const LapScene *scene)
{
  const LapInterval *interval = scene->moment.interval;

  return interval != NULL && interval->kind == LAP_INTERVAL_WORK;
}

LapLayout
lap_scene_layout (const LapScene *scene)
{
  const LapMoment *moment = &scene->moment;
  const LapInterval *interval = moment->interval;

  if (interval == NULL || interval->kind == LAP_INTERVAL_WORK ||
      (moment->turn != NULL && interval->start >= moment->turn->start))
    return LAP_LAYOUT_WORK;
  if (interval->kind == LAP_INTERVAL_TALK && moment->n_lines > 0 && moment->lines[0]->kind == LAP_LINE_TALK &&
      moment->lines[0]->start < interval->start + interval->seconds)
    return LAP_LAYOUT_READ;
  return LAP_LAYOUT_REST;
}

guint
lap_scene_block (const LapScene *scene, const LapTurn *turn, guint *n)
{
  const LapStretch *part = &scene->timeline->parts[turn->part];
  guint place = 0;

  *n = 0;
  for (guint i = part->turn; i < part->turn + part->n_turns; i++) {
    const LapTurn *other = &scene->timeline->turns[i];

    if (other->round != turn->round)
      continue;
    (*n)++;
    if (other == turn)
      place = *n;
  }
  return place;
}

double
lap_scene_edge (const LapScene *scene)
{
  const LapMoment *moment = &scene->moment;
  double since;

  if (scene->state != LAP_REHEARSAL_RUNNING || moment->interval == NULL)
    return 0;
  since = scene->clock / (double) LAP_SECOND - moment->interval->start;
  if (since >= 1 && scene->pulses && moment->left <= LAST)
    since -= (int) since;
  if (scene->still || scene->calm)
    return since < 1 ? 1 : 0;
  return since < FLASH ? 1 - since / FLASH : 0;
}

gboolean
lap_scene_sync (const LapScene *scene)
{
  return scene->state == LAP_REHEARSAL_RUNNING && scene->clock < SYNC * LAP_SECOND;
}

char *
lap_scene_name (const LapScene *scene, const LapTurn *turn)
{
  const LapInterval *interval = &scene->timeline->intervals[turn->interval];
  const char *name = lap_task_name (lap_scene_task (scene, turn));

  if (scene->timeline->parts[turn->part].part->run == LAP_RUN_OWN_PACE)
    return g_strdup (lap_part_title (scene->timeline->parts[turn->part].part));
  if (scene->moment.turn == turn && lap_scene_works (scene))
    interval = scene->moment.interval;
  switch (interval->side) {
    case LAP_SIDE_LEFT:
      return g_strdup_printf (_("%s, left"), name);
    case LAP_SIDE_RIGHT:
      return g_strdup_printf (_("%s, right"), name);
    default:
      return g_strdup (name);
  }
}
