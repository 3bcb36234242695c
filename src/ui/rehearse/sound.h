/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is heard in a rehearsal: tones, spoken names, through which output, how loud, and a test of it. What the
 * session says about the sound of its film decides: with the sound of the room nothing is heard in work; with an
 * earpiece the output is one that was chosen for it, and never the computer's own, so that the room stays quiet.
 *
 * What is missing is told in the group, and hides nothing else.
 */
#pragma once

#include "ui/document.h"
#include "ui/rehearse/player.h"
#include "ui/rehearse/scene.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_REHEARSE_SOUND (lap_rehearse_sound_get_type ())
G_DECLARE_FINAL_TYPE (LapRehearseSound, lap_rehearse_sound, LAP, REHEARSE_SOUND, AdwPreferencesGroup)

/* To be called again after each change of @document. */
void       lap_rehearse_sound_show    (LapRehearseSound *sound,
                                       LapDocument      *document);
/* What plays for @scene; NULL where nothing is to be heard or nothing can be. */
LapPlayer *lap_rehearse_sound_open    (LapRehearseSound *sound,
                                       LapScene         *scene);
/* Says what is missing; NULL for nothing. */
void       lap_rehearse_sound_trouble (LapRehearseSound *sound,
                                       const char       *text);

G_END_DECLS
