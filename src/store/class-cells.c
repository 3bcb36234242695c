/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/class-cells.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#define MOST_NUMBER 100000

char *
lap_cell_fold (const char *text)
{
  g_autofree char *small = g_utf8_casefold (text, -1), *apart = g_utf8_normalize (small, -1, G_NORMALIZE_ALL);
  GString *folded = g_string_new (NULL);

  for (const char *at = apart; at != NULL && *at != '\0'; at = g_utf8_next_char (at))
    if (g_unichar_isalnum (g_utf8_get_char (at)))
      g_string_append_unichar (folded, g_utf8_get_char (at));
  return g_string_free (folded, FALSE);
}

/* Small, digits of every script as ours, all blanks and dashes as one kind, none at the ends. */
static char *
plain (const char *text)
{
  g_autofree char *small = g_utf8_strdown (text, -1);
  GString *out = g_string_new (NULL);

  for (const char *at = small; *at != '\0'; at = g_utf8_next_char (at)) {
    gunichar c = g_utf8_get_char (at);

    if (g_unichar_isdigit (c))
      g_string_append_c (out, '0' + g_unichar_digit_value (c));
    else if (g_unichar_isspace (c))
      g_string_append_c (out, ' ');
    else if (g_unichar_type (c) == G_UNICODE_DASH_PUNCTUATION || c == 0x2212)
      g_string_append_c (out, '-');
    else
      g_string_append_unichar (out, c);
  }
  return g_strstrip (g_string_free (out, FALSE));
}

/* Lists of words */

typedef int (*FindFunc) (const char *text, gconstpointer data);

/* The bits of the chunks of @text between any of @separators; what isn't found whole is tried with @deeper. */
static guint32
find_all (const char *text, const char *separators, FindFunc find, gconstpointer data,
          guint32 (*deeper) (const char *chunk, FindFunc find, gconstpointer data))
{
  g_auto (GStrv) chunks = g_strsplit_set (text, separators, -1);
  guint32 bits = 0;

  for (guint i = 0; chunks[i] != NULL; i++) {
    const char *chunk = g_strstrip (chunks[i]);
    int found = *chunk != '\0' ? find (chunk, data) : -1;
    guint32 more = found >= 0 ? LAP_BIT (found) : 0;

    if (*chunk == '\0')
      continue;
    if (more == 0 && deeper != NULL)
      more = deeper (chunk, find, data);
    if (more == 0)
      return 0;
    bits |= more;
  }
  return bits;
}

static guint32
by_blanks (const char *chunk, FindFunc find, gconstpointer data)
{
  return strchr (chunk, ' ') != NULL ? find_all (chunk, " ", find, data, NULL) : 0;
}

static int
find_word (const char *text, gconstpointer data)
{
  const LapWords *words = data;
  g_autofree char *wanted = lap_cell_fold (text);

  for (guint i = 0; i < words->n; i++) {
    g_autofree char *id = lap_cell_fold (words->words[i].id), *english = lap_cell_fold (words->words[i].label);
    g_autofree char *label = lap_cell_fold (lap_words_label (words, i));

    if (g_str_equal (wanted, id) || g_str_equal (wanted, english) || g_str_equal (wanted, label))
      return i;
  }
  return -1;
}

guint32
lap_cell_words (const char *text, const LapWords *words)
{
  g_autofree char *whole = plain (text);

  return find_all (whole, ",;/&+", find_word, words, by_blanks);
}

/* Days */

#define SEVERAL (-2)

/* The name of a day, folded, in English or in the language of the program, which stays the same. */
static const char *
day_name (guint day, gboolean translated)
{
  static char *names[2][LAP_N_DAYS];

  if (names[translated][day] == NULL)
    names[translated][day] = lap_cell_fold (translated ? lap_words_label (&lap_days, day) : lap_days.words[day].label);
  return names[translated][day];
}

/* The day whose name begins with @start: -1 for none, SEVERAL for more than one. */
static int
day_beginning (const char *start, gboolean translated)
{
  int found = -1;

  for (guint i = 0; i < lap_days.n; i++) {
    const char *name = day_name (i, translated);

    if (g_str_equal (name, start))
      return i;
    if (g_str_has_prefix (name, start))
      found = found == -1 ? (int) i : SEVERAL;
  }
  return found;
}

static int
find_day (const char *text, gconstpointer data)
{
  g_autofree char *start = lap_cell_fold (text);
  gsize length = strlen (start);
  int day = -1;

  if (g_utf8_strlen (start, -1) >= 2)
    day = day_beginning (start, TRUE);
  if (day == -1 && length >= 2)
    day = day_beginning (start, FALSE);
  if (day == -1 && length > 3 && start[length - 1] == 's') { /* Mondays, Weds */
    start[length - 1] = '\0';
    day = day_beginning (start, FALSE);
  }
  return MAX (day, -1);
}

