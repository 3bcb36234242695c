/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of a week: the timetable and which week of the year is looked at; at the side what is selected, the
 * warnings, and what the week asks of bodies and coaches; the sheets.
 */
#pragma once

#include "ui/week/view.h"
#include "ui/week-dates.h"
#include "ui/week-pane.h"
#include "ui/window.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_WINDOW (lap_week_window_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekWindow, lap_week_window, LAP, WEEK_WINDOW, LapWindow)

GtkWidget   *lap_week_window_new  (GtkApplication *application,
                                   LapDocument    *document);

LapWeekView *lap_week_window_view (LapWeekWindow  *window);
LapWeekPane *lap_week_window_pane (LapWeekWindow  *window);

G_END_DECLS
