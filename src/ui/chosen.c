/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/chosen.h"

#include "edit/verbs-round.h"

static void
clear (gpointer data)
{
  g_object_unref (((LapChosen *) data)->block);
}

static void
add (GArray *chosen, LapBlock *block, int round)
{
  LapChosen one = { g_object_ref (block), MAX (round, 1) };

  g_array_append_val (chosen, one);
}

GArray *
lap_chosen_exercises (LapScoreContext *context)
{
  g_autoptr (GPtrArray) blocks = lap_score_chosen (context);
  GArray *chosen = g_array_new (FALSE, FALSE, sizeof (LapChosen));

  g_array_set_clear_func (chosen, clear);
  add (chosen, context->block, context->round);
  for (guint i = 0; i < blocks->len; i++) {
    LapBlock *block = blocks->pdata[i];

    if (block != context->block && block->kind == LAP_BLOCK_EXERCISE)
      add (chosen, block, lap_score_round_of (context, block));
  }
  return chosen;
}

static char *
contents (const GArray *chosen, guint i, const char *member)
{
  const LapChosen *one = &g_array_index (chosen, LapChosen, i);
  g_auto (GValue) value = G_VALUE_INIT;

  lap_round_get (one->block, one->round, member, &value);
  return g_strdup_value_contents (&value);
}

gboolean
lap_chosen_differ (const GArray *chosen, const char *member)
{
  g_autofree char *first = contents (chosen, 0, member);
  gboolean differ = FALSE;

  for (guint i = 1; i < chosen->len && !differ; i++) {
    g_autofree char *other = contents (chosen, i, member);

    differ = !g_str_equal (first, other);
  }
  return differ;
}

LapEdits *
lap_chosen_put (const GArray *chosen, const char *member, const GValue *value, const char *label)
{
  LapEdits *edits = lap_edits_new (label);

  for (guint i = 0; i < chosen->len; i++) {
    const LapChosen *one = &g_array_index (chosen, LapChosen, i);

    lap_verb_put_round (edits, one->block, one->round, member, value);
  }
  return edits;
}
