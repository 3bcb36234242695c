/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/verbs-say.h"

#include "edit/verbs-blocks.h"
#include "edit/verbs.h"

#include <glib/gi18n-lib.h>

/* What a step is called, by member. Translators: %s is an exercise. */
static const char *labels[] = {
  [LAP_SAY_SETUP] = N_("Change how to set up %s"),
  [LAP_SAY_CUES] = N_("Change the cues of %s"),
  [LAP_SAY_FAULT] = N_("Change the fault of %s"),
  [LAP_SAY_EASIER] = N_("Change the easier words of %s"),
  [LAP_SAY_HARDER] = N_("Change the harder words of %s"),
};

static char **
member_of (LapSay *say, guint member)
{
  switch (member) {
    case LAP_SAY_SETUP: return &say->setup;
    case LAP_SAY_FAULT: return &say->fault;
    case LAP_SAY_EASIER: return &say->easier;
    default: return &say->harder;
  }
}

/* The lines of @text that say something; NULL for none. */
static char **
lines_of (const char *text)
{
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);
  g_autoptr (GPtrArray) said = g_ptr_array_new ();

  for (guint i = 0; lines[i] != NULL; i++)
    if (*g_strstrip (lines[i]) != '\0')
      g_ptr_array_add (said, g_strdup (lines[i]));
  if (said->len == 0)
    return NULL;
  g_ptr_array_add (said, NULL);
  return (char **) g_ptr_array_free (g_steal_pointer (&said), FALSE);
}

static gboolean
set_text (LapSay *say, guint member, const char *text)
{
  char **held = member_of (say, member), *is = g_strstrip (g_strdelimit (g_strdup (text), "\n", ' '));
  gboolean differs = g_strcmp0 (*held != NULL ? *held : "", is) != 0;

  g_free (*held);
  *held = is;
  if (*is == '\0')
    g_clear_pointer (held, g_free);
  return differs;
}

static gboolean
set_cues (LapSay *say, const char *text)
{
  char **is = lines_of (text);
  gboolean differs = (say->cues == NULL) != (is == NULL) ||
                     (is != NULL && !g_strv_equal ((const char * const *) is, (const char * const *) say->cues));

  g_strfreev (say->cues);
  say->cues = is;
  return differs;
}

/* Puts @text in the place of what @say has. TRUE when that is something else. */
static gboolean
set_member (LapSay *say, guint member, const char *text)
{
  guint64 bit = G_GUINT64_CONSTANT (1) << member, was = say->present;
  gboolean differs = member == LAP_SAY_CUES ? set_cues (say, text) : set_text (say, member, text);
  gboolean own = member == LAP_SAY_CUES ? say->cues != NULL : *member_of (say, member) != NULL;

  say->present = own ? was | bit : was & ~bit;
  return differs || say->present != was;
}

/* What @block says in @round; NULL where it has no words of its own. */
static const LapSay *
words_in (LapBlock *block, int round)
{
  const LapChange *change = lap_changes_find (block->in_round, round);

  return change != NULL && LAP_CHANGE_HAS (change, LAP_CHANGE_SAY) ? change->say : block->say;
}

static gboolean
is_empty (const LapSay *say)
{
  return say == NULL || (say->present == 0 && say->extras == NULL);
}

/* Only in @round. Nothing in there is the exercise's words, whatever the block says. */
static void
set_in_round (LapEdits *edits, LapBlock *block, int round, const LapSay *say)
{
  g_autoptr (LapChanges) changes = block->in_round != NULL ? lap_changes_copy (block->in_round) : lap_changes_new ();
  LapChange *change = lap_changes_ensure (changes, round);

  g_clear_pointer (&change->say, lap_say_free);
  change->say = say != NULL ? lap_say_copy (say) : lap_say_new ();
  change->present |= LAP_BIT (LAP_CHANGE_SAY);
  lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, changes);
}

void
lap_verb_put_words (LapEdits *edits, LapBlock *block, int round, const LapSay *say)
{
  if (lap_changes_find (block->in_round, round) != NULL)
    set_in_round (edits, block, round, say);
  else
    lap_edits_set_boxed (edits, block, "say", LAP_TYPE_SAY, is_empty (say) ? NULL : say);
}

static char *
label_of (LapBlock *block, int round, const char *words, LapCatalogue *catalogue)
{
  g_autofree char *title = lap_block_title (block, catalogue);

  if (lap_changes_find (block->in_round, round) != NULL)
    return g_strdup_printf (_("Change the words of %1$s in round %2$d"), title, round);
  return g_strdup_printf (_(words != NULL ? words : N_("Change the words of %s")), title);
}

LapEdits *
lap_verb_set_words (LapBlock *block, int round, const char *const texts[LAP_N_SAY], LapCatalogue *catalogue)
{
  const LapSay *was = words_in (block, round);
  g_autoptr (LapSay) say = was != NULL ? lap_say_copy (was) : lap_say_new ();
  g_autofree char *label = NULL;
  const char *words = NULL;
  gboolean differs = FALSE;
  LapEdits *edits;

  for (guint i = 0; i < LAP_N_SAY; i++)
    if (texts[i] != NULL) {
      words = words == NULL ? labels[i] : N_("Change the words of %s");
      differs = set_member (say, i, texts[i]) || differs;
    }
  label = label_of (block, round, words, catalogue);
  edits = lap_edits_new (label);
  if (differs)
    lap_verb_put_words (edits, block, round, say);
  return edits;
}

LapEdits *
lap_verb_own_words (LapBlock *block, int round, LapCatalogue *catalogue)
{
  LapEdits *edits = lap_verb_named_in (_("Let the words of %1$s differ in round %2$d"), block, round, catalogue);

  if (block->kind == LAP_BLOCK_EXERCISE && round >= 2 && !lap_has_own_words (block, round))
    set_in_round (edits, block, round, block->say);
  return edits;
}

LapEdits *
lap_verb_same_words (LapBlock *block, int round, LapCatalogue *catalogue)
{
  LapEdits *edits = lap_verb_named_in (_("Say of %1$s in round %2$d what round 1 says"), block, round, catalogue);
  g_autoptr (LapChanges) changes = NULL, left = NULL;
  LapChange *change;

  if (!lap_has_own_words (block, round))
    return edits;
  changes = lap_changes_copy (block->in_round);
  change = lap_changes_find (changes, round);
  g_clear_pointer (&change->say, lap_say_free);
  change->present &= ~LAP_BIT (LAP_CHANGE_SAY);
  left = lap_changes_within (changes, G_MAXINT, change->present == 0 && change->extras == NULL ? round : 0);
  lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, left);
  return edits;
}

gboolean
lap_has_own_words (const LapBlock *block, int round)
{
  const LapChange *change = lap_changes_find (block->in_round, round);

  return change != NULL && LAP_CHANGE_HAS (change, LAP_CHANGE_SAY);
}
