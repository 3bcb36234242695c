/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/speech.h"

#include "publish/voice.h"

struct _LapSpeech {
  LapVoice  *voice;
  int        rate;
  LapNames  *names;
  guint      next;
  gint64     start;  /* of the one that is spoken, in samples */
  LapSpoken *spoken; /* or NULL */
};

LapSpeech *
lap_speech_new (LapTimeline *timeline, const LapTones *tones, int rate, GError **error)
{
  LapVoice *voice = lap_voice_new (rate, error);
  g_autoptr (LapEffort) effort = voice != NULL ? lap_effort_new (timeline) : NULL;
  g_autoptr (LapTalk) talk = voice != NULL ? lap_talk_new (timeline, effort) : NULL;
  g_autoptr (LapScript) script = voice != NULL ? lap_script_new (talk) : NULL;
  LapSpeech *speech;

  if (voice == NULL)
    return NULL;
  speech = g_new0 (LapSpeech, 1);
  speech->voice = voice;
  speech->rate = rate;
  speech->names = lap_names_new (script, tones);
  return speech;
}

void
lap_speech_free (LapSpeech *speech)
{
  g_clear_pointer (&speech->spoken, lap_spoken_free);
  lap_names_free (speech->names);
  lap_voice_free (speech->voice);
  g_free (speech);
}

static gint64
start_of (const LapSpeech *speech, guint i)
{
  return (gint64) speech->names->names[i].at * speech->rate / 1000;
}

gboolean
lap_speech_mix (LapSpeech *speech, gint64 from, guint n, gint16 *out, GError **error)
{
  if (speech->spoken != NULL)
    lap_spoken_mix (speech->spoken, speech->start, from, n, out);
  for (; speech->next < speech->names->n && start_of (speech, speech->next) < from + n; speech->next++) {
    g_clear_pointer (&speech->spoken, lap_spoken_free);
    speech->spoken = lap_voice_say (speech->voice, speech->names->names[speech->next].text, NULL, error);
    if (speech->spoken == NULL)
      return FALSE;
    speech->start = start_of (speech, speech->next);
    lap_spoken_mix (speech->spoken, speech->start, from, n, out);
  }
  return TRUE;
}