/* "mon-fri", over the end of the week too; then the days that blanks part. */
static guint32
days_of_chunk (const char *chunk, FindFunc find, gconstpointer data)
{
  const char *dash = strchr (chunk, '-');
  guint32 bits = 0;

  if (dash != NULL) {
    g_autofree char *before = g_strndup (chunk, dash - chunk);
    int from = find (before, data), until = find (dash + 1, data);

    if (from < 0 || until < 0)
      return 0;
    for (int day = from; day != until; day = (day + 1) % LAP_N_DAYS)
      bits |= LAP_BIT (day);
    return bits | LAP_BIT (until);
  }
  return by_blanks (chunk, find, data);
}

guint
lap_cell_days (const char *text)
{
  g_autofree char *whole = plain (text);

  return find_all (whole, ",;/&+", find_day, NULL, days_of_chunk);
}

/* Times */

/* One number of at most @digits digits, -1 where there is none. Moves past it. */
static int
take_number (const char **at, guint digits)
{
  const char *start = *at;
  int number = 0;

  for (; g_ascii_isdigit (**at) && (guint) (*at - start) < digits; (*at)++)
    number = number * 10 + **at - '0';
  return *at > start ? number : -1;
}

/* Hours and minutes as one number, or with a sign between them, and seconds that say nothing. */
static gboolean
take_clock (const char **at, int *hours, int *minutes, gboolean *bare)
{
  const char *start = *at;
  int number = take_number (at, 4);
  gsize digits = *at - start;

  *bare = FALSE;
  if (digits > 2) {
    *hours = number / 100;
    *minutes = number % 100;
    return TRUE;
  }
  *hours = number;
  *minutes = 0;
  if (number >= 0 && **at != '\0' && strchr (":.h", **at) != NULL && g_ascii_isdigit ((*at)[1])) {
    (*at)++;
    start = *at;
    *minutes = take_number (at, 2);
    if (*at - start != 2)
      return FALSE;
    if (g_str_has_prefix (*at, ":00"))
      *at += 3;
    return TRUE;
  }
  *bare = TRUE;
  return number >= 0;
}

int
lap_cell_time (const char *text, int most)
{
  g_autofree char *whole = plain (text), *behind = NULL;
  const char *at = whole;
  int hours, minutes, time;
  gboolean bare;

  if (!take_clock (&at, &hours, &minutes, &bare))
    return -1;
  behind = lap_cell_fold (at);
  if (g_str_equal (behind, "am") || g_str_equal (behind, "pm")) {
    if (hours < 1 || hours > 12)
      return -1;
    hours = hours % 12 + (*behind == 'p' ? 12 : 0);
  } else if (*behind == '\0' ? bare || *at != '\0' : !g_str_equal (behind, "h") && !g_str_equal (behind, "uhr")) {
    return -1; /* "18" alone may be anything */
  }
  time = hours * 60 + minutes;
  return minutes < 60 && time <= most ? time : -1;
}

gboolean
lap_cell_times (const char *text, int *start, int *end)
{
  g_autofree char *whole = plain (text);
  char *dash = strchr (whole, '-');

  *end = -1;
  if (dash != NULL) {
    *dash = '\0';
    *end = lap_cell_time (dash + 1, LAP_DAY_MINUTES);
    if (*end < 0)
      return FALSE;
  }
  *start = lap_cell_time (whole, LAP_DAY_MINUTES - 1);
  return *start >= 0;
}

int
lap_cell_minutes (const char *text)
{
  static const char *const units[] = { "", "m", "min", "mins", "minute", "minutes" };
  g_autofree char *whole = plain (text), *unit = NULL;
  const char *at = whole;
  int number = take_number (&at, 5), rest;

  if (number < 0)
    return -1;
  while (*at == ' ')
    at++;
  if (*at == ':' || *at == 'h') {
    gboolean colon = *at == ':';

    do
      at++;
    while (*at == ' ');
    rest = take_number (&at, 2);
    if (rest > 59 || (colon && rest < 0))
      return -1;
    number = number * 60 + MAX (rest, 0);
    if (g_str_has_prefix (at, ":00"))
      at += 3;
  }
  unit = lap_cell_fold (at);
  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    if (g_str_equal (unit, units[i]))
      return MIN (number, MOST_NUMBER);
  return -1;
}

int
lap_cell_flag (const char *text)
{
  static const char *const yes[] = { "yes", "y", "true", "1", "x", N_("yes") };
  static const char *const no[] = { "no", "n", "false", "0", "", N_("no") };
  g_autofree char *wanted = lap_cell_fold (text), *whole = plain (text);

  if (*wanted == '\0' && *whole != '\0')
    return -1; /* a sign that may mean either */
  for (guint i = 0; i < G_N_ELEMENTS (yes); i++) {
    g_autofree char *here = lap_cell_fold (_(yes[i])), *there = lap_cell_fold (*no[i] != '\0' ? _(no[i]) : "");

    if (g_str_equal (wanted, yes[i]) || g_str_equal (wanted, here))
      return 1;
    if (g_str_equal (wanted, no[i]) || g_str_equal (wanted, there))
      return 0;
  }
  return -1;
}
