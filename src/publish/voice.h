/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The voice of espeak-ng, which says one short text at a time. Each time the program is run; whoever must not wait
 * asks in a thread.
 */
#pragma once

#include "clock/names.h"

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct _LapVoice LapVoice;

/* Speaks the language of the locale, or English where espeak-ng doesn't know it, at @rate samples a second. NULL
 * with LAP_ERROR_MISSING where espeak-ng isn't there. */
LapVoice  *lap_voice_new  (int           rate,
                           GError      **error);
void       lap_voice_free (LapVoice     *voice);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapVoice, lap_voice_free)

/* As loud whatever is said. NULL with LAP_ERROR_MISSING where it can't be said, or G_IO_ERROR_CANCELLED. Several
 * threads may ask at a time. */
LapSpoken *lap_voice_say  (const LapVoice *voice,
                           const char     *text,
                           GCancellable   *cancellable,
                           GError        **error);

G_END_DECLS
