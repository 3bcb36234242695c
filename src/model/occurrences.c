/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/occurrences.h"

#define DAY_SECONDS (24 * 60 * 60)
#define HOUR_SECONDS (60 * 60)
/* GDate's number of 1970-01-01. */
#define EPOCH 719163

gint64
lap_instant (GTimeZone *zone, int date, int minutes)
{
  gint64 local = (gint64) (date - EPOCH) * DAY_SECONDS + minutes * 60;

  /* No interval holds a time that is jumped over; the one before it says how far from UTC it would have been. */
  for (int back = 0; back <= 24; back++) {
    int interval = g_time_zone_find_interval (zone, G_TIME_TYPE_DAYLIGHT, local - back * HOUR_SECONDS);

    if (interval >= 0)
      return local - g_time_zone_get_offset (zone, interval);
  }
  return local;
}

typedef struct {
  const LapWeek *week;
  int            from, until;
  GTimeZone     *zone;
  gint64        *midnights; /* of each date, and of the one after the last */
  GPtrArray     *exceptions; /* those that touch the dates */
  GArray        *found;
} Resolve;

static LapException *
exception_of (const Resolve *r, const LapClass *c, int date)
{
  for (guint i = 0; i < r->exceptions->len; i++) {
    LapException *e = g_ptr_array_index (r->exceptions, i);

    if (e->date == date && g_strcmp0 (e->class_id, c->id) == 0)
      return e;
  }
  return NULL;
}

static gboolean
is_asked_for (const Resolve *r, int date)
{
  return r->from <= date && date <= r->until;
}

static gboolean
is_in_season (const LapWeek *week, int date)
{
  return (week->from == 0 || week->from <= date) && (week->until == 0 || date <= week->until);
}

/* Minutes since the first midnight. Most days have 24 hours, and then nobody asks the timezone. */
static int
passed (const Resolve *r, int date, int minutes)
{
  int i = date - r->from;

  if (r->midnights[i + 1] - r->midnights[i] == DAY_SECONDS)
    return (r->midnights[i] - r->midnights[0]) / 60 + minutes;
  return (lap_instant (r->zone, date, minutes) - r->midnights[0]) / 60;
}

static void
add (Resolve *r, guint index, LapClass *c, int date, LapException *e)
{
  LapOccurrence o = { .c = c, .index = index, .exception = e, .date = date, .was = date, .start = c->start,
                      .room = c->room, .coach = c->coach };

  if (e != NULL) {
    o.date = e->to != 0 ? e->to : date;
    o.start = e->start >= 0 ? e->start : c->start;
    o.room = e->room != NULL ? e->room : c->room;
    o.coach = e->coach != NULL ? e->coach : c->coach;
    o.state = e->cancelled ? LAP_CANCELLED : LAP_HELD;
  }
  if (!is_asked_for (r, o.date)) {
    o.state = LAP_MOVED_AWAY;
    o.date = date;
    o.start = c->start;
    o.room = c->room;
    o.coach = c->coach;
  } else if (o.state == LAP_HELD && lap_week_is_closed (r->week, o.date)) {
    o.state = LAP_HOUSE_CLOSED;
  }
  o.day = lap_date_day (o.date);
  o.begin = passed (r, o.date, o.start);
  o.end = o.begin + c->minutes;
  g_array_append_val (r->found, o);
}

static int
compare (gconstpointer a, gconstpointer b)
{
  const LapOccurrence *oa = a, *ob = b;

  if (oa->begin != ob->begin)
    return oa->begin < ob->begin ? -1 : 1;
  return oa->index < ob->index ? -1 : oa->index > ob->index;
}

static void
gather_exceptions (Resolve *r)
{
  for (guint i = 0; i < lap_list_n (r->week->exceptions); i++) {
    LapException *e = lap_list_nth (r->week->exceptions, i);

    if (is_asked_for (r, e->date) || is_asked_for (r, e->to))
      g_ptr_array_add (r->exceptions, e);
  }
}

static void
resolve_class (Resolve *r, guint index, LapClass *c)
{
  int first = r->from + (c->day - lap_date_day (r->from) + LAP_N_DAYS) % LAP_N_DAYS;

  for (int date = first; date <= r->until; date += LAP_N_DAYS)
    if (is_in_season (r->week, date))
      add (r, index, c, date, exception_of (r, c, date));
  /* Moved here from a date that isn't asked for. */
  for (guint i = 0; i < r->exceptions->len; i++) {
    LapException *e = g_ptr_array_index (r->exceptions, i);

    if (!is_asked_for (r, e->date) && (int) lap_date_day (e->date) == c->day && is_in_season (r->week, e->date) &&
        g_strcmp0 (e->class_id, c->id) == 0)
      add (r, index, c, e->date, e);
  }
}

GArray *
lap_occurrences_between (const LapWeek *week, int from, int until)
{
  g_autoptr (GTimeZone) zone = g_time_zone_new_identifier (week->timezone);
  g_autofree gint64 *midnights = g_new (gint64, until - from + 2);
  g_autoptr (GPtrArray) exceptions = g_ptr_array_new ();
  Resolve r = { week, from, until, zone, midnights, exceptions, g_array_new (FALSE, FALSE, sizeof (LapOccurrence)) };

  g_return_val_if_fail (zone != NULL, r.found);
  for (int date = from; date <= until + 1; date++)
    midnights[date - from] = lap_instant (zone, date, 0);
  gather_exceptions (&r);
  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    LapClass *c = lap_list_nth (week->classes, i);

    if (lap_class_is_placed (c))
      resolve_class (&r, i, c);
  }
  g_array_sort (r.found, compare);
  return r.found;
}

GArray *
lap_occurrences_new (const LapWeek *week, int from)
{
  GArray *found;

  if (from != 0)
    return lap_occurrences_between (week, from, from + LAP_N_DAYS - 1);
  found = g_array_new (FALSE, FALSE, sizeof (LapOccurrence));
  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    LapClass *c = lap_list_nth (week->classes, i);
    const int begin = c->day * LAP_DAY_MINUTES + c->start;
    LapOccurrence o = { .c = c, .index = i, .day = c->day, .start = c->start, .begin = begin,
                        .end = begin + c->minutes, .room = c->room, .coach = c->coach };

    if (lap_class_is_placed (c))
      g_array_append_val (found, o);
  }
  g_array_sort (found, compare);
  return found;
}
