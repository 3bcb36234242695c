/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A random walk of 10,000 edits, undos and redos over the demo. On the way the file is compared with the one
 * of the same revision; at the end all is undone, to the bytes of the demo, and redone, to the bytes before.
 * The verbs keep their promises on the way: a file that is written can be read.
 */
#include "edit/history.h"
#include "edit/verbs.h"
#include "edit/verbs-blocks.h"
#include "store/documents.h"
#include "store/read-file.h"
#include "support/samples.h"

#include <string.h>

#define STEPS 10000
#define LOOK_EVERY 10
#define MOST_BLOCKS 24
#define MOST_PARTS 8

typedef struct {
  LapSession *session;
  LapCatalogue *catalogue;
  LapHistory *history;
  GRand *rand;
  GHashTable *files; /* revision -> checksum of the file */
} Walk;

static gboolean
one_in (Walk *walk, int n)
{
  return g_rand_int_range (walk->rand, 0, n) == 0;
}

static guint
below (Walk *walk, guint n)
{
  return g_rand_int_range (walk->rand, 0, n);
}

static LapPart *
any_part (Walk *walk)
{
  return lap_session_nth (walk->session, below (walk, lap_session_n (walk->session)));
}

static const char *
any_exercise (Walk *walk)
{
  return lap_catalogue_nth (walk->catalogue, below (walk, lap_catalogue_n (walk->catalogue)))->id;
}

static LapBlock *
new_block (Walk *walk)
{
  switch (below (walk, 3))
    {
    case 0:
      return lap_block_new_talk ("Some words", 10 + below (walk, 60));
    case 1:
      return lap_block_new_pause ("water", 30);
    default:
      return lap_block_new_exercise (any_exercise (walk), 40, 20);
    }
}

/* One of @part on its own, for the verbs that take several. */
static GPtrArray *
any_of (Walk *walk, LapPart *part)
{
  GPtrArray *blocks = g_ptr_array_new ();

  g_ptr_array_add (blocks, lap_part_nth (part, below (walk, lap_part_n (part))));
  return blocks;
}

static LapEdits *
remove_one (Walk *walk, LapPart *part)
{
  g_autoptr(GPtrArray) blocks = any_of (walk, part);

  return lap_verb_remove_blocks (blocks, walk->catalogue);
}

static LapEdits *
duplicate_one (Walk *walk, LapPart *part)
{
  g_autoptr(GPtrArray) blocks = any_of (walk, part);
  g_autoptr(GPtrArray) copies = lap_blocks_copy (blocks);
  LapSpot spot = { part, lap_list_find (part->blocks, g_ptr_array_index (blocks, 0)) + 1 };

  return lap_verb_insert_blocks (walk->session, &spot, copies, "Duplicate %s", walk->catalogue);
}

static LapEdits *
edit_blocks (Walk *walk, LapPart *part)
{
  guint n = lap_part_n (part);
  LapPart *target = any_part (walk);
  g_autoptr(LapBlock) block = NULL;

  if (n == 0 || (n < MOST_BLOCKS && one_in (walk, 4)))
    {
      block = new_block (walk);
      return lap_verb_add_block (part, below (walk, n + 1), block, walk->catalogue);
    }
  switch (below (walk, n < MOST_BLOCKS ? 5 : 3))
    {
    case 0:
      return remove_one (walk, part);
    case 1:
      return lap_verb_move (part, below (walk, n), part, below (walk, n + 1), walk->catalogue);
    case 2:
      return lap_verb_swap (part, below (walk, n), below (walk, n), walk->catalogue);
    case 3:
      return lap_verb_move (part, below (walk, n), target, below (walk, lap_part_n (target) + 1),
                            walk->catalogue);
    default:
      return duplicate_one (walk, part);
    }
}

