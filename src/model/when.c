/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/when.h"

#include <glib/gi18n-lib.h>

#define MOST_SPANS 100

static const LapWord days[] = {
  { "mon", N_("Monday") },
  { "tue", N_("Tuesday") },
  { "wed", N_("Wednesday") },
  { "thu", N_("Thursday") },
  { "fri", N_("Friday") },
  { "sat", N_("Saturday") },
  { "sun", N_("Sunday") },
};
const LapWords lap_days = { "a day", days, G_N_ELEMENTS (days) };

G_DEFINE_BOXED_TYPE (LapHours, lap_hours, lap_hours_copy, lap_hours_free)

LapHours *
lap_hours_new (guint n, const LapSpan *spans)
{
  LapHours *hours = g_malloc (sizeof (LapHours) + n * sizeof (LapSpan));

  hours->n = n;
  for (guint i = 0; i < n; i++)
    hours->spans[i] = spans[i];
  return hours;
}

LapHours *
lap_hours_copy (const LapHours *hours)
{
  return lap_hours_new (hours->n, hours->spans);
}

void
lap_hours_free (LapHours *hours)
{
  g_free (hours);
}

gboolean
lap_hours_hold (const LapHours *hours, int start, int end)
{
  gboolean grew = TRUE;

  /* What is held from @start on grows until no span takes it further. */
  while (hours != NULL && start < end && grew) {
    grew = FALSE;
    for (guint i = 0; i < hours->n; i++)
      if (hours->spans[i].start <= start && hours->spans[i].end > start) {
        start = hours->spans[i].end;
        grew = TRUE;
      }
  }
  return hours != NULL && start >= end;
}

gboolean
lap_hours_touch (const LapHours *hours, int start, int end)
{
  for (guint i = 0; hours != NULL && i < hours->n; i++)
    if (hours->spans[i].start < end && hours->spans[i].end > start)
      return TRUE;
  return FALSE;
}

/* Texts */

char *
lap_time_text (int minutes)
{
  return g_strdup_printf ("%02d:%02d", minutes / 60, minutes % 60);
}

int
lap_time_parse (const char *text, int most)
{
  int minutes;

  for (guint i = 0; i < 5; i++)
    if (i == 2 ? text[i] != ':' : !g_ascii_isdigit (text[i]))
      return -1;
  if (text[5] != '\0' || text[3] > '5')
    return -1;
  minutes = ((text[0] - '0') * 10 + text[1] - '0') * 60 + (text[3] - '0') * 10 + text[4] - '0';
  return minutes <= most ? minutes : -1;
}

char *
lap_date_text (int date)
{
  GDate d;

  g_date_clear (&d, 1);
  g_date_set_julian (&d, date);
  return g_strdup_printf ("%04u-%02u-%02u", g_date_get_year (&d), g_date_get_month (&d), g_date_get_day (&d));
}

int
lap_date_parse (const char *text)
{
  int year = 0, month, day;
  GDate d;

  for (guint i = 0; i < 10; i++)
    if (i == 4 || i == 7 ? text[i] != '-' : !g_ascii_isdigit (text[i]))
      return 0;
  if (text[10] != '\0')
    return 0;
  for (guint i = 0; i < 4; i++)
    year = year * 10 + text[i] - '0';
  month = (text[5] - '0') * 10 + text[6] - '0';
  day = (text[8] - '0') * 10 + text[9] - '0';
  if (!g_date_valid_dmy (day, month, year))
    return 0;
  g_date_clear (&d, 1);
  g_date_set_dmy (&d, day, month, year);
  return g_date_get_julian (&d);
}

/* Day 1 was a Monday. */
LapDay
lap_date_day (int date)
{
  return (date - 1) % LAP_N_DAYS;
}

int
lap_date_week (int date, LapDay first)
{
  return date - lap_day_place (first, lap_date_day (date));
}

int
lap_date_monday (int date)
{
  return date != 0 ? lap_date_week (date, LAP_DAY_MON) : 0;
}

LapDay
lap_day_nth (LapDay first, int n)
{
  return ((int) first + n % LAP_N_DAYS + LAP_N_DAYS) % LAP_N_DAYS;
}

