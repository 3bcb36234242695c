/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/customs.h"

#include <glib/gi18n-lib.h>
#include <langinfo.h>
#include <locale.h>
#include <math.h>
#include <string.h>

#define DAY_MINUTES (24 * 60)
#define FOOT        0.3048 /* metres, exactly: international foot of 1959 */
#define SUNDAY      19971130 /* what glibc counts days of the week from where it isn't Monday, locale(5) */
#define US_UNITS    2 /* locale(5): LC_MEASUREMENT is 1 for metres, 2 for what is used in the United States */

static gboolean
is_nobodys (int category)
{
  const char *name = setlocale (category, NULL);

  return name == NULL || g_str_equal (name, "C") || g_str_equal (name, "POSIX") || g_str_has_prefix (name, "C.");
}

/* Whether the time of day is usually written with twelve hours: by %r, %I or %l of strftime(). */
static gboolean
counts_twelve (void)
{
  for (const char *at = strchr (nl_langinfo (T_FMT), '%'); at != NULL; at = strchr (at + 1, '%')) {
    at += 1 + strspn (at + 1, "-_0^#EO");
    if (*at == '\0')
      break;
    if (strchr ("rIl", *at) != NULL)
      return *nl_langinfo (AM_STR) != '\0' && *nl_langinfo (PM_STR) != '\0';
  }
  return FALSE;
}

/* glibc counts from Sunday or from Monday on, by the locale; the day that it counts from is a number in a pointer. */
static guint
first_day (void)
{
  guint origin = GPOINTER_TO_SIZE (nl_langinfo (_NL_TIME_WEEK_1STDAY));
  guint nth = *nl_langinfo (_NL_TIME_FIRST_WEEKDAY);

  return (nth - 1 + (origin == SUNDAY ? 6 : 0)) % 7;
}

LapCustoms
lap_customs (void)
{
  LapCustoms customs = { 0 };

  if (!is_nobodys (LC_TIME)) {
    customs.first_day = first_day ();
    customs.twelve_hours = counts_twelve ();
  }
  if (!is_nobodys (LC_MEASUREMENT))
    customs.feet = *nl_langinfo (_NL_MEASUREMENT_MEASUREMENT) == US_UNITS;
  return customs;
}

char *
lap_time_of_day_text (int minutes)
{
  g_autofree char *half = NULL;
  int hour = minutes / 60 % 24;

  if (!lap_customs ().twelve_hours)
    return g_strdup_printf ("%02d:%02d", minutes / 60, minutes % 60);
  half = g_locale_to_utf8 (nl_langinfo (hour < 12 ? AM_STR : PM_STR), -1, NULL, NULL, NULL);
  /* Translators: a time of day where people count to twelve: hour, minute, and "AM" or "PM". */
  return g_strdup_printf (_("%1$d:%2$02d\xc2\xa0%3$s"), hour % 12 != 0 ? hour % 12 : 12, minutes % 60,
                          half != NULL ? half : hour < 12 ? "AM" : "PM");
}

/* @text without its end, where that is @half in any case. */
static gboolean
cut (char *text, const char *half)
{
  gsize size = strlen (text), end = strlen (half);

  if (end == 0 || end >= size || g_ascii_strcasecmp (text + size - end, half) != 0)
    return FALSE;
  text[size - end] = '\0';
  if (g_str_has_suffix (text, "\xc2\xa0"))
    text[size - end - 2] = '\0';
  g_strchomp (text);
  return TRUE;
}

int
lap_cut_half_of_day (char *text)
{
  g_autofree char *am = g_locale_to_utf8 (nl_langinfo (AM_STR), -1, NULL, NULL, NULL);
  g_autofree char *pm = g_locale_to_utf8 (nl_langinfo (PM_STR), -1, NULL, NULL, NULL);
  const char *halves[][3] = { { am != NULL ? am : "", "am", "a.m." }, { pm != NULL ? pm : "", "pm", "p.m." } };

  for (guint half = 0; half < G_N_ELEMENTS (halves); half++)
    for (guint i = 0; i < G_N_ELEMENTS (halves[half]); i++)
      if (cut (text, halves[half][i]))
        return half;
  return -1;
}

double
lap_distance_unit (void)
{
  return lap_customs ().feet ? FOOT : 1;
}

static char *
tenths_text (double tenths)
{
  if (lap_customs ().feet)
    /* Translators: a distance in feet. */
    return g_strdup_printf (_("%.1f\xc2\xa0""ft"), tenths / 10);
  return g_strdup_printf (_("%.1f\xc2\xa0m"), tenths / 10);
}

char *
lap_distance_text (double metres)
{
  return tenths_text (round (metres / lap_distance_unit () * 10));
}

char *
lap_distance_up_text (double metres)
{
  return tenths_text (ceil (metres / lap_distance_unit () * 10 - 1e-6));
}

