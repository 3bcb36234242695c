/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A timetable for a week: places the classes that have no day, and keeps those that are fixed. One that stands and
 * isn't fixed is moved only where that costs less than it gains.
 *
 * lap_fill_problem_new() reads the week once; the problem holds no model objects, so lap_fill_find() may run on it in
 * a worker. What it found becomes edits of the same, unchanged week.
 */
#pragma once

#include "arrange/fill-search.h"
#include "edit/edit.h"
#include "effort/attached.h"
#include "model/week.h"

G_BEGIN_DECLS

/* @attachments gives what the sessions of the classes ask for; NULL: the classes' own words only. */
LapFillProblem *lap_fill_problem_new  (const LapWeek        *week,
                                       LapAttachments       *attachments);
void            lap_fill_problem_free (LapFillProblem       *problem);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFillProblem, lap_fill_problem_free)

/* Puts each class where @fill has it; empty when all stand so. Those that can't be placed lose their day. */
LapEdits       *lap_fill_edits        (const LapFill        *fill,
                                       const LapWeek        *week);

/* The wishes for a class that aren't kept where @fill has it. */
typedef enum {
  LAP_FILL_WISH_DAYS = 1 << 0,
  LAP_FILL_WISH_BETWEEN = 1 << 1,
} LapFillWish;
guint           lap_fill_missed       (const LapFill        *fill,
                                       const LapWeek        *week,
                                       guint                 i);

/* In words, translated, without a full stop. What would have to be otherwise for a class that @fill leaves out: "Spin
 * could be on Thursday at 18:00 in the Loft with Ana if Ana takes one class more that day". */
char           *lap_fill_tell_out     (const LapFillProblem *problem,
                                       const LapFill        *fill,
                                       const LapWeek        *week,
                                       guint                 i);
/* Which wishes aren't kept: "Spin is on Thursday, wanted on Monday or Tuesday". */
char           *lap_fill_tell_missed  (const LapFill        *fill,
                                       const LapWeek        *week,
                                       guint                 i);
/* How it compares with the best there can be, and with what stood there before the search: "46 of 48 classes placed;
 * no timetable places more". */
char           *lap_fill_tell_sum     (const LapFill        *fill);

/* The id of a rule as `--json` spells it: "most-a-day". */
const char     *lap_fill_rule_id      (guint                 rule);

G_END_DECLS
