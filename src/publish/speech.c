/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/speech.h"

#include "base/error.h"
#include "talk/script.h"

#include <gio/gio.h>
#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define HEADER 44   /* bytes in front of the samples of espeak-ng */
#define PEAK   0.33 /* of full scale: with a tone on top still below -6 dBFS */
#define REACH  12   /* samples that go into one when the rate changes, to each side */
#define APART  100  /* milliseconds between a tone and a name */

typedef struct {
  gint64 at; /* milliseconds */
  char  *text;
} Name;

struct _LapSpeech {
  char   *program, *voice;
  int     rate;
  GArray *names; /* Name */
  guint   next;
  gint64  start; /* of the one that is spoken, in samples */
  guint   n;
  gint16 *samples;
};

static void
name_clear (gpointer data)
{
  g_free (((Name *) data)->text);
}

/* Not while a tone sounds. */
static gint64
free_from (const LapTones *tones, int at)
{
  guint i = lap_tones_find (tones, at);
  const LapTone *tone = i < tones->n ? &tones->tones[i] : NULL;

  return tone != NULL && tone->at <= at ? tone->at + lap_tone_shapes[tone->kind].length + APART : at;
}

static void
gather (LapSpeech *speech, LapTimeline *timeline, const LapTones *tones)
{
  g_autoptr (LapEffort) effort = lap_effort_new (timeline);
  g_autoptr (LapTalk) talk = lap_talk_new (timeline, effort);
  g_autoptr (LapScript) script = lap_script_new (talk);

  for (guint i = 0; i < script->n; i++) {
    const LapLine *line = &script->lines[i];
    Name name = { free_from (tones, line->start * 1000), NULL };

    if (line->kind != LAP_LINE_NAME)
      continue;
    name.text = g_strdup (line->text);
    g_array_append_val (speech->names, name);
  }
}

static char *
voice_of_locale (void)
{
  const char *first = g_get_language_names ()[0];

  return g_ascii_islower (first[0]) ? g_strndup (first, strcspn (first, "_.@")) : g_strdup ("en");
}

LapSpeech *
lap_speech_new (LapTimeline *timeline, const LapTones *tones, int rate, GError **error)
{
  g_autofree char *program = g_find_program_in_path ("espeak-ng");
  LapSpeech *speech;

  if (program == NULL) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING,
                 _("spoken names need the program espeak-ng, which isn’t installed; tones alone don’t"));
    return NULL;
  }
  speech = g_new0 (LapSpeech, 1);
  speech->program = g_steal_pointer (&program);
  speech->voice = voice_of_locale ();
  speech->rate = rate;
  speech->names = g_array_new (FALSE, FALSE, sizeof (Name));
  g_array_set_clear_func (speech->names, name_clear);
  gather (speech, timeline, tones);
  return speech;
}

void
lap_speech_free (LapSpeech *speech)
{
  g_array_unref (speech->names);
  g_free (speech->samples);
  g_free (speech->program);
  g_free (speech->voice);
  g_free (speech);
}

/* What espeak-ng says, as it writes it; NULL where it fails. */
static GBytes *
say (const LapSpeech *speech, const char *voice, const char *text, GError **error)
{
  const char *const words[] = { speech->program, "-v", voice, "-s", "160", "--stdout", "--", text, NULL };
  g_autoptr (GSubprocess) process = NULL;
  g_autoptr (GBytes) said = NULL;

  process = g_subprocess_newv (words, G_SUBPROCESS_FLAGS_STDOUT_PIPE | G_SUBPROCESS_FLAGS_STDERR_SILENCE, error);
  if (process == NULL || !g_subprocess_communicate (process, NULL, NULL, &said, NULL, error))
    return NULL;
  if (!g_subprocess_get_successful (process) || g_bytes_get_size (said) <= HEADER)
    return NULL;
  return g_steal_pointer (&said);
}

static double
sample_at (const gint16 *from, guint n, double at)
{
  int middle = (int) floor (at);
  double sum = 0;

  for (int i = middle - REACH + 1; i <= middle + REACH; i++) {
    double away = at - i, turn = G_PI * away;
    double window = 0.5 + 0.5 * cos (turn / REACH);

    if (i >= 0 && i < (int) n)
      sum += GINT16_FROM_LE (from[i]) * window * (fabs (away) < 1e-9 ? 1 : sin (turn) / turn);
  }
  return sum;
}

/* To our rate by a windowed sinc, all as loud as each other. */
static void
take_in (LapSpeech *speech, GBytes *said)
{
  const guchar *data = g_bytes_get_data (said, NULL);
  guint rate = data[24] | data[25] << 8 | data[26] << 16, n = (g_bytes_get_size (said) - HEADER) / sizeof (gint16);
  g_autofree gint16 *from = g_memdup2 (data + HEADER, n * sizeof (gint16));
  double step = (double) MAX (rate, 1) / speech->rate, peak = 1;

  for (guint i = 0; i < n; i++)
    peak = MAX (peak, ABS (GINT16_FROM_LE (from[i])));
  g_free (speech->samples);
  speech->n = (guint) (n / step);
  speech->samples = g_new (gint16, MAX (speech->n, 1));
  for (guint i = 0; i < speech->n; i++)
    speech->samples[i] = CLAMP (lround (sample_at (from, n, i * step) * PEAK * G_MAXINT16 / peak), G_MININT16,
                                G_MAXINT16);
}

static gboolean
speak_next (LapSpeech *speech, GError **error)
{
  const Name *name = &g_array_index (speech->names, Name, speech->next++);
  g_autoptr (GBytes) said = say (speech, speech->voice, name->text, error);

  if (said == NULL && (error == NULL || *error == NULL))
    said = say (speech, "en", name->text, error);
  if (said == NULL) {
    if (error != NULL && *error == NULL)
      g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("espeak-ng can’t say “%s”"), name->text);
    return FALSE;
  }
  take_in (speech, said);
  speech->start = name->at * speech->rate / 1000;
  return TRUE;
}

static void
mix (const LapSpeech *speech, gint64 from, guint n, gint16 *out)
{
  gint64 first = MAX (from, speech->start), last = MIN (from + n, speech->start + speech->n);

  for (gint64 i = first; i < last; i++) {
    int sum = out[i - from] + speech->samples[i - speech->start];

    out[i - from] = CLAMP (sum, G_MININT16, G_MAXINT16);
  }
}

gboolean
lap_speech_mix (LapSpeech *speech, gint64 from, guint n, gint16 *out, GError **error)
{
  mix (speech, from, n, out);
  while (speech->next < speech->names->len &&
         g_array_index (speech->names, Name, speech->next).at * speech->rate / 1000 < from + n) {
    if (!speak_next (speech, error))
      return FALSE;
    mix (speech, from, n, out);
  }
  return TRUE;
}
