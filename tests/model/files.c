/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A file that holds every member there is, with unknown ones put in everywhere, comes back byte for byte, be it of a
 * session or of a week. Outside check: the order of design §4.1 and §4.4 as it stands in tests/data/sessions.
 */
#include "base/json-scan.h"
#include "store/documents.h"

#include <string.h>

static GBytes *
everything (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_TEST_DATA"), "sessions", name, NULL);
  g_autoptr(GError) error = NULL;
  char *text;
  gsize length;

  g_file_get_contents (path, &text, &length, &error);
  g_assert_no_error (error);
  return g_bytes_new_take (text, length);
}

static gpointer
read_document (GBytes *bytes)
{
  g_autoptr(GError) error = NULL;
  gpointer document = lap_document_from_bytes (bytes, &error);

  g_assert_no_error (error);
  return document;
}

static gpointer
read_text (const char *text)
{
  g_autoptr(GBytes) bytes = g_bytes_new (text, strlen (text));

  return read_document (bytes);
}

/* Line by line, so that a difference can be found in what is said. */
static void
assert_bytes (gpointer object, GBytes *wanted)
{
  g_autoptr(GBytes) bytes = lap_object_bytes (object);
  g_auto(GStrv) found = g_strsplit (g_bytes_get_data (bytes, NULL), "\n", -1);
  g_autofree char *text = g_strndup (g_bytes_get_data (wanted, NULL), g_bytes_get_size (wanted));
  g_auto(GStrv) lines = g_strsplit (text, "\n", -1);

  for (guint i = 0; found[i] != NULL && lines[i] != NULL; i++)
    if (!g_str_equal (found[i], lines[i]))
      g_error ("line %u: found %s, expected %s", i + 1, found[i], lines[i]);
  g_assert_cmpuint (g_strv_length (found), ==, g_strv_length (lines));
}

static void
assert_text (gpointer object, const char *wanted)
{
  g_autoptr(GBytes) bytes = g_bytes_new (wanted, strlen (wanted));

  assert_bytes (object, bytes);
}

/* Adds a bit for each row of @record that @self must give, or doesn't leave at its preset. */
static void
note_used (const LapRecord *record, gconstpointer self, guint64 *used)
{
  for (guint i = 0; i < record->n; i++)
    if ((record->fields[i].flags & LAP_FIELD_REQUIRED) || !lap_field_is_preset (&record->fields[i], self))
      *used |= G_GUINT64_CONSTANT (1) << i;
}

static void
assert_all_used (const LapRecord *record, guint64 used)
{
  for (guint i = 0; i < record->n; i++)
    if (!((used >> i) & 1))
      g_error ("\"%s\" of %s is at its preset in the fixture", record->fields[i].name, record->what);
}

/* The fixture deserves its name: a member that is new in a table is asked for here. */
static void
test_holds_everything (void)
{
  g_autoptr(GBytes) bytes = everything ("everything.lapwing");
  g_autoptr(LapSession) session = read_document (bytes);
  LapPart *part = lap_session_nth (session, 0);
  guint64 used[6] = { 0 };

  note_used (lap_object_record (session), session, &used[0]);
  note_used (lap_object_record (part), part, &used[1]);
  for (guint i = 0; i < lap_part_n (part); i++)
    note_used (lap_object_record (lap_part_nth (part, i)), lap_part_nth (part, i), &used[2]);
  note_used (&lap_exercise_record, g_ptr_array_index (session->exercises, 0), &used[3]);
  note_used (session->takes->kind->record, g_ptr_array_index (session->takes->items, 0), &used[4]);
  note_used (part->steps->kind->record, g_ptr_array_index (part->steps->items, 0), &used[5]);
  assert_all_used (lap_object_record (session), used[0]);
  assert_all_used (lap_object_record (part), used[1]);
  assert_all_used (lap_object_record (lap_part_nth (part, 0)), used[2]);
  assert_all_used (&lap_exercise_record, used[3]);
  assert_all_used (session->takes->kind->record, used[4]);
  assert_all_used (part->steps->kind->record, used[5]);
  g_assert_cmpuint (lap_changes_find (lap_part_nth (part, 0)->in_round, 2)->present, ==,
                    (G_GUINT64_CONSTANT (1) << LAP_N_CHANGES) - 1);
  g_assert_cmpuint (lap_part_nth (part, 0)->say->present, ==, (1 << (LAP_SAY_HARDER + 1)) - 1);
}

/* The same of all that is in @list: together its objects give every member. */
static void
assert_list_used (LapList *list)
{
  guint64 used = 0;

  for (guint i = 0; i < lap_list_n (list); i++)
    note_used (lap_object_record (lap_list_nth (list, i)), lap_list_nth (list, i), &used);
  assert_all_used (lap_object_record (lap_list_nth (list, 0)), used);
}

