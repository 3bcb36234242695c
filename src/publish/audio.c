/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/audio.h"

#include "base/error.h"

#include <glib/gi18n-lib.h>
#include <gmodule.h>
#include <sndfile.h>
#include <string.h>

#define LIBRARY "libsndfile.so.1"
#define HEADER  44

/* What is used of libsndfile. */
typedef struct {
  SNDFILE    *(*open_fd)     (int fd, int mode, SF_INFO *info, int close);
  sf_count_t  (*write_short) (SNDFILE *file, const short *samples, sf_count_t n);
  int         (*close)       (SNDFILE *file);
  const char *(*strerror)    (SNDFILE *file);
} Library;

struct _LapAudio {
  LapOutput *output;
  Library    library;
  SNDFILE   *file; /* NULL for WAV */
};

/* The library stays loaded: it is asked for again with the next film. */
static gboolean
load (Library *library, GError **error)
{
  GModule *module = g_module_open (LIBRARY, G_MODULE_BIND_LAZY | G_MODULE_BIND_LOCAL);

  if (module != NULL && g_module_symbol (module, "sf_open_fd", (gpointer *) &library->open_fd) &&
      g_module_symbol (module, "sf_write_short", (gpointer *) &library->write_short) &&
      g_module_symbol (module, "sf_close", (gpointer *) &library->close) &&
      g_module_symbol (module, "sf_strerror", (gpointer *) &library->strerror)) {
    g_module_make_resident (module);
    return TRUE;
  }
  g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING,
               _("FLAC needs the library libsndfile, which isn’t installed; WAV can be written without it"));
  return FALSE;
}

static gboolean
open_flac (LapAudio *audio, int rate, GError **error)
{
  SF_INFO info = { .samplerate = rate, .channels = 1, .format = SF_FORMAT_FLAC | SF_FORMAT_PCM_16 };
  LapSaving *saving = lap_output_saving (audio->output);

  if (saving == NULL) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("FLAC can’t go to standard output: expected a file"));
    return FALSE;
  }
  if (!load (&audio->library, error))
    return FALSE;
  audio->file = audio->library.open_fd (lap_saving_fd (saving), SFM_WRITE, &info, FALSE);
  if (audio->file == NULL)
    g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("the sound can’t be written: %s"),
                 audio->library.strerror (NULL));
  return audio->file != NULL;
}

static void
put (guchar **at, guint32 value, guint bytes)
{
  for (guint i = 0; i < bytes; i++)
    *(*at)++ = value >> (8 * i) & 0xff;
}

static void
put_word (guchar **at, const char *word)
{
  memcpy (*at, word, 4);
  *at += 4;
}

/* RIFF (Microsoft and IBM, Multimedia Programming Interface 1.0, 1991): everything little-endian. */
static gboolean
open_wav (LapAudio *audio, int rate, gint64 samples, GError **error)
{
  guchar header[HEADER], *at = header;
  gint64 bytes = samples * sizeof (gint16);

  if (bytes > G_MAXUINT32 - HEADER) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("it is too long for WAV, which holds 4 GiB; expected FLAC"));
    return FALSE;
  }
  put_word (&at, "RIFF");
  put (&at, bytes + HEADER - 8, 4);
  put_word (&at, "WAVE");
  put_word (&at, "fmt ");
  put (&at, 16, 4);
  put (&at, 1, 2); /* plain samples */
  put (&at, 1, 2); /* one channel */
  put (&at, rate, 4);
  put (&at, rate * sizeof (gint16), 4);
  put (&at, sizeof (gint16), 2);
  put (&at, 16, 2);
  put_word (&at, "data");
  put (&at, bytes, 4);
  return lap_output_write (audio->output, header, sizeof header, error);
}

LapAudio *
lap_audio_open (LapOutput *output, gboolean flac, int rate, gint64 samples, GError **error)
{
  LapAudio *audio = g_new0 (LapAudio, 1);

  audio->output = output;
  if (flac ? open_flac (audio, rate, error) : open_wav (audio, rate, samples, error))
    return audio;
  g_free (audio);
  return NULL;
}

gboolean
lap_audio_write (LapAudio *audio, const gint16 *samples, guint n, GError **error)
{
  if (audio->file == NULL) {
#if G_BYTE_ORDER != G_LITTLE_ENDIAN
    g_autofree gint16 *turned = g_new (gint16, n);

    for (guint i = 0; i < n; i++)
      turned[i] = GINT16_TO_LE (samples[i]);
    return lap_output_write (audio->output, turned, n * sizeof *samples, error);
#else
    return lap_output_write (audio->output, samples, n * sizeof *samples, error);
#endif
  }
  if (audio->library.write_short (audio->file, samples, n) == n)
    return TRUE;
  g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("the sound can’t be written: %s"),
               audio->library.strerror (audio->file));
  return FALSE;
}

gboolean
lap_audio_close (LapAudio *audio, GError **error)
{
  gboolean good = audio->file == NULL || audio->library.close (audio->file) == 0;

  if (!good)
    g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("the sound can’t be written"));
  g_free (audio);
  return good;
}
