/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/ical.h"

#include "base/error.h"
#include "model/occurrences.h"

#include <glib/gi18n-lib.h>
#include <gmodule.h>

#define DAY_SECONDS (24 * 60 * 60)
/* Any zone that changes its clocks every year has changed them once in so many days. */
#define LOOK_BACK 370
/* What a zone without a change is said to begin with. */
#define LONG_AGO 0

/* What is used of libical, which is looked for when the first calendar is made: it brings ICU along, whose loading no
 * window has to wait for. */
#define LIBRARY "libical.so.3"
#define FUNCTIONS(F) \
  F (icalcomponent_add_component) F (icalcomponent_add_property) F (icalcomponent_as_ical_string_r) \
  F (icalcomponent_free) F (icalcomponent_new_vcalendar) F (icalcomponent_new_vevent) \
  F (icalcomponent_new_vtimezone) F (icalcomponent_new_xdaylight) F (icalcomponent_new_xstandard) \
  F (icaldurationtype_from_int) F (icalmemory_free_buffer) F (icalparameter_new_tzid) \
  F (icalperiodtype_null_period) F (icalproperty_add_parameter) F (icalproperty_new) \
  F (icalproperty_new_dtstamp) F (icalproperty_new_dtstart) F (icalproperty_new_duration) \
  F (icalproperty_new_prodid) F (icalproperty_new_rdate) F (icalproperty_new_rrule) F (icalproperty_new_tzid) \
  F (icalproperty_new_tzname) F (icalproperty_new_tzoffsetfrom) F (icalproperty_new_tzoffsetto) \
  F (icalproperty_new_url) F (icalproperty_new_version) F (icalproperty_set_value) \
  F (icalrecurrencetype_clear) F (icaltime_from_timet_with_zone) F (icaltimezone_get_utc_timezone) \
  F (icalvalue_new_datetime) F (icalvalue_new_text)

#define MEMBER(name) __typeof__ (name) *name;
#define FIND(name) && g_module_symbol (module, #name, (gpointer *) &lib.name)

static struct { FUNCTIONS (MEMBER) } lib;

/* It stays loaded: it is asked for again with the next calendar. */
static gboolean
load (GError **error)
{
  GModule *module = g_module_open (LIBRARY, G_MODULE_BIND_LAZY | G_MODULE_BIND_LOCAL);

  if (module != NULL FUNCTIONS (FIND)) {
    g_module_make_resident (module);
    return TRUE;
  }
  g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("a calendar needs the library libical, which isn’t installed"));
  return FALSE;
}

static struct icaltimetype
clock_time (gint64 local)
{
  return lib.icaltime_from_timet_with_zone (local, FALSE, NULL);
}

static struct icaltimetype
utc_time (gint64 instant)
{
  return lib.icaltime_from_timet_with_zone (instant, FALSE, lib.icaltimezone_get_utc_timezone ());
}

/* A change of the clocks; times with the same change share one component. */
typedef struct {
  gint64 instant;
  int    before, after; /* intervals of the zone */
} Change;

/* The first second after @low in which the zone isn't in the interval it is in at @low, at most @high. */
static gint64
find_change (GTimeZone *zone, gint64 low, gint64 high)
{
  const int before = g_time_zone_find_interval (zone, G_TIME_TYPE_UNIVERSAL, low);

  while (high - low > 1) {
    const gint64 middle = low + (high - low) / 2;

    if (g_time_zone_find_interval (zone, G_TIME_TYPE_UNIVERSAL, middle) == before)
      low = middle;
    else
      high = middle;
  }
  return high;
}

static GArray *
changes_of (GTimeZone *zone, gint64 from, gint64 until)
{
  GArray *changes = g_array_new (FALSE, FALSE, sizeof (Change));
  int before = g_time_zone_find_interval (zone, G_TIME_TYPE_UNIVERSAL, from);

  for (gint64 t = from; t < until; t += DAY_SECONDS) {
    const int after = g_time_zone_find_interval (zone, G_TIME_TYPE_UNIVERSAL, t + DAY_SECONDS);
    Change change = { 0, before, after };

    if (after == before)
      continue;
    change.instant = find_change (zone, t, t + DAY_SECONDS);
    g_array_append_val (changes, change);
    before = after;
  }
  return changes;
}

