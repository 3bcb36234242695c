/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Has the names of a rehearsal said ahead, one after the other in the background, in the order of the plan. A name
 * that can't be said isn't heard, nor one that is wanted before its turn came.
 */
#pragma once

#include "clock/sounding.h"
#include "publish/voice.h"

G_BEGIN_DECLS

typedef struct _LapSpeaker LapSpeaker;

/* Teaches @sounding, which must outlive it, the names of @script. NULL with LAP_ERROR_MISSING without a voice. */
LapSpeaker *lap_speaker_new  (LapSounding     *sounding,
                              const LapScript *script,
                              GError         **error);
void        lap_speaker_free (LapSpeaker      *speaker);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSpeaker, lap_speaker_free)

G_END_DECLS
