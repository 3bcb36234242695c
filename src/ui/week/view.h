/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The timetable of a week: days as bands, rooms or coaches as lines, hours across, classes edited by hand; a tray of
 * those that have no day yet; what of it is shown. It follows the document, and the date that is looked at there.
 * Where it is narrow, one day at a time.
 *
 * "selected" tells that other classes are; "open-session" (id of a class) that somebody wants its session; "warning"
 * (its number in the checkup) that the mark of one was clicked.
 */
#pragma once

#include "edit/week-verbs.h"
#include "ui/week/strip.h"
#include "ui/week/tray.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_VIEW (lap_week_view_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekView, lap_week_view, LAP, WEEK_VIEW, GtkWidget)

/* @document is that of a week. */
LapWeekView  *lap_week_view_new        (LapDocument *document);
/* The ids of the selected classes in the order of the file. Transfer full. */
char        **lap_week_view_selected   (LapWeekView *view);
/* Selects the class @id and brings it into sight, whatever is filtered. */
void          lap_week_view_reveal     (LapWeekView *view,
                                        const char  *id);
/* The same, and gives it the focus. */
void          lap_week_view_show       (LapWeekView *view,
                                        const char  *id);
/* Shows what @edits would do, beside what is; NULL: no more. */
void          lap_week_view_preview    (LapWeekView *view,
                                        LapEdits    *edits);
/* Hours wider (@factor > 1) or narrower; 0: as many as fit. */
void          lap_week_view_zoom       (LapWeekView *view,
                                        double       factor);

/* For the parts of the view, and for tests. */
LapWeekScene *lap_week_view_scene      (LapWeekView *view);
LapWeekStrip *lap_week_view_strip      (LapWeekView *view);
LapWeekTray  *lap_week_view_tray       (LapWeekView *view);
/* What it scrolls up and down by. */
GtkAdjustment *lap_week_view_across    (LapWeekView *view);
/* Gives the focus to the class with the cursor, on a line or in the tray. */
void          lap_week_view_take_focus (LapWeekView *view);
/* Opens the menu of what is selected at x, y of the strip. */
void          lap_week_view_open_menu  (LapWeekView *view,
                                        double       x,
                                        double       y);
/* Where a click was, for what a menu adds there. */
void          lap_week_view_set_spot   (LapWeekView    *view,
                                        const LapPlace *spot);
const LapPlace *lap_week_view_spot     (LapWeekView *view);

G_END_DECLS
