/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/verbs-say.h"

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

LapEdits *
lap_verb_set_words (LapBlock *block, const char *const texts[LAP_N_SAY], LapCatalogue *catalogue)
{
  g_autoptr (LapSay) say = block->say != NULL ? lap_say_copy (block->say) : lap_say_new ();
  g_autofree char *title = lap_block_title (block, catalogue), *label = NULL;
  const char *words = NULL;
  gboolean differs = FALSE;
  LapEdits *edits;

  for (guint i = 0; i < LAP_N_SAY; i++)
    if (texts[i] != NULL) {
      words = words == NULL ? labels[i] : N_("Change the words of %s");
      differs = set_member (say, i, texts[i]) || differs;
    }
  label = g_strdup_printf (_(words != NULL ? words : N_("Change the words of %s")), title);
  edits = lap_edits_new (label);
  if (differs)
    lap_edits_set_boxed (edits, block, "say", LAP_TYPE_SAY, say->present != 0 || say->extras != NULL ? say : NULL);
  return edits;
}
