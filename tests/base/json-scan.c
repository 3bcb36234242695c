/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The strict scan against a corpus of texts, each with the section of RFC 8259 that settles it
 * (tests/data/json), and against Python's json module, a general-purpose reader, over that corpus and over
 * texts with bytes changed at random. What we refuse beyond the grammar (repeated names, \u0000, halves of
 * pairs, numbers beyond 64 bits or a double) is marked in the corpus and held by the same rules in
 * json-reference.py.
 */
#include "base/error.h"
#include "base/json-scan.h"
#include "base/json-writer.h"

#include <gio/gio.h>
#include <glib/gstdio.h>
#include <string.h>

#define MUTATIONS 20000

typedef struct {
  char **cells; /* verdict, file, section, python, place, what */
  char *bytes;  /* exactly as long as the file, so that a look beyond is seen by the sanitizer */
  gsize length;
} Row;

enum { VERDICT, FILE_NAME, SECTION, PYTHON, PLACE, WHAT, N_CELLS };

static void
row_free (gpointer data)
{
  Row *row = data;

  g_strfreev (row->cells);
  g_free (row->bytes);
  g_free (row);
}

static char *
corpus_path (const char *first, const char *second)
{
  return g_build_filename (g_getenv ("LAP_TEST_DATA"), "json", first, second, NULL);
}

static char *
read_exact (const char *path, gsize *length)
{
  g_autofree char *contents = NULL;
  g_autoptr(GError) error = NULL;

  g_file_get_contents (path, &contents, length, &error);
  g_assert_no_error (error);
  return g_memdup2 (contents, *length);
}

static gboolean
is_good (const Row *row)
{
  return g_str_equal (row->cells[VERDICT], "good");
}

static GPtrArray *
read_rows (void)
{
  g_autofree char *path = corpus_path ("rows.tsv", NULL);
  g_autofree char *table = NULL;
  g_auto(GStrv) lines = NULL;
  g_autoptr(GPtrArray) rows = g_ptr_array_new_with_free_func (row_free);

  g_assert_true (g_file_get_contents (path, &table, NULL, NULL));
  lines = g_strsplit (table, "\n", -1);
  for (char **line = lines; *line != NULL; line++)
    {
      g_autofree char *name = NULL, *file = NULL;
      Row *row;

      if (**line == '#' || **line == '\0')
        continue;
      row = g_new0 (Row, 1);
      g_ptr_array_add (rows, row);
      row->cells = g_strsplit (*line, "\t", -1);
      g_assert_cmpuint (g_strv_length (row->cells), ==, N_CELLS);
      name = g_strconcat (row->cells[FILE_NAME], ".json", NULL);
      file = corpus_path (row->cells[VERDICT], name);
      row->bytes = read_exact (file, &row->length);
    }
  return g_steal_pointer (&rows);
}

static guint
count_files (const char *folder)
{
  g_autofree char *path = corpus_path (folder, NULL);
  g_autoptr(GDir) dir = g_dir_open (path, 0, NULL);
  guint n = 0;

  while (g_dir_read_name (dir) != NULL)
    n++;
  return n;
}

static void
assert_one_line (const char *message)
{
  g_assert_true (g_utf8_validate (message, -1, NULL));
  for (const char *at = message; *at != '\0'; at = g_utf8_next_char (at))
    g_assert_true (g_unichar_isprint (g_utf8_get_char (at)));
}

static void
test_corpus (void)
{
  g_autoptr(GPtrArray) rows = read_rows ();

  g_assert_cmpuint (rows->len, ==, count_files ("good") + count_files ("bad"));
  for (guint i = 0; i < rows->len; i++)
    {
      Row *row = g_ptr_array_index (rows, i);
      g_autoptr(GError) error = NULL;
      gboolean right = lap_json_scan (row->bytes, row->length, &error);
      g_autofree char *head = NULL;

      if (right != is_good (row))
        g_error ("%s (RFC 8259 section %s, %s): %s", row->cells[FILE_NAME], row->cells[SECTION],
                 row->cells[WHAT], right ? "accepted" : error->message);
      if (right)
        continue;
      g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
      assert_one_line (error->message);
      head = g_strconcat (row->cells[PLACE], ": ", NULL);
      if (!g_str_has_prefix (error->message, head))
        g_error ("%s: expected it %s, found \"%s\"", row->cells[FILE_NAME], row->cells[PLACE],
                 error->message);
    }
}

