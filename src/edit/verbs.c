/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/verbs.h"

#include <glib/gi18n-lib.h>

char *
lap_block_title (LapBlock *block, LapCatalogue *catalogue)
{
  LapExercise *e;

  if (block->kind == LAP_BLOCK_TALK)
    return g_strdup (_("Talk"));
  if (block->kind == LAP_BLOCK_PAUSE)
    return g_strdup (_("Pause"));
  if (block->exercise == NULL)
    return g_strdup (_("Not chosen yet"));
  e = lap_catalogue_find (catalogue, block->exercise);
  return g_strdup (e != NULL ? lap_exercise_name (e) : block->exercise);
}

/* A group labelled with @format, which takes the block's title. */
static LapEdits *
named (const char *format, LapBlock *block, LapCatalogue *catalogue)
{
  g_autofree char *title = lap_block_title (block, catalogue);
  g_autofree char *label = g_strdup_printf (format, title);

  return lap_edits_new (label);
}

LapEdits *
lap_verb_add_block (LapPart *part, guint position, LapBlock *block, LapCatalogue *catalogue)
{
  LapEdits *edits = named (_("Add %s"), block, catalogue);

  lap_edits_insert (edits, part->blocks, position, block);
  return edits;
}

void
lap_verb_keep_within (LapEdits *edits, LapBlock *block, int rounds)
{
  g_autoptr (LapChanges) within = lap_changes_within (block->in_round, rounds, 0);

  if (block->in_round != NULL && (within == NULL || within->items->len < block->in_round->items->len))
    lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, within);
}

LapEdits *
lap_verb_move (LapPart *part, guint from, LapPart *target, guint to, LapCatalogue *catalogue)
{
  LapBlock *block = lap_part_nth (part, from);
  LapEdits *edits = named (_("Move %s"), block, catalogue);

  if (part == target && (to == from || to == from + 1))
    return edits;
  if (part == target && to > from)
    to--;
  lap_edits_splice (edits, part->blocks, from, 1, NULL);
  if (part != target)
    lap_verb_keep_within (edits, block, target->rounds);
  lap_edits_insert (edits, target->blocks, to, block);
  return edits;
}

LapEdits *
lap_verb_swap (LapPart *part, guint a, guint b, LapCatalogue *catalogue)
{
  LapBlock *first = lap_part_nth (part, MIN (a, b)), *second = lap_part_nth (part, MAX (a, b));
  g_autofree char *one = lap_block_title (first, catalogue);
  g_autofree char *other = lap_block_title (second, catalogue);
  g_autofree char *label = g_strdup_printf (_("Swap %1$s and %2$s"), one, other);
  LapEdits *edits = lap_edits_new (label);

  if (a == b)
    return edits;
  lap_edits_splice (edits, part->blocks, MAX (a, b), 1, NULL);
  lap_edits_splice (edits, part->blocks, MIN (a, b), 1, NULL);
  lap_edits_insert (edits, part->blocks, MIN (a, b), second);
  lap_edits_insert (edits, part->blocks, MAX (a, b), first);
  return edits;
}

static LapEdits *
set_int (const char *format, LapBlock *block, const char *property, int value, LapCatalogue *catalogue)
{
  LapEdits *edits = named (format, block, catalogue);

  lap_edits_set_int (edits, block, property, value);
  return edits;
}

LapEdits *
lap_verb_set_work (LapBlock *block, int seconds, LapCatalogue *catalogue)
{
  return set_int (_("Change the work of %s"), block, "work", seconds, catalogue);
}

LapEdits *
lap_verb_set_rest (LapBlock *block, int seconds, LapCatalogue *catalogue)
{
  return set_int (_("Change the rest of %s"), block, "rest", seconds, catalogue);
}

LapEdits *
lap_verb_set_seconds (LapBlock *block, int seconds, LapCatalogue *catalogue)
{
  return set_int (_("Change the length of %s"), block, "seconds", seconds, catalogue);
}

LapEdits *
lap_verb_set_option (LapBlock *block, LapOption option, LapCatalogue *catalogue)
{
  return set_int (_("Change the option of %s"), block, "option", option, catalogue);
}

LapEdits *
lap_verb_set_exercise (LapBlock *block, const char *id, LapCatalogue *catalogue)
{
  LapEdits *edits = named (_("Replace %s"), block, catalogue);

  lap_edits_set_text (edits, block, "exercise", id);
  return edits;
}

LapEdits *
lap_verb_set_rounds (LapPart *part, int rounds)
{
  LapEdits *edits = lap_edits_new (_("Change the rounds"));

  lap_edits_set_int (edits, part, "rounds", rounds);
  for (guint i = 0; i < lap_part_n (part); i++)
    lap_verb_keep_within (edits, lap_part_nth (part, i), rounds);
  return edits;
}

LapEdits *
lap_verb_fine (LapObject *holder, const char *check, gboolean fine)
{
  LapEdits *edits = lap_edits_new (fine ? _("Keep a warning quiet") : _("Let a warning speak"));
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) now = NULL;
  g_auto (GStrv) then = NULL;

  g_object_get (holder, "fine", &now, NULL);
  for (guint i = 0; now != NULL && now[i] != NULL; i++)
    if (!g_str_equal (now[i], check))
      g_strv_builder_add (builder, now[i]);
  if (fine)
    g_strv_builder_add (builder, check);
  then = g_strv_builder_end (builder);
  lap_edits_set_boxed (edits, holder, "fine", G_TYPE_STRV, then);
  return edits;
}
