/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The tones as a sound file on the clock of the film, mono, 16 bits, 48 kHz as films have it: WAV written here,
 * FLAC through libsndfile. Written a second at a time, so that its length costs no memory. Names are spoken by
 * espeak-ng where that is asked for.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

/* @suffix is "wav" or "flac". LAP_ERROR_MISSING where libsndfile or espeak-ng is needed and isn't there. */
gboolean lap_tones_write (const LapPublication *what,
                          const char           *suffix,
                          LapOutput            *output,
                          GError              **error);

G_END_DECLS
