/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes what a document is published as, in a worker, with its progress on the screen and a way to give it up. The
 * formats are the rows of publish/formats.h.
 */
#pragma once

#include "publish/formats.h"
#include "ui/window.h"

G_BEGIN_DECLS

/* Writes the document of @window to @path, and says how that went. @how may be NULL for nothing special; what is
 * published of it is left open. Its words are copied. */
void lap_publish_to (LapWindow            *window,
                     const LapFormat      *format,
                     const LapPublication *how,
                     const char           *path);

G_END_DECLS
