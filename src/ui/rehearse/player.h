/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plays what is heard in a rehearsal through GStreamer: one stream, fed a little ahead of time, in which each
 * tone stands at its sample. There is no timer a tone, so that a busy window moves none. Between tones the
 * stream is kept on the clock of the rehearsal, which a sound card's own clock drifts away from. What the output
 * takes to be heard is made good: a tone is heard at its moment, not sent then.
 */
#pragma once

#include "clock/sounding.h"

#include <gst/gst.h>

G_BEGIN_DECLS

typedef struct _LapPlayer LapPlayer;

/* Takes @sounding over, and @sink (floating), the output; NULL for the system's own. NULL with one line in @error
 * where a part is missing or the output doesn't open; all else works without. */
LapPlayer *lap_player_new        (LapSounding  *sounding,
                                  GstElement   *sink,
                                  GError      **error);
void       lap_player_free       (LapPlayer    *player);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapPlayer, lap_player_free)

/* 0 … 1, as loudness is heard. */
void       lap_player_set_volume (LapPlayer    *player,
                                  double        volume);
/* The names of @script are spoken from now on. FALSE with LAP_ERROR_MISSING where there is no voice. */
gboolean   lap_player_speak      (LapPlayer       *player,
                                  const LapScript *script,
                                  GError         **error);
/* @trouble is called once with one line, translated, when the output fails later on: it was pulled out, or there
 * is none and nothing is heard. */
void       lap_player_watch      (LapPlayer    *player,
                                  void        (*trouble) (const char *why, gpointer data),
                                  gpointer      data);

G_END_DECLS
