/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "checks/week-plan.h"

#include "base/customs.h"
#include "checks/report.h"

#include <glib/gi18n-lib.h>

/* Days before and after the week that rules look at: 48 hours, and a night. */
#define AROUND 3

static void
add_event (LapWeekPlan *plan, const LapOccurrence *o, int shift, gboolean inside)
{
  LapWeekEvent event = {
    .o = *o, .facts = plan->facts[o->index], .begin = o->begin + shift, .end = o->end + shift, .inside = inside,
    .room = o->room != NULL ? g_hash_table_lookup (plan->rooms, o->room) : NULL,
    .coach = o->coach != NULL ? g_hash_table_lookup (plan->coaches, o->coach) : NULL,
    .number = o->date != 0 ? o->date - plan->date : o->day + (inside ? 0 : LAP_N_DAYS),
  };

  g_array_append_val (plan->events, event);
}

static void
gather_dated (LapWeekPlan *plan)
{
  g_autoptr (GTimeZone) zone = g_time_zone_new_identifier (plan->week->timezone);
  const int from = plan->date - AROUND;
  g_autoptr (GArray) found = lap_occurrences_between (plan->week, from, plan->date + LAP_N_DAYS - 1 + AROUND);
  int shift = (lap_instant (zone, from, 0) - lap_instant (zone, plan->date, 0)) / 60;

  for (guint i = 0; i < found->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (found, i);
    gboolean inside = o->date >= plan->date && o->date < plan->date + LAP_N_DAYS;

    plan->n_closed += inside && o->state == LAP_HOUSE_CLOSED;
    if (o->state == LAP_HELD)
      add_event (plan, o, shift, inside);
  }
}

static void
gather_always (LapWeekPlan *plan)
{
  g_autoptr (GArray) found = lap_occurrences_new (plan->week, 0);

  for (guint i = 0; i < found->len; i++)
    add_event (plan, lap_occurrence_nth (found, i), 0, TRUE);
  for (guint i = 0; i < found->len && lap_occurrence_nth (found, i)->day < AROUND; i++)
    add_event (plan, lap_occurrence_nth (found, i), LAP_WEEK_MINUTES, FALSE);
}

LapDay
lap_week_plan_day (const LapWeekPlan *plan, int number)
{
  return lap_day_nth (plan->date != 0 ? lap_date_day (plan->date) : LAP_DAY_MON, number);
}

LapWeekPlan *
lap_week_plan_new (LapWeek *week, int date, LapAttachments *attachments)
{
  LapWeekPlan *plan = g_new0 (LapWeekPlan, 1);
  guint n = lap_list_n (week->classes);

  plan->week = g_object_ref (week);
  plan->date = date;
  plan->attachments = attachments != NULL ? lap_attachments_ref (attachments) : NULL;
  plan->events = g_array_new (FALSE, FALSE, sizeof (LapWeekEvent));
  plan->facts = g_new (LapClassFacts, n + 1);
  plan->rooms = g_hash_table_new (g_str_hash, g_str_equal);
  plan->coaches = g_hash_table_new (g_str_hash, g_str_equal);
  for (guint i = 0; i < n; i++)
    lap_class_facts (lap_list_nth (week->classes, i), attachments, &plan->facts[i]);
  for (guint i = 0; i < lap_list_n (week->rooms); i++)
    g_hash_table_insert (plan->rooms, LAP_ROOM (lap_list_nth (week->rooms, i))->id, lap_list_nth (week->rooms, i));
  for (guint i = 0; i < lap_list_n (week->coaches); i++)
    g_hash_table_insert (plan->coaches, LAP_COACH (lap_list_nth (week->coaches, i))->id,
                         lap_list_nth (week->coaches, i));
  if (plan->date != 0)
    gather_dated (plan);
  else
    gather_always (plan);
  return plan;
}

void
lap_week_plan_free (LapWeekPlan *plan)
{
  g_hash_table_unref (plan->rooms);
  g_hash_table_unref (plan->coaches);
  g_array_unref (plan->events);
  g_free (plan->facts);
  g_clear_pointer (&plan->attachments, lap_attachments_unref);
  g_object_unref (plan->week);
  g_free (plan);
}

/* Telling */

const char *
lap_event_title (const LapWeekEvent *event)
{
  return lap_class_title (event->o.c);
}

char *
lap_event_day (const LapCheckup *cx, const LapWeekEvent *event)
{
  char text[100];
  GDate date;

  if (event->o.date == 0)
    return g_strdup (lap_words_label (&lap_days, event->o.day));
  g_date_clear (&date, 1);
  g_date_set_julian (&date, event->o.date);
  /* Translators: a date in a sentence, as strftime() knows it: "Thursday, 14 January". */
  g_date_strftime (text, sizeof text, _("%A, %e %B"), &date);
  return g_strdup (text);
}

char *
lap_events_overlap (const LapWeekEvent *a, const LapWeekEvent *b)
{
  int start = MAX (a->begin, b->begin) - a->begin + a->o.start, end = MIN (a->end, b->end) - a->begin + a->o.start;
  g_autofree char *from = lap_time_of_day_text (start), *until = lap_time_of_day_text (end);

  return g_strdup_printf (_("%1$s to %2$s"), from, until);
}

/* Reporting */

LapWarning *
lap_report_events (LapCheckup *cx, const LapCheck *check, guint a, guint b)
{
  LapWarning *w = lap_report (cx, check);

  w->a = a;
  w->b = b;
  w->when = MAX (0, LAP_EVENT (cx, a)->begin);
  lap_report_class (cx, w, LAP_EVENT (cx, a)->o.c);
  if (b != G_MAXUINT)
    lap_report_class (cx, w, LAP_EVENT (cx, b)->o.c);
  return w;
}

LapWarning *
lap_report_index (LapCheckup *cx, const LapCheck *check, guint index)
{
  LapWarning *w = lap_report (cx, check);
  LapClass *c = lap_list_nth (cx->plan->week->classes, index);

  w->a = index;
  if (lap_class_is_placed (c))
    w->when = c->day * LAP_DAY_MINUTES + c->start;
  lap_report_class (cx, w, c);
  return w;
}