static void
assert_same_tree (const char *what, const char *bytes, gsize length)
{
  g_autoptr(JsonParser) parser = json_parser_new ();
  g_autoptr(GError) error = NULL;
  g_autoptr(JsonNode) tree = lap_json_parse (bytes, length, &error);

  g_assert_no_error (error);
  json_parser_load_from_data (parser, bytes, length, &error);
  g_assert_no_error (error);
  if (!json_node_equal (tree, json_parser_get_root (parser)))
    g_error ("%s: json-glib's parser reads another tree", what);
}

/* What is accepted is read as json-glib's own parser reads it: the corpus, and every exercise. */
static void
test_trees (void)
{
  g_autoptr(GPtrArray) rows = read_rows ();
  g_autofree char *folder = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "exercises", NULL);
  g_autoptr(GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  for (guint i = 0; i < rows->len; i++)
    {
      const Row *row = g_ptr_array_index (rows, i);

      if (is_good (row))
        assert_same_tree (row->cells[FILE_NAME], row->bytes, row->length);
    }
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL), *bytes = NULL;
      gsize length;

      if (!g_str_has_suffix (name, ".json"))
        continue;
      bytes = read_exact (path, &length);
      assert_same_tree (name, bytes, length);
    }
}

static gboolean
is_space (const char *bytes, gsize length)
{
  for (gsize i = 0; i < length; i++)
    if (strchr (" \t\r\n", bytes[i]) == NULL)
      return FALSE;
  return TRUE;
}

/* A container or string cut short anywhere is refused, unless only the space behind it goes. */
static void
test_cut_short (void)
{
  g_autoptr(GPtrArray) rows = read_rows ();

  for (guint i = 0; i < rows->len; i++)
    {
      Row *row = g_ptr_array_index (rows, i);

      if (!is_good (row) || strchr ("{[\"", row->bytes[0]) == NULL)
        continue;
      for (gsize length = 0; length < row->length; length++)
        {
          g_autofree char *cut = g_memdup2 (row->bytes, length);
          g_autoptr(GError) error = NULL;
          gboolean right = lap_json_scan (cut, length, &error);

          g_assert_true (right == is_space (row->bytes + length, row->length - length));
        }
    }
}

/* Runs json-reference.py with @arguments; what it complains about fails the test. */
static void
ask_python (const char *what, const char *path)
{
  g_autofree char *script = g_build_filename (g_getenv ("LAP_SOURCE"), "tests", "base", "json-reference.py",
                                              NULL);
  const char *const argv[] = { "python3", script, what, path, NULL };
  g_autoptr(GError) error = NULL;
  g_autoptr(GSubprocess) python = NULL;
  g_autofree char *complaint = NULL;

  python = g_subprocess_newv (argv, G_SUBPROCESS_FLAGS_STDERR_PIPE, &error);
  g_assert_no_error (error);
  g_subprocess_communicate_utf8 (python, NULL, NULL, NULL, &complaint, &error);
  g_assert_no_error (error);
  if (!g_subprocess_get_successful (python))
    g_error ("%s", complaint);
}

/* The text written again from the tree that was read, or NULL where it is refused. */
static GBytes *
read_and_write (const char *bytes, gsize length)
{
  g_autoptr(JsonNode) root = lap_json_parse (bytes, length, NULL);
  g_autoptr(LapJsonWriter) writer = NULL;

  if (root == NULL)
    return NULL;
  writer = lap_json_writer_new ();
  lap_json_writer_node (writer, root);
  return lap_json_writer_finish (writer);
}

