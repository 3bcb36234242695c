/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of weeks: what it asks of coaches and of those who come.
 */
#include "base/customs.h"
#include "checks/report.h"
#include "checks/week-plan.h"

#include <glib/gi18n-lib.h>

#define MOST_HARD 2
#define RECOVERY  (48 * 60)

static gboolean
is_hard_for (const LapWeekEvent *event)
{
  return event->facts.strain == LAP_STRAIN_HARD && event->o.c->for_whom != NULL && *event->o.c->for_whom != '\0';
}

/* coach-load */

/* What a coach has on each day: classes, hard ones taken part in, and the last, which is the one to be given away. */
typedef struct {
  guint n[LAP_N_DAYS], hard[LAP_N_DAYS], last[LAP_N_DAYS];
} Load;

static void
report_load (LapCheckup *cx, const LapCheck *check, const Load *load, int number)
{
  const LapWeekEvent *last = LAP_EVENT (cx, load->last[number]);
  LapWarning *w = lap_report_events (cx, check, load->last[number], G_MAXUINT);

  w->b = load->n[number];
  w->c = load->hard[number];
  for (guint i = load->last[number]; i-- > 0;)
    if (LAP_EVENT (cx, i)->inside && LAP_EVENT (cx, i)->coach == last->coach && LAP_EVENT (cx, i)->number == number)
      lap_report_class (cx, w, LAP_EVENT (cx, i)->o.c);
}

static void
find_coach_load (LapCheckup *cx, const LapCheck *check)
{
  for (guint c = 0; c < lap_list_n (cx->plan->week->coaches); c++) {
    const LapCoach *coach = lap_list_nth (cx->plan->week->coaches, c);
    Load load = { { 0 } };

    for (guint i = 0; i < cx->plan->events->len; i++) {
      const LapWeekEvent *event = LAP_EVENT (cx, i);

      if (event->coach != coach || !event->inside)
        continue;
      load.n[event->number]++;
      load.hard[event->number] += event->facts.strain == LAP_STRAIN_HARD && event->o.c->takes_part;
      load.last[event->number] = i;
    }
    for (int d = 0; d < LAP_N_DAYS; d++)
      if ((coach->most_a_day > 0 && load.n[d] > (guint) coach->most_a_day) || load.hard[d] > MOST_HARD)
        report_load (cx, check, &load, d);
  }
}

static char *
tell_coach_load (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *event = LAP_EVENT (cx, w->a);
  g_autofree char *day = lap_event_day (cx, event);

  if (w->c > MOST_HARD)
    return g_strdup_printf (_("%1$s takes part in %2$u hard classes on %3$s."), lap_coach_title (event->coach), w->c,
                            day);
  return g_strdup_printf (_("%1$s has %2$u classes on %3$s; at most %4$d are wanted."), lap_coach_title (event->coach),
                          w->b, day, event->coach->most_a_day);
}

static void
remedy_coach_load (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapWeekEvent *last = LAP_EVENT (cx, w->a);

  for (guint i = w->a + 1; i-- > 0 && LAP_EVENT (cx, i)->number == last->number;)
    if (LAP_EVENT (cx, i)->coach == last->coach)
      lap_remedy_other_coach (cx, i, remedies);
  lap_remedy_other_day (cx, w->a, remedies);
}

/* hard-days */

/* A set of days, from AROUND days before the week on; without dates the seven days are a circle. */
typedef struct {
  const char *for_whom;
  guint32     days;
} Hard;

#define BEFORE 3
#define SPAN   13

static GArray *
hard_days (const LapCheckup *cx)
{
  GArray *all = g_array_new (FALSE, FALSE, sizeof (Hard));

  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *event = LAP_EVENT (cx, i);
    guint h = 0;

    if (!is_hard_for (event) || (cx->plan->date == 0 && !event->inside))
      continue;
    while (h < all->len && !g_str_equal (g_array_index (all, Hard, h).for_whom, event->o.c->for_whom))
      h++;
    if (h == all->len)
      g_array_append_val (all, ((Hard) { event->o.c->for_whom, 0 }));
    g_array_index (all, Hard, h).days |= LAP_BIT (event->number + BEFORE);
  }
  return all;
}

