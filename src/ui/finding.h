/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looking for words in a session: in names of exercises, words to say, notes and warnings. What is found are blocks,
 * each at the first round in which it has the words, in the order of the clock. And in a week: in titles and kinds of
 * classes, whom they are for, their coaches, rooms, sessions and warnings. What is found are classes, by day and time,
 * those that wait for a day last.
 *
 * Always true: every word typed begins some word of the block; order, case and accents don't matter; nothing typed
 * finds nothing.
 */
#pragma once

#include "checks/checks.h"
#include "model/week.h"
#include "place/score.h"

G_BEGIN_DECLS

/* Indices into the boxes of @score, whose timeline is the checkup's; transfer full. */
GArray *lap_find_in_score (const LapScore   *score,
                           const LapCheckup *checkup,
                           const char       *text);
/* Indices into the classes of @week, whose checkup it is; transfer full. */
GArray *lap_find_in_week  (LapWeek          *week,
                           const LapCheckup *checkup,
                           const char       *text);

G_END_DECLS
