/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names spoken by espeak-ng, one after the other and only while they are needed, so that a long session takes no
 * more memory than a short one.
 */
#pragma once

#include "clock/tones.h"

G_BEGIN_DECLS

typedef struct _LapSpeech LapSpeech;

/* The names of the script, in the language of the locale, or English where espeak-ng doesn't speak it. Where a
 * tone sounds a name waits for its end. NULL with LAP_ERROR_MISSING where espeak-ng isn't there. */
LapSpeech *lap_speech_new  (LapTimeline    *timeline,
                            const LapTones *tones,
                            int             rate,
                            GError        **error);
void       lap_speech_free (LapSpeech      *speech);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSpeech, lap_speech_free)

/* Adds what is spoken in the @n samples from @from on, counted from second 0 of the session, to @out. Only
 * forwards. */
gboolean   lap_speech_mix  (LapSpeech      *speech,
                            gint64          from,
                            guint           n,
                            gint16         *out,
                            GError        **error);

G_END_DECLS
