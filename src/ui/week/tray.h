/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The classes that have no day yet, below the week: dragged from here onto a line, or placed by Enter. It hides
 * while there are none.
 */
#pragma once

#include "ui/week/scene.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_TRAY (lap_week_tray_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekTray, lap_week_tray, LAP, WEEK_TRAY, GtkWidget)

GtkWidget  *lap_week_tray_new  (LapWeekScene *scene);
/* The widget of the class @id, or NULL. */
GtkWidget  *lap_week_tray_find (LapWeekTray  *tray,
                                const char   *id);
/* The class that has the focus, or NULL: Tab comes to one that isn't selected. */
const char *lap_week_tray_focused (LapWeekTray *tray);
/* The class of the widget at x, y, or NULL. */
const char *lap_week_tray_at   (LapWeekTray  *tray,
                                double        x,
                                double        y);
/* The id of the class @by places on from @id, or NULL. */
const char *lap_week_tray_step (LapWeekTray  *tray,
                                const char   *id,
                                int           by);

G_END_DECLS
