/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of weeks: what a room, its hours and a class's time allow. People and air: International Building Code,
 * table 1004.5 (50 square feet each), and ASHRAE 62.1, table 6-1 (10 L/s a person, 0.3 L/s a square metre).
 */
#include "base/customs.h"
#include "base/error.h"
#include "checks/remedies.h"
#include "checks/report.h"
#include "checks/week-plan.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#define AREA_EACH   4.65
#define AIR_EACH    10.0
#define AIR_A_METRE 0.3

/* closed-hours */

static void
find_closed_hours (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *event = LAP_EVENT (cx, i);
    LapSpan span;

    if (!event->inside || (lap_week_open (cx->plan->week, event->o.day, &span) && event->o.start >= span.start &&
                           event->o.start + event->o.c->minutes <= span.end))
      continue;
    lap_report_events (cx, check, i, G_MAXUINT);
  }
  if (cx->plan->n_closed > 0) {
    LapWarning *w = lap_report (cx, check);

    w->severity = LAP_SEVERITY_NOTE;
    w->c = cx->plan->n_closed;
  }
}

static char *
tell_closed_hours (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *event = w->c == 0 ? LAP_EVENT (cx, w->a) : NULL;
  g_autofree char *day = NULL, *start = NULL, *end = NULL;

  if (event == NULL)
    return g_strdup_printf (ngettext ("%u class falls on a date that is closed, and is cancelled.",
                                      "%u classes fall on dates that are closed, and are cancelled.", w->c), w->c);
  day = lap_event_day (cx, event);
  start = lap_time_of_day_text (event->o.start);
  end = lap_time_of_day_text (event->o.start + event->o.c->minutes);
  return g_strdup_printf (_("%1$s on %2$s, %3$s to %4$s, lies outside the opening hours."), lap_event_title (event), day,
                          start, end);
}

static void
remedy_closed_hours (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  if (w->c > 0)
    return;
  lap_remedy_other_time (cx, w->a, remedies);
  lap_remedy_other_day (cx, w->a, remedies);
}

/* over-places, over-area and fresh-air */

static void
find_over (LapCheckup *cx, const LapCheck *check, gboolean area)
{
  for (guint i = 0; i < cx->plan->events->len; i++) {
    const LapWeekEvent *event = LAP_EVENT (cx, i);
    const LapRoom *room = event->room;
    double most = room == NULL ? 0 : area ? room->area / AREA_EACH : room->places;

    if (event->inside && most > 0 && event->o.c->places > most)
      lap_report_events (cx, check, i, G_MAXUINT)->x = most;
  }
}

static void
find_over_places (LapCheckup *cx, const LapCheck *check)
{
  find_over (cx, check, FALSE);
}

static void
find_over_area (LapCheckup *cx, const LapCheck *check)
{
  find_over (cx, check, TRUE);
}

static char *
tell_over_places (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *event = LAP_EVENT (cx, w->a);

  return g_strdup_printf (_("%1$s is for %2$d people; %3$s has %4$d places."), lap_event_title (event),
                          event->o.c->places, lap_room_title (event->room), event->room->places);
}

static char *
tell_over_area (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *event = LAP_EVENT (cx, w->a);
  g_autofree char *area = lap_area_text (event->room->area);

  /* Translators: class, people, room, its floor ("120 m²"), people. */
  return g_strdup_printf (_("%1$s is for %2$d people; %3$s with %4$s has room for %5$d."), lap_event_title (event),
                          event->o.c->places, lap_room_title (event->room), area, (int) w->x);
}

static void
remedy_over (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapWeekEvent *event = LAP_EVENT (cx, w->a);
  LapEdits *edits;

  lap_remedy_other_room (cx, w->a, remedies);
  if (w->x < 1)
    return;
  edits = lap_edits_new (_("Change the places"));
  lap_edits_set_int (edits, event->o.c, "places", (int) w->x);
  lap_remedy_add (remedies, g_strdup_printf (ngettext ("Let %d person in", "Let %d people in", (int) w->x), (int) w->x),
                  edits);
}

static void
find_fresh_air (LapCheckup *cx, const LapCheck *check)
{
  for (guint r = 0; r < lap_list_n (cx->plan->week->rooms); r++) {
    const LapRoom *room = lap_list_nth (cx->plan->week->rooms, r);
    guint most = G_MAXUINT;

    for (guint i = 0; room->area > 0 && i < cx->plan->events->len; i++) {
      const LapWeekEvent *event = LAP_EVENT (cx, i);

      if (event->inside && event->room == room && event->o.c->places > 0 &&
          (most == G_MAXUINT || event->o.c->places > LAP_EVENT (cx, most)->o.c->places))
        most = i;
    }
    if (most != G_MAXUINT)
      lap_report_events (cx, check, most, G_MAXUINT);
  }
}

static char *
tell_fresh_air (const LapCheckup *cx, const LapWarning *w)
{
  const LapWeekEvent *event = LAP_EVENT (cx, w->a);
  int people = event->o.c->places;
  double air = AIR_EACH * people + AIR_A_METRE * event->room->area;
  g_autofree char *area = lap_area_text (event->room->area);

  /* Translators: room, people, its floor ("120 m²"). */
  return g_strdup_printf (_("%1$s: %2$d people in %3$s need %4$.0f litres of fresh air a second, %5$.1f each."),
                          lap_room_title (event->room), people, area, air, air / people);
}

