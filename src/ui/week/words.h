/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Classes of a week in words: as they are spoken, and where one is or would be.
 */
#pragma once

#include "edit/week-verbs.h"
#include "place/week-score.h"

G_BEGIN_DECLS

/* "Early forty, Monday 6:30 to 7:15, Loft, Maren, 20 places, warning 2". Transfer full. */
char *lap_week_box_spoken   (const LapWeekScore *score,
                             guint               box);
/* The same of a class without a place: "Early forty, 45 minutes, no day yet". */
char *lap_class_spoken      (const LapWeek      *week,
                             const LapClass     *c);
/* "Tue 18:30–19:15, Yard, Mira". */
char *lap_place_text        (const LapWeek      *week,
                             const LapPlace     *place,
                             int                 minutes);
/* "23 Nov" of a date, in the order of the language. */
char *lap_short_date_text   (int                 date);
/* "Mon" of a day of the week. */
char *lap_short_day_text    (LapDay              day);
/* What the warnings about @c say that aren't kept fine, a line each. Transfer full. */
char *lap_week_warnings_text (const LapCheckup *checkup,
                              const LapClass   *c);

G_END_DECLS
