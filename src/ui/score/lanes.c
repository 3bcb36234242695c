/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lanes in the order they stand.
 */
#include "ui/score/lane.h"

static const LapLaneKind *const kinds[] = {
  &lap_lane_ruler, &lap_lane_parts, &lap_lane_blocks, &lap_lane_muscles, &lap_lane_posture, &lap_lane_effort,
  &lap_lane_talk,
};

guint
lap_lanes_n (void)
{
  return G_N_ELEMENTS (kinds);
}

const LapLaneKind *
lap_lanes_nth (guint n)
{
  return n < G_N_ELEMENTS (kinds) ? kinds[n] : NULL;
}
