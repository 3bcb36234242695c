/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/field-text.h"

#include "base/customs.h"
#include "model/exception.h"
#include "model/part.h"
#include "model/when.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#define BETWEEN ", "
#define TO      "–"
/* As many spans as a file may list. */
#define MOST_SPANS 24
/* Design, limits of files. */
#define MOST_SECONDS 10800
#define MOST_REPS    1000
/* A date that is read generously may be no date at all. */
#define LEAST_YEAR 1970

typedef struct {
  const LapKind *kind;
  const char    *hint;
  char        *(*text)  (const GValue *value);
  gboolean     (*parse) (const char *text, GValue *value);
  const char    *example; /* for the hint, as files spell it; or NULL */
} Codec;

/* The pieces of "a, b" without space round them; empty ones are left out. */
static GPtrArray *
pieces_of (const char *text)
{
  g_auto (GStrv) pieces = g_strsplit (text, ",", -1);
  GPtrArray *found = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; pieces[i] != NULL; i++)
    if (*g_strstrip (pieces[i]) != '\0')
      g_ptr_array_add (found, g_strdup (pieces[i]));
  return found;
}

/* Of a day with 24 hours, from one of two halves. */
static int
in_half (int minutes, int half, int most)
{
  if (minutes < 60 || minutes >= 13 * 60)
    return -1;
  minutes = minutes % (LAP_DAY_MINUTES / 2) + half * LAP_DAY_MINUTES / 2;
  /* Midnight ends a day where a day may end, else it begins one. */
  return minutes == 0 && most == LAP_DAY_MINUTES ? most : minutes;
}

/* "7", "7:30", "07.30" as minutes of a day up to @most, or -1. */
static int
bare_time_of (const char *text, int most)
{
  g_autofree char *whole = NULL;
  gsize hours = strspn (text, "0123456789");

  if (hours == 0 || hours > 2)
    return -1;
  if (text[hours] == '\0')
    whole = g_strdup_printf ("%s%s:00", hours == 1 ? "0" : "", text);
  else if (strchr (":.h", text[hours]) != NULL)
    whole = g_strdup_printf ("%s%.*s:%s", hours == 1 ? "0" : "", (int) hours, text, text + hours + 1);
  return whole != NULL ? lap_time_parse (whole, most) : -1;
}

/* The same, also with AM or PM behind it. */
static int
time_of (const char *text, int most)
{
  g_autofree char *bare = g_strdup (text);
  int half = lap_cut_half_of_day (bare), minutes = bare_time_of (bare, most);

  return half >= 0 && minutes >= 0 ? in_half (minutes, half, most) : minutes;
}

/* Both sides of "06:00–12:00", or with a hyphen. FALSE where there is no middle. */
static gboolean
halves_of (const char *piece, char **first, char **second)
{
  const char *at = strstr (piece, TO);
  gsize size = strlen (TO);

  if (at == NULL) {
    at = strchr (piece, '-');
    size = 1;
  }
  if (at == NULL)
    return FALSE;
  *first = g_strstrip (g_strndup (piece, at - piece));
  *second = g_strstrip (g_strdup (at + size));
  return TRUE;
}

/* Texts */

static char *
text_text (const GValue *value)
{
  return g_value_dup_string (value);
}

static gboolean
parse_text (const char *text, GValue *value)
{
  g_value_init (value, G_TYPE_STRING);
  g_value_set_string (value, text);
  return TRUE;
}

static char *
texts_text (const GValue *value)
{
  char **texts = g_value_get_boxed (value);

  return texts != NULL ? g_strjoinv (BETWEEN, texts) : NULL;
}

static gboolean
parse_texts (const char *text, GValue *value)
{
  g_autoptr (GPtrArray) pieces = pieces_of (text);
  g_autoptr (GStrvBuilder) texts = g_strv_builder_new ();

  for (guint i = 0; i < pieces->len; i++)
    g_strv_builder_add (texts, pieces->pdata[i]);
  g_value_init (value, G_TYPE_STRV);
  if (pieces->len > 0)
    g_value_take_boxed (value, g_strv_builder_end (texts));
  return TRUE;
}

/* Times and hours */

static char *
time_text (const GValue *value)
{
  return g_value_get_int (value) >= 0 ? lap_time_of_day_text (g_value_get_int (value)) : NULL;
}

static gboolean
parse_time (const char *text, GValue *value)
{
  int minutes = *text != '\0' ? time_of (text, LAP_DAY_MINUTES - 1) : -1;

  g_value_init (value, G_TYPE_INT);
  g_value_set_int (value, minutes);
  return minutes >= 0 || *text == '\0';
}

