/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is heard in a rehearsal, as one stream of samples: the tones of the plan where the clock will be,
 * three short ones before a count-in is over, and one at 0:00, by which picture and sound are put together.
 * Whoever plays asks for the samples of a moment ahead; each tone is where the clock puts it, to the sample.
 *
 * Names are spoken when it was told what each sounds like: lap_sounding_speak(), then lap_sounding_teach() for
 * the texts of lap_sounding_names() in any order, at any time. One that it wasn't told yet isn't heard.
 */
#pragma once

#include "clock/names.h"
#include "clock/rehearsal.h"

G_BEGIN_DECLS

#define LAP_SOUNDING_RATE  48000 /* samples a second */
#define LAP_SOUNDING_CHUNK 480   /* samples asked for at a time: 10 ms, whole microseconds */

typedef struct _LapSounding LapSounding;

/* @live: the sound of the room is filmed, and nothing is heard while people work. */
LapSounding *lap_sounding_new  (LapRehearsal *rehearsal,
                                LapTimeline  *timeline,
                                gboolean      live);
void         lap_sounding_free (LapSounding  *sounding);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSounding, lap_sounding_free)

/* The chunk that begins at @time of the rehearsal's source. */
void         lap_sounding_fill (LapSounding  *sounding,
                                gint64        time,
                                gint16       *out);

/* No tone is heard, names are. */
void            lap_sounding_mute  (LapSounding     *sounding);
/* From now on the names of @script are spoken. */
void            lap_sounding_speak (LapSounding     *sounding,
                                    const LapScript *script);
/* NULL before. */
const LapNames *lap_sounding_names (LapSounding     *sounding);
/* Takes @spoken over. */
void            lap_sounding_teach (LapSounding     *sounding,
                                    const char      *text,
                                    LapSpoken       *spoken);

G_END_DECLS