static void
test_week_holds_everything (void)
{
  g_autoptr(GBytes) bytes = everything ("everything.lapweek");
  g_autoptr(LapWeek) week = read_document (bytes);
  guint64 used = 0;

  /* Lists of objects are never NULL. */
  note_used (lap_object_record (week), week, &used);
  assert_all_used (lap_object_record (week), used);
  assert_list_used (week->rooms);
  assert_list_used (week->coaches);
  assert_list_used (week->classes);
  assert_list_used (week->exceptions);
  assert_list_used (week->aways);
  g_assert_cmpuint (lap_rows_n (week->closed), ==, 2);
}

static void
test_round_trip (gconstpointer name)
{
  g_autoptr(GBytes) bytes = everything (name);
  g_autoptr(LapObject) document = read_document (bytes);
  g_autoptr(LapObject) copy = lap_object_copy (document);

  assert_bytes (document, bytes);
  /* A copy is deep: it stays when the first is gone. */
  g_clear_object (&document);
  assert_bytes (copy, bytes);
}

/* What comes with the program looks as if it had been saved by it. */
static void
test_demo (void)
{
  g_autofree char *folder = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", NULL);
  g_autoptr(GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;
  guint files = 0;

  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL), *text = NULL;
      g_autoptr(LapObject) document = NULL;

      if (!g_str_has_suffix (name, ".lapwing") && !g_str_has_suffix (name, ".lapweek"))
        continue;
      g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
      document = read_text (text);
      assert_text (document, text);
      files++;
    }
  g_assert_cmpuint (files, >=, 3);
}

/* Values that must not have foreign members: "figure" is kept whole as it is, "in-round" has round
 * numbers. */
static gboolean
is_closed (const char *name)
{
  return name != NULL && (g_str_equal (name, "figure") || g_str_equal (name, "in-round"));
}

typedef struct {
  guint n;
  GHashTable *pointers; /* of all that was put in, as the holder's pointer + "/" + name */
} Strangers;

static void
add_stranger (LapJsonWriter *writer, const char *pointer, Strangers *strangers)
{
  g_autofree char *name = g_strdup_printf ("x-%u", strangers->n++);

  g_hash_table_add (strangers->pointers, g_strconcat (pointer, "/", name, NULL));
  lap_json_writer_member (writer, name);
  switch (strangers->n % 4)
    {
    case 0:
      lap_json_writer_null (writer);
      break;
    case 1:
      lap_json_writer_number (writer, 0.25);
      break;
    case 2:
      lap_json_writer_string (writer, "kept");
      break;
    default:
      lap_json_writer_begin_object (writer);
      lap_json_writer_member (writer, "x");
      lap_json_writer_begin_array (writer);
      lap_json_writer_boolean (writer, TRUE);
      lap_json_writer_end_array (writer);
      lap_json_writer_end_object (writer);
    }
}

/* Writes @node with an unknown member first in each object and two after each of its members. */
static void
write_with_strangers (LapJsonWriter *writer, JsonNode *node, const char *name, const char *pointer,
                      Strangers *strangers)
{
  if (g_strcmp0 (name, "figure") == 0 || JSON_NODE_HOLDS_VALUE (node) || JSON_NODE_HOLDS_NULL (node))
    {
      lap_json_writer_node (writer, node);
    }
  else if (JSON_NODE_HOLDS_ARRAY (node))
    {
      JsonArray *array = json_node_get_array (node);

      lap_json_writer_begin_array (writer);
      for (guint i = 0; i < json_array_get_length (array); i++)
        {
          g_autofree char *inner = g_strdup_printf ("%s/%u", pointer, i);

          write_with_strangers (writer, json_array_get_element (array, i), NULL, inner, strangers);
        }
      lap_json_writer_end_array (writer);
    }
  else
    {
      JsonObjectIter iter;
      const char *member;
      JsonNode *value;

      lap_json_writer_begin_object (writer);
      if (!is_closed (name))
        add_stranger (writer, pointer, strangers);
      json_object_iter_init_ordered (&iter, json_node_get_object (node));
      while (json_object_iter_next_ordered (&iter, &member, &value))
        {
          g_autofree char *inner = g_strconcat (pointer, "/", member, NULL);

          lap_json_writer_member (writer, member);
          write_with_strangers (writer, value, member, inner, strangers);
          for (int i = 0; i < 2 && !is_closed (name); i++)
            add_stranger (writer, pointer, strangers);
        }
      lap_json_writer_end_object (writer);
    }
}

