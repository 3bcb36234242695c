/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is said of a box: to read in the pane and to hear.
 */
#pragma once

#include "place/score.h"

G_BEGIN_DECLS

/* "Squat", "Talk", "Pause: water". Translated; transfer full. */
char *lap_box_name  (const LapScore *score,
                     guint           box);
/* "block 1 of 10, round 1". */
char *lap_box_where (const LapScore *score,
                     guint           box);
/* "Squat, block 1 of 10, round 1, work 40 seconds, rest 20, starts at 5:00". */
char *lap_box_label (const LapScore *score,
                     guint           box);

G_END_DECLS
