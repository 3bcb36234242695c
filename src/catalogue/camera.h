/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far away a camera must stand so that a movement stays in the frame, seen from its side to film from.
 *
 * Distance = max (W f / (36 k), H f / (20.25 k)) + half the depth, for a 36 × 24 mm sensor cropped to 16:9, with a
 * margin of 10 % all round (k = 0.8). Upright the two sensor sides change places. Geometry; margins are common
 * practice.
 */
#pragma once

#include "catalogue/exercise.h"

G_BEGIN_DECLS

/* @lens is a full-frame equivalent focal length in mm; metres. */
double lap_camera_distance (const LapExercise *exercise,
                            double             lens,
                            gboolean           portrait);

/* Whether it stays in the frame in a room that gives the camera @room metres, with the lens @above the floor: one above
 * or below the middle of the body looks along a slant, which gains a little. */
gboolean lap_camera_fits  (const LapExercise *exercise,
                           double             lens,
                           gboolean           portrait,
                           double             room,
                           double             above);

/* What the camera sees of the exercise, metres: across the frame, and towards the lens. */
void   lap_camera_extent   (const LapExercise *exercise,
                            double            *across,
                            double            *deep);

G_END_DECLS
