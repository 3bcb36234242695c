/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The calendar in which the week to look at is chosen or typed: a popover that opens at the week that is looked at, and
 * sets the date of the document.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_CALENDAR (lap_week_calendar_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekCalendar, lap_week_calendar, LAP, WEEK_CALENDAR, GtkPopover)

/* For the document of a week. */
GtkWidget *lap_week_calendar_new (LapDocument *document);

/* The date of today on the clock here. */
int        lap_today             (void);
/* Today, or the date nearest to it that the timetable is for. */
int        lap_today_in_week     (LapWeek     *week);
/* Noon of a date. Transfer full. */
GDateTime *lap_noon              (int          date);

G_END_DECLS