/* Whether both set the clocks alike, so that one component says it. */
static gboolean
is_alike (GTimeZone *zone, const Change *a, const Change *b)
{
  return g_time_zone_get_offset (zone, a->before) == g_time_zone_get_offset (zone, b->before) &&
         g_time_zone_get_offset (zone, a->after) == g_time_zone_get_offset (zone, b->after) &&
         g_time_zone_is_dst (zone, a->after) == g_time_zone_is_dst (zone, b->after) &&
         g_strcmp0 (g_time_zone_get_abbreviation (zone, a->after), g_time_zone_get_abbreviation (zone, b->after)) == 0;
}

/* RFC 5545 §3.6.5: the time of a change is on the clock as it was before. */
static struct icaltimetype
change_time (GTimeZone *zone, const Change *change)
{
  return clock_time (change->instant + g_time_zone_get_offset (zone, change->before));
}

static icalcomponent *
add_observance (icalcomponent *vtimezone, GTimeZone *zone, const Change *change)
{
  const gboolean dst = g_time_zone_is_dst (zone, change->after);
  icalcomponent *observance = dst ? lib.icalcomponent_new_xdaylight () : lib.icalcomponent_new_xstandard ();

  lib.icalcomponent_add_property (observance, lib.icalproperty_new_dtstart (change_time (zone, change)));
  lib.icalcomponent_add_property (observance,
                              lib.icalproperty_new_tzoffsetfrom (g_time_zone_get_offset (zone, change->before)));
  lib.icalcomponent_add_property (observance, lib.icalproperty_new_tzoffsetto (g_time_zone_get_offset (zone, change->after)));
  lib.icalcomponent_add_property (observance, lib.icalproperty_new_tzname (g_time_zone_get_abbreviation (zone, change->after)));
  lib.icalcomponent_add_component (vtimezone, observance);
  return observance;
}

static void
add_changes (icalcomponent *vtimezone, GTimeZone *zone, GArray *changes)
{
  for (guint i = 0; i < changes->len; i++) {
    const Change *change = &g_array_index (changes, Change, i);
    icalcomponent *observance;
    guint k = 0;

    while (!is_alike (zone, &g_array_index (changes, Change, k), change))
      k++;
    if (k < i) /* said with the first of its kind */
      continue;
    observance = add_observance (vtimezone, zone, change);
    for (k = i + 1; k < changes->len; k++) {
      const Change *again = &g_array_index (changes, Change, k);
      const struct icaldatetimeperiodtype when = { .time = change_time (zone, again),
                                                   .period = lib.icalperiodtype_null_period () };

      if (is_alike (zone, again, change))
        lib.icalcomponent_add_property (observance, lib.icalproperty_new_rdate (when));
    }
  }
}

static icalcomponent *
zone_new (const char *tzid, GTimeZone *zone, gint64 from, gint64 until)
{
  icalcomponent *vtimezone = lib.icalcomponent_new_vtimezone ();
  g_autoptr (GArray) changes = changes_of (zone, from - LOOK_BACK * DAY_SECONDS, until);

  lib.icalcomponent_add_property (vtimezone, lib.icalproperty_new_tzid (tzid));
  if (changes->len == 0 || g_array_index (changes, Change, 0).instant > from) {
    const int interval = g_time_zone_find_interval (zone, G_TIME_TYPE_UNIVERSAL, from);
    const Change always = { LONG_AGO, interval, interval };

    add_observance (vtimezone, zone, &always);
  }
  add_changes (vtimezone, zone, changes);
  return vtimezone;
}

LapIcal *
lap_ical_new (const char *title, const char *timezone, int from, int until, GError **error)
{
  LapIcal *ical;

  if (!load (error))
    return NULL;
  ical = g_new0 (LapIcal, 1);
  ical->tzid = g_strdup (timezone);
  ical->zone = g_time_zone_new_identifier (timezone);
  ical->calendar = lib.icalcomponent_new_vcalendar ();
  lib.icalcomponent_add_property (ical->calendar, lib.icalproperty_new_prodid ("-//Lapwing//Lapwing//EN"));
  lib.icalcomponent_add_property (ical->calendar, lib.icalproperty_new_version ("2.0"));
  lap_ical_add_text (ical->calendar, ICAL_NAME_PROPERTY, title);
  lib.icalcomponent_add_component (ical->calendar, zone_new (timezone, ical->zone, lap_instant (ical->zone, from, 0),
                                                         lap_instant (ical->zone, until + 2, 0)));
  return ical;
}

