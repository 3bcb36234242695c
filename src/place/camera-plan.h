/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The camera plan of a session: the side to film each block from, how far away the camera keeps it in the frame, and
 * the one block that decides where a camera stands that isn't moved. Distances are those of catalogue/camera.h, told
 * rounded up to a tenth: what is rounded down would be cut.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

/* The turn that needs the camera furthest away, the first of several; NULL where no exercise is known. @distance, when
 * wanted, gets the metres. */
const LapTurn *lap_camera_governs   (const LapTimeline *timeline,
                                     double            *distance);

/* "3.7 m" for what a block needs in the rounds it is done in; NULL where its exercises aren't known. */
char          *lap_camera_block_text (const LapTimeline *timeline,
                                     guint              part,
                                     guint              block);

/* A sentence about one fixed set-up: where it stands, for which block, and whether the room gives that. NULL where
 * nothing is to be filmed. */
char          *lap_camera_plan_text (const LapTimeline *timeline);

G_END_DECLS