int
lap_day_place (LapDay first, LapDay day)
{
  return (day + LAP_N_DAYS - first) % LAP_N_DAYS;
}

/* Kinds */

static GType type_int (void) { return G_TYPE_INT; }

static const char *
text_of (JsonNode *node)
{
  if (!JSON_NODE_HOLDS_VALUE (node) || json_node_get_value_type (node) != G_TYPE_STRING)
    return "";
  return json_node_get_string (node);
}

static gboolean
read_time (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  int minutes = lap_time_parse (text_of (node), LAP_DAY_MINUTES - 1);

  if (minutes < 0) {
    lap_path_error (error, path, "expected a time from \"00:00\" to \"23:59\"");
    return FALSE;
  }
  *(int *) slot = minutes;
  return TRUE;
}

static void
write_time (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  g_autofree char *text = lap_time_text (*(const int *) slot);

  lap_json_writer_string (writer, text);
}

static gboolean
read_date (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  int date = lap_date_parse (text_of (node));

  if (date == 0) {
    lap_path_error (error, path, "expected a date, as \"2027-01-11\"");
    return FALSE;
  }
  *(int *) slot = date;
  return TRUE;
}

static void
write_date (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  g_autofree char *text = lap_date_text (*(const int *) slot);

  lap_json_writer_string (writer, text);
}

static gboolean
read_span (JsonNode *node, const LapPath *path, LapSpan *span, GError **error)
{
  JsonArray *array = JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;

  if (array == NULL || json_array_get_length (array) != 2) {
    lap_path_error (error, path, "expected two times, as [\"06:30\", \"21:30\"]");
    return FALSE;
  }
  span->start = lap_time_parse (text_of (json_array_get_element (array, 0)), LAP_DAY_MINUTES - 1);
  span->end = lap_time_parse (text_of (json_array_get_element (array, 1)), LAP_DAY_MINUTES);
  if (span->start < 0 || span->end < 0) {
    lap_path_error (error, LAP_PATH_ELEMENT (path, span->start < 0 ? 0 : 1), "expected a time from \"00:00\" to \"%s\"",
                    span->start < 0 ? "23:59" : "24:00");
    return FALSE;
  }
  if (span->end <= span->start) {
    lap_path_error (error, path, "expected a time and a later one of the same day");
    return FALSE;
  }
  return TRUE;
}

static gboolean
read_pair (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  LapSpan span;

  if (!read_span (node, path, &span, error))
    return FALSE;
  *(LapHours **) slot = lap_hours_new (1, &span);
  return TRUE;
}

static void
write_span (const LapSpan *span, LapJsonWriter *writer)
{
  g_autofree char *start = lap_time_text (span->start), *end = lap_time_text (span->end);

  lap_json_writer_begin_array (writer);
  lap_json_writer_string (writer, start);
  lap_json_writer_string (writer, end);
  lap_json_writer_end_array (writer);
}

static void
write_pair (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  write_span (&(*(LapHours * const *) slot)->spans[0], writer);
}

static gboolean
read_hours (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  LapSpan spans[MOST_SPANS];
  JsonArray *array = JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;

  if (array == NULL || json_array_get_length (array) > MOST_SPANS) {
    lap_path_error (error, path, "expected a list of at most %d pairs of times", MOST_SPANS);
    return FALSE;
  }
  for (guint i = 0; i < json_array_get_length (array); i++)
    if (!read_span (json_array_get_element (array, i), LAP_PATH_ELEMENT (path, i), &spans[i], error))
      return FALSE;
  *(LapHours **) slot = lap_hours_new (json_array_get_length (array), spans);
  return TRUE;
}

static void
write_hours (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  const LapHours *hours = *(LapHours * const *) slot;

  lap_json_writer_begin_array (writer);
  for (guint i = 0; i < hours->n; i++)
    write_span (&hours->spans[i], writer);
  lap_json_writer_end_array (writer);
}

const LapKind lap_kind_time = { type_int, read_time, write_time };
const LapKind lap_kind_date = { type_int, read_date, write_date };
const LapKind lap_kind_pair = { lap_hours_get_type, read_pair, write_pair };
const LapKind lap_kind_hours = { lap_hours_get_type, read_hours, write_hours };