static LapEdits *
edit_block (Walk *walk, LapPart *part)
{
  LapBlock *block;

  if (lap_part_n (part) == 0)
    return edit_blocks (walk, part);
  block = lap_part_nth (part, below (walk, lap_part_n (part)));
  if (block->kind != LAP_BLOCK_EXERCISE)
    return lap_verb_set_seconds (block, 1 + below (walk, 100), walk->catalogue);
  switch (below (walk, 5))
    {
    case 0:
      return lap_verb_set_work (block, 1 + below (walk, 100), walk->catalogue);
    case 1:
      return lap_verb_set_rest (block, below (walk, 60), walk->catalogue);
    case 2:
      return lap_verb_set_exercise (block, one_in (walk, 8) ? NULL : any_exercise (walk), walk->catalogue);
    case 3:
      return lap_verb_set_option (block, below (walk, 3), walk->catalogue);
    default:
      return lap_verb_fine (LAP_OBJECT (block), one_in (walk, 2) ? "repeat" : "same-muscle",
                            one_in (walk, 2));
    }
}

/* Parts have no verbs of their own: a copy comes in, or one goes. */
static LapEdits *
edit_parts (Walk *walk)
{
  guint n = lap_session_n (walk->session);
  LapEdits *edits = lap_edits_new ("Parts");
  g_autoptr(LapPart) copy = NULL;

  if (n > 1 && (n >= MOST_PARTS || one_in (walk, 2)))
    {
      lap_edits_splice (edits, walk->session->parts, below (walk, n), 1, NULL);
      return edits;
    }
  copy = lap_object_copy (any_part (walk));
  lap_edits_insert (edits, walk->session->parts, below (walk, n + 1), copy);
  return edits;
}

/* Any property of any object: its sample value, or back to its preset. */
static LapEdits *
edit_property (Walk *walk, LapPart *part)
{
  LapBlock *block = lap_part_n (part) > 0 ? lap_part_nth (part, below (walk, lap_part_n (part))) : NULL;
  gpointer holder = block == NULL || one_in (walk, 2) ? (gpointer) part : block;
  gpointer object = one_in (walk, 4) ? (gpointer) walk->session : holder;
  const LapRecord *record = lap_object_record (object);
  LapEdits *edits = lap_edits_new ("Property");

  for (;;)
    {
      const LapField *field = &record->fields[below (walk, record->n)];
      g_autofree char *property = lap_field_property (field);
      g_autofree char *text = NULL;
      g_auto(GValue) value = G_VALUE_INIT;
      g_auto(GValue) preset = G_VALUE_INIT;
      gboolean must_stay = (field->flags & (LAP_FIELD_REQUIRED | LAP_FIELD_KEEP)) != 0
                           || field->low > field->preset;

      /* Rounds and their changes depend on each other; there is a verb for them. */
      if ((field->flags & LAP_FIELD_FIXED) != 0 || g_str_equal (property, "rounds")
          || g_str_equal (property, "in-round")
          || (record->leaves_out != NULL && record->leaves_out (object, field)))
        continue;
      text = sample_value (field, &value);
      g_value_init (&preset, G_VALUE_TYPE (&value));
      if (G_VALUE_HOLDS_INT (&preset))
        g_value_set_int (&preset, field->preset);
      else if (G_VALUE_HOLDS_DOUBLE (&preset))
        g_value_set_double (&preset, field->preset);
      else if (G_VALUE_HOLDS_BOOLEAN (&preset))
        g_value_set_boolean (&preset, field->preset != 0);
      lap_edits_set (edits, object, property, must_stay || one_in (walk, 2) ? &value : &preset);
      return edits;
    }
}

/* What differs in later rounds, so that fewer rounds have something to take along. */
static LapEdits *
edit_rounds (Walk *walk, LapPart *part)
{
  LapEdits *edits;
  LapBlock *block = lap_part_n (part) > 0 ? lap_part_nth (part, below (walk, lap_part_n (part))) : NULL;
  g_autoptr(LapChanges) changes = NULL;
  LapChange *change;

  if (block == NULL || block->kind != LAP_BLOCK_EXERCISE || part->rounds < 2 || one_in (walk, 2))
    return lap_verb_set_rounds (part, 1 + below (walk, 6));
  edits = lap_edits_new ("Later round");
  changes = block->in_round != NULL ? lap_changes_copy (block->in_round) : lap_changes_new ();
  change = lap_changes_ensure (changes, 2 + below (walk, part->rounds - 1));
  change->work = 1 + below (walk, 100);
  change->present |= 1 << LAP_CHANGE_WORK;
  lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, changes);
  return edits;
}

