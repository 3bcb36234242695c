/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Captions of the script: at most two lines of at most 37 characters, each there for as long as it is said and
 * long enough to be read, three words a second (BBC Subtitle Guidelines: 160-180 words a minute) where the next
 * line leaves the time. Broken at the ends of sentences and at commas before elsewhere.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

#define LAP_CAPTION_LINE 37 /* characters */

gboolean   lap_captions_write (const LapPublication *what,
                               const char           *suffix,
                               LapOutput            *output,
                               GError              **error);

/* @text in pieces of one or two lines, a line feed between the two. */
GPtrArray *lap_caption_break  (const char           *text);

G_END_DECLS
