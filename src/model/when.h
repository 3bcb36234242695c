/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Days, times and dates of a week. A time is whole minutes from midnight, on the clock that hangs on the wall; a
 * date is the number of its day (GDate's Julian day), so that dates are compared and counted as numbers; a day of
 * the week is 0 for Monday. Hours are a value: an edit sets a changed copy.
 */
#pragma once

#include "base/record.h"
#include "base/seconds.h"

G_BEGIN_DECLS

typedef enum { LAP_DAY_MON, LAP_DAY_TUE, LAP_DAY_WED, LAP_DAY_THU, LAP_DAY_FRI, LAP_DAY_SAT, LAP_DAY_SUN, LAP_N_DAYS } LapDay;
extern const LapWords lap_days;

#define LAP_DAY_MINUTES (24 * 60)
#define LAP_WEEK_MINUTES (7 * LAP_DAY_MINUTES)

/* Spans of minutes in one day, as the file lists them. */
typedef struct {
  guint   n;
  LapSpan spans[];
} LapHours;

#define LAP_TYPE_HOURS (lap_hours_get_type ())
GType     lap_hours_get_type (void);
LapHours *lap_hours_new      (guint           n,
                              const LapSpan  *spans);
LapHours *lap_hours_copy     (const LapHours *hours);
void      lap_hours_free     (LapHours       *hours);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapHours, lap_hours_free)

/* Whether all of @start…@end lies in @hours; spans that touch or overlap count as one. NULL holds nothing. */
gboolean  lap_hours_hold     (const LapHours *hours,
                              int             start,
                              int             end);
/* Whether any of it does. */
gboolean  lap_hours_touch    (const LapHours *hours,
                              int             start,
                              int             end);

/* "18:30", as files spell it; the same in every locale. What people read is lap_time_of_day_text(). */
char     *lap_time_text      (int             minutes);
/* Minutes of "18:30" up to and with @most, or -1. */
int       lap_time_parse     (const char     *text,
                              int             most);
/* "2027-01-11". */
char     *lap_date_text      (int             date);
/* The day of "2027-01-11", or 0. */
int       lap_date_parse     (const char     *text);
LapDay    lap_date_day       (int             date);
/* The first date of the week that @date lies in, where weeks begin with @first. */
int       lap_date_week      (int             date,
                              LapDay          first);
/* The same where they begin with a Monday, as in ISO 8601: for what is the same everywhere. 0 for 0. */
int       lap_date_monday    (int             date);
/* The day that is @n days behind @first, or before it; and how far behind @first @day is in its week, 0 to 6. */
LapDay    lap_day_nth        (LapDay          first,
                              int             n);
int       lap_day_place      (LapDay          first,
                              LapDay          day);

extern const LapKind lap_kind_time;  /* int, minutes below 24:00; -1 = absent */
extern const LapKind lap_kind_date;  /* int; 0 = absent */
extern const LapKind lap_kind_pair;  /* LapHours of one span, ["06:30", "21:30"]; NULL = absent */
extern const LapKind lap_kind_hours; /* LapHours, a list of such; an empty one isn't NULL */

G_END_DECLS