/* What a distance or an area may be typed in. The names are with commas between: the translated ones are understood as
 * well as these. */
typedef struct {
  const char *names;
  double      size; /* in metres, or square metres */
} Unit;

static const Unit lengths[] = {
  /* Translators: what people may type for metres: with commas between, no spaces beside them. */
  { N_("m,metre,metres,meter,meters"), 1 },
  { N_("cm,centimetre,centimetres,centimeter,centimeters"), 0.01 },
  { N_("ft,ft.,foot,feet,',′,’"), FOOT },
  { N_("in,in.,inch,inches,\",″,”"), FOOT / 12 },
};
#define INCHES (&lengths[3])

static const Unit areas[] = {
  { N_("m²,m2,qm,sqm,sq m,sq. m,square metres,square meters"), 1 },
  { N_("ft²,ft2,sqft,sq ft,sq. ft.,sq. ft,square feet"), FOOT * FOOT },
};

static gboolean
is_named (const char *names, const char *name)
{
  g_auto (GStrv) each = g_strsplit (names, ",", -1);

  for (guint i = 0; each[i] != NULL; i++) {
    g_autofree char *one = g_utf8_casefold (each[i], -1);

    if (g_str_equal (one, name))
      return TRUE;
  }
  return FALSE;
}

/* The unit called @text, or NULL. */
static const Unit *
unit_called (const Unit *units, guint n, const char *text)
{
  g_autofree char *name = g_utf8_casefold (text, -1);

  for (guint i = 0; i < n; i++)
    if (is_named (units[i].names, name) || is_named (_(units[i].names), name))
      return &units[i];
  return NULL;
}

/* The number at @at, which goes on behind it and the space that follows. FALSE without one. A comma or point with three
 * digits behind it stands between thousands, unless the locale writes it before decimals. */
static gboolean
take_number (const char **at, double *number)
{
  gsize whole = strspn (*at, "0123456789"), part = 0;
  g_autofree char *digits = NULL;
  char mark = (*at)[whole];

  if (mark == '.' || mark == ',')
    part = strspn (*at + whole + 1, "0123456789");
  if (whole + part == 0)
    return FALSE;
  digits = g_strdup_printf ("%.*s%s%.*s", (int) whole, *at, part == 3 && mark != *localeconv ()->decimal_point ? "" : ".",
                            (int) part, *at + whole + (part > 0));
  *number = g_ascii_strtod (digits, NULL);
  *at += whole + part + (part > 0);
  *at += strspn (*at, " ");
  return TRUE;
}

/* @text with plain spaces, and none at its ends. */
static char *
plain (const char *text)
{
  g_auto (GStrv) pieces = g_strsplit (text, "\xc2\xa0", -1);

  return g_strstrip (g_strjoinv (" ", pieces));
}

gboolean
lap_distance_parse (const char *text, double *metres)
{
  g_autofree char *bare = plain (text);
  const char *at = bare;
  const Unit *unit = NULL;

  *metres = 0;
  do {
    double number;

    if (!take_number (&at, &number))
      return FALSE;
    if (*at != '\0') {
      gsize size = strcspn (at, "0123456789");
      g_autofree char *name = g_strchomp (g_strndup (at, size));

      unit = unit_called (lengths, G_N_ELEMENTS (lengths), name);
      if (unit == NULL)
        return FALSE;
      at += size;
      *metres += number * unit->size;
    } else /* "5' 11", or in what is usual here */
      *metres += number * (unit == NULL ? lap_distance_unit () : unit->size == FOOT ? INCHES->size : NAN);
  } while (*at != '\0');
  return !isnan (*metres);
}

gboolean
lap_area_parse (const char *text, double *square_metres)
{
  g_autofree char *bare = plain (text);
  const char *at = bare;
  const Unit *unit;
  double number;

  if (!take_number (&at, &number))
    return FALSE;
  unit = unit_called (areas, G_N_ELEMENTS (areas), at);
  if (unit == NULL && *at != '\0')
    return FALSE;
  *square_metres = number * (unit != NULL ? unit->size : lap_distance_unit () * lap_distance_unit ());
  return TRUE;
}

char *
lap_area_text (double square_metres)
{
  double area = square_metres / (lap_distance_unit () * lap_distance_unit ());
  int digits = area < 10 && fabs (area - round (area)) >= 0.05 ? 1 : 0;

  if (lap_customs ().feet)
    /* Translators: an area in square feet; the decimals are %1$d. */
    return g_strdup_printf (_("%2$.*1$f\xc2\xa0""ft²"), digits, area);
  /* Translators: an area in square metres; the decimals are %1$d. */
  return g_strdup_printf (_("%2$.*1$f\xc2\xa0m²"), digits, area);
}