static char *
hours_text (const GValue *value)
{
  const LapHours *hours = g_value_get_boxed (value);
  g_autoptr (GPtrArray) spans = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; hours != NULL && i < hours->n; i++) {
    g_autofree char *start = lap_time_of_day_text (hours->spans[i].start);
    g_autofree char *end = lap_time_of_day_text (hours->spans[i].end);

    g_ptr_array_add (spans, g_strconcat (start, TO, end, NULL));
  }
  g_ptr_array_add (spans, NULL);
  return g_strjoinv (BETWEEN, (char **) spans->pdata);
}

static gboolean
parse_span (const char *piece, LapSpan *span)
{
  g_autofree char *first = NULL, *second = NULL;

  if (!halves_of (piece, &first, &second))
    return FALSE;
  *span = (LapSpan) { time_of (first, LAP_DAY_MINUTES - 1), time_of (second, LAP_DAY_MINUTES) };
  return span->start >= 0 && span->end > span->start;
}

static gboolean
parse_spans (const char *text, guint most, GValue *value)
{
  g_autoptr (GPtrArray) pieces = pieces_of (text);
  LapSpan spans[MOST_SPANS];

  g_value_init (value, LAP_TYPE_HOURS);
  if (pieces->len > most)
    return FALSE;
  for (guint i = 0; i < pieces->len; i++)
    if (!parse_span (pieces->pdata[i], &spans[i]))
      return FALSE;
  if (pieces->len > 0)
    g_value_take_boxed (value, lap_hours_new (pieces->len, spans));
  return TRUE;
}

static gboolean
parse_pair (const char *text, GValue *value)
{
  return parse_spans (text, 1, value);
}

static gboolean
parse_hours (const char *text, GValue *value)
{
  return parse_spans (text, MOST_SPANS, value);
}

/* Dates */

/* As in files, or as the locale writes it. 0 where it isn't one. */
static int
date_of (const char *text)
{
  int date = lap_date_parse (text);
  GDate day;

  if (date != 0 || strpbrk (text, "0123456789") == NULL)
    return date;
  g_date_clear (&day, 1);
  g_date_set_parse (&day, text);
  return g_date_valid (&day) && g_date_get_year (&day) >= LEAST_YEAR ? (int) g_date_get_julian (&day) : 0;
}

static char *
date_text (const GValue *value)
{
  return g_value_get_int (value) != 0 ? lap_date_text (g_value_get_int (value)) : NULL;
}

static gboolean
parse_date (const char *text, GValue *value)
{
  int date = date_of (text);

  g_value_init (value, G_TYPE_INT);
  g_value_set_int (value, date);
  return date != 0 || *text == '\0';
}

static char *
closed_text (const GValue *value)
{
  const LapRows *rows = g_value_get_boxed (value);
  g_autoptr (GPtrArray) dates = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; i < lap_rows_n (rows); i++) {
    const LapClosed *closed = lap_rows_nth (rows, LapClosed, i);
    g_autofree char *from = lap_date_text (closed->from), *until = lap_date_text (closed->until);

    g_ptr_array_add (dates, closed->from == closed->until ? g_strdup (from) : g_strconcat (from, TO, until, NULL));
  }
  g_ptr_array_add (dates, NULL);
  return g_strjoinv (BETWEEN, (char **) dates->pdata);
}

/* A span of dates is written as one. */
static gboolean
parse_closed_piece (const char *piece, LapClosed *closed)
{
  const char *const middles[] = { TO, " - ", "-" };

  closed->from = closed->until = date_of (piece);
  if (closed->from != 0)
    return TRUE;
  closed->present = LAP_BIT (0) | LAP_BIT (1);
  /* A hyphen may be in a date as well as between two. */
  for (guint i = 0; i < G_N_ELEMENTS (middles); i++)
    for (const char *at = strstr (piece, middles[i]); at != NULL; at = strstr (at + 1, middles[i])) {
      g_autofree char *first = g_strndup (piece, at - piece), *second = g_strdup (at + strlen (middles[i]));

      closed->from = date_of (g_strstrip (first));
      closed->until = date_of (g_strstrip (second));
      if (closed->from != 0 && closed->until >= closed->from)
        return TRUE;
    }
  return FALSE;
}

static gboolean
parse_closed (const char *text, GValue *value)
{
  g_autoptr (GPtrArray) pieces = pieces_of (text);
  g_autoptr (LapRows) rows = lap_rows_new (&lap_kind_closed);

  g_value_init (value, LAP_TYPE_ROWS);
  for (guint i = 0; i < pieces->len; i++)
    if (!parse_closed_piece (pieces->pdata[i], lap_rows_add (rows)))
      return FALSE;
  if (pieces->len > 0)
    g_value_take_boxed (value, g_steal_pointer (&rows));
  return TRUE;
}

/* Counts */

/* A whole number from @least to @most, or -1. */
static int
count_of (const char *text, int least, int most)
{
  gint64 number;

  return g_ascii_string_to_signed (text, 10, least, most, &number, NULL) ? (int) number : -1;
}

