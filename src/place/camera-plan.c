/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/camera-plan.h"

#include "base/customs.h"
#include "catalogue/camera.h"

#include <glib/gi18n-lib.h>

static double
turn_distance (const LapTimeline *timeline, const LapTurn *turn)
{
  const LapSession *session = timeline->session;
  const LapExercise *shown = timeline->tasks[turn->task].shown;

  return shown != NULL ? lap_camera_distance (shown, session->lens, session->frame == LAP_FRAME_PORTRAIT) : 0;
}

const LapTurn *
lap_camera_governs (const LapTimeline *timeline, double *distance)
{
  const LapTurn *governs = NULL;
  double most = 0;

  for (guint i = 0; i < timeline->n_turns; i++) {
    double needs = turn_distance (timeline, &timeline->turns[i]);

    if (needs > most) {
      most = needs;
      governs = &timeline->turns[i];
    }
  }
  if (distance != NULL)
    *distance = most;
  return governs;
}

char *
lap_camera_block_text (const LapTimeline *timeline, guint part, guint block)
{
  const LapStretch *stretch = &timeline->parts[part];
  double most = 0;

  for (guint i = 0; i < stretch->n_turns; i++) {
    const LapTurn *turn = &timeline->turns[stretch->turn + i];

    if (turn->block == block)
      most = MAX (most, turn_distance (timeline, turn));
  }
  return most > 0 ? lap_distance_up_text (most) : NULL;
}

char *
lap_camera_plan_text (const LapTimeline *timeline)
{
  const LapSession *session = timeline->session;
  double needs;
  const LapTurn *governs = lap_camera_governs (timeline, &needs);
  g_autofree char *away = lap_distance_up_text (needs), *room = lap_distance_text (session->room), *plan = NULL;

  if (governs == NULL)
    return NULL;
  /* Translators: "Camera, one fixed set-up: 3.7 m away with 26 mm, landscape. Step jack needs the most." */
  plan = g_strdup_printf (_("Camera, one fixed set-up: %s away with %g mm, %s. %s needs the most."), away, session->lens,
                          session->frame == LAP_FRAME_PORTRAIT ? _("upright") : _("landscape"),
                          lap_task_name (&timeline->tasks[governs->task]));
  if (lap_camera_fits (timeline->tasks[governs->task].shown, session->lens, session->frame == LAP_FRAME_PORTRAIT,
                       session->room, session->camera_height))
    return g_steal_pointer (&plan);
  /* Translators: what stands before it is the sentence about the camera. */
  return g_strdup_printf (_("%s The room gives %s: move the camera, or use a wider lens."), plan, room);
}
