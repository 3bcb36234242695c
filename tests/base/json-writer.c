/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The layout of what we write, and the shortest numbers. Outside check: repr() of Python, the shortest text
 * that reads back as the same double, over 5,000 doubles of all sizes.
 */
#include "base/json-scan.h"
#include "base/json-writer.h"

#include <gio/gio.h>
#include <math.h>
#include <string.h>

#define DOUBLES 5000

static char *
finish (LapJsonWriter *writer)
{
  g_autoptr(GBytes) bytes = lap_json_writer_finish (writer);
  gsize length = g_bytes_get_size (bytes);
  char *text = g_strndup (g_bytes_get_data (bytes, NULL), length);

  /* A NUL that isn't counted stands behind the bytes, and none between them. */
  g_assert_cmpuint (strlen (text), ==, length);
  g_assert_cmpint (((const char *) g_bytes_get_data (bytes, NULL))[length], ==, '\0');
  return text;
}

static char *
number_text (double value)
{
  g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
  char *text;

  lap_json_writer_number (writer, value);
  text = finish (writer);
  text[strlen (text) - 1] = '\0';
  return text;
}

static void
test_numbers (void)
{
  static const struct { double value; const char *text; } rows[] = {
    { 0, "0" }, { -0.0, "0" }, { 40, "40" }, { -1, "-1" }, { 2.5, "2.5" }, { 0.4, "0.4" }, { 0.89, "0.89" },
    { 0.1 + 0.2, "0.30000000000000004" }, { 1 / 3.0, "0.3333333333333333" }, { 100000, "100000" },
    { 1e15, "1000000000000000" },
    { 9007199254740992.0, "9007199254740992" }, { 9007199254740994.0, "9007199254740994" }, { 1e20, "1e20" },
    { 0.0001, "0.0001" }, { 0.00001, "1e-5" }, { 1.5e-7, "1.5e-7" }, { -1.5e300, "-1.5e300" },
    { 1.7976931348623157e308, "1.7976931348623157e308" }, { 5e-324, "5e-324" },
    /* A power of two, where the next double below is nearer than the next above. */
    { 0x1p-44, "5.684341886080802e-14" }, { 9007199254740991.5, "9007199254740992" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *text = number_text (rows[i].value);

      g_assert_cmpstr (text, ==, rows[i].text);
      g_assert_true (lap_json_scan (text, strlen (text), NULL));
    }
}

/* A double with any bits, a power of two, or one with a few digits as people write them. */
static double
random_double (GRand *rand)
{
  guint64 bits = (guint64) g_rand_int (rand) << 32 | g_rand_int (rand);
  double value;

  if (g_rand_int_range (rand, 0, 4) == 0)
    return ldexp (1, g_rand_int_range (rand, -1074, 1024));
  if (g_rand_boolean (rand))
    return g_rand_int_range (rand, -100000, 100000) / pow (10, g_rand_int_range (rand, 0, 8));
  memcpy (&value, &bits, sizeof value);
  return isfinite (value) ? value : 2.0;
}

static guint
count_digits (const char *text)
{
  guint count = 0;

  /* Zeros in front or behind say where the point is, not what the digits are. */
  for (; *text != '\0' && *text != 'e'; text++)
    if (g_ascii_isdigit (*text) && (count > 0 || *text != '0'))
      count++;
  return count;
}

static void
test_shortest (void)
{
  const char *const argv[] = {
    "python3", "-c", "import sys\nfor l in sys.stdin: print(repr(float.fromhex(l)))", NULL
  };
  g_autoptr(GRand) rand = g_rand_new_with_seed (754);
  g_autoptr(GString) asked = g_string_new (NULL);
  g_autoptr(GPtrArray) texts = g_ptr_array_new_with_free_func (g_free);
  g_autoptr(GSubprocess) python = NULL;
  g_autoptr(GError) error = NULL;
  g_autofree char *answer = NULL;
  g_auto(GStrv) lines = NULL;

  for (guint i = 0; i < DOUBLES; i++)
    {
      double value = random_double (rand);
      g_autofree char *text = number_text (value);

      g_assert_cmpfloat (g_ascii_strtod (text, NULL), ==, value);
      g_string_append_printf (asked, "%a\n", value);
      g_ptr_array_add (texts, g_steal_pointer (&text));
    }
  python = g_subprocess_newv (argv, G_SUBPROCESS_FLAGS_STDIN_PIPE | G_SUBPROCESS_FLAGS_STDOUT_PIPE, &error);
  g_assert_no_error (error);
  g_subprocess_communicate_utf8 (python, asked->str, NULL, &answer, NULL, &error);
  g_assert_no_error (error);
  lines = g_strsplit (answer, "\n", -1);
  g_assert_cmpuint (g_strv_length (lines), ==, DOUBLES + 1);
  for (guint i = 0; i < DOUBLES; i++)
    {
      const char *text = g_ptr_array_index (texts, i);

      /* Whole numbers have all their digits in both, but only Python's end in ".0". */
      g_assert_cmpfloat (g_ascii_strtod (text, NULL), ==, g_ascii_strtod (lines[i], NULL));
      if (!g_str_has_suffix (lines[i], ".0"))
        g_assert_cmpuint (count_digits (text), ==, count_digits (lines[i]));
      g_assert_cmpuint (strlen (text), <=, strlen (lines[i]));
    }
}

static void
write_count (LapJsonWriter *writer, const char *name, guint n)
{
  lap_json_writer_member (writer, name);
  lap_json_writer_begin_array (writer);
  for (guint i = 0; i < n; i++)
    lap_json_writer_int (writer, i % 10);
  lap_json_writer_end_array (writer);
}

static void
test_layout (void)
{
  g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
  g_autofree char *text = NULL;

  lap_json_writer_begin_object (writer);
  lap_json_writer_member (writer, "format");
  lap_json_writer_string (writer, "a");
  lap_json_writer_member (writer, "none");
  lap_json_writer_string (writer, NULL);
  write_count (writer, "kit", 3);
  write_count (writer, "empty", 0);
  lap_json_writer_member (writer, "blocks");
  lap_json_writer_begin_array (writer);
  lap_json_writer_boolean (writer, TRUE);
  lap_json_writer_begin_object (writer);
  lap_json_writer_end_object (writer);
  lap_json_writer_begin_array (writer);
  lap_json_writer_null (writer);
  lap_json_writer_end_array (writer);
  lap_json_writer_end_array (writer);
  lap_json_writer_end_object (writer);
  text = finish (writer);
  g_assert_cmpstr (text, ==,
                   "{\n"
                   "  \"format\": \"a\",\n"
                   "  \"none\": null,\n"
                   "  \"kit\": [0, 1, 2],\n"
                   "  \"empty\": [],\n"
                   "  \"blocks\": [\n"
                   "    true,\n"
                   "    {},\n"
                   "    [null]\n"
                   "  ]\n"
                   "}\n");
}

/* An array of scalars is one line as long as that line, with the comma that may follow, has at most 100
 * columns. */
static void
test_line_breaks (void)
{
  for (guint n = 20; n < 40; n++)
    {
      g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
      g_autofree char *text = NULL;
      gsize columns = strlen ("  \"n\": [],") + n + 2 * (n - 1);
      guint lines = 0;

      lap_json_writer_begin_object (writer);
      write_count (writer, "n", n);
      lap_json_writer_end_object (writer);
      text = finish (writer);
      for (const char *at = text; *at != '\0'; at++)
        lines += *at == '\n';
      g_assert_cmpuint (lines, ==, columns <= 100 ? 3 : 4 + n);
    }
}

static void
test_escapes (void)
{
  g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
  g_autofree char *text = NULL;

  lap_json_writer_begin_object (writer);
  lap_json_writer_member (writer, "\"\\/");
  lap_json_writer_string (writer, "\b\f\n\r\t\x01\x1f\x7f é 🦆");
  lap_json_writer_member (writer, "not UTF-8");
  lap_json_writer_string (writer, "a\xff" "b");
  lap_json_writer_end_object (writer);
  text = finish (writer);
  g_assert_cmpstr (text, ==,
                   "{\n"
                   "  \"\\\"\\\\/\": \"\\b\\f\\n\\r\\t\\u0001\\u001f\x7f é 🦆\",\n"
                   "  \"not UTF-8\": \"a\xef\xbf\xbd" "b\"\n"
                   "}\n");
}

static void
test_whole_numbers (void)
{
  g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
  g_autofree char *text = NULL;

  lap_json_writer_begin_array (writer);
  lap_json_writer_int (writer, G_MAXINT64);
  lap_json_writer_int (writer, G_MININT64);
  lap_json_writer_end_array (writer);
  text = finish (writer);
  g_assert_cmpstr (text, ==, "[9223372036854775807, -9223372036854775808]\n");
}

/* The writer is empty once it has finished and can write another text. */
static void
test_again (void)
{
  g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();

  for (guint i = 0; i < 3; i++)
    {
      g_autofree char *text = NULL;

      lap_json_writer_begin_array (writer);
      lap_json_writer_begin_object (writer);
      lap_json_writer_end_object (writer);
      for (guint k = 0; k < 100; k++)
        lap_json_writer_int (writer, 7);
      lap_json_writer_end_array (writer);
      text = finish (writer);
      g_assert_true (g_str_has_prefix (text, "[\n  {},\n  7,\n"));
      g_clear_pointer (&text, g_free);

      /* Where the last line of the text before began means nothing now. */
      lap_json_writer_begin_array (writer);
      lap_json_writer_end_array (writer);
      text = finish (writer);
      g_assert_cmpstr (text, ==, "[]\n");
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/json-writer/numbers", test_numbers);
  g_test_add_func ("/json-writer/shortest", test_shortest);
  g_test_add_func ("/json-writer/layout", test_layout);
  g_test_add_func ("/json-writer/line-breaks", test_line_breaks);
  g_test_add_func ("/json-writer/escapes", test_escapes);
  g_test_add_func ("/json-writer/whole-numbers", test_whole_numbers);
  g_test_add_func ("/json-writer/again", test_again);
  return g_test_run ();
}
