/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where else a class could be. What is proposed here fits hours, rooms, coaches and the other classes; the checkup then
 * tries it with every check there is.
 */
#include "base/customs.h"
#include "checks/remedies.h"
#include "checks/week-plan.h"

#include <glib/gi18n-lib.h>

#define QUARTER 15
#define NIGHT   (11 * 60)
/* As many of one kind as are worth trying. */
#define MOST 4

/* Where a class may go. Days as `number` of an event; `minutes` long from `start` on. */
typedef struct {
  const LapWeekEvent *event; /* NULL for one that has no place */
  const LapClass *c;
  int         number, start;
  LapRoom    *room;
  LapCoach   *coach;
} Idea;

static int
begin_of (const Idea *idea)
{
  if (idea->event != NULL && idea->number == idea->event->number)
    return idea->event->begin + idea->start - idea->event->o.start;
  return idea->number * LAP_DAY_MINUTES + idea->start;
}

static gboolean
is_open (const LapCheckup *cx, const Idea *idea)
{
  LapDay day = lap_week_plan_day (cx->plan, idea->number);
  LapSpan span;

  return idea->start >= 0 && lap_week_open (cx->plan->week, day, &span) && idea->start >= span.start &&
         idea->start + idea->c->minutes <= span.end &&
         (cx->plan->date == 0 || !lap_week_is_closed (cx->plan->week, cx->plan->date + idea->number));
}

static gboolean
coach_may (const LapCheckup *cx, const Idea *idea)
{
  LapDay day = lap_week_plan_day (cx->plan, idea->number);

  return idea->coach == NULL ||
         (lap_coach_can (idea->coach, idea->c->kind) &&
          lap_coach_is_free (idea->coach, day, idea->start, idea->start + idea->c->minutes) &&
          (cx->plan->date == 0 || !lap_week_is_away (cx->plan->week, idea->coach->id, cx->plan->date + idea->number)));
}

static gboolean
fits (const LapCheckup *cx, const Idea *idea)
{
  int begin = begin_of (idea), end = begin + idea->c->minutes;

  if (!is_open (cx, idea) || !coach_may (cx, idea) ||
      (idea->room != NULL && idea->room->places > 0 && idea->c->places > idea->room->places))
    return FALSE;
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *other = LAP_EVENT (cx, i);
    int gap = other->room == idea->room && idea->room != NULL ? idea->room->turnaround : 0;

    if (other->o.c == idea->c || begin >= other->end + gap || other->begin >= end + gap)
      continue;
    if ((other->room == idea->room && idea->room != NULL) || (other->coach == idea->coach && idea->coach != NULL))
      return FALSE;
  }
  return TRUE;
}

/* Edits that put a class where the idea says: every week, or in a week with dates on that date alone. */
static LapEdits *
edits_of (const LapCheckup *cx, const Idea *idea)
{
  LapWeekPlan *plan = cx->plan;
  LapPlace place = { lap_week_plan_day (plan, idea->number), idea->start, idea->room != NULL ? idea->room->id : NULL,
                     idea->coach != NULL ? idea->coach->id : NULL };

  if (plan->date == 0 || idea->event == NULL)
    return lap_verb_place ((LapClass *) idea->c, &place);
  return lap_verb_place_on (plan->week, (LapClass *) idea->c, idea->event->o.was, plan->date + idea->number, &place);
}

static Idea
as_it_is (const LapWeekEvent *event)
{
  return (Idea) { event, event->o.c, event->number, event->o.start, event->room, event->coach };
}

static gboolean
may_move (const LapWeekEvent *event)
{
  return !event->o.c->fixed && event->number >= 0 && event->number < LAP_N_DAYS;
}

void
lap_remedy_other_room (const LapCheckup *cx, guint index, GPtrArray *remedies)
{
  const LapWeekEvent *event = LAP_EVENT (cx, index);

  if (!may_move (event))
    return;
  for (guint i = 0; i < lap_list_n (cx->plan->week->rooms); i++) {
    Idea idea = as_it_is (event);

    idea.room = lap_list_nth (cx->plan->week->rooms, i);
    if (idea.room != event->room && fits (cx, &idea))
      lap_remedy_add (remedies, g_strdup_printf (_("Hold %1$s in %2$s"), lap_event_title (event),
                                                 lap_room_title (idea.room)), edits_of (cx, &idea));
  }
}

/* Coaches who could take a class, with what ranks them. */
typedef struct {
  LapCoach *coach;
  int       minutes; /* of the week */
  gboolean  tired;   /* less than a night's rest before or after */
  guint     at;
} Rank;

static int
compare_ranks (gconstpointer a, gconstpointer b)
{
  const Rank *ra = a, *rb = b;

  if (ra->minutes != rb->minutes)
    return ra->minutes < rb->minutes ? -1 : 1;
  if (ra->tired != rb->tired)
    return ra->tired ? 1 : -1;
  return ra->at < rb->at ? -1 : ra->at > rb->at;
}

static Rank
rank (const LapCheckup *cx, const LapWeekEvent *event, LapCoach *coach, guint at)
{
  Rank r = { coach, 0, FALSE, at };

  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *other = LAP_EVENT (cx, i);

    if (other->coach != coach || other->o.c == event->o.c)
      continue;
    r.minutes += other->inside ? other->o.c->minutes : 0;
    r.tired = r.tired || (other->number != event->number && other->begin < event->end + NIGHT &&
                          event->begin < other->end + NIGHT);
  }
  return r;
}

