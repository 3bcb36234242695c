/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Is a figure possible? Contacts, floor, joint ranges, balance and the frames between the keys, for
 * everybody who writes poses: the tests ask it of every exercise.
 *
 * Sources: joint ranges are the norms of the American Academy of Orthopaedic Surgeons (Joint Motion:
 * Method of Measuring and Recording, 1965), given beside each number, wider where a pose is loaded or
 * passive or where one segment stands for several joints (that widening is this project's judgement).
 * Masses and their middles: Dempster 1955 as printed in Winter, Biomechanics and Motor Control of Human
 * Movement, table 4.1; both tables from memory. Held weights count nothing.
 */
#pragma once

#include "figure/figure.h"

G_BEGIN_DECLS

/* One line for each problem, in no language but ours; empty when there is none. */
GPtrArray *lap_figure_problems (const LapFigure *figure);

/* The middle of mass of a pose, in units. */
LapFigPoint lap_pose_mass_middle (const LapFigure *figure, const LapFigurePose *pose);

/* Joint angles of a limb as clinicians count them (0 = standing at ease); first hip or shoulder, then knee
 * or elbow, then ankle (0 for arms). From the side only. */
void lap_pose_joint_angles (const LapFigurePose *pose, guint limb, double angles[3]);

G_END_DECLS
