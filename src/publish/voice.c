/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/voice.h"

#include "base/error.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define HEADER 44   /* bytes in front of the samples of espeak-ng */
#define PEAK   0.33 /* of full scale: with a tone on top still below -6 dBFS */
#define REACH  12   /* samples that go into one when the rate changes, to each side */

struct _LapVoice {
  char *program, *language;
  int   rate;
};

static char *
language_of_locale (void)
{
  const char *first = g_get_language_names ()[0];

  return g_ascii_islower (first[0]) ? g_strndup (first, strcspn (first, "_.@")) : g_strdup ("en");
}

LapVoice *
lap_voice_new (int rate, GError **error)
{
  g_autofree char *program = g_find_program_in_path ("espeak-ng");
  LapVoice *voice;

  if (program == NULL) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING,
                 _("spoken names need the program espeak-ng, which isn’t installed; tones alone don’t"));
    return NULL;
  }
  voice = g_new (LapVoice, 1);
  *voice = (LapVoice) { g_steal_pointer (&program), language_of_locale (), rate };
  return voice;
}

void
lap_voice_free (LapVoice *voice)
{
  g_free (voice->program);
  g_free (voice->language);
  g_free (voice);
}

/* What espeak-ng says, as it writes it; NULL where it fails, with @error only when it was cancelled or didn't run. */
static GBytes *
run (const LapVoice *voice, const char *language, const char *text, GCancellable *cancellable, GError **error)
{
  const char *const words[] = { voice->program, "-v", language, "-s", "160", "--stdout", "--", text, NULL };
  g_autoptr (GSubprocess) process = NULL;
  g_autoptr (GBytes) said = NULL;

  process = g_subprocess_newv (words, G_SUBPROCESS_FLAGS_STDOUT_PIPE | G_SUBPROCESS_FLAGS_STDERR_SILENCE, error);
  if (process == NULL || !g_subprocess_communicate (process, NULL, cancellable, &said, NULL, error))
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
static LapSpoken *
take_in (const LapVoice *voice, GBytes *said)
{
  const guchar *data = g_bytes_get_data (said, NULL);
  guint rate = data[24] | data[25] << 8 | data[26] << 16, n = (g_bytes_get_size (said) - HEADER) / sizeof (gint16);
  g_autofree gint16 *from = g_memdup2 (data + HEADER, n * sizeof (gint16));
  double step = (double) MAX (rate, 1) / voice->rate, peak = 1;
  LapSpoken *spoken = g_new (LapSpoken, 1);

  for (guint i = 0; i < n; i++)
    peak = MAX (peak, ABS (GINT16_FROM_LE (from[i])));
  spoken->n = (guint) (n / step);
  spoken->samples = g_new (gint16, MAX (spoken->n, 1));
  for (guint i = 0; i < spoken->n; i++)
    spoken->samples[i] = CLAMP (lround (sample_at (from, n, i * step) * PEAK * G_MAXINT16 / peak), G_MININT16,
                                G_MAXINT16);
  return spoken;
}

LapSpoken *
lap_voice_say (const LapVoice *voice, const char *text, GCancellable *cancellable, GError **error)
{
  g_autoptr (GError) mistake = NULL;
  g_autoptr (GBytes) said = run (voice, voice->language, text, cancellable, &mistake);

  if (said == NULL && mistake == NULL)
    said = run (voice, "en", text, cancellable, &mistake);
  if (said != NULL)
    return take_in (voice, said);
  if (mistake != NULL)
    g_propagate_error (error, g_steal_pointer (&mistake));
  else
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("espeak-ng can’t say “%s”"), text);
  return NULL;
}
