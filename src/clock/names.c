/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "clock/names.h"

#include "base/halve.h"

#define APART 100 /* milliseconds between a tone and a name */

/* Not while a tone sounds. */
static int
free_from (const LapTones *tones, int at)
{
  guint i = lap_tones_find (tones, at);
  const LapTone *tone = i < tones->n ? &tones->tones[i] : NULL;

  return tone != NULL && tone->at <= at ? tone->at + lap_tone_shapes[tone->kind].length + APART : at;
}

LapNames *
lap_names_new (const LapScript *script, const LapTones *tones)
{
  LapNames *names = g_new0 (LapNames, 1);

  names->names = g_new (LapName, MAX (script->n, 1));
  for (guint i = 0; i < script->n; i++) {
    const LapLine *line = &script->lines[i];

    if (line->kind == LAP_LINE_NAME)
      names->names[names->n++] = (LapName) { free_from (tones, line->start * 1000), g_strdup (line->text) };
  }
  return names;
}

void
lap_names_free (LapNames *names)
{
  for (guint i = 0; i < names->n; i++)
    g_free (names->names[i].text);
  g_free (names->names);
  g_free (names);
}

guint
lap_names_find (const LapNames *names, gint64 at)
{
  guint begun = LAP_HALVE (names->n, i, names->names[i].at <= at);

  return begun > 0 ? begun - 1 : names->n;
}

void
lap_spoken_free (LapSpoken *spoken)
{
  g_free (spoken->samples);
  g_free (spoken);
}

void
lap_spoken_mix (const LapSpoken *spoken, gint64 start, gint64 from, guint n, gint16 *out)
{
  gint64 first = MAX (from, start), last = MIN (from + n, start + spoken->n);

  for (gint64 i = first; i < last; i++) {
    int sum = out[i - from] + spoken->samples[i - start];

    out[i - from] = CLAMP (sum, G_MININT16, G_MAXINT16);
  }
}
