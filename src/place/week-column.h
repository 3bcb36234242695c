/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A day on the sheet of a week: its name, and its classes in order of time. It is asked how wide it has to be and how
 * high it gets in letters of some look, often, before it is put on a page.
 *
 * Always true: a class is put whole; no word is broken or set in smaller letters in a column of at least the least
 * width, but for one that is longer than any column.
 *
 * Calling order: new, ask, then put until it is done.
 */
#pragma once

#include "model/occurrences.h"
#include "place/page.h"
#include "place/week-subject.h"

G_BEGIN_DECLS

typedef struct {
  double   cap;     /* of times and titles, mm */
  double   pad;     /* above and below a class, against the capitals */
  double   unit;    /* mm */
  double   highest; /* that a title may get, mm */
  gboolean beside;  /* a title begins beside its time, not under it */
  gboolean brief;   /* days and minutes are written short */
} LapWeekLook;

typedef struct _LapWeekColumn LapWeekColumn;

/* @day with those of @occurrences, an array of LapOccurrence, that are on it and in @room; NULL = in any. The
 * subject's date is the day's, 0 = in every week. */
LapWeekColumn *lap_week_column_new     (const LapMeasure     *measure,
                                        const LapWeekSubject *subject,
                                        const LapRoom        *room,
                                        int                   day,
                                        const GArray         *occurrences);
void           lap_week_column_free    (LapWeekColumn       *column);

/* All in mm. */
double         lap_week_column_least   (const LapWeekColumn *column,
                                        const LapWeekLook   *look);
double         lap_week_column_height  (const LapWeekColumn *column,
                                        const LapWeekLook   *look,
                                        double               width);
/* How many columns of @height it takes; a class that is higher has one alone. */
guint          lap_week_column_count   (const LapWeekColumn *column,
                                        const LapWeekLook   *look,
                                        double               width,
                                        double               height);

/* Puts what isn't on a page yet, as much as fits above @bottom; at least one class. */
void           lap_week_column_put     (LapWeekColumn       *column,
                                        const LapWeekLook   *look,
                                        LapPage             *page,
                                        double               x,
                                        double               y,
                                        double               width,
                                        double               bottom);
gboolean       lap_week_column_is_new  (const LapWeekColumn *column);
gboolean       lap_week_column_is_done (const LapWeekColumn *column);

/* @n crests in a row, beside a line with capitals of @cap at @y; returns how much of the line they take. */
double         lap_crests_put          (LapPage             *page,
                                        guint                n,
                                        double               cap,
                                        double               x,
                                        double               y);

G_END_DECLS
