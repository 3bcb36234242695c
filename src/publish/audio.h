/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sound file in the making: mono, 16 bits. WAV has a header of 44 bytes that says how much follows, so the
 * number of samples is given first; FLAC is made by libsndfile, which is loaded when it is needed.
 *
 * Calling order: open, writes of as many samples in all, close (once, whatever went wrong).
 */
#pragma once

#include "publish/output.h"

G_BEGIN_DECLS

typedef struct _LapAudio LapAudio;

/* NULL with LAP_ERROR_MISSING without libsndfile; LAP_ERROR_USAGE where WAV can't hold so much, or FLAC is to go
 * to standard output. */
LapAudio *lap_audio_open  (LapOutput    *output,
                           gboolean      flac,
                           int           rate,
                           gint64        samples,
                           GError      **error);
gboolean  lap_audio_write (LapAudio     *audio,
                           const gint16 *samples,
                           guint         n,
                           GError      **error);
/* FALSE where the end couldn't be written. Frees @sound. */
gboolean  lap_audio_close (LapAudio     *audio,
                           GError      **error);

G_END_DECLS
