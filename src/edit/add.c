/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/add.h"

#include "edit/verbs.h"

/* Seconds of the first exercise of a part: common practice, no source. */
static const struct { int work, rest; } usual[] = {
  [LAP_PART_OPENING] = { 30, 10 }, [LAP_PART_WARM_UP] = { 30, 10 }, [LAP_PART_MAIN] = { 40, 20 },
  [LAP_PART_COOL_DOWN] = { 30, 10 }, [LAP_PART_CLOSING] = { 30, 10 },
};

static LapBlock *
exercise_beside (LapPart *part, guint position)
{
  for (guint i = MIN (position, lap_part_n (part)); i > 0; i--)
    if (lap_part_nth (part, i - 1)->kind == LAP_BLOCK_EXERCISE)
      return lap_part_nth (part, i - 1);
  for (guint i = position; i < lap_part_n (part); i++)
    if (lap_part_nth (part, i)->kind == LAP_BLOCK_EXERCISE)
      return lap_part_nth (part, i);
  return NULL;
}

LapBlock *
lap_block_for_place (LapPart *part, guint position, const char *id)
{
  LapBlock *beside = exercise_beside (part, position);
  LapBlock *block = lap_block_new_exercise (id, beside != NULL ? beside->work : usual[part->kind].work,
                                            beside != NULL ? beside->rest : usual[part->kind].rest);

  if (beside != NULL)
    block->pace = beside->pace;
  return block;
}

static LapPartKind
kind_for (const LapExercise *e)
{
  if (e == NULL || e->use_mask & LAP_BIT (LAP_USE_WORK))
    return LAP_PART_MAIN;
  return e->use_mask & LAP_BIT (LAP_USE_WARM_UP) ? LAP_PART_WARM_UP : LAP_PART_COOL_DOWN;
}

/* The last part of @kind; where there is none, the index at which one belongs. */
static LapPart *
find_part (LapSession *session, LapPartKind kind, guint *index)
{
  *index = 0;
  for (guint i = lap_session_n (session); i > 0; i--) {
    LapPart *part = lap_session_nth (session, i - 1);

    if (part->kind == (int) kind)
      return part;
    if (part->kind < (int) kind && *index == 0)
      *index = i;
  }
  return NULL;
}

static LapEdits *
add_with_part (LapSession *session, LapPartKind kind, guint index, LapBlock *block, LapCatalogue *catalogue)
{
  g_autoptr (LapPart) part = lap_part_new (kind);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new ();
  g_autoptr (LapEdits) named = lap_verb_add_block (part, 0, block, catalogue);
  LapEdits *edits = lap_edits_new (lap_edits_label (named));

  g_ptr_array_add (blocks, block);
  lap_list_splice (part->blocks, 0, 0, blocks);
  lap_edits_insert (edits, session->parts, index, part);
  return edits;
}

LapEdits *
lap_verb_add_exercise (LapSession *session, LapBlock *after, const char *id, LapCatalogue *catalogue, LapBlock **added)
{
  LapPartKind kind = kind_for (id != NULL ? lap_catalogue_find (catalogue, id) : NULL);
  guint index = 0;
  LapPart *part = after != NULL ? LAP_PART (LAP_OBJECT (after)->owner) : find_part (session, kind, &index);
  g_autoptr (LapPart) none = part == NULL ? lap_part_new (kind) : NULL;
  guint position = after != NULL ? lap_list_find (part->blocks, after) + 1 : part != NULL ? lap_part_n (part) : 0;
  g_autoptr (LapBlock) block = lap_block_for_place (part != NULL ? part : none, position, id);

  *added = block;
  if (part == NULL)
    return add_with_part (session, kind, index, block, catalogue);
  return lap_verb_add_block (part, position, block, catalogue);
}
