/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The overlay on the clock of the film: a folder with a transparent PNG for each picture, `timing.csv` and
 * `frames.ffconcat`, which say when each is shown; or a film with alpha and a frame for each change, made by
 * ffmpeg: QuickTime holds the PNGs as they are, WebM is VP9.
 *
 * The list begins at 0 of the film and has no gaps: where there is nothing to show the picture is empty. What
 * looks the same is drawn and encoded once.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

/* @suffix is "/", "mov" or "webm". LAP_ERROR_MISSING where a film is wanted and ffmpeg isn't there. */
gboolean lap_overlay_write (const LapPublication *what,
                            const char           *suffix,
                            LapOutput            *output,
                            GError              **error);

G_END_DECLS