void
lap_ical_free (LapIcal *ical)
{
  lib.icalcomponent_free (ical->calendar);
  g_time_zone_unref (ical->zone);
  g_free (ical->tzid);
  g_free (ical);
}

/* Without the control characters that RFC 5545 §3.3.11 doesn't allow in a text; it has newlines and tabs. */
static char *
clean (const char *text)
{
  g_auto (GStrv) lines = g_strsplit (text, "\r\n", -1);
  char *all = g_strjoinv ("\n", lines);

  for (char *c = all; *c != '\0'; c++)
    if (*c == '\r')
      *c = '\n';
    else if (g_ascii_iscntrl (*c) && *c != '\n' && *c != '\t')
      *c = ' ';
  return all;
}

void
lap_ical_add_text (icalcomponent *event, icalproperty_kind kind, const char *text)
{
  g_autofree char *cleaned = text != NULL ? clean (text) : NULL;
  icalproperty *property;

  if (cleaned == NULL || *cleaned == '\0')
    return;
  property = lib.icalproperty_new (kind);
  lib.icalproperty_set_value (property, lib.icalvalue_new_text (cleaned));
  lib.icalcomponent_add_property (event, property);
}

void
lap_ical_add_link (icalcomponent *event, const char *link)
{
  g_autofree char *escaped = link != NULL ? g_uri_escape_string (link, G_URI_RESERVED_CHARS_ALLOWED_IN_PATH "%/?#[]", FALSE)
                                          : NULL;

  if (escaped != NULL && *escaped != '\0')
    lib.icalcomponent_add_property (event, lib.icalproperty_new_url (escaped));
}

icalcomponent *
lap_ical_add_event (LapIcal *ical, const char *uid, int stamp, int seconds)
{
  icalcomponent *event = lib.icalcomponent_new_vevent ();
  g_autoptr (GTimeZone) utc = g_time_zone_new_utc ();

  lap_ical_add_text (event, ICAL_UID_PROPERTY, uid);
  lib.icalcomponent_add_property (event, lib.icalproperty_new_dtstamp (utc_time (lap_instant (utc, stamp, 0))));
  lib.icalcomponent_add_property (event, lib.icalproperty_new_duration (lib.icaldurationtype_from_int (seconds)));
  lib.icalcomponent_add_component (ical->calendar, event);
  return event;
}

/* @local is what the clock of the zone shows, counted as if it were UTC. */
static void
add_time (LapIcal *ical, icalcomponent *event, icalproperty_kind kind, gint64 local)
{
  icalproperty *property = lib.icalproperty_new (kind);

  lib.icalproperty_set_value (property, lib.icalvalue_new_datetime (clock_time (local)));
  lib.icalproperty_add_parameter (property, lib.icalparameter_new_tzid (ical->tzid));
  lib.icalcomponent_add_property (event, property);
}

void
lap_ical_add_clock (LapIcal *ical, icalcomponent *event, icalproperty_kind kind, int date, int minutes)
{
  g_autoptr (GTimeZone) utc = g_time_zone_new_utc ();

  add_time (ical, event, kind, lap_instant (utc, date, minutes));
}

void
lap_ical_add_start (LapIcal *ical, icalcomponent *event, gint64 instant)
{
  const int interval = g_time_zone_find_interval (ical->zone, G_TIME_TYPE_UNIVERSAL, instant);

  add_time (ical, event, ICAL_DTSTART_PROPERTY, instant + g_time_zone_get_offset (ical->zone, interval));
}

void
lap_ical_add_weekly (icalcomponent *event, gint64 instant)
{
  struct icalrecurrencetype rule;

  lib.icalrecurrencetype_clear (&rule);
  rule.freq = ICAL_WEEKLY_RECURRENCE;
  rule.until = utc_time (instant);
  lib.icalcomponent_add_property (event, lib.icalproperty_new_rrule (rule));
}

GString *
lap_ical_text (const LapIcal *ical)
{
  char *text = lib.icalcomponent_as_ical_string_r (ical->calendar);
  GString *copy = g_string_new (text);

  lib.icalmemory_free_buffer (text);
  return copy;
}
