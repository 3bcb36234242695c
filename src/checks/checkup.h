/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For the theme files only: what a check may ask, and how it reports. Everything here follows from the timeline and
 * is computed once a checkup.
 */
#pragma once

#include "checks/checks.h"
#include "edit/verbs.h"
#include "talk/talk.h"

G_BEGIN_DECLS

/* A bout: turns of main parts that tire the body as one, being the same block again or its other side. Bouts run on
 * from each other when only rests lie between. */
typedef struct {
  guint    first, last; /* turns */
  guint32  task;        /* of the first turn */
  guint8   runs_on;     /* from the bout before it */
  guint8   repeats;     /* it and the two before it stood just so one round earlier */
} LapBout;

typedef struct _LapWeekPlan LapWeekPlan; /* checks/week-plan.h */

struct _LapCheckup {
  gatomicrefcount references;
  LapObject    *root;      /* the document */
  LapWeekPlan  *plan;      /* of a week; then all of a session is NULL and 0 */
  GArray       *classes;   /* of a week: LapClass *, those of all warnings */
  LapTimeline  *timeline;
  LapSession   *session;
  LapChangeRule rule;
  gboolean      tender;
  GArray       *bouts;     /* LapBout */
  GArray       *firsts;    /* guint: the first turn of each task that has one, in order */
  int           main_work; /* seconds of work in main parts, as written */
  int           first_main, last_main; /* turns; -1 without */
  guint         first_main_part;       /* G_MAXUINT without */
  LapEffort    *effort;    /* both NULL for a checkup that needs less */
  LapTalk      *talk;
  GArray       *warnings;  /* LapWarning */
  GStringChunk *texts;     /* of warnings */
  guint         order;     /* of the check that reports now */
};

#define LAP_BOUT(cx, i) (&g_array_index ((cx)->bouts, LapBout, (i)))
#define LAP_FIRST(cx, i) g_array_index ((cx)->firsts, guint, (i))
#define LAP_TURN(cx, i) (&(cx)->timeline->turns[(i)])
#define LAP_TASK(cx, turn) (&(cx)->timeline->tasks[LAP_TURN (cx, turn)->task])

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

/* Adds a remedy; an empty group of edits is dropped. Both are taken over. */
void        lap_remedy_add     (GPtrArray      *remedies,
                                char           *label,
                                LapEdits       *edits);
/* Adds "Swap … with …" for the block of @turn and each block of its part that may move, the nearest first. Those
 * that don't help are weeded out with all other remedies. */
void        lap_remedy_swap    (const LapCheckup *checkup,
                                const LapWarning *warning,
                                guint             turn,
                                GPtrArray        *remedies);
/* Adds "Use the easier …" where the block has an easier exercise that @fits (NULL for any). */
void        lap_remedy_easier  (const LapCheckup *checkup,
                                guint             turn,
                                GPtrArray        *remedies);

/* "Squat": what a turn shows. */
const char *lap_turn_name      (const LapCheckup *checkup,
                                guint             turn);

/* The tables of the theme files, each ended by a row without id. */
extern const LapCheck lap_checks_time[], lap_checks_run[], lap_checks_change[], lap_checks_work[],
                      lap_checks_effort[], lap_checks_talk[], lap_checks_room[], lap_checks_plan[],
                      lap_checks_film[], lap_checks_week_clash[], lap_checks_week_room[], lap_checks_week_body[];

G_END_DECLS