/* A line for each text: its bytes and, where it was read, the bytes written from the tree; both in base64. */
static void
append_pair (GString *pairs, const char *bytes, gsize length)
{
  g_autoptr(GBytes) written = read_and_write (bytes, length);
  g_autofree char *text = g_base64_encode ((const guchar *) bytes, length);
  g_autofree char *again = NULL;
  gsize size;

  g_assert_true ((written != NULL) == lap_json_scan (bytes, length, NULL));
  if (written != NULL)
    again = g_base64_encode (g_bytes_get_data (written, &size), g_bytes_get_size (written));
  g_string_append_printf (pairs, "%s\t%s\n", text, again != NULL ? again : "refused");
}

static void
compare_pairs (GString *pairs)
{
  g_autofree char *path = NULL;
  g_autoptr(GError) error = NULL;
  int fd = g_file_open_tmp ("pairs-XXXXXX", &path, &error);

  g_assert_no_error (error);
  g_close (fd, NULL);
  g_file_set_contents (path, pairs->str, pairs->len, &error);
  g_assert_no_error (error);
  ask_python ("pairs", path);
  g_remove (path);
}

static void
test_python_corpus (void)
{
  g_autoptr(GPtrArray) rows = read_rows ();
  g_autoptr(GString) pairs = g_string_new (NULL);
  g_autofree char *folder = corpus_path (NULL, NULL);

  ask_python ("rows", folder);
  for (guint i = 0; i < rows->len; i++)
    {
      Row *row = g_ptr_array_index (rows, i);

      append_pair (pairs, row->bytes, row->length);
    }
  compare_pairs (pairs);
}

/* Changes, drops or doubles a few bytes; those that matter to JSON are more likely. */
static void
mutate (GRand *rand, GByteArray *text)
{
  static const char likely[] = "{}[]\",:\\/u0123456789.eE+-dDnNtf \n";
  guint changes = g_rand_int_range (rand, 1, 4);

  while (changes-- > 0 && text->len > 0)
    {
      guint at = g_rand_int_range (rand, 0, text->len);
      guint length = g_rand_int_range (rand, 1, 9);

      length = MIN (length, text->len - at);
      switch (g_rand_int_range (rand, 0, 5))
        {
        case 0:
          text->data[at] = (guint8) g_rand_int_range (rand, 0, 256);
          break;
        case 1:
          g_byte_array_remove_range (text, at, length);
          break;
        case 2:
          {
            g_autofree guint8 *piece = g_memdup2 (text->data + at, length);

            g_byte_array_append (text, piece, length);
            break;
          }
        default:
          text->data[at] = likely[g_rand_int_range (rand, 0, sizeof likely - 1)];
        }
    }
}

static void
test_mutations (void)
{
  g_autoptr(GPtrArray) rows = read_rows ();
  g_autoptr(GRand) rand = g_rand_new_with_seed (8259);
  g_autoptr(GString) pairs = g_string_new (NULL);
  guint n_good = count_files ("good"), refused = 0;

  for (guint i = 0; i < MUTATIONS; i++)
    {
      /* The good ones stand first; a change of theirs is more telling. */
      Row *row = g_ptr_array_index (rows, g_rand_int_range (rand, 0, n_good));
      g_autoptr(GByteArray) text = g_byte_array_new ();
      g_autofree char *exact = NULL;
      g_autoptr(GError) error = NULL;

      g_assert_true (is_good (row));
      g_byte_array_append (text, (const guint8 *) row->bytes, row->length);
      mutate (rand, text);
      exact = g_memdup2 (text->data, text->len);
      if (!lap_json_scan (exact, text->len, &error))
        {
          assert_one_line (error->message);
          refused++;
        }
      append_pair (pairs, exact, text->len);
    }
  /* Both verdicts were met. */
  g_assert_cmpuint (refused, >, MUTATIONS / 10);
  g_assert_cmpuint (refused, <, MUTATIONS - MUTATIONS / 20);
  compare_pairs (pairs);
}

static char *
nested (guint depth, const char *opening, const char *middle, const char *closing)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < depth; i++)
    g_string_append (text, opening);
  g_string_append (text, middle);
  for (guint i = 0; i < depth; i++)
    g_string_append (text, closing);
  return g_string_free (text, FALSE);
}

