/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The changes of a week, for the door: what is cancelled, moved or given to somebody else, on which days the house is
 * closed, and which classes have a coach who is away. Where nothing is different it says so.
 */
#pragma once

#include "model/week.h"
#include "place/page.h"
#include "place/paper.h"

G_BEGIN_DECLS

/* The week that @date lies in; without a date nothing is different. */
LapPages *lap_changes_sheet_build (const LapWeek         *week,
                                   int                    date,
                                   const LapSheetOptions *options,
                                   const LapMeasure      *measure);

G_END_DECLS
