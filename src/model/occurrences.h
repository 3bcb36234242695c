/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A week read for some dates: which classes are when, after what is different on those dates. A pure function of
 * the week; the occurrences point into it and hold until its next edit.
 *
 * `begin` and `end` are minutes that really pass, from midnight before the first date on: over a change of the clocks
 * they differ from the clock on the wall by an hour. Without dates every day has 24 hours.
 */
#pragma once

#include "model/week.h"

G_BEGIN_DECLS

typedef enum {
  LAP_HELD,
  LAP_CANCELLED,    /* by an exception */
  LAP_HOUSE_CLOSED, /* its date is closed */
  LAP_MOVED_AWAY,   /* to a date that isn't among those asked for */
} LapOccurrenceState;

typedef struct {
  LapClass     *c;
  guint         index;      /* of the class in the week */
  LapException *exception;  /* what is different, or NULL */
  int           state;      /* LapOccurrenceState */
  int           date;       /* 0 = in every week */
  int           was;        /* the date it is on in other weeks */
  int           day, start; /* on the clock of that date */
  int           begin, end;
  const char   *room, *coach; /* ids; NULL = none */
} LapOccurrence;

/* Of LapOccurrence, sorted by begin and then as the file lists the classes. The seven days from the date @from on; the
 * week as it always is for 0. */
GArray *lap_occurrences_new     (const LapWeek *week,
                                 int            from);
/* From the date @from to the date @until, both in it. */
GArray *lap_occurrences_between (const LapWeek *week,
                                 int            from,
                                 int            until);

#define lap_occurrence_nth(array, i) (&g_array_index ((array), LapOccurrence, (i)))

/* Seconds from 1970-01-01 00:00 UTC on to @minutes of @date on the clock of @zone. A time that the clock jumps over
 * counts as if it hadn't jumped yet, one that it shows twice is the first (RFC 5545 §3.3.5). */
gint64  lap_instant             (GTimeZone     *zone,
                                 int            date,
                                 int            minutes);

G_END_DECLS