/* Reports the run of @length days from @first, at the last class of its second day. */
static void
report_run (LapCheckup *cx, const LapCheck *check, const Hard *hard, int first, int length)
{
  LapWarning *w = NULL;

  for (guint k = cx->plan->events->len; k-- > 0;) {
    const LapWeekEvent *event = LAP_EVENT (cx, k);
    int away = event->number - first;

    if (cx->plan->date == 0)
      away = (away + LAP_N_DAYS) % LAP_N_DAYS;
    if (!event->inside || away < 0 || away >= length || !is_hard_for (event) ||
        !g_str_equal (event->o.c->for_whom, hard->for_whom))
      continue;
    if (w == NULL)
      w = lap_report_events (cx, check, k, G_MAXUINT);
    else
      lap_report_class (cx, w, event->o.c);
  }
  if (w != NULL) {
    w->b = (first + LAP_N_DAYS) % LAP_N_DAYS;
    w->c = length;
  }
}

static void
find_runs (LapCheckup *cx, const LapCheck *check, const Hard *hard)
{
  const gboolean circle = cx->plan->date == 0;
  const int n = circle ? LAP_N_DAYS : SPAN, low = circle ? BEFORE : 0;
#define DAY(i) (((i) < n || circle) && (hard->days & LAP_BIT (low + (i) % n)))

  for (int i = 0; i < n; i++) {
    int length = 0;

    if (!DAY (i) || (i > 0 || circle ? DAY (i + (circle ? n : 0) - 1) && hard->days != 0x7f << BEFORE : FALSE))
      continue;
    while (length < n && DAY (i + length))
      length++;
    if (length > 1)
      report_run (cx, check, hard, i + low - BEFORE, length);
    if (length == n)
      return;
  }
#undef DAY
}

static void
find_hard_days (LapCheckup *cx, const LapCheck *check)
{
  g_autoptr (GArray) all = hard_days (cx);

  for (guint i = 0; i < all->len; i++)
    find_runs (cx, check, &g_array_index (all, Hard, i));
}

static char *
tell_hard_days (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s train hard on %2$u days running, from %3$s on."), lap_warning_class (cx, w, 0)->for_whom,
                          w->c, lap_words_label (&lap_days, w->b));
}

static void
remedy_hard_days (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  for (guint i = 0; i < cx->plan->events->len; i++)
    for (guint k = 0; k < w->n_classes; k++)
      if (LAP_EVENT (cx, i)->inside && LAP_EVENT (cx, i)->o.c == lap_warning_class (cx, w, k))
        lap_remedy_other_day (cx, i, remedies);
}

/* same-region-soon */

static void
find_same_region_soon (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *a = LAP_EVENT (cx, i);

    for (guint k = i + 1; is_hard_for (a) && k < cx->plan->events->len; k++) {
      const LapWeekEvent *b = LAP_EVENT (cx, k);

      if (b->begin - a->begin >= RECOVERY)
        break;
      if (!is_hard_for (b) || !g_str_equal (a->o.c->for_whom, b->o.c->for_whom) || (!a->inside && !b->inside) ||
          (a->facts.regions & b->facts.regions) == 0)
        continue;
      lap_report_events (cx, check, k, i)->mask = a->facts.regions & b->facts.regions;
      break;
    }
  }
}

static char *
tell_same_region_soon (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *a = LAP_EVENT (cx, w->b), *b = LAP_EVENT (cx, w->a);
  g_autofree char *regions = lap_words_join (&lap_regions, w->mask);

  return g_strdup_printf (_("%1$s: %2$s works %3$s hard %4$d hours after %5$s."), a->o.c->for_whom, lap_event_title (b),
                          regions, (b->begin - a->begin) / 60, lap_event_title (a));
}

