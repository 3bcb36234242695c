/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For the theme files only: what a check may ask. Everything here follows from the timeline, or the week, and is
 * computed once a checkup. How a check reports is in checks/report.h, what would mend it in checks/remedies.h.
 */
#pragma once

#include "checks/checks.h"
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

/* "Squat": what a turn shows. */
const char *lap_turn_name      (const LapCheckup *checkup,
                                guint             turn);

/* The tables of the theme files, each ended by a row without id. */
extern const LapCheck lap_checks_time[], lap_checks_run[], lap_checks_change[], lap_checks_work[],
                      lap_checks_effort[], lap_checks_talk[], lap_checks_room[], lap_checks_plan[],
                      lap_checks_film[], lap_checks_week_clash[], lap_checks_week_room[], lap_checks_week_body[];

G_END_DECLS
