/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pieces of an iCalendar (RFC 5545) with times of one zone, on top of libical: the calendar with its zone, events in
 * it, and their times. Which events there are is the format's business.
 *
 * Always true: the zone is written out with every change of the clocks that the events need, so that no reader
 * depends on data of its own; nothing is stamped with the time of writing, so that the same plan is the same bytes.
 *
 * Calling order: lap_ical_new(), events with their properties and times, lap_ical_text(), free.
 */
#pragma once

#include <glib.h>
#include <libical/ical.h>

G_BEGIN_DECLS

typedef struct {
  icalcomponent *calendar;
  char          *tzid;
  GTimeZone     *zone;
} LapIcal;

/* @from and @until are dates: all events are between them. NULL with LAP_ERROR_MISSING where libical isn't there. */
LapIcal       *lap_ical_new            (const char        *title,
                                        const char        *timezone,
                                        int                from,
                                        int                until,
                                        GError           **error);
void           lap_ical_free           (LapIcal           *ical);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapIcal, lap_ical_free)

/* An event of @seconds, stamped with the beginning of the date @stamp. The calendar owns it. */
icalcomponent *lap_ical_add_event      (LapIcal           *ical,
                                        const char        *uid,
                                        int                stamp,
                                        int                seconds);
/* Text that people wrote; nothing where it is NULL or "". */
void           lap_ical_add_text       (icalcomponent     *event,
                                        icalproperty_kind  kind,
                                        const char        *text);
/* The address of a page, likewise. */
void           lap_ical_add_link       (icalcomponent     *event,
                                        const char        *link);
/* The property @kind with what the clock shows, even a time that it jumps over: readers take that as RFC 5545 §3.3.5
 * says, in every week of a series. */
void           lap_ical_add_clock      (LapIcal           *ical,
                                        icalcomponent     *event,
                                        icalproperty_kind  kind,
                                        int                date,
                                        int                minutes);
/* DTSTART at @instant, seconds from 1970-01-01 00:00 UTC on: a time that the clock really shows. */
void           lap_ical_add_start      (LapIcal           *ical,
                                        icalcomponent     *event,
                                        gint64             instant);
/* Every week until @instant, which is in it. */
void           lap_ical_add_weekly     (icalcomponent     *event,
                                        gint64             instant);

/* Lines of 75 bytes at most, each ended by CR and LF. */
GString       *lap_ical_text           (const LapIcal     *ical);

G_END_DECLS
