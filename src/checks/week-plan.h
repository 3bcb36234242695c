/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For the checks of weeks: the classes of a week as events in the order of time, with their rooms, coaches and what
 * their sessions say, and what the remedies need: where else a class could be.
 *
 * A week isn't alone. Of a week with dates the days before and after it are there too, of one without the first days
 * once more after its end; `inside` tells those that count.
 */
#pragma once

#include "checks/checkup.h"
#include "edit/week-verbs.h"
#include "model/occurrences.h"

G_BEGIN_DECLS

typedef struct {
  LapOccurrence o;
  LapClassFacts facts;
  LapRoom      *room;   /* NULL = none */
  LapCoach     *coach;
  int           begin, end; /* minutes that pass from midnight before the Monday; below 0 on the days before */
  int           number; /* of its day: 0 = the first of the week, -1 the day before */
  gboolean      inside; /* of the week itself */
} LapWeekEvent;

struct _LapWeekPlan {
  LapWeek        *week;
  int             date;        /* of its Monday; 0 = as it always is */
  LapAttachments *attachments; /* or NULL */
  GArray         *events;      /* LapWeekEvent: those that are held, by begin */
  guint           n_closed;    /* classes of the week on dates that are closed */
  LapClassFacts  *facts;       /* of each class */
  GHashTable     *rooms, *coaches; /* by id */
};

LapWeekPlan *lap_week_plan_new  (LapWeek        *week,
                                 int             date,
                                 LapAttachments *attachments);
/* The day of the week that is @number days behind the first of @plan. */
LapDay       lap_week_plan_day  (const LapWeekPlan *plan,
                                 int             number);
void         lap_week_plan_free (LapWeekPlan    *plan);

#define LAP_EVENT(cx, i) (&g_array_index ((cx)->plan->events, LapWeekEvent, (i)))

/* "Thursday", "Thursday, 14 January". Transfer full. */
char        *lap_event_day      (const LapCheckup   *checkup,
                                 const LapWeekEvent *event);
/* The span of time the two share, "18:30 to 19:00", on the clock. */
char        *lap_events_overlap (const LapWeekEvent *a,
                                 const LapWeekEvent *b);
const char  *lap_event_title    (const LapWeekEvent *event);

/* A warning at the event @a, about its class and that of @b (G_MAXUINT for none). w->a and w->b are the events. */
LapWarning  *lap_report_events  (LapCheckup     *checkup,
                                 const LapCheck *check,
                                 guint           a,
                                 guint           b);
/* One about a class that may have no place; w->a is its index. */
LapWarning  *lap_report_index   (LapCheckup     *checkup,
                                 const LapCheck *check,
                                 guint           index);

/* Remedies, each adding what could be, the best first; the checkup tries them. A fixed class stays. */
void lap_remedy_other_room  (const LapCheckup *checkup, guint event, GPtrArray *remedies);
void lap_remedy_other_coach (const LapCheckup *checkup, guint event, GPtrArray *remedies);
/* On the same day, on quarter hours, the nearest first. */
void lap_remedy_other_time  (const LapCheckup *checkup, guint event, GPtrArray *remedies);
/* At the same time of another day. */
void lap_remedy_other_day   (const LapCheckup *checkup, guint event, GPtrArray *remedies);
void lap_remedy_cancel      (const LapCheckup *checkup, guint event, GPtrArray *remedies);
/* A place for a class that has none. */
void lap_remedy_some_place  (const LapCheckup *checkup, guint index, GPtrArray *remedies);

G_END_DECLS
