/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/fill.h"
#include "base/customs.h"

#include <glib/gi18n-lib.h>

typedef enum { NOBODY, ROOM, COACH, TRAINED, HOLDS } About;

/* In the order of LapFillRule. */
static const struct {
  const char *id;
  const char *clause; /* marked for translation; %s is what it is about */
  About       about;
} rules[LAP_FILL_RULES] = {
  { "most-a-day", N_("%s takes one class more that day"), COACH },
  { "turnaround", N_("%s is turned around faster"), ROOM },
  { "free", N_("%s is free then"), COACH },
  { "quiet-hours", N_("%s needn’t be quiet then"), ROOM },
  { "hard-a-day", N_("%s only leads it, or leads one hard class less that day"), COACH },
  { "open", N_("the house is open then"), NOBODY },
  { "named", N_("another room or coach than the one it names will do"), NOBODY },
  { "can", N_("%1$s is trained for “%2$s”"), TRAINED },
  { "kit", N_("%s has the kit for it"), ROOM },
  { "places", N_("%1$s holds %2$s people"), HOLDS },
  { "coach-taken", N_("%s has no other class then"), COACH },
  { "room-taken", N_("%s is empty then"), ROOM },
};

const char *
lap_fill_rule_id (guint rule)
{
  for (guint k = 0; k < LAP_FILL_RULES; k++)
    if (rule == 1u << k)
      return rules[k].id;
  return NULL;
}

static const char *
room_title (const LapWeek *week, int room)
{
  return room < 0 ? NULL : lap_room_title (lap_list_nth (week->rooms, room));
}

static const char *
coach_title (const LapWeek *week, int coach)
{
  return coach < 0 ? NULL : lap_coach_title (lap_list_nth (week->coaches, coach));
}

static char *
clause (const LapWeek *week, const LapClass *c, const LapFillPlace *at, guint k)
{
  g_autofree char *people = g_strdup_printf ("%d", c->places);
  const char *text = _(rules[k].clause);

  switch (rules[k].about) {
  case ROOM:
    return g_strdup_printf (text, room_title (week, at->room));
  case COACH:
    return g_strdup_printf (text, coach_title (week, at->coach));
  case TRAINED:
    return g_strdup_printf (text, coach_title (week, at->coach), c->kind);
  case HOLDS:
    return g_strdup_printf (text, room_title (week, at->room), people);
  case NOBODY:
  default:
    return g_strdup (text);
  }
}

/* "Thursday at 18:00 in the Loft with Ana" */
static char *
where (const LapWeek *week, const LapFillPlace *at)
{
  g_autofree char *time = lap_time_of_day_text (at->start);
  const char *day = lap_words_label (&lap_days, at->day), *room = room_title (week, at->room);
  const char *coach = coach_title (week, at->coach);

  if (room && coach)
    return g_strdup_printf (_("%1$s at %2$s in %3$s with %4$s"), day, time, room, coach);
  if (room)
    return g_strdup_printf (_("%1$s at %2$s in %3$s"), day, time, room);
  if (coach)
    return g_strdup_printf (_("%1$s at %2$s with %3$s"), day, time, coach);
  return g_strdup_printf (_("%1$s at %2$s"), day, time);
}

char *
lap_fill_tell_out (const LapFillProblem *problem, const LapFill *fill, const LapWeek *week, guint i)
{
  const LapClass *c = lap_list_nth (week->classes, i);
  g_autoptr (GPtrArray) clauses = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *all = NULL, *place = NULL;
  LapFillPlace at = { -1, 0, -1, -1 };
  guint broken = lap_fill_nearest (problem, fill, i, &at);

  if (at.day < 0)
    return g_strdup_printf (_("%s is longer than any day"), lap_class_title (c));
  for (guint k = 0; k < LAP_FILL_RULES; k++)
    if (broken & 1u << k)
      g_ptr_array_add (clauses, clause (week, c, &at, k));
  g_ptr_array_add (clauses, NULL);
  all = lap_join ((const char * const *) clauses->pdata);
  place = where (week, &at);
  if (fill->barred[i])
    return g_strdup_printf (_("%1$s has no place in this week at all. It could be on %2$s if %3$s"),
                            lap_class_title (c), place, all);
  return g_strdup_printf (_("%1$s could be on %2$s if %3$s"), lap_class_title (c), place, all);
}

static char *
wanted_days (const LapClass *c)
{
  g_autoptr (GPtrArray) labels = g_ptr_array_new ();
  guint days = lap_words_mask (&lap_days, (const char * const *) c->wish_days);

  for (guint k = 0; k < LAP_N_DAYS; k++)
    if (days & LAP_BIT (k))
      g_ptr_array_add (labels, (gpointer) lap_words_label (&lap_days, k));
  g_ptr_array_add (labels, NULL);
  return lap_join ((const char * const *) labels->pdata);
}

char *
lap_fill_tell_missed (const LapFill *fill, const LapWeek *week, guint i)
{
  const LapClass *c = lap_list_nth (week->classes, i);
  guint missed = lap_fill_missed (fill, week, i);
  g_autofree char *place = where (week, &fill->places[i]), *days = wanted_days (c), *from = NULL, *until = NULL;

  if (missed & LAP_FILL_WISH_BETWEEN) {
    from = lap_time_of_day_text (c->wish_between->spans[0].start);
    until = lap_time_of_day_text (c->wish_between->spans[0].end);
  }
  if (missed == LAP_FILL_WISH_DAYS)
    return g_strdup_printf (_("%1$s is on %2$s; wished for: %3$s"), lap_class_title (c), place, days);
  if (missed == LAP_FILL_WISH_BETWEEN)
    return g_strdup_printf (_("%1$s is on %2$s; wished for: between %3$s and %4$s"), lap_class_title (c), place, from,
                            until);
  return g_strdup_printf (_("%1$s is on %2$s; wished for: %3$s, between %4$s and %5$s"), lap_class_title (c), place,
                          days, from, until);
}

static guint
count_placed (const LapFill *fill)
{
  guint placed = 0;

  for (guint i = 0; i < fill->n; i++)
    placed += fill->places[i].day >= 0;
  return placed;
}

char *
lap_fill_tell_sum (const LapFill *fill)
{
  guint placed = count_placed (fill), more = fill->unplaced - MIN (fill->unplaced, fill->least_unplaced);
  guint64 total = (guint64) LAP_FILL_UNPLACED * fill->unplaced + fill->points;
  g_autofree char *sum = g_strdup_printf (ngettext ("%1$u of %2$u class placed", "%1$u of %2$u classes placed", fill->n),
                                          placed, fill->n);

  if (more)
    return g_strdup_printf (ngettext ("%1$s; no timetable can place more than %2$u more",
                                      "%1$s; no timetable can place more than %2$u more", more), sum, more);
  if (total <= fill->least)
    return g_strdup_printf (_("%s; no timetable is better"), sum);
  return g_strdup_printf (_("%1$s; no timetable places more, and the wishes are within %2$u points of the best"), sum,
                          (guint) (total - fill->least));
}
