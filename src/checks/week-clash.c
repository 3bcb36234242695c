/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of weeks: who and what is in two places at a time, or too soon.
 */
#include "base/customs.h"
#include "checks/report.h"
#include "checks/week-plan.h"

#include <glib/gi18n-lib.h>

#define KIT_CHANGE 5
#define NIGHT      (11 * 60)
#define FAR        (2 * LAP_DAY_MINUTES)

static const char *
room_of (const LapWeekEvent *event)
{
  return event->room != NULL ? lap_room_title (event->room) : _("no room");
}

/* Whether both need the same room, or the same coach. */
static gboolean
share (const LapWeekEvent *a, const LapWeekEvent *b, gboolean rooms)
{
  return rooms ? a->room != NULL && a->room == b->room : a->coach != NULL && a->coach == b->coach;
}

/* room-clash and coach-clash */

static void
find_overlaps (LapCheckup *cx, const LapCheck *check, gboolean rooms)
{
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *a = LAP_EVENT (cx, i);

    for (guint k = i + 1; k < cx->plan->events->len && LAP_EVENT (cx, k)->begin < a->end; k++) {
      const LapWeekEvent *b = LAP_EVENT (cx, k);

      if ((a->inside || b->inside) && share (a, b, rooms))
        lap_report_events (cx, check, k, i);
    }
  }
}

static void
find_room_clash (LapCheckup *cx, const LapCheck *check)
{
  find_overlaps (cx, check, TRUE);
}

static char *
tell_room_clash (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *a = LAP_EVENT (cx, w->b), *b = LAP_EVENT (cx, w->a);
  g_autofree char *day = lap_event_day (cx, a), *span = lap_events_overlap (a, b);

  return g_strdup_printf (_("%1$s and %2$s are both in %3$s on %4$s, %5$s."), lap_event_title (a), lap_event_title (b),
                          room_of (a), day, span);
}

static void
remedy_room_clash (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_other_room (cx, w->a, remedies);
  lap_remedy_other_time (cx, w->a, remedies);
  lap_remedy_other_room (cx, w->b, remedies);
  lap_remedy_other_time (cx, w->b, remedies);
}

static void
find_coach_clash (LapCheckup *cx, const LapCheck *check)
{
  find_overlaps (cx, check, FALSE);
}

static char *
tell_coach_clash (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *a = LAP_EVENT (cx, w->b), *b = LAP_EVENT (cx, w->a);
  g_autofree char *day = lap_event_day (cx, a), *span = lap_events_overlap (a, b);

  return g_strdup_printf (_("%1$s has two classes on %2$s, %3$s: %4$s in %5$s and %6$s in %7$s."),
                          lap_coach_title (a->coach), day, span, lap_event_title (a), room_of (a), lap_event_title (b),
                          room_of (b));
}

static void
remedy_coach_clash (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_other_coach (cx, w->a, remedies);
  lap_remedy_other_time (cx, w->a, remedies);
  lap_remedy_other_coach (cx, w->b, remedies);
  lap_remedy_other_time (cx, w->b, remedies);
}

/* coach-away */

static void
find_coach_away (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *event = LAP_EVENT (cx, i);

    if (event->inside && event->o.date != 0 && event->coach != NULL &&
        lap_week_is_away (cx->plan->week, event->coach->id, event->o.date))
      lap_report_events (cx, check, i, G_MAXUINT);
  }
}

static char *
tell_coach_away (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *event = LAP_EVENT (cx, w->a);
  g_autofree char *day = lap_event_day (cx, event), *time = lap_time_of_day_text (event->o.start);

  return g_strdup_printf (_("%1$s is away on %2$s and has %3$s at %4$s."), lap_coach_title (event->coach), day,
                          lap_event_title (event), time);
}

static void
remedy_coach_away (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_other_coach (cx, w->a, remedies);
  lap_remedy_cancel (cx, w->a, remedies);
}

/* What follows what: in a room, or with a coach */

/* The first event from @i on that begins when it has ended, which shares the room or coach; G_MAXUINT without. */
static guint
next_of (const LapCheckup *cx, guint i, gboolean rooms)
{
  const LapWeekEvent *a = LAP_EVENT (cx, i);

  for (guint k = i + 1; k < cx->plan->events->len && LAP_EVENT (cx, k)->begin < a->end + FAR; k++) {
    const LapWeekEvent *b = LAP_EVENT (cx, k);

    if (b->begin >= a->end && share (a, b, rooms))
      return k;
  }
  return G_MAXUINT;
}

/* Minutes that are needed between two events that follow each other. */
typedef int (*NeededFunc) (const LapWeekEvent *a, const LapWeekEvent *b);

static void
find_too_soon (LapCheckup *cx, const LapCheck *check, gboolean rooms, NeededFunc needed)
{
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *a = LAP_EVENT (cx, i), *b;
    guint k = next_of (cx, i, rooms);

    if (k == G_MAXUINT)
      continue;
    b = LAP_EVENT (cx, k);
    if ((a->inside || b->inside) && b->begin - a->end < needed (a, b))
      lap_report_events (cx, check, k, i)->c = needed (a, b);
  }
}