/* RFC 8259 section 9: an implementation may set limits on depth. Ours is 64. */
static void
test_depth (void)
{
  static const struct { const char *opening, *middle, *closing; } kinds[] = {
    { "[", "1", "]" }, { "{\"a\":", "1", "}" }, { "[", "", "]" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    for (guint depth = 60; depth < 70; depth++)
      {
        g_autofree char *text = nested (depth, kinds[i].opening, kinds[i].middle, kinds[i].closing);
        g_autoptr(JsonNode) root = lap_json_parse (text, strlen (text), NULL);

        g_assert_true ((root != NULL) == (depth <= LAP_JSON_DEPTH_MAX));
      }
}

static void
test_bombs (void)
{
  static const char *const openings[] = { "[", "{\"a\":", "[{\"a\":" };

  for (guint i = 0; i < G_N_ELEMENTS (openings); i++)
    {
      g_autofree char *text = nested (100000, openings[i], "", "");
      g_autoptr(GError) error = NULL;

      g_assert_null (lap_json_parse (text, strlen (text), &error));
      g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
      assert_one_line (error->message);
    }
}

/* 200,000 names in one object, in no order. To compare each with each would not end within the time of a test. */
static void
test_many_names (void)
{
  g_autoptr(GString) text = g_string_new ("{");
  g_autoptr(GError) error = NULL;

  /* The steps meet each number below the prime once. */
  for (guint i = 1; i <= 200000; i++)
    g_string_append_printf (text, "\"%u\": 1,\n", i * 7919 % 1000003);
  g_string_append (text, "\"last\": 1}");
  g_assert_true (lap_json_scan (text->str, text->len, &error));
  g_assert_no_error (error);
  g_string_truncate (text, text->len - 1);
  g_string_append (text, ",\n\"7919\": 1}");
  g_assert_false (lap_json_scan (text->str, text->len, &error));
  g_assert_true (g_str_has_prefix (error->message, "line 200002, /7919: "));
}

/* A name longer than a line is cut in the message, and what can't be printed is shown by its number. */
static void
test_message (void)
{
  g_autofree char *name = g_strnfill (5000, 'n');
  g_autofree char *text = g_strdup_printf ("{\"%s\": {\"\\u001b[2J\": NaN}}", name);
  g_autoptr(GError) error = NULL;

  g_assert_false (lap_json_scan (text, strlen (text), &error));
  assert_one_line (error->message);
  g_assert_cmpuint (strlen (error->message), <, 200);
  g_assert_nonnull (strstr (error->message, "\\u001b"));
}

static void
test_line_of (void)
{
  static const char text[] = "{\n  \"a\": 1,\n  \"b/c\": [\n    10,\n    {\n"
                             "      \"~\": true\n    }\n  ]\n}\n";
  static const struct { const char *pointer; guint line; } rows[] = {
    { "", 1 }, { "/a", 2 }, { "/b~1c", 3 }, { "/b~1c/0", 4 }, { "/b~1c/1", 5 }, { "/b~1c/1/~0", 6 },
    /* The nearest container where there is no such value. */
    { "/z", 1 }, { "/b~1c/2", 3 }, { "/b~1c/1/y", 5 }, { "/b~1c/01", 3 }, { "/a/0", 2 },
    { "a", 0 }, { "0", 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpuint (lap_json_line_of (text, strlen (text), rows[i].pointer), ==, rows[i].line);
  g_assert_cmpuint (lap_json_line_of (NULL, 0, ""), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/json-scan/corpus", test_corpus);
  g_test_add_func ("/json-scan/trees", test_trees);
  g_test_add_func ("/json-scan/cut-short", test_cut_short);
  g_test_add_func ("/json-scan/python-corpus", test_python_corpus);
  g_test_add_func ("/json-scan/mutations", test_mutations);
  g_test_add_func ("/json-scan/depth", test_depth);
  g_test_add_func ("/json-scan/bombs", test_bombs);
  g_test_add_func ("/json-scan/many-names", test_many_names);
  g_test_add_func ("/json-scan/message", test_message);
  g_test_add_func ("/json-scan/line-of", test_line_of);
  return g_test_run ();
}
