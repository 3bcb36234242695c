/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/verbs-round.h"

gboolean
lap_round_is_own (const LapBlock *block, int round)
{
  return lap_changes_find (block->in_round, round) != NULL;
}

static guint
bit_of (const LapField *field)
{
  return field - lap_change_record.fields;
}

void
lap_round_get (const LapBlock *block, int round, const char *member, GValue *value)
{
  const LapChange *change = lap_changes_find (block->in_round, round);
  const LapField *field = lap_record_field (&lap_change_record, member);

  if (change != NULL && field != NULL && LAP_CHANGE_HAS (change, bit_of (field)))
    lap_field_get (field, change, value);
  else
    lap_field_get (lap_record_field (lap_object_record (block), member), block, value);
}

/* A word that is left out says nothing of the round, which is as the block then. */
static gboolean
says_nothing (const LapField *field, const GValue *value)
{
  return field->kind == &lap_kind_word && g_value_get_int (value) < 0;
}

void
lap_verb_put_round (LapEdits *edits, LapBlock *block, int round, const char *member, const GValue *value)
{
  const LapField *field = lap_record_field (&lap_change_record, member);
  g_autoptr (LapChanges) changes = NULL;
  LapChange *change;

  if (!lap_round_is_own (block, round) || field == NULL) {
    lap_edits_set (edits, block, member, value);
    return;
  }
  changes = lap_changes_copy (block->in_round);
  change = lap_changes_find (changes, round);
  lap_field_set (field, change, value);
  change->present |= LAP_BIT (bit_of (field));
  if (says_nothing (field, value))
    change->present &= ~LAP_BIT (bit_of (field));
  lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, changes);
}
