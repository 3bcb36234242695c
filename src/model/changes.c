/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/changes.h"

#include "catalogue/vocabulary.h"
#include "model/block.h"

#include <stdlib.h>
#include <string.h>

#define AT(member) G_STRUCT_OFFSET (LapChange, member)

static const LapField fields[LAP_N_CHANGES] = {
  [LAP_CHANGE_EXERCISE] = { "", "exercise", &lap_kind_id, AT (exercise) },
  [LAP_CHANGE_WORK] = { "", "work", &lap_kind_int, AT (work), 0, 1, 10800 },
  [LAP_CHANGE_REST] = { "", "rest", &lap_kind_int, AT (rest), 0, 0, 10800 },
  [LAP_CHANGE_REPS] = { "", "reps", &lap_kind_reps, AT (reps) },
  [LAP_CHANGE_LOAD] = { "", "load", &lap_kind_text, AT (load) },
  [LAP_CHANGE_PACE] = { "", "pace", &lap_kind_word, AT (pace), .preset = -1, .words = &lap_paces },
  [LAP_CHANGE_OPTION] = { "", "option", &lap_kind_word, AT (option), .words = &lap_options },
  [LAP_CHANGE_SIDES] = { "", "sides", &lap_kind_word, AT (sides), .preset = -1, .words = &lap_sides },
  [LAP_CHANGE_SAY] = { "", "say", &lap_kind_say, AT (say) },
  [LAP_CHANGE_NOTE] = { "", "note", &lap_kind_text, AT (note) },
};

const LapRecord lap_change_record = {
  "what is different in a round", fields, G_N_ELEMENTS (fields), .extras = AT (extras), .present = AT (present),
};

G_DEFINE_BOXED_TYPE (LapChanges, lap_changes, lap_changes_copy, lap_changes_free)

static void
change_free (gpointer change)
{
  lap_record_clear (&lap_change_record, change);
  g_free (change);
}

LapChanges *
lap_changes_new (void)
{
  LapChanges *changes = g_new0 (LapChanges, 1);

  changes->items = g_ptr_array_new_with_free_func (change_free);
  return changes;
}

LapChanges *
lap_changes_copy (const LapChanges *changes)
{
  LapChanges *copy = lap_changes_new ();

  for (guint i = 0; i < changes->items->len; i++) {
    const LapChange *change = g_ptr_array_index (changes->items, i);

    lap_record_copy (&lap_change_record, change, lap_changes_ensure (copy, change->round));
  }
  return copy;
}

void
lap_changes_free (LapChanges *changes)
{
  g_ptr_array_unref (changes->items);
  g_free (changes);
}

LapChange *
lap_changes_find (const LapChanges *changes, int round)
{
  for (guint i = 0; changes != NULL && i < changes->items->len; i++) {
    LapChange *change = g_ptr_array_index (changes->items, i);

    if (change->round == round)
      return change;
  }
  return NULL;
}

LapChange *
lap_changes_ensure (LapChanges *changes, int round)
{
  LapChange *change = lap_changes_find (changes, round);
  guint i = 0;

  if (change != NULL)
    return change;
  while (i < changes->items->len && ((LapChange *) g_ptr_array_index (changes->items, i))->round < round)
    i++;
  change = g_new0 (LapChange, 1);
  lap_record_init (&lap_change_record, change);
  change->round = round;
  g_ptr_array_insert (changes->items, i, change);
  return change;
}

LapChanges *
lap_changes_within (const LapChanges *changes, int rounds, int without)
{
  g_autoptr (LapChanges) copy = NULL;

  if (changes == NULL)
    return NULL;
  copy = lap_changes_copy (changes);
  for (guint i = copy->items->len; i-- > 0;) {
    LapChange *change = g_ptr_array_index (copy->items, i);

    if (change->round > rounds || change->round == without)
      g_ptr_array_remove_index (copy->items, i);
  }
  return copy->items->len > 0 ? g_steal_pointer (&copy) : NULL;
}

/* The number that @name spells, or 0: digits only, no leading zero. */
static int
round_number (const char *name)
{
  if (*name < '1' || *name > '9' || strspn (name, "0123456789") != strlen (name) || strlen (name) > 6)
    return 0;
  return atoi (name);
}

static gboolean
read_changes (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  g_autoptr (LapChanges) changes = lap_changes_new ();
  JsonObjectIter iter;
  const char *name;
  JsonNode *member;

  if (!JSON_NODE_HOLDS_OBJECT (node)) {
    lap_path_error (error, path, "expected an object of round numbers");
    return FALSE;
  }
  json_object_iter_init_ordered (&iter, json_node_get_object (node));
  while (json_object_iter_next_ordered (&iter, &name, &member)) {
    const LapPath *here = LAP_PATH_MEMBER (path, name);
    int round = round_number (name);

    if (round < 2 || round > 100) {
      lap_path_error (error, here, "expected a round number from 2 to the rounds of the part");
      return FALSE;
    }
    if (!lap_record_read (&lap_change_record, lap_changes_ensure (changes, round), member, here, error))
      return FALSE;
  }
  if (changes->items->len > 0)
    *(LapChanges **) slot = g_steal_pointer (&changes);
  return TRUE;
}

static void
write_changes (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  const LapChanges *changes = *(LapChanges * const *) slot;

  lap_json_writer_begin_object (writer);
  for (guint i = 0; i < changes->items->len; i++) {
    const LapChange *change = g_ptr_array_index (changes->items, i);
    g_autofree char *round = g_strdup_printf ("%d", change->round);

    lap_json_writer_member (writer, round);
    lap_record_write (&lap_change_record, change, writer);
  }
  lap_json_writer_end_object (writer);
}

static void
visit_changes (const LapField *f, gconstpointer slot, const char *pointer, LapExtraFunc func, gpointer data)
{
  const LapChanges *changes = *(LapChanges * const *) slot;

  for (guint i = 0; i < changes->items->len; i++) {
    const LapChange *change = g_ptr_array_index (changes->items, i);
    g_autofree char *inner = g_strdup_printf ("%s/%d", pointer, change->round);

    lap_record_visit (&lap_change_record, change, inner, func, data);
  }
}

const LapKind lap_kind_changes = { lap_changes_get_type, read_changes, write_changes, visit_changes };