static void
remedy_same_region_soon (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_other_day (cx, w->a, remedies);
  lap_remedy_other_day (cx, w->b, remedies);
}

/* coach-cannot */

enum { NOT_TRAINED, NOT_FREE };

static void
find_coach_cannot (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *event = LAP_EVENT (cx, i);
    const int start = event->o.start, end = start + event->o.c->minutes;

    if (!event->inside || event->coach == NULL)
      continue;
    if (!lap_coach_can (event->coach, event->o.c->kind))
      lap_report_events (cx, check, i, G_MAXUINT)->c = NOT_TRAINED;
    else if (!lap_coach_is_free (event->coach, event->o.day, start, end))
      lap_report_events (cx, check, i, G_MAXUINT)->c = NOT_FREE;
  }
}

static char *
tell_coach_cannot (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *event = LAP_EVENT (cx, w->a);
  g_autofree char *day = lap_event_day (cx, event), *start = lap_time_of_day_text (event->o.start);
  g_autofree char *end = lap_time_of_day_text (event->o.start + event->o.c->minutes);

  if (w->c == NOT_TRAINED)
    return g_strdup_printf (_("%1$s isn’t trained for “%2$s”: %3$s on %4$s at %5$s."), lap_coach_title (event->coach),
                            event->o.c->kind, lap_event_title (event), day, start);
  return g_strdup_printf (_("%1$s isn’t free on %2$s, %3$s to %4$s: %5$s."), lap_coach_title (event->coach), day, start,
                          end, lap_event_title (event));
}

static void
remedy_coach_cannot (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_other_coach (cx, w->a, remedies);
  lap_remedy_other_time (cx, w->a, remedies);
}

/* unplaced */

static void
find_unplaced (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = 0; i < lap_list_n (cx->plan->week->classes); i++)
    if (!lap_class_is_placed (lap_list_nth (cx->plan->week->classes, i)))
      lap_report_index (cx, check, i);
}

static char *
tell_unplaced (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%s has no day yet."), lap_class_title (lap_warning_class (cx, w, 0)));
}

static void
remedy_unplaced (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_some_place (cx, w->a, remedies);
}

const LapCheck lap_checks_week_body[] = {
  { "coach-load", LAP_SEVERITY_WARNING, 0, N_("A long day for the coach"),
    N_("Teaching is work of 6.8 METs; whoever takes part in three hard classes a day wears out."),
    N_("2024 Compendium of Physical Activities, 02110; common practice"),
    NULL, tell_coach_load, NULL, remedy_coach_load, find_coach_load },
  { "hard-days", LAP_SEVERITY_NOTE, 0, N_("Hard days running"),
    N_("The day after a hard one is for something light."), N_("common practice"),
    NULL, tell_hard_days, NULL, remedy_hard_days, find_hard_days },
  { "same-region-soon", LAP_SEVERITY_NOTE, 0, N_("The same region again too soon"),
    N_("48 hours lie between two hard sessions of the same muscles."),
    N_("American College of Sports Medicine, position stand on resistance training"),
    NULL, tell_same_region_soon, NULL, remedy_same_region_soon, find_same_region_soon },
  { "coach-cannot", LAP_SEVERITY_WARNING, 0, N_("The coach isn’t free or not trained for it"),
    N_("The week says when a coach is free and which kinds of class they hold."), N_("counted from the week"),
    NULL, tell_coach_cannot, NULL, remedy_coach_cannot, find_coach_cannot },
  { "unplaced", LAP_SEVERITY_NOTE, 0, N_("Not placed yet"),
    N_("Nobody can come to a class without a day."), N_("counted from the week"),
    NULL, tell_unplaced, NULL, remedy_unplaced, find_unplaced },
  { NULL },
};
