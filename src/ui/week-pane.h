/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The side of a week's timetable, three pages of it: the selected classes, the warnings, and the load of the week on
 * bodies and coaches.
 *
 * "open-session" carries the id of a class, "warning" the number of one that somebody wants to see in the timetable,
 * "preview" (LapEdits or NULL) what a remedy that is pointed at would do.
 */
#pragma once

#include "ui/class-pane.h"
#include "ui/warnings.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_PANE (lap_week_pane_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekPane, lap_week_pane, LAP, WEEK_PANE, GtkWidget)

/* Once; the document of a week. */
void          lap_week_pane_set_document   (LapWeekPane        *pane,
                                            LapDocument        *document);
/* The classes called @ids are selected; their page comes up. */
void          lap_week_pane_select         (LapWeekPane        *pane,
                                            const char * const *ids);
/* The mark of warning @n of the checkup was clicked: its page comes up, and its row has the focus. */
void          lap_week_pane_choose         (LapWeekPane        *pane,
                                            guint               n);
/* Applies what is typed and isn't an edit yet. */
void          lap_week_pane_commit         (LapWeekPane        *pane);

LapClassPane *lap_week_pane_class          (LapWeekPane        *pane);
LapWarnings  *lap_week_pane_warnings       (LapWeekPane        *pane);

G_END_DECLS
