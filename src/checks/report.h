/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a check reports, for the theme files only: from its find(), what it has found, or a function for each task,
 * pair or triple that is looked at. Reports come in any order; the checkup sorts them.
 */
#pragma once

#include "checks/checkup.h"

G_BEGIN_DECLS

/* A warning of @check without a place; the caller fills in more. The pointer holds until the next report. */
LapWarning *lap_report         (LapCheckup     *checkup,
                                const LapCheck *check);
LapWarning *lap_report_part    (LapCheckup     *checkup,
                                const LapCheck *check,
                                guint           part);
/* From the start of turn @from to the end of turn @to, at the block and round of @at. */
LapWarning *lap_report_turns   (LapCheckup     *checkup,
                                const LapCheck *check,
                                guint           from,
                                guint           to,
                                guint           at);

/* Adds @c to the classes a warning is about, before the next report. */
void        lap_report_class   (LapCheckup     *checkup,
                                LapWarning     *warning,
                                LapClass       *c);

/* For a check that speaks once a task, at its first turn: calls @func for every task that has a turn, in order. */
typedef void (*LapTaskFunc) (LapCheckup *checkup, const LapCheck *check, guint turn);
void        lap_each_task      (LapCheckup     *checkup,
                                const LapCheck *check,
                                LapTaskFunc     func);

/* Calls @func for each two bouts that run on, the seam of stations and own pace included, repeats passed over.
 * Return TRUE to have the same pair of blocks passed over from then on. */
typedef gboolean (*LapPairFunc) (LapCheckup *checkup, const LapCheck *check, guint a, guint b);
void        lap_each_pair      (LapCheckup     *checkup,
                                const LapCheck *check,
                                LapPairFunc     func);

/* The same for each three bouts that run on. */
typedef gboolean (*LapTripleFunc) (LapCheckup *checkup, const LapCheck *check, guint a, guint b, guint c);
void        lap_each_triple    (LapCheckup     *checkup,
                                const LapCheck *check,
                                LapTripleFunc   func);

G_END_DECLS
