/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What lies behind the classes of the strip, and what would be over them. Nothing here is hit.
 */
#pragma once

#include "ui/week/scene.h"

G_BEGIN_DECLS

/* Bands, closed hours, hours, lines, and what ties classes that clash. */
void lap_week_ground_draw (LapWeekScene *scene,
                           GtkSnapshot  *snapshot,
                           int           width);
/* What a remedy or a drag would do. */
void lap_week_ghosts_draw (LapWeekScene *scene,
                           GtkSnapshot  *snapshot);

G_END_DECLS
