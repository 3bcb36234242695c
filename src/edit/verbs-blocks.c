/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/verbs-blocks.h"

#include "edit/verbs.h"
#include "edit/verbs-time.h"

#include <glib/gi18n-lib.h>

static LapPart *
part_of (LapBlock *block)
{
  return LAP_PART (LAP_OBJECT (block)->owner);
}

static guint
place_of (LapBlock *block)
{
  return lap_list_find (part_of (block)->blocks, block);
}

char *
lap_blocks_title (GPtrArray *blocks, LapCatalogue *catalogue)
{
  if (blocks->len == 1)
    return lap_block_title (g_ptr_array_index (blocks, 0), catalogue);
  return g_strdup_printf (ngettext ("%u block", "%u blocks", blocks->len), blocks->len);
}

/* A group labelled with @format, which takes the title of @blocks. */
static LapEdits *
named (const char *format, GPtrArray *blocks, LapCatalogue *catalogue)
{
  g_autofree char *title = lap_blocks_title (blocks, catalogue);
  g_autofree char *label = g_strdup_printf (format, title);

  return lap_edits_new (label);
}

GPtrArray *
lap_blocks_copy (GPtrArray *blocks)
{
  GPtrArray *copies = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < blocks->len; i++)
    g_ptr_array_add (copies, lap_object_copy (g_ptr_array_index (blocks, i)));
  return copies;
}

gboolean
lap_blocks_step (LapSession *session, GPtrArray *blocks, int by, LapSpot *spot)
{
  LapBlock *edge;
  guint place, part;

  if (blocks->len == 0)
    return FALSE;
  edge = g_ptr_array_index (blocks, by > 0 ? blocks->len - 1 : 0);
  place = place_of (edge);
  spot->part = part_of (edge);
  part = lap_list_find (session->parts, spot->part);
  if (by > 0 && place + 1 < lap_part_n (spot->part)) {
    spot->position = place + 2;
    return TRUE;
  }
  if (by < 0 && place > 0) {
    spot->position = place - 1;
    return TRUE;
  }
  if (by > 0 ? part + 1 >= lap_session_n (session) : part == 0)
    return FALSE;
  spot->part = lap_session_nth (session, part + by);
  spot->position = by > 0 ? 0 : lap_part_n (spot->part);
  return TRUE;
}

/* Whether @blocks already stand at @spot, one after the other. */
static gboolean
are_there (GPtrArray *blocks, const LapSpot *spot)
{
  guint first = place_of (g_ptr_array_index (blocks, 0));

  for (guint i = 0; i < blocks->len; i++) {
    LapBlock *block = g_ptr_array_index (blocks, i);

    if (part_of (block) != spot->part || place_of (block) != first + i)
      return FALSE;
  }
  return spot->position >= first && spot->position <= first + blocks->len;
}

/* The part of @spot; a new one when it has none. */
static LapPart *
ensure_part (LapEdits *edits, LapSession *session, const LapSpot *spot, guint *position)
{
  g_autoptr (LapPart) part = NULL;

  *position = spot->position;
  if (spot->part != NULL)
    return spot->part;
  part = lap_part_new (LAP_PART_MAIN);
  lap_edits_insert (edits, session->parts, lap_session_n (session), part);
  *position = 0;
  return part; /* the edit holds it */
}

LapEdits *
lap_verb_move_blocks (LapSession *session, GPtrArray *blocks, const LapSpot *spot, LapCatalogue *catalogue)
{
  LapEdits *edits = named (_("Move %s"), blocks, catalogue);
  LapPart *target;
  guint to;

  if (blocks->len == 0 || are_there (blocks, spot))
    return edits;
  target = ensure_part (edits, session, spot, &to);
  for (guint i = blocks->len; i-- > 0;) {
    LapBlock *block = g_ptr_array_index (blocks, i);

    to -= part_of (block) == target && place_of (block) < spot->position;
    lap_edits_splice (edits, part_of (block)->blocks, place_of (block), 1, NULL);
  }
  for (guint i = 0; i < blocks->len; i++) {
    LapBlock *block = g_ptr_array_index (blocks, i);

    if (part_of (block) != target)
      lap_verb_keep_within (edits, block, target->rounds);
    lap_edits_insert (edits, target->blocks, to + i, block);
  }
  return edits;
}

