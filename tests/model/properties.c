/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walks the tables of session, part and block: each property that may be written survives a save and a load, and is
 * taken back by undo. A row added to a table is asked for here without a line of test.
 */
#include "base/json-scan.h"
#include "edit/history.h"
#include "store/documents.h"

#include <string.h>

/* Values of the kinds that a rule can't make one for, as they stand in a file. */
static const struct { const char *property, *json; } samples[] = {
  { "kit", "{\"mat\": 3, \"x\": 1, \"band\": 2}" },
  { "exercises", "[{\"id\": \"own-a\", \"name\": \"A\", \"for\": [\"work\"], \"pattern\": \"squat\", \"move\": \"own\","
                 "\"posture\": \"standing\", \"primary\": [\"quads\"], \"sides\": \"both\", \"impact\": \"none\","
                 "\"noise\": \"silent\", \"met\": {\"steady\": {\"value\": 3, \"code\": \"a\"},"
                 "\"hard\": {\"value\": 4, \"code\": \"b\"}}, \"width\": 1, \"length\": 1, \"view\": \"side\","
                 "\"seconds-per-rep\": 2, \"say\": {\"setup\": \"Stand.\"}}]" },
  { "takes", "[{\"at\": \"2027-01-11T09:30:00Z\", \"clock\": 1.5, \"mark\": \"good\", \"x\": 1}]" },
  { "steps", "[{\"work\": 40, \"rest\": 20}, {\"work\": 30, \"rest\": 10, \"x\": 1}]" },
  { "reps", "[8, 10]" },
  { "tempo", "\"3-1-1\"" },
  { "say", "{\"cues\": [\"Chest up\", \"Knees out\"], \"x\": 1}" },
  { "in-round", "{\"2\": {\"exercise\": \"lunge\", \"work\": 30, \"reps\": 12, \"say\": {\"fault\": \"No.\"}}, \"3\": {\"x\": 1}}" },
  /* On its own a part at its own pace would need "cap" as well. */
  { "run", "\"on-the-minute\"" },
};

static char *
sample_text (const LapField *field, const char *property)
{
  for (guint i = 0; i < G_N_ELEMENTS (samples); i++)
    if (g_str_equal (samples[i].property, property))
      return g_strdup (samples[i].json);
  if (field->kind == &lap_kind_int)
    return g_strdup_printf ("%.0f", field->high);
  if (field->kind == &lap_kind_number)
    return g_strdup_printf ("%.17g", field->low + (field->high - field->low) * 0.75);
  if (field->kind == &lap_kind_flag)
    return g_strdup (field->preset != 0 ? "false" : "true");
  if (field->kind == &lap_kind_word)
    return g_strdup_printf ("\"%s\"", field->words->words[((int) field->preset + 1) % field->words->n].id);
  if (field->kind == &lap_kind_words)
    return g_strdup_printf ("[\"%s\", \"%s\"]", field->words->words[field->words->n - 1].id, field->words->words[0].id);
  if (field->kind == &lap_kind_texts)
    return g_strdup ("[\"two\", \"t€xts\"]");
  if (field->kind == &lap_kind_text || field->kind == &lap_kind_id)
    return g_strdup ("\"“sample”\\n\\\\ 🦆\"");
  g_error ("no sample for \"%s\"", property);
}

/* The sample as a value of the property. */
static void
sample_value (const LapField *field, const char *property, GValue *value)
{
  g_autofree char *text = sample_text (field, property);
  g_autoptr(GError) error = NULL;
  g_autoptr(JsonNode) node = lap_json_parse (text, strlen (text), &error);
  LapPath top = { NULL, NULL, 0 };
  LapField here = *field;
  union { int number; double real; gpointer pointer; } slot = { .pointer = NULL };

  g_assert_no_error (error);
  field->kind->read (field, node, &top, &slot, &error);
  g_assert_no_error (error);
  here.offset = 0;
  lap_field_get (&here, &slot, value);
  if (G_TYPE_FUNDAMENTAL (G_VALUE_TYPE (value)) == G_TYPE_STRING)
    g_free (slot.pointer);
  else if (G_TYPE_FUNDAMENTAL (G_VALUE_TYPE (value)) == G_TYPE_BOXED)
    g_boxed_free (G_VALUE_TYPE (value), slot.pointer);
}

/* What the member holds, as it is written. */
static char *
written (gpointer object, const LapField *field)
{
  g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
  g_autoptr(GBytes) bytes = NULL;

  field->kind->write (field, (char *) object + field->offset, writer);
  bytes = lap_json_writer_finish (writer);
  return g_strdup (g_bytes_get_data (bytes, NULL));
}

/* A session with a part of three rounds that has a block of each kind. */
static LapSession *
plain_session (void)
{
  g_autoptr(LapSession) session = lap_session_new ("t");
  LapPart *part = lap_part_new (LAP_PART_MAIN);
  LapBlock *blocks[] = {
    lap_block_new_exercise ("squat", 40, 20), lap_block_new_talk ("Hello", 30), lap_block_new_pause ("water", 45),
  };
  g_autoptr(GPtrArray) parts = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr(GPtrArray) items = g_ptr_array_new_with_free_func (g_object_unref);

  part->rounds = 3;
  for (guint i = 0; i < G_N_ELEMENTS (blocks); i++)
    g_ptr_array_add (items, blocks[i]);
  g_ptr_array_add (parts, part);
  lap_list_splice (part->blocks, 0, 0, items);
  lap_list_splice (session->parts, 0, 0, parts);
  return g_steal_pointer (&session);
}

/* The object of @session that a test is about: 0 the session, 1 its part, 2 and on the blocks. */
static gpointer
object_at (LapSession *session, int which)
{
  LapPart *part = lap_session_nth (session, 0);

  return which == 0 ? (gpointer) session : which == 1 ? (gpointer) part : lap_part_nth (part, which - 2);
}

