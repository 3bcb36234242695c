/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/tones.h"

#include "clock/tones.h"
#include "publish/film.h"
#include "publish/speech.h"
#include "publish/audio.h"

#include <math.h>

#define RATE  48000
#define BLOCK RATE /* samples that are made and written at a time */

typedef struct {
  LapOutput   *output;
  LapAudio    *audio;
  LapTones    *tones;
  LapToneBank *bank;
  LapSpeech   *speech; /* or NULL */
  gint64       start; /* of the session, in samples of the film; below 0 when the film begins later */
  gint64       length; /* of the film, in samples */
} Track;

static gboolean
write_blocks (Track *track, GError **error)
{
  g_autofree gint16 *block = g_new (gint16, BLOCK);

  for (gint64 at = 0; at < track->length; at += BLOCK) {
    guint n = MIN (BLOCK, track->length - at);

    lap_tones_render (track->tones, track->bank, at - track->start, n, block);
    if (track->speech != NULL && !lap_speech_mix (track->speech, at - track->start, n, block, error))
      return FALSE;
    if (!lap_audio_write (track->audio, block, n, error) ||
        !lap_output_progress (track->output, (double) at / track->length, error))
      return FALSE;
  }
  return TRUE;
}

gboolean
lap_tones_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  g_autoptr (LapTones) tones = lap_tones_new (what->timeline);
  g_autoptr (LapToneBank) bank = lap_tone_bank_new (RATE);
  g_autoptr (LapSpeech) speech = NULL;
  Track track = { .output = output, .tones = tones, .bank = bank };
  gboolean good;

  if (what->spoken) {
    speech = lap_speech_new (what->timeline, tones, RATE, error);
    if (speech == NULL)
      return FALSE;
    track.speech = speech;
  }
  track.start = llround (lap_film_lead (what) * RATE);
  track.length = MAX (0, track.start + (gint64) lap_tones_end (tones, what->timeline) * RATE / 1000);
  track.audio = lap_audio_open (output, g_str_equal (suffix, "flac"), RATE, track.length, error);
  if (track.audio == NULL)
    return FALSE;
  good = write_blocks (&track, error);
  return lap_audio_close (track.audio, good ? error : NULL) && good;
}
