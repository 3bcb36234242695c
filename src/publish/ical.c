/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/ical.h"

#include "model/occurrences.h"

#define DAY_SECONDS (24 * 60 * 60)
/* Any zone that changes its clocks every year has changed them once in so many days. */
#define LOOK_BACK 370
/* What a zone without a change is said to begin with. */
#define LONG_AGO 0

static struct icaltimetype
clock_time (gint64 local)
{
  return icaltime_from_timet_with_zone (local, FALSE, NULL);
}

static struct icaltimetype
utc_time (gint64 instant)
{
  return icaltime_from_timet_with_zone (instant, FALSE, icaltimezone_get_utc_timezone ());
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
  icalcomponent *observance = dst ? icalcomponent_new_xdaylight () : icalcomponent_new_xstandard ();

  icalcomponent_add_property (observance, icalproperty_new_dtstart (change_time (zone, change)));
  icalcomponent_add_property (observance,
                              icalproperty_new_tzoffsetfrom (g_time_zone_get_offset (zone, change->before)));
  icalcomponent_add_property (observance, icalproperty_new_tzoffsetto (g_time_zone_get_offset (zone, change->after)));
  icalcomponent_add_property (observance, icalproperty_new_tzname (g_time_zone_get_abbreviation (zone, change->after)));
  icalcomponent_add_component (vtimezone, observance);
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
                                                   .period = icalperiodtype_null_period () };

      if (is_alike (zone, again, change))
        icalcomponent_add_property (observance, icalproperty_new_rdate (when));
    }
  }
}

static icalcomponent *
zone_new (const char *tzid, GTimeZone *zone, gint64 from, gint64 until)
{
  icalcomponent *vtimezone = icalcomponent_new_vtimezone ();
  g_autoptr (GArray) changes = changes_of (zone, from - LOOK_BACK * DAY_SECONDS, until);

  icalcomponent_add_property (vtimezone, icalproperty_new_tzid (tzid));
  if (changes->len == 0 || g_array_index (changes, Change, 0).instant > from) {
    const int interval = g_time_zone_find_interval (zone, G_TIME_TYPE_UNIVERSAL, from);
    const Change always = { LONG_AGO, interval, interval };

    add_observance (vtimezone, zone, &always);
  }
  add_changes (vtimezone, zone, changes);
  return vtimezone;
}

LapIcal *
lap_ical_new (const char *title, const char *timezone, int from, int until)
{
  LapIcal *ical = g_new0 (LapIcal, 1);

  ical->tzid = g_strdup (timezone);
  ical->zone = g_time_zone_new_identifier (timezone);
  ical->calendar = icalcomponent_new_vcalendar ();
  icalcomponent_add_property (ical->calendar, icalproperty_new_prodid ("-//Lapwing//Lapwing//EN"));
  icalcomponent_add_property (ical->calendar, icalproperty_new_version ("2.0"));
  lap_ical_add_text (ical->calendar, ICAL_NAME_PROPERTY, title);
  icalcomponent_add_component (ical->calendar, zone_new (timezone, ical->zone, lap_instant (ical->zone, from, 0),
                                                         lap_instant (ical->zone, until + 2, 0)));
  return ical;
}

void
lap_ical_free (LapIcal *ical)
{
  icalcomponent_free (ical->calendar);
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
  property = icalproperty_new (kind);
  icalproperty_set_value (property, icalvalue_new_text (cleaned));
  icalcomponent_add_property (event, property);
}

void
lap_ical_add_link (icalcomponent *event, const char *link)
{
  g_autofree char *escaped = link != NULL ? g_uri_escape_string (link, G_URI_RESERVED_CHARS_ALLOWED_IN_PATH "%/?#[]", FALSE)
                                          : NULL;

  if (escaped != NULL && *escaped != '\0')
    icalcomponent_add_property (event, icalproperty_new_url (escaped));
}

icalcomponent *
lap_ical_add_event (LapIcal *ical, const char *uid, int stamp, int seconds)
{
  icalcomponent *event = icalcomponent_new_vevent ();
  g_autoptr (GTimeZone) utc = g_time_zone_new_utc ();

  lap_ical_add_text (event, ICAL_UID_PROPERTY, uid);
  icalcomponent_add_property (event, icalproperty_new_dtstamp (utc_time (lap_instant (utc, stamp, 0))));
  icalcomponent_add_property (event, icalproperty_new_duration (icaldurationtype_from_int (seconds)));
  icalcomponent_add_component (ical->calendar, event);
  return event;
}

/* @local is what the clock of the zone shows, counted as if it were UTC. */
static void
add_time (LapIcal *ical, icalcomponent *event, icalproperty_kind kind, gint64 local)
{
  icalproperty *property = icalproperty_new (kind);

  icalproperty_set_value (property, icalvalue_new_datetime (clock_time (local)));
  icalproperty_add_parameter (property, icalparameter_new_tzid (ical->tzid));
  icalcomponent_add_property (event, property);
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

  icalrecurrencetype_clear (&rule);
  rule.freq = ICAL_WEEKLY_RECURRENCE;
  rule.until = utc_time (instant);
  icalcomponent_add_property (event, icalproperty_new_rrule (rule));
}

GString *
lap_ical_text (const LapIcal *ical)
{
  char *text = icalcomponent_as_ical_string_r (ical->calendar);
  GString *copy = g_string_new (text);

  icalmemory_free_buffer (text);
  return copy;
}
