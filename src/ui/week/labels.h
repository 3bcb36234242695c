/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands still beside and above the strip: days with their rooms or coaches at the side, hours on top.
 */
#pragma once

#include "ui/week/scene.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_LABELS (lap_week_labels_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekLabels, lap_week_labels, LAP, WEEK_LABELS, GtkWidget)
#define LAP_TYPE_WEEK_HOURS (lap_week_hours_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekHours, lap_week_hours, LAP, WEEK_HOURS, GtkWidget)

GtkWidget *lap_week_labels_new (LapWeekScene *scene);
GtkWidget *lap_week_hours_new  (LapWeekScene *scene);

G_END_DECLS
