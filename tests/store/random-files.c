/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Files changed at random, under the sanitizers: whatever comes, it is refused with one line, or it is read,
 * laid out, and written so that reading and writing it again gives the same bytes.
 */
#include "base/error.h"
#include "base/json-scan.h"
#include "store/documents.h"
#include "timeline/timeline.h"

#include <string.h>

#define FILES 3000

/* Values that a member may be changed to; each is JSON. */
static const char *const values[] = {
  "0", "1", "-1", "2", "100", "10800", "43200", "4e1", "0.5", "3", "60", "90", "1e300",
  "9223372036854775807", "null", "true", "false", "\"\"", "\"main\"",
  "\"squat\"", "\"split\"", "\"on-the-minute\"", "[]", "[1, 2]", "[\"mat\"]", "{}", "{\"2\": {\"work\": 5}}",
  "{\"x\": null}",
};

static GBytes *
read_source (const char *first, const char *second, const char *third)
{
  g_autofree char *path = g_build_filename (first, second, third, NULL);
  g_autoptr(GError) error = NULL;
  char *text;
  gsize length;

  g_file_get_contents (path, &text, &length, &error);
  g_assert_no_error (error);
  return g_bytes_new_take (text, length);
}

static gboolean
of_one_type (const char *a, const char *b)
{
  return g_ascii_isdigit (*a) ? g_ascii_isdigit (*b) : *a == *b;
}

/* Puts another value in the place of the one behind a colon picked at random, mostly one of its type. */
static void
change_value (GRand *rand, GString *text)
{
  const char *value;
  gsize at = g_rand_int_range (rand, 0, text->len);
  const char *colon = strstr (text->str + at, ": ");
  gsize from, length;

  if (colon == NULL)
    return;
  from = colon + 2 - text->str;
  length = strcspn (text->str + from, "\n");
  length -= length > 0 && text->str[from + length - 1] == ',';
  do
    value = values[g_rand_int_range (rand, 0, G_N_ELEMENTS (values))];
  while (!of_one_type (value, text->str + from) && g_rand_int_range (rand, 0, 40) > 0);
  g_string_erase (text, from, length);
  g_string_insert (text, from, value);
}

/* Takes lines out, or puts them in twice. */
static void
change_lines (GRand *rand, GString *text)
{
  gsize at = g_rand_int_range (rand, 0, text->len);
  const char *from = strchr (text->str + at, '\n');
  const char *to = from != NULL ? strchr (from + 1, '\n') : NULL;
  g_autofree char *line = NULL;

  if (to == NULL)
    return;
  line = g_strndup (from, to - from);
  at = from - text->str;
  if (g_rand_boolean (rand))
    g_string_insert (text, at, line);
  else
    g_string_erase (text, at, strlen (line));
}

static void
change_byte (GRand *rand, GString *text)
{
  text->str[g_rand_int_range (rand, 0, text->len)] = (char) g_rand_int_range (rand, 0, 256);
}

static GBytes *
changed (GRand *rand, GBytes *source)
{
  g_autoptr(GString) text = g_string_new_len (g_bytes_get_data (source, NULL), g_bytes_get_size (source));

  for (int n = g_rand_int_range (rand, 1, 4); n > 0; n--)
    switch (g_rand_int_range (rand, 0, 12))
      {
      case 0:
        change_byte (rand, text);
        break;
      case 1:
        change_lines (rand, text);
        break;
      default:
        change_value (rand, text);
      }
  return g_string_free_to_bytes (g_steal_pointer (&text));
}

static void
assert_sound (LapSession *session, GBytes *bytes)
{
  g_autoptr(LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr(GBytes) written = lap_session_to_bytes (session);
  g_autoptr(GBytes) again = NULL;
  g_autoptr(GError) error = NULL;
  g_autoptr(LapSession) copy = lap_session_from_bytes (written, &error);
  g_autoptr(LapTimeline) timeline = NULL;

  g_assert_no_error (error);
  again = lap_session_to_bytes (copy);
  g_assert_true (g_bytes_equal (written, again));
  timeline = lap_timeline_new (session, builtin, &error);
  if (timeline != NULL)
    {
      g_assert_cmpint (timeline->length, <=, LAP_MOST_SECONDS);
      g_assert_cmpuint (timeline->n, <=, LAP_MOST_INTERVALS);
      return;
    }
  g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  g_assert_cmpuint (lap_json_line_of (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes),
                                      lap_error_pointer (error)),
                    >, 0);
}

static void
test_changed (void)
{
  GBytes *sources[] = {
    read_source (g_getenv ("LAP_TEST_DATA"), "sessions", "everything.lapwing"),
    read_source (g_getenv ("LAP_SOURCE"), "data/demo", "thirty-on-the-mat.lapwing"),
    read_source (g_getenv ("LAP_SOURCE"), "data/demo", "twelve-at-twelve.lapwing"),
  };
  g_autoptr(GRand) rand = g_rand_new_with_seed (4);
  guint good = 0;

  for (guint i = 0; i < FILES; i++)
    {
      g_autoptr(GBytes) bytes = changed (rand, sources[i % G_N_ELEMENTS (sources)]);
      g_autoptr(GError) error = NULL;
      g_autoptr(LapSession) session = lap_session_from_bytes (bytes, &error);

      if (session != NULL)
        {
          assert_sound (session, bytes);
          good++;
          continue;
        }
      g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
      g_assert_true (g_str_has_prefix (error->message, "line "));
      g_assert_null (strchr (error->message, '\n'));
    }
  /* Both were met often. */
  g_assert_cmpuint (good, >, FILES / 10);
  g_assert_cmpuint (good, <, FILES - FILES / 10);
  for (guint i = 0; i < G_N_ELEMENTS (sources); i++)
    g_bytes_unref (sources[i]);
}

/* Cut short anywhere a plan is refused; half of one is never taken for the whole. */
static void
test_cut_short (void)
{
  g_autoptr(GBytes) source = read_source (g_getenv ("LAP_SOURCE"), "data/demo", "thirty-on-the-mat.lapwing");

  for (gsize length = 0; length + 2 < g_bytes_get_size (source); length += 1 + length % 7)
    {
      g_autoptr(GBytes) cut = g_bytes_new (g_bytes_get_data (source, NULL), length);
      g_autoptr(GError) error = NULL;

      g_assert_null (lap_session_from_bytes (cut, &error));
      g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/random-files/changed", test_changed);
  g_test_add_func ("/random-files/cut-short", test_cut_short);
  return g_test_run ();
}
