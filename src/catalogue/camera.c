/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/camera.h"

#define SENSOR_LONG  36.0
#define SENSOR_SHORT 20.25
#define KEPT         0.8

void
lap_camera_extent (const LapExercise *e, double *across, double *deep)
{
  switch (e->view) {
  case LAP_VIEW_SIDE:
    *across = e->length;
    *deep = e->width;
    break;
  case LAP_VIEW_FRONT:
    *across = e->width;
    *deep = e->length;
    break;
  default: /* in between: the larger of both, to be safe */
    *across = *deep = MAX (e->width, e->length);
    break;
  }
}

double
lap_camera_distance (const LapExercise *e, double lens, gboolean portrait)
{
  double across, deep, wide, high;

  lap_camera_extent (e, &across, &deep);
  wide = across * lens / ((portrait ? SENSOR_SHORT : SENSOR_LONG) * KEPT);
  high = lap_exercise_height (e) * lens / ((portrait ? SENSOR_LONG : SENSOR_SHORT) * KEPT);
  return MAX (wide, high) + deep / 2;
}

gboolean
lap_camera_fits (const LapExercise *e, double lens, gboolean portrait, double room, double above)
{
  double needs = lap_camera_distance (e, lens, portrait), slant = above - lap_exercise_height (e) / 2;

  return needs * needs <= room * room + slant * slant;
}
