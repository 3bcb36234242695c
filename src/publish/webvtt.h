/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A WebVTT file in the making (W3C WebVTT: The Web Video Text Tracks Format): the head once, then cues.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* The signature, and @note for people who open the file, which may be NULL. */
GString *lap_webvtt_new (const char *note);

/* A cue from @start to @end, in seconds from 0 on, with @id in front. A line feed in @text begins a new line; an
 * empty line, which would end the cue, is left out, and what has a meaning in WebVTT is written as a character
 * reference. */
void     lap_webvtt_add (GString    *vtt,
                         guint       id,
                         double      start,
                         double      end,
                         const char *text);

G_END_DECLS