void
lap_remedy_other_coach (const LapCheckup *cx, guint index, GPtrArray *remedies)
{
  const LapWeekEvent *event = LAP_EVENT (cx, index);
  g_autoptr (GArray) ranks = g_array_new (FALSE, FALSE, sizeof (Rank));

  for (guint i = 0; i < lap_list_n (cx->plan->week->coaches); i++) {
    Idea idea = as_it_is (event);
    Rank r;

    idea.coach = lap_list_nth (cx->plan->week->coaches, i);
    if (idea.coach == event->coach || event->number < 0 || event->number >= LAP_N_DAYS || !fits (cx, &idea))
      continue;
    r = rank (cx, event, idea.coach, i);
    g_array_append_val (ranks, r);
  }
  g_array_sort (ranks, compare_ranks);
  for (guint i = 0; i < MIN (MOST, ranks->len); i++) {
    Idea idea = as_it_is (event);

    idea.coach = g_array_index (ranks, Rank, i).coach;
    lap_remedy_add (remedies, g_strdup_printf (_("Give %1$s to %2$s"), lap_event_title (event),
                                               lap_coach_title (idea.coach)), edits_of (cx, &idea));
  }
}

void
lap_remedy_other_time (const LapCheckup *cx, guint index, GPtrArray *remedies)
{
  const LapWeekEvent *event = LAP_EVENT (cx, index);
  guint found = 0;

  for (int step = 1; step < LAP_DAY_MINUTES / QUARTER && found < MOST && may_move (event); step++)
    for (int side = 1; side >= -1; side -= 2) {
      Idea idea = as_it_is (event);
      int near = side > 0 ? event->o.start - event->o.start % QUARTER
                          : event->o.start + (QUARTER - event->o.start % QUARTER) % QUARTER;
      g_autofree char *time = NULL;

      idea.start = near + side * step * QUARTER;
      if (idea.start + event->o.c->minutes > LAP_DAY_MINUTES || !fits (cx, &idea))
        continue;
      time = lap_time_of_day_text (idea.start);
      lap_remedy_add (remedies, g_strdup_printf (_("Start %1$s at %2$s"), lap_event_title (event), time),
                      edits_of (cx, &idea));
      found++;
    }
}

void
lap_remedy_other_day (const LapCheckup *cx, guint index, GPtrArray *remedies)
{
  const LapWeekEvent *event = LAP_EVENT (cx, index);

  for (int number = 0; number < LAP_N_DAYS && may_move (event); number++) {
    Idea idea = as_it_is (event);

    idea.number = number;
    if (number == event->number || !fits (cx, &idea))
      continue;
    lap_remedy_add (remedies, g_strdup_printf (_("Hold %1$s on %2$s"), lap_event_title (event),
                                               lap_words_label (&lap_days, lap_week_plan_day (cx->plan, number))),
                    edits_of (cx, &idea));
  }
}

void
lap_remedy_cancel (const LapCheckup *cx, guint index, GPtrArray *remedies)
{
  const LapWeekEvent *event = LAP_EVENT (cx, index);
  g_autofree char *day = lap_event_day (cx, event);

  lap_remedy_add (remedies, g_strdup_printf (_("Cancel %1$s on %2$s"), lap_event_title (event), day),
                  lap_verb_cancel_on (cx->plan->week, event->o.c, event->o.was));
  ((LapRemedy *) g_ptr_array_index (remedies, remedies->len - 1))->resort = TRUE;
}

/* Without opening hours nobody means the night. */
static int
first_start (const LapCheckup *cx, const LapClass *c, int number)
{
  LapSpan span;

  if (c->wish_between != NULL)
    return c->wish_between->spans[0].start;
  if (!lap_week_open (cx->plan->week, lap_week_plan_day (cx->plan, number), &span))
    return LAP_DAY_MINUTES;
  return MAX (span.start, 6 * 60);
}

static gboolean
wants_day (const LapClass *c, LapDay day)
{
  return c->wish_days == NULL ||
         g_strv_contains ((const char * const *) c->wish_days, lap_words_id (&lap_days, day));
}

/* The first start of that day, in a room that fits. */
static gboolean
add_place (const LapCheckup *cx, LapClass *c, int number, GPtrArray *remedies)
{
  int start = first_start (cx, c, number);

  for (start = (start + QUARTER - 1) / QUARTER * QUARTER; start + c->minutes <= LAP_DAY_MINUTES; start += QUARTER)
    for (guint r = 0; r < lap_list_n (cx->plan->week->rooms); r++) {
      Idea idea = { NULL, c, number, start, lap_list_nth (cx->plan->week->rooms, r),
                    c->coach != NULL ? g_hash_table_lookup (cx->plan->coaches, c->coach) : NULL };
      g_autofree char *time = NULL;

      if ((c->room != NULL && !g_str_equal (c->room, idea.room->id)) || !fits (cx, &idea))
        continue;
      time = lap_time_of_day_text (start);
      lap_remedy_add (remedies, g_strdup_printf (_("Hold %1$s on %2$s at %3$s in %4$s"), lap_class_title (c),
                                                 lap_words_label (&lap_days, lap_week_plan_day (cx->plan, number)), time,
                                                 lap_room_title (idea.room)), edits_of (cx, &idea));
      return TRUE;
    }
  return FALSE;
}

void
lap_remedy_some_place (const LapCheckup *cx, guint index, GPtrArray *remedies)
{
  LapClass *c = lap_list_nth (cx->plan->week->classes, index);

  for (int number = 0; number < LAP_N_DAYS; number++)
    if (wants_day (c, lap_week_plan_day (cx->plan, number)))
      add_place (cx, c, number, remedies);
}