LapEdits *
lap_verb_remove_blocks (GPtrArray *blocks, LapCatalogue *catalogue)
{
  LapEdits *edits = named (_("Remove %s"), blocks, catalogue);

  for (guint i = blocks->len; i-- > 0;) {
    LapBlock *block = g_ptr_array_index (blocks, i);

    lap_edits_splice (edits, part_of (block)->blocks, place_of (block), 1, NULL);
  }
  return edits;
}

LapEdits *
lap_verb_insert_blocks (LapSession *session, const LapSpot *spot, GPtrArray *blocks, const char *format,
                        LapCatalogue *catalogue)
{
  LapEdits *edits = named (format, blocks, catalogue);
  LapPart *target;
  guint to;

  if (blocks->len == 0)
    return edits;
  target = ensure_part (edits, session, spot, &to);
  for (guint i = 0; i < blocks->len; i++) {
    lap_verb_keep_within (edits, g_ptr_array_index (blocks, i), target->rounds);
    lap_edits_insert (edits, target->blocks, to + i, g_ptr_array_index (blocks, i));
  }
  return edits;
}

void
lap_verb_take_own (LapEdits *edits, LapSession *session, GPtrArray *own, LapCatalogue *catalogue)
{
  g_autoptr (GPtrArray) all = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);
  guint n;

  for (guint i = 0; session->exercises != NULL && i < session->exercises->len; i++)
    g_ptr_array_add (all, lap_exercise_ref (g_ptr_array_index (session->exercises, i)));
  n = all->len;
  for (guint i = 0; own != NULL && i < own->len; i++) {
    LapExercise *exercise = g_ptr_array_index (own, i);

    if (lap_catalogue_find (catalogue, exercise->id) == NULL)
      g_ptr_array_add (all, lap_exercise_ref (exercise));
  }
  if (all->len > n)
    lap_edits_set_boxed (edits, session, "exercises", G_TYPE_PTR_ARRAY, all);
}

LapEdits *
lap_verb_named_in (const char *format, LapBlock *block, int round, LapCatalogue *catalogue)
{
  g_autofree char *title = lap_block_title (block, catalogue);
  g_autofree char *label = g_strdup_printf (format, title, round);

  return lap_edits_new (label);
}

LapEdits *
lap_verb_set_exercise_in (LapBlock *block, int round, const char *id, LapCatalogue *catalogue)
{
  const LapChange *change = lap_changes_find (block->in_round, round);
  g_autoptr (LapChanges) changes = NULL;
  LapChange *own;
  LapEdits *edits;

  if (change == NULL || !LAP_CHANGE_HAS (change, LAP_CHANGE_EXERCISE))
    return lap_verb_set_exercise (block, id, catalogue);
  edits = lap_verb_named_in (_("Replace %1$s in round %2$d"), block, round, catalogue);
  changes = lap_changes_copy (block->in_round);
  own = lap_changes_ensure (changes, round);
  g_free (own->exercise);
  own->exercise = g_strdup (id);
  lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, changes);
  return edits;
}

LapEdits *
lap_verb_only_here (LapBlock *block, int round, LapCatalogue *catalogue)
{
  LapEdits *edits = lap_verb_named_in (_("Let %1$s differ in round %2$d"), block, round, catalogue);
  g_autoptr (LapChanges) changes = block->in_round != NULL ? lap_changes_copy (block->in_round) : lap_changes_new ();
  LapTimeSource work, rest;
  LapChange *change;

  if (lap_changes_find (changes, round) != NULL || block->kind != LAP_BLOCK_EXERCISE || round < 2)
    return edits;
  lap_time_source (block, round, LAP_TIME_WORK, &work);
  lap_time_source (block, round, LAP_TIME_REST, &rest);
  change = lap_changes_ensure (changes, round);
  change->exercise = g_strdup (block->exercise);
  change->work = work.seconds;
  change->rest = rest.seconds;
  change->present = 1 << LAP_CHANGE_EXERCISE | 1 << LAP_CHANGE_WORK | 1 << LAP_CHANGE_REST;
  lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, changes);
  return edits;
}

LapEdits *
lap_verb_same_again (LapBlock *block, int round, LapCatalogue *catalogue)
{
  LapEdits *edits = lap_verb_named_in (_("%1$s in round %2$d as in round 1"), block, round, catalogue);
  g_autoptr (LapChanges) left = lap_changes_within (block->in_round, G_MAXINT, round);

  if (lap_changes_find (block->in_round, round) != NULL)
    lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, left);
  return edits;
}
