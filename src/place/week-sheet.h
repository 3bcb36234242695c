/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The week on the wall: a column for each day, its classes in order of time with title, room, coach, minutes and how
 * hard they are. The letters are as large as fit on one page: of several ways to put the days there the calmest is
 * taken that is large enough. Where letters would be too small to be read, the days go over more pages, and a day that
 * is too long for its column takes the next, too. Or a page for each room, with the larger letters that its fewer
 * classes allow.
 */
#pragma once

#include "place/page.h"
#include "place/paper.h"
#include "place/week-subject.h"

G_BEGIN_DECLS

/* Metres that names are to be read from. Where letters that large go on the paper, they are that large. */
#define LAP_WEEK_SHEET_AIM 2.0

LapPages *lap_week_sheet_build (const LapWeekSubject  *subject,
                                const LapSheetOptions *options,
                                const LapMeasure      *measure);

G_END_DECLS
