/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plays what is heard in a rehearsal through GStreamer: one stream, fed a little ahead of time, in which each
 * tone stands at its sample. There is no timer a tone, so that a busy window moves none. Between tones the
 * stream is kept on the clock of the rehearsal, which a sound card's own clock drifts away from.
 */
#pragma once

#include "clock/sounding.h"

G_BEGIN_DECLS

typedef struct _LapPlayer LapPlayer;

/* Takes @sounding over. @sink is the end of a GStreamer pipeline, NULL for the system's output. NULL with one
 * line in @error where a part is missing or the output doesn't open; all else works without. */
LapPlayer *lap_player_new        (LapSounding  *sounding,
                                  const char   *sink,
                                  GError      **error);
void       lap_player_free       (LapPlayer    *player);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapPlayer, lap_player_free)

/* 0 … 1, as loudness is heard. */
void       lap_player_set_volume (LapPlayer    *player,
                                  double        volume);

G_END_DECLS