static char *
reps_text (const GValue *value)
{
  guint reps = g_value_get_uint (value);
  int low = LAP_REPS_LOW (reps), high = LAP_REPS_HIGH (reps);

  if (reps == 0)
    return NULL;
  return low == high ? g_strdup_printf ("%d", low) : g_strdup_printf ("%d" TO "%d", low, high);
}

static gboolean
parse_reps (const char *text, GValue *value)
{
  g_autofree char *first = NULL, *second = NULL;
  gboolean range = halves_of (text, &first, &second);
  int low = count_of (range ? first : text, 1, MOST_REPS), high = range ? count_of (second, 1, MOST_REPS) : low;

  g_value_init (value, G_TYPE_UINT);
  if (*text == '\0')
    return TRUE;
  g_value_set_uint (value, LAP_REPS (MAX (low, 0), MAX (high, 0)));
  return low > 0 && high >= low;
}

static char *
steps_text (const GValue *value)
{
  const LapRows *rows = g_value_get_boxed (value);
  g_autoptr (GPtrArray) steps = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; i < lap_rows_n (rows); i++) {
    const LapStep *step = lap_rows_nth (rows, LapStep, i);

    g_ptr_array_add (steps, g_strdup_printf ("%d/%d", step->work, step->rest));
  }
  g_ptr_array_add (steps, NULL);
  return g_strjoinv (BETWEEN, (char **) steps->pdata);
}

static gboolean
parse_step (const char *piece, LapStep *step)
{
  g_auto (GStrv) halves = g_strsplit (piece, "/", -1);

  if (g_strv_length (halves) != 2)
    return FALSE;
  step->work = count_of (g_strstrip (halves[0]), 1, MOST_SECONDS);
  step->rest = count_of (g_strstrip (halves[1]), 0, MOST_SECONDS);
  return step->work > 0 && step->rest >= 0;
}

static gboolean
parse_steps (const char *text, GValue *value)
{
  g_autoptr (GPtrArray) pieces = pieces_of (text);
  g_autoptr (LapRows) rows = lap_rows_new (&lap_kind_steps);

  g_value_init (value, LAP_TYPE_ROWS);
  for (guint i = 0; i < pieces->len; i++)
    if (!parse_step (pieces->pdata[i], lap_rows_add (rows)))
      return FALSE;
  if (pieces->len > 0)
    g_value_take_boxed (value, g_steal_pointer (&rows));
  return TRUE;
}

static const Codec codecs[] = {
  { &lap_kind_text, NULL, text_text, parse_text },
  { &lap_kind_texts, NULL, texts_text, parse_texts },
  { &lap_kind_time, N_("A time, as %s"), time_text, parse_time, "18:30" },
  { &lap_kind_pair, N_("Two times, as %s"), hours_text, parse_pair, "17:00–20:00" },
  { &lap_kind_hours, N_("Hours, as %s"), hours_text, parse_hours, "06:00–12:00, 16:00–20:00" },
  { &lap_kind_date, N_("A date, as 2027-01-11"), date_text, parse_date },
  { &lap_kind_closed.kind, N_("Dates, as 2027-02-09, 2027-02-16–2027-02-20"), closed_text, parse_closed },
  { &lap_kind_reps, N_("Repetitions, as 10 or 8–12"), reps_text, parse_reps },
  { &lap_kind_steps.kind, N_("Work and rest of each round, as 30/30, 40/20"), steps_text, parse_steps },
};

static const Codec *
codec_of (const LapField *field)
{
  for (guint i = 0; i < G_N_ELEMENTS (codecs); i++)
    if (codecs[i].kind == field->kind)
      return &codecs[i];
  return NULL;
}

gboolean
lap_field_is_typed (const LapField *field)
{
  return codec_of (field) != NULL;
}

char *
lap_field_text (const LapField *field, const GValue *value)
{
  char *text = codec_of (field)->text (value);

  return text != NULL ? text : g_strdup ("");
}

gboolean
lap_field_parse (const LapField *field, const char *text, GValue *value)
{
  g_autofree char *bare = g_strstrip (g_strdup (text));

  return codec_of (field)->parse (bare, value);
}

/* The example of @codec as it is written here. */
static char *
example_of (const Codec *codec)
{
  g_auto (GValue) value = G_VALUE_INIT;

  codec->parse (codec->example, &value);
  return codec->text (&value);
}

const char *
lap_field_hint (const LapField *field)
{
  const Codec *codec = codec_of (field);
  g_autofree char *example = codec->example != NULL ? example_of (codec) : NULL, *hint = NULL;

  if (example == NULL)
    return codec->hint != NULL ? _(codec->hint) : NULL;
  hint = g_strdup_printf (_(codec->hint), example);
  return g_intern_string (hint);
}