static LapEdits *
any_edits (Walk *walk)
{
  LapPart *part = any_part (walk);

  switch (below (walk, 12))
    {
    case 0:
      return edit_parts (walk);
    case 1: case 2: case 3: case 4:
      return edit_blocks (walk, part);
    case 5: case 6: case 7:
      return edit_property (walk, part);
    case 8: case 9:
      return edit_rounds (walk, part);
    default:
      return edit_block (walk, part);
    }
}

/* As a drag does: some edits that replace each other, kept or called off. */
static void
drag (Walk *walk)
{
  lap_history_begin (walk->history);
  for (guint i = 0; i < 3; i++)
    {
      /* Edits are made for the state without what the drag did before. */
      lap_history_apply (walk->history, lap_edits_new ("Nothing"));
      lap_history_apply (walk->history, any_edits (walk));
    }
  if (one_in (walk, 2))
    lap_history_end (walk->history);
  else
    lap_history_cancel (walk->history);
}

static char *
checksum (LapSession *session)
{
  g_autoptr(GBytes) bytes = lap_session_to_bytes (session);

  return g_compute_checksum_for_bytes (G_CHECKSUM_SHA256, bytes);
}

/* One revision, one file. */
static void
look (Walk *walk)
{
  guint64 revision = lap_history_revision (walk->history);
  g_autofree char *now = checksum (walk->session);
  const char *then = g_hash_table_lookup (walk->files, &revision);

  if (then == NULL)
    g_hash_table_insert (walk->files, g_memdup2 (&revision, sizeof revision), g_steal_pointer (&now));
  else
    g_assert_cmpstr (now, ==, then);
}

static void
assert_can_be_read (LapSession *session)
{
  g_autoptr(GBytes) bytes = lap_session_to_bytes (session);
  g_autoptr(GError) error = NULL;
  g_autoptr(LapSession) again = lap_session_from_bytes (bytes, &error);
  g_autoptr(GBytes) written = NULL;

  g_assert_no_error (error);
  written = lap_session_to_bytes (again);
  g_assert_true (g_bytes_equal (written, bytes));
}

static void
step (Walk *walk)
{
  switch (below (walk, 20))
    {
    case 0: case 1: case 2: case 3: case 4: case 5:
      lap_history_undo (walk->history);
      break;
    case 6: case 7: case 8: case 9:
      lap_history_redo (walk->history);
      break;
    case 10:
      drag (walk);
      break;
    default:
      lap_history_apply (walk->history, any_edits (walk));
    }
}

static LapSession *
read_demo (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo",
                                            "thirty-on-the-mat.lapwing", NULL);
  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) bytes = lap_read_file (path, NULL, &error);
  LapSession *session;

  g_assert_no_error (error);
  session = lap_session_from_bytes (bytes, &error);
  g_assert_no_error (error);
  return session;
}

static void
test_walk (void)
{
  g_autoptr(LapSession) session = read_demo ();
  g_autoptr(LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr(LapHistory) history = lap_history_new ();
  g_autoptr(GRand) rand = g_rand_new_with_seed (10000);
  g_autoptr(GHashTable) files = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free, g_free);
  Walk walk = { session, catalogue, history, rand, files };
  g_autoptr(GBytes) before = lap_session_to_bytes (session);
  g_autoptr(GBytes) after = NULL;
  g_autoptr(GBytes) undone = NULL;
  g_autoptr(GBytes) redone = NULL;
  guint undos = 0;

  for (guint i = 0; i < STEPS; i++)
    {
      step (&walk);
      if (i % LOOK_EVERY == 0)
        look (&walk);
      if (i % (10 * LOOK_EVERY) == 0)
        assert_can_be_read (session);
    }
  while (lap_history_redo (history))
    ;
  after = lap_session_to_bytes (session);
  while (lap_history_undo (history))
    undos++;
  undone = lap_session_to_bytes (session);
  g_assert_true (g_bytes_equal (undone, before));
  g_assert_cmpuint (undos, >, STEPS / 10);
  while (lap_history_redo (history))
    undos--;
  g_assert_cmpuint (undos, ==, 0);
  redone = lap_session_to_bytes (session);
  g_assert_true (g_bytes_equal (redone, after));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/walk/ten-thousand", test_walk);
  return g_test_run ();
}