/* slot-short and session-missing */

static void
find_slot_short (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = 0; i < lap_list_n (cx->plan->week->classes); i++) {
    const LapClass *c = lap_list_nth (cx->plan->week->classes, i);
    int length = cx->plan->facts[i].length;
    LapWarning *w;

    if (length <= (c->minutes - c->in_out) * 60)
      continue;
    w = lap_report_index (cx, check, i);
    if (length <= c->minutes * 60)
      w->severity = LAP_SEVERITY_NOTE;
  }
}

static char *
tell_slot_short (const LapCheckup *cx, const LapWarning *w)
{
  const LapClass *c = lap_warning_class (cx, w, 0);
  g_autofree char *length = lap_clock_text (cx->plan->facts[w->a].length);

  if (w->severity == LAP_SEVERITY_NOTE)
    return g_strdup_printf (_("The session of %1$s takes %2$s of %3$d min; %4$d are for coming and going."),
                            lap_class_title (c), length, c->minutes, c->in_out);
  return g_strdup_printf (_("The session of %1$s takes %2$s; the class has %3$d min."), lap_class_title (c), length,
                          c->minutes);
}

static void
remedy_slot_short (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapClass *c = lap_warning_class (cx, w, 0);
  int need = (cx->plan->facts[w->a].length + 59) / 60 + c->in_out;
  int minutes = (need + 4) / 5 * 5;

  if (minutes > LAP_DAY_MINUTES - MAX (0, c->start))
    return;
  lap_remedy_add (remedies, g_strdup_printf (_("Make it %d min"), minutes), lap_verb_set_minutes (c, c->start, minutes));
  if (minutes != need)
    lap_remedy_add (remedies, g_strdup_printf (_("Make it %d min"), need), lap_verb_set_minutes (c, c->start, need));
}

static void
find_session_missing (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = 0; i < lap_list_n (cx->plan->week->classes); i++)
    if (cx->plan->facts[i].named && !cx->plan->facts[i].found)
      lap_report_index (cx, check, i);
}

static char *
tell_session_missing (const LapCheckup *cx, const LapWarning *w)
{
  const LapClass *c = lap_warning_class (cx, w, 0);

  return g_strdup_printf (_("The session of %1$s can’t be read: %2$s."), lap_class_title (c), c->session);
}

static char *
why_session_missing (const LapCheckup *cx, const LapWarning *w)
{
  const LapClass *c = lap_warning_class (cx, w, 0);
  g_autoptr (GError) error = NULL;
  g_autoptr (GString) text = g_string_new (NULL);

  if (cx->plan->attachments != NULL)
    lap_attachments_find (cx->plan->attachments, c->session, &error);
  if (error == NULL || *error->message == '\0')
    return g_strdup (_(w->check->reason));
  lap_append_printable (text, error->message, strlen (error->message), 300);
  return g_string_free (g_steal_pointer (&text), FALSE);
}

static void
remedy_session_missing (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapClass *c = lap_warning_class (cx, w, 0);
  g_autofree char *found = cx->plan->attachments != NULL ? lap_attachments_seek (cx->plan->attachments, c->session)
                                                         : NULL;
  LapEdits *edits;

  if (found != NULL) {
    edits = lap_edits_new (_("Change the session"));
    lap_edits_set_text (edits, c, "session", found);
    lap_remedy_add (remedies, g_strdup_printf (_("Use %s"), found), edits);
  }
  edits = lap_edits_new (_("Change the session"));
  lap_edits_set_text (edits, c, "session", NULL);
  lap_remedy_add (remedies, g_strdup (_("Do without the session")), edits);
}

const LapCheck lap_checks_week_room[] = {
  { "closed-hours", LAP_SEVERITY_WARNING, 0, N_("Outside the opening hours"),
    N_("The house is closed then. On dates that are closed, classes are only cancelled."), N_("counted from the week"),
    NULL, tell_closed_hours, NULL, remedy_closed_hours, find_closed_hours },
  { "over-places", LAP_SEVERITY_WARNING, 0, N_("More people than places"),
    N_("Somebody who has booked would find no place."), N_("counted from the week"),
    NULL, tell_over_places, NULL, remedy_over, find_over_places },
  { "over-area", LAP_SEVERITY_NOTE, 0, N_("More people than the floor is for"),
    N_("An exercise room is reckoned at 4.65 m² of floor each; codes differ from place to place."),
    N_("International Building Code, table 1004.5"),
    NULL, tell_over_area, NULL, remedy_over, find_over_area },
  { "fresh-air", LAP_SEVERITY_NOTE, 0, N_("Fresh air"),
    N_("Ten litres a second for each person and 0.3 for each square metre."), N_("ASHRAE 62.1, table 6-1"),
    NULL, tell_fresh_air, NULL, NULL, find_fresh_air },
  { "slot-short", LAP_SEVERITY_WARNING, 0, N_("The session is longer than the class"),
    N_("The class would end before its session, or people would come and go in it."), N_("counted from the week"),
    NULL, tell_slot_short, NULL, remedy_slot_short, find_slot_short },
  { "session-missing", LAP_SEVERITY_WARNING, 0, N_("The session can’t be read"),
    N_("There is no such file beside the week, or it is no session."), N_("counted from the week"),
    NULL, tell_session_missing, why_session_missing, remedy_session_missing, find_session_missing },
  { NULL },
};
