/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What of the week is shown: a chip each for rooms, coaches and kinds, which opens a list to tick in, and whether the
 * lines are rooms or coaches. Nothing ticked is all of it.
 */
#pragma once

#include "ui/week/scene.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_FILTER (lap_week_filter_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekFilter, lap_week_filter, LAP, WEEK_FILTER, GtkWidget)

GtkWidget *lap_week_filter_new  (LapWeekScene  *scene);
/* The button of a chip, and what is in its list; for tests. */
GtkWidget *lap_week_filter_chip (LapWeekFilter *filter,
                                 LapWeekSieve      which);

G_END_DECLS
