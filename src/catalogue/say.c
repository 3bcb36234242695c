/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/say.h"

#include <glib/gi18n-lib.h>

static const LapField fields[] = {
  { "", "setup", &lap_kind_text, G_STRUCT_OFFSET (LapSay, setup) },
  { "", "cues", &lap_kind_texts, G_STRUCT_OFFSET (LapSay, cues), .high = 20 },
  { "", "fault", &lap_kind_text, G_STRUCT_OFFSET (LapSay, fault) },
  { "", "easier", &lap_kind_text, G_STRUCT_OFFSET (LapSay, easier) },
  { "", "harder", &lap_kind_text, G_STRUCT_OFFSET (LapSay, harder) },
};

const LapRecord lap_say_record = {
  "the words to say", fields, G_N_ELEMENTS (fields),
  .extras = G_STRUCT_OFFSET (LapSay, extras), .present = G_STRUCT_OFFSET (LapSay, present),
};

G_DEFINE_BOXED_TYPE (LapSay, lap_say, lap_say_copy, lap_say_free)

LapSay *
lap_say_new (void)
{
  return g_new0 (LapSay, 1);
}

LapSay *
lap_say_copy (const LapSay *say)
{
  LapSay *copy = lap_say_new ();

  lap_record_copy (&lap_say_record, say, copy);
  return copy;
}

void
lap_say_free (LapSay *say)
{
  lap_record_clear (&lap_say_record, say);
  g_free (say);
}

static gboolean
read_say (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  g_autoptr (LapSay) say = lap_say_new ();

  if (!lap_record_read (&lap_say_record, say, node, path, error))
    return FALSE;
  *(LapSay **) slot = g_steal_pointer (&say);
  return TRUE;
}

static void
write_say (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  lap_record_write (&lap_say_record, *(LapSay * const *) slot, writer);
}

static void
visit_say (const LapField *f, gconstpointer slot, const char *pointer, LapExtraFunc func, gpointer data)
{
  lap_record_visit (&lap_say_record, *(LapSay * const *) slot, pointer, func, data);
}

const LapKind lap_kind_say = { lap_say_get_type, read_say, write_say, visit_say };

static const char *
text_of (const LapSay *say, guint member)
{
  switch (member) {
    case LAP_SAY_SETUP: return say->setup;
    case LAP_SAY_FAULT: return say->fault;
    case LAP_SAY_EASIER: return say->easier;
    default: return say->harder;
  }
}

char *
lap_say_words (const LapSay *say, guint member, const char *between, gboolean translate)
{
  g_autoptr (GPtrArray) cues = g_ptr_array_new ();
  const char *text = say != NULL && member != LAP_SAY_CUES ? text_of (say, member) : NULL;

  if (say == NULL || (member == LAP_SAY_CUES ? say->cues == NULL : text == NULL))
    return NULL;
  if (member != LAP_SAY_CUES)
    return g_strdup (translate && *text != '\0' ? g_dgettext (GETTEXT_PACKAGE, text) : text);
  for (guint i = 0; say->cues[i] != NULL; i++)
    g_ptr_array_add (cues, (char *) (translate ? g_dgettext (GETTEXT_PACKAGE, say->cues[i]) : say->cues[i]));
  g_ptr_array_add (cues, NULL);
  return g_strjoinv (between, (char **) cues->pdata);
}
