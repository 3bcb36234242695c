/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which week is looked at: the week as it always is, or one of the year, to be turned, typed or chosen in a calendar.
 * It sets the date of the document and shows what stands there.
 */
#pragma once

#include "ui/week-calendar.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_DATES (lap_week_dates_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekDates, lap_week_dates, LAP, WEEK_DATES, GtkWidget)

/* Once; the document of a week. */
void  lap_week_dates_set_document (LapWeekDates *dates,
                                   LapDocument  *document);
/* To the week that @date lies in, 0: as it always is. */
void  lap_week_dates_go           (LapWeekDates *dates,
                                   int           date);
/* By @weeks; from the week as it always is to the one of today, or the nearest to it that the timetable is for. */
void  lap_week_dates_turn         (LapWeekDates *dates,
                                   int           weeks);

/* "Thursday, 14 January". Translated; transfer full. */
char *lap_day_text                (int           date);

G_END_DECLS