static void
count_change (guint *count)
{
  (*count)++;
}

/* Sets the property by an edit and undoes it. */
static void
try_property (int which, const LapField *field, const char *property)
{
  g_autoptr(LapSession) session = plain_session ();
  g_autoptr(LapSession) again = NULL;
  g_autoptr(LapHistory) history = lap_history_new ();
  g_autoptr(GBytes) before = lap_session_to_bytes (session);
  g_autoptr(GBytes) after = NULL;
  g_autoptr(GBytes) undone = NULL;
  g_autoptr(GBytes) redone = NULL;
  g_autoptr(GError) error = NULL;
  g_auto(GValue) value = G_VALUE_INIT;
  gpointer object = object_at (session, which);
  g_autofree char *notify = g_strconcat ("notify::", property, NULL);
  g_autofree char *wanted = NULL, *found = NULL;
  LapEdits *edits = lap_edits_new ("Try");
  guint changes = 0, notes = 0;

  sample_value (field, property, &value);
  lap_edits_set (edits, object, property, &value);
  g_signal_connect_swapped (session, "changed", G_CALLBACK (count_change), &changes);
  g_signal_connect_swapped (object, notify, G_CALLBACK (count_change), &notes);
  lap_history_apply (history, edits);
  /* The root hears of it once, and so does who listens to the property. */
  g_assert_cmpuint (changes, ==, 1);
  g_assert_cmpuint (notes, ==, 1);

  after = lap_session_to_bytes (session);
  if (g_bytes_equal (before, after))
    g_error ("\"%s\": the file stays as it was", property);
  again = lap_session_from_bytes (after, &error);
  g_assert_no_error (error);
  wanted = written (object, field);
  found = written (object_at (again, which), field);
  g_assert_cmpstr (found, ==, wanted);

  g_assert_true (lap_history_undo (history));
  undone = lap_session_to_bytes (session);
  g_assert_true (g_bytes_equal (undone, before));
  g_assert_true (lap_history_redo (history));
  redone = lap_session_to_bytes (session);
  g_assert_true (g_bytes_equal (redone, after));
}

static void
try_all (int which)
{
  g_autoptr(LapSession) session = plain_session ();
  gpointer object = object_at (session, which);
  const LapRecord *record = lap_object_record (object);
  guint tried = 0;

  for (guint i = 0; i < record->n; i++)
    {
      const LapField *field = &record->fields[i];
      g_autofree char *property = lap_field_property (field);
      GParamSpec *spec = g_object_class_find_property (G_OBJECT_GET_CLASS (object), property);

      /* What never changes by an edit is no property. */
      g_assert_true ((spec == NULL) == ((field->flags & LAP_FIELD_FIXED) != 0));
      g_assert_true (lap_record_field (record, property) == field);
      if (spec == NULL || (record->leaves_out != NULL && record->leaves_out (object, field)))
        continue;
      try_property (which, field, property);
      tried++;
    }
  g_assert_cmpuint (tried, >=, which == 0 ? 35 : which == 1 ? 15 : which == 2 ? 15 : 5);
}

static void
test_object (gconstpointer which)
{
  try_all (GPOINTER_TO_INT (which));
}

/* Setting what is already there says nothing to anybody. */
static void
test_same_value (void)
{
  g_autoptr(LapSession) session = plain_session ();
  LapBlock *block = object_at (session, 2);
  guint changes = 0;

  g_signal_connect_swapped (session, "changed", G_CALLBACK (count_change), &changes);
  g_object_set (block, "work", 40, "exercise", "squat", "in-round", NULL, "fine", NULL, NULL);
  g_object_set (session, "title", "t", "kit", NULL, "space-width", 0.0, NULL);
  g_assert_cmpuint (changes, ==, 0);
  g_object_set (block, "work", 41, NULL);
  g_assert_cmpuint (changes, ==, 1);
}

/* Everything that can be made can be unmade; the sanitizer counts. */
static void
test_life (void)
{
  GType (*const types[]) (void) = { lap_session_get_type, lap_part_get_type, lap_block_get_type, lap_history_get_type };

  for (guint i = 0; i < G_N_ELEMENTS (types); i++)
    {
      gpointer object = g_object_new (types[i] (), NULL);

      g_object_add_weak_pointer (object, &object);
      g_object_unref (object);
      g_assert_null (object);
    }
  g_assert_true (G_TYPE_IS_ABSTRACT (LAP_TYPE_OBJECT));
}

/* What is below goes with it, unless somebody else holds it: then it stands alone. */
static void
test_life_below (void)
{
  LapSession *session = plain_session ();
  g_autoptr(LapBlock) kept = g_object_ref (object_at (session, 3));
  gpointer part = object_at (session, 1), gone = object_at (session, 2);

  g_object_add_weak_pointer (part, &part);
  g_object_add_weak_pointer (gone, &gone);
  g_assert_true (((LapObject *) kept)->owner == part);
  g_object_unref (session);
  g_assert_null (part);
  g_assert_null (gone);
  g_assert_null (((LapObject *) kept)->owner);
  g_object_set (kept, "seconds", 31, NULL);
  g_assert_cmpint (kept->seconds, ==, 31);
}

int
main (int argc, char **argv)
{
  static const char *const names[] = { "session", "part", "exercise-block", "talk", "pause" };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autofree char *path = g_strconcat ("/model-properties/", names[i], NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), test_object);
    }
  g_test_add_func ("/model-properties/same-value", test_same_value);
  g_test_add_func ("/model-properties/life", test_life);
  g_test_add_func ("/model-properties/life-below", test_life_below);
  return g_test_run ();
}
