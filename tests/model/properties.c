/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walks the tables of session, part and block: each property that may be written survives a save and a load,
 * and is taken back by undo. A row added to a table is asked for here without a line of test.
 */
#include "base/json-scan.h"
#include "edit/history.h"
#include "store/documents.h"
#include "support/samples.h"

#include <string.h>

/* A session with a part of three rounds that has a block of each kind. */
static LapSession *
plain_session (void)
{
  g_autoptr(LapSession) session = lap_session_new ("t");
  LapPart *part = lap_part_new (LAP_PART_MAIN);
  LapBlock *blocks[] = {
    lap_block_new_exercise ("squat", 40, 20), lap_block_new_talk ("Hello", 30),
    lap_block_new_pause ("water", 45),
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

/* Only @field of @object differs from @other. */
static void
assert_differs_only (gpointer object, gpointer other, const LapField *field)
{
  const LapRecord *record = lap_object_record (object);

  for (guint i = 0; i < record->n; i++)
    {
      g_autofree char *one = NULL, *two = NULL;

      if (record->leaves_out != NULL && record->leaves_out (object, &record->fields[i]))
        continue;
      one = written_field (object, &record->fields[i]);
      two = written_field (other, &record->fields[i]);
      if ((g_strcmp0 (one, two) == 0) != (&record->fields[i] != field))
        g_error ("\"%s\" after \"%s\" was set: %s", record->fields[i].name, field->name, one);
    }
}

/* Sets the property by an edit and undoes it. */
static void
try_property (int which, const LapField *field, const char *property)
{
  g_autoptr(LapSession) session = plain_session ();
  g_autoptr(LapSession) was = NULL;
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

  wanted = sample_value (field, &value);
  lap_edits_set (edits, object, property, &value);
  g_signal_connect_swapped (session, "changed", G_CALLBACK (count_change), &changes);
  g_signal_connect_swapped (object, notify, G_CALLBACK (count_change), &notes);
  lap_history_apply (history, edits);
  /* The root hears of it once, and so does who listens to the property. */
  g_assert_cmpuint (changes, ==, 1);
  g_assert_cmpuint (notes, ==, 1);

  after = lap_session_to_bytes (session);
  g_assert_false (g_bytes_equal (before, after));
  was = lap_session_from_bytes (before, &error);
  g_assert_no_error (error);
  assert_differs_only (object, object_at (was, which), field);
  again = lap_session_from_bytes (after, &error);
  g_assert_no_error (error);
  found = written_field (object_at (again, which), field);
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

static gboolean
reads (const LapField *field, double number)
{
  g_autofree char *text = g_strdup_printf ("%.17g", number);
  g_autoptr(JsonNode) node = lap_json_parse (text, strlen (text), NULL);
  LapPath top = { NULL, NULL, 0 };
  union { int number; double real; } slot;

  return field->kind->read (field, node, &top, &slot, NULL);
}

/* Each number is read at both its limits and refused beyond them, never clipped. */
static void
test_limits (void)
{
  g_autoptr(LapSession) session = plain_session ();
  guint tried = 0;

  for (int which = 0; which < 3; which++)
    {
      const LapRecord *record = lap_object_record (object_at (session, which));

      for (guint i = 0; i < record->n; i++)
        {
          const LapField *field = &record->fields[i];
          double step = field->kind == &lap_kind_int ? 1 : 0.001;

          if (field->kind != &lap_kind_int && field->kind != &lap_kind_number)
            continue;
          g_assert_cmpfloat (field->low, <, field->high);
          g_assert_true (reads (field, field->low));
          g_assert_true (reads (field, field->high));
          g_assert_false (reads (field, field->low - step));
          g_assert_false (reads (field, field->high + step));
          g_assert_false (reads (field, -1e300));
          g_assert_false (reads (field, 1e300));
          g_assert_true (reads (field, field->low + 0.5) == (field->kind == &lap_kind_number));
          tried++;
        }
    }
  g_assert_cmpuint (tried, >, 25);
}

/* Design §4.1: rounds, sets 1–100; work, talk, pause 1–10,800 s; rests 0–10,800 s; a session up to 43,200
 * s. */
static void
test_stated_limits (void)
{
  static const struct { int which; const char *property; double low, high; } rows[] = {
    { 1, "rounds", 1, 100 }, { 1, "sets", 1, 100 }, { 2, "work", 1, 10800 }, { 3, "seconds", 1, 10800 },
    { 2, "rest", 0, 10800 }, { 1, "set-rest", 0, 10800 }, { 1, "round-rest", 0, 10800 },
    { 1, "rest-after", 0, 10800 },
    { 0, "target", 0, 43200 },
  };
  g_autoptr(LapSession) session = plain_session ();

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      const LapField *field = lap_record_field (lap_object_record (object_at (session, rows[i].which)),
                                                rows[i].property);

      g_assert_cmpfloat (field->low, ==, rows[i].low);
      g_assert_cmpfloat (field->high, ==, rows[i].high);
    }
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
  GType (*const types[]) (void) = { lap_session_get_type, lap_part_get_type, lap_block_get_type,
                                    lap_history_get_type };

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
  g_test_add_func ("/model-properties/limits", test_limits);
  g_test_add_func ("/model-properties/stated-limits", test_stated_limits);
  g_test_add_func ("/model-properties/same-value", test_same_value);
  g_test_add_func ("/model-properties/life", test_life);
  g_test_add_func ("/model-properties/life-below", test_life_below);
  return g_test_run ();
}
