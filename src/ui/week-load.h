/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A table of what a week asks of bodies: a row a region, a column a day, in each a bar of the minutes of class that
 * work it, solid where the class is hard; above them crests for how hard the day is. It grows with the text, is
 * mirrored where text runs from the right, and says in words what it shows.
 */
#pragma once

#include "effort/week-load.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_LOAD_CHART (lap_load_chart_get_type ())
G_DECLARE_FINAL_TYPE (LapLoadChart, lap_load_chart, LAP, LOAD_CHART, GtkWidget)

/* @load is copied from. */
void        lap_load_chart_show  (LapLoadChart      *chart,
                                  const LapWeekLoad *load);

G_END_DECLS
