/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The changes of a week, for the door: what is cancelled, moved or given to somebody else, on which days the house is
 * closed, and which classes have a coach who is away. Where nothing is different it says so.
 */
#pragma once

#include "place/page.h"
#include "place/paper.h"
#include "place/week-subject.h"

G_BEGIN_DECLS

/* Without a date nothing is different. */
LapPages *lap_changes_sheet_build (const LapWeekSubject  *subject,
                                   const LapSheetOptions *options,
                                   const LapMeasure      *measure);

G_END_DECLS