/* turnaround-short */

/* People bring their own mats. */
static gboolean
kit_changes (const LapWeekEvent *a, const LapWeekEvent *b)
{
  return a->facts.found && b->facts.found && ((a->facts.kit ^ b->facts.kit) & ~LAP_BIT (LAP_KIT_MAT)) != 0;
}

static int
turnaround_needed (const LapWeekEvent *a, const LapWeekEvent *b)
{
  return a->room->turnaround + (kit_changes (a, b) ? KIT_CHANGE : 0);
}

static void
find_turnaround_short (LapCheckup *cx, const LapCheck *check)
{
  find_too_soon (cx, check, TRUE, turnaround_needed);
}

static char *
tell_turnaround_short (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *a = LAP_EVENT (cx, w->b), *b = LAP_EVENT (cx, w->a);
  g_autofree char *day = lap_event_day (cx, b);

  return g_strdup_printf (_("%1$s on %2$s: %3$d min between %4$s and %5$s; %6$u are needed."), room_of (a), day,
                          b->begin - a->end, lap_event_title (a), lap_event_title (b), w->c);
}

static void
remedy_turnaround_short (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_other_time (cx, w->a, remedies);
  lap_remedy_other_time (cx, w->b, remedies);
  lap_remedy_other_room (cx, w->a, remedies);
  lap_remedy_other_room (cx, w->b, remedies);
}

/* coach-gap and coach-late-early */

static int
way_needed (const LapWeekEvent *a, const LapWeekEvent *b)
{
  return a->room != b->room;
}

static void
find_coach_gap (LapCheckup *cx, const LapCheck *check)
{
  find_too_soon (cx, check, FALSE, way_needed);
}

static char *
tell_coach_gap (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *a = LAP_EVENT (cx, w->b), *b = LAP_EVENT (cx, w->a);
  g_autofree char *day = lap_event_day (cx, b), *time = lap_time_of_day_text (b->o.start);

  return g_strdup_printf (_("%1$s on %2$s: %3$s in %4$s ends as %5$s in %6$s starts, at %7$s."),
                          lap_coach_title (a->coach), day, lap_event_title (a), room_of (a), lap_event_title (b),
                          room_of (b), time);
}

static int
night_needed (const LapWeekEvent *a, const LapWeekEvent *b)
{
  return a->number != b->number ? NIGHT : 0;
}

static void
find_coach_late_early (LapCheckup *cx, const LapCheck *check)
{
  find_too_soon (cx, check, FALSE, night_needed);
}

static char *
tell_coach_late_early (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *a = LAP_EVENT (cx, w->b), *b = LAP_EVENT (cx, w->a);
  g_autofree char *day = lap_event_day (cx, b), *time = lap_time_of_day_text (b->o.start);
  int gap = b->begin - a->end;

  return g_strdup_printf (_("%1$s has %2$d:%3$02d hours between %4$s and %5$s on %6$s at %7$s."),
                          lap_coach_title (a->coach), gap / 60, gap % 60, lap_event_title (a), lap_event_title (b), day,
                          time);
}

static void
remedy_next (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_other_coach (cx, w->a, remedies);
  lap_remedy_other_coach (cx, w->b, remedies);
  lap_remedy_other_time (cx, w->a, remedies);
  lap_remedy_other_time (cx, w->b, remedies);
}

const LapCheck lap_checks_week_clash[] = {
  { "room-clash", LAP_SEVERITY_STOP, 0, N_("Two classes in one room"),
    N_("Only one class can be in a room at a time."), N_("counted from the week"),
    NULL, tell_room_clash, NULL, remedy_room_clash, find_room_clash },
  { "coach-clash", LAP_SEVERITY_STOP, 0, N_("One coach in two places"),
    N_("A coach can hold only one class at a time."), N_("counted from the week"),
    NULL, tell_coach_clash, NULL, remedy_coach_clash, find_coach_clash },
  { "coach-away", LAP_SEVERITY_STOP, 0, N_("The coach is away"),
    N_("Somebody else must hold the class, or it is cancelled."), N_("counted from the week"),
    NULL, tell_coach_away, NULL, remedy_coach_away, find_coach_away },
  { "turnaround-short", LAP_SEVERITY_WARNING, 0, N_("Too little time to clear the room"),
    N_("One group leaves, the room is aired and made ready, the next comes in; other kit takes five minutes more."),
    N_("common practice"),
    NULL, tell_turnaround_short, NULL, remedy_turnaround_short, find_turnaround_short },
  { "coach-gap", LAP_SEVERITY_WARNING, 0, N_("No time to change rooms"),
    N_("A coach who must leave on the minute starts the next class late."), N_("common practice"),
    NULL, tell_coach_gap, NULL, remedy_next, find_coach_gap },
  { "coach-late-early", LAP_SEVERITY_NOTE, 0, N_("A short night"),
    N_("Eleven hours in a row lie between one working day and the next."),
    N_("Directive 2003/88/EC, article 3"),
    NULL, tell_coach_late_early, NULL, remedy_next, find_coach_late_early },
  { NULL },
};
