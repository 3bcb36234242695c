/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where classes are, could be, and go: what keys, drags and menus share. In the week as it always is a class goes
 * every week; in a week with dates on its date alone.
 */
#pragma once

#include "edit/week-many.h"
#include "ui/week/scene.h"

G_BEGIN_DECLS

#define LAP_SNAP_MINUTES 15
#define LAP_SNAP_FINE    5

/* What a class is on the line that shows it. Its strings hold until the next edit. */
LapPlace  lap_week_place_now   (LapWeekScene   *scene,
                                LapClass       *c);
/* The edits that bring @classes to @places, which have a day where a date is looked at and the class is on it. */
LapEdits *lap_week_move_edits  (LapWeekScene   *scene,
                                GPtrArray      *classes,
                                const LapPlace *places);
/* Later (@by > 0) or earlier by that many days; to the line below or above; to the next multiple of @by minutes. FALSE
 * where some class can't. */
gboolean  lap_week_shift_day   (LapPlace       *place,
                                int             by);
gboolean  lap_week_shift_line  (LapWeekScene   *scene,
                                LapPlace       *place,
                                int             by);
gboolean  lap_week_shift_time  (LapPlace       *place,
                                int             minutes,
                                int             by);
/* Sets room or coach, whatever the lines are, to that of @row. */
void      lap_week_set_line    (LapWeekScene   *scene,
                                LapPlace       *place,
                                guint           row);

/* The first place from @day on in which a class has its room and its coach for itself while house and coach are there,
 * a wish first. FALSE where there is none in the week. */
gboolean  lap_week_free_place  (LapWeek        *week,
                                const LapClass *c,
                                int             day,
                                LapPlace       *place);
/* A copy of a class on another day: the first after its own on which its place is free; else it waits. */
void      lap_week_place_copy  (LapWeek        *week,
                                LapClass       *copy);

G_END_DECLS