static void
visit (const LapRecord *record, const LapExtra *extra, const char *pointer, gpointer data)
{
  Strangers *strangers = data;
  g_autofree char *place = g_strconcat (pointer, "/", extra->name, NULL);

  if (!g_hash_table_remove (strangers->pointers, place))
    g_error ("%s was told twice or at the wrong place", place);
}

static void
test_strangers (gconstpointer name)
{
  g_autoptr(GBytes) known = everything (name);
  g_autoptr(JsonNode) root = lap_json_parse (g_bytes_get_data (known, NULL), g_bytes_get_size (known), NULL);
  g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
  g_autoptr(GHashTable) pointers = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  Strangers strangers = { 0, pointers };
  g_autoptr(GBytes) bytes = NULL;
  g_autoptr(LapObject) document = NULL;
  g_autoptr(LapObject) copy = NULL;

  write_with_strangers (writer, root, NULL, "", &strangers);
  bytes = lap_json_writer_finish (writer);
  g_assert_cmpuint (strangers.n, >, 150);
  document = read_document (bytes);
  assert_bytes (document, bytes);
  copy = lap_object_copy (document);
  assert_bytes (copy, bytes);

  lap_record_visit (lap_object_record (document), document, "", visit, &strangers);
  g_assert_cmpuint (g_hash_table_size (pointers), ==, 0);
}

#define HEAD "\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"i\", \"title\": \"t\""

/* Written in the order of the page, whatever order it was read in; strangers stay with the member they
 * followed. */
static void
test_other_order (void)
{
  g_autoptr(LapSession) session = read_text (
    "{\"x-0\": 0, \"parts\": [], \"x-1\": 1, \"title\": \"t\", \"x-2\": 2, \"film\": {\"sound\": \"live\", "
    "\"x-3\": 3, \"lens\": 50},"
    "\"x-4\": 4, \"id\": \"i\", \"version\": 1, \"format\": \"lapwing-session\"}");

  assert_text (session,
               "{\n  \"x-0\": 0,\n  \"format\": \"lapwing-session\",\n  \"version\": 1,\n  \"id\": \"i\",\n  "
               "\"title\": \"t\",\n"
               "  \"x-2\": 2,\n  \"film\": {\n    \"lens\": 50,\n    \"sound\": \"live\",\n    \"x-3\": 3\n  "
               "},\n"
               "  \"x-4\": 4,\n  \"parts\": [],\n  \"x-1\": 1\n}\n");
}

/* A known member that goes back to its default leaves its strangers where they are. */
static void
test_stranger_outlives_member (void)
{
  g_autoptr(LapSession) session = read_text ("{" HEAD ", \"target\": 60, \"x\": 1, \"group\": {\"age\": 50, "
                                                      "\"y\": 2}, \"parts\": []}");

  g_object_set (session, "target", 0, "group-age", 40, NULL);
  assert_text (session,
               "{\n  \"format\": \"lapwing-session\",\n  \"version\": 1,\n  \"id\": \"i\",\n  \"title\": "
               "\"t\",\n  \"x\": 1,\n"
               "  \"group\": {\n    \"y\": 2\n  },\n  \"parts\": []\n}\n");
}

static void
test_defaults_left_out (void)
{
  g_autoptr(LapSession) session = read_text (
    "{" HEAD ", \"coach\": \"\", \"notes\": \"\", \"music\": \"\", \"link\": \"\", \"target\": 0, \"focus\": "
             "[], \"kit\": [],"
    "\"space\": {}, \"quiet\": false, \"also-for\": [],"
    "\"group\": {\"level\": \"mixed\", \"count\": 1, \"age\": 40, \"mass\": 70, \"rest-pulse\": 65},"
    "\"talk\": {\"voice\": 2.5, \"rest\": 2.0, \"moderate\": 1.7, \"vigorous\": 1.2}, \"change\": 1.0,"
    "\"film\": {\"lead\": 0, \"lens\": 26, \"frame\": \"landscape\", \"room\": 4.0, \"camera-height\": 1.2, "
    "\"fps\": 25,"
    "\"sound\": \"after\"}, \"fine\": [], \"exercises\": [], \"takes\": [],"
    "\"parts\": [{\"kind\": \"main\", \"title\": \"\", \"run\": \"together\", \"rounds\": 1, \"sets\": 1, "
    "\"set-rest\": 0,"
    "\"round-rest\": 0, \"keep-last-rest\": false, \"rest-after\": 0, \"rest-as\": null, \"steps\": [], "
    "\"cap\": 0, \"every\": 60,"
    "\"per-station\": 1, \"aim\": \"\", \"fine\": [], \"blocks\": [{\"exercise\": null, \"work\": 40, "
    "\"rest\": 0, \"reps\": 0,"
    "\"tempo\": \"\", \"load\": \"\", \"switch\": 0, \"option\": \"as-shown\", \"fixed\": false, \"with\": "
    "\"\", \"note\": \"\","
    "\"fine\": [], \"in-round\": {}}]}]}");

  assert_text (session,
               "{\n  \"format\": \"lapwing-session\",\n  \"version\": 1,\n  \"id\": \"i\",\n  \"title\": "
               "\"t\",\n  \"parts\": [\n"
               "    {\n      \"kind\": \"main\",\n      \"blocks\": [\n        {\n          \"exercise\": "
               "null,\n"
               "          \"work\": 40\n        }\n      ]\n    }\n  ]\n}\n");
}

/* Design §4.1: what an empty file means. */
static void
test_defaults (void)
{
  g_autoptr(LapSession) session = read_text ("{" HEAD ", \"parts\": [{\"kind\": \"main\", \"blocks\": []}]}");
  LapPart *part = lap_session_nth (session, 0);
  double low, high;

  g_assert_false (lap_session_band (session, &low, &high));
  g_assert_cmpfloat (low, ==, 0.40);
  g_assert_cmpfloat (high, ==, 0.89);
  g_assert_cmpfloat (lap_session_fitness (session), ==, 9);
  g_assert_cmpint (session->level, ==, LAP_LEVEL_MIXED);
  g_assert_cmpint (session->sound, ==, LAP_SOUND_AFTER);
  g_assert_cmpfloat (session->lens, ==, 26);
  g_assert_cmpint (part->rounds, ==, 1);
  g_assert_cmpint (part->every, ==, 60);
  g_assert_cmpint (part->run, ==, LAP_RUN_TOGETHER);
}

static void
test_fitness (void)
{
  static const struct { LapLevel level; int age; double mets; } rows[] = {
    { LAP_LEVEL_NEW, 40, 7 }, { LAP_LEVEL_MIXED, 40, 9 }, { LAP_LEVEL_TRAINED, 40, 12 },
    { LAP_LEVEL_NEW, 60, 6 }, { LAP_LEVEL_MIXED, 59, 9 }, { LAP_LEVEL_TRAINED, 75, 11 },
  };
  g_autoptr(LapSession) session = lap_session_new ("t");

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      LapChangeRule rule;

      g_object_set (session, "group-level", rows[i].level, "group-age", rows[i].age, NULL);
      rule = lap_session_rule (session);
      g_assert_cmpfloat (lap_session_fitness (session), ==, rows[i].mets);
      g_assert_true (lap_change_is_tender (&rule) == (rows[i].level == LAP_LEVEL_NEW || rows[i].age >= 60));
    }
  g_object_set (session, "group-fitness", 8.5, NULL);
  g_assert_cmpfloat (lap_session_fitness (session), ==, 8.5);
}

static void
test_whole_numbers (void)
{
  static const char *const spellings[] = { "40", "40.0", "4e1", "4.0E+1", "400e-1", "0.4e2" };

  for (guint i = 0; i < G_N_ELEMENTS (spellings); i++)
    {
      g_autofree char *text = g_strdup_printf ("{" HEAD ", \"parts\": [{\"kind\": \"main\", \"blocks\": ["
                                               "{\"exercise\": \"squat\", \"work\": %s}]}]}", spellings[i]);
      g_autoptr(LapSession) session = read_text (text);
      g_autoptr(GBytes) bytes = lap_session_to_bytes (session);

      g_assert_cmpint (lap_part_nth (lap_session_nth (session, 0), 0)->work, ==, 40);
      g_assert_nonnull (strstr (g_bytes_get_data (bytes, NULL), "\"work\": 40\n"));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/model-files/holds-everything", test_holds_everything);
  g_test_add_func ("/model-files/week-holds-everything", test_week_holds_everything);
  g_test_add_data_func ("/model-files/round-trip/session", "everything.lapwing", test_round_trip);
  g_test_add_data_func ("/model-files/round-trip/week", "everything.lapweek", test_round_trip);
  g_test_add_func ("/model-files/demo", test_demo);
  g_test_add_data_func ("/model-files/strangers/session", "everything.lapwing", test_strangers);
  g_test_add_data_func ("/model-files/strangers/week", "everything.lapweek", test_strangers);
  g_test_add_func ("/model-files/other-order", test_other_order);
  g_test_add_func ("/model-files/stranger-outlives-member", test_stranger_outlives_member);
  g_test_add_func ("/model-files/defaults-left-out", test_defaults_left_out);
  g_test_add_func ("/model-files/defaults", test_defaults);
  g_test_add_func ("/model-files/fitness", test_fitness);
  g_test_add_func ("/model-files/whole-numbers", test_whole_numbers);
  return g_test_run ();
}
