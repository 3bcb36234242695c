/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A made-up face for layouts: every letter is 0.6 em wide, a capital 0.7 em high. And sessions from a few words.
 */
#pragma once

#include "place/page.h"
#include "place/paper.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

const LapMeasure *face_measure     (void);

/* A session of @n exercises of one main part with members of the part and of each block as JSON text: "" or
 * "\"rounds\": 2,". The exercises are those of the program. */
LapTimeline      *face_timeline    (guint       n,
                                    const char *part,
                                    const char *block);
/* A whole file; own exercises and all. */
LapTimeline      *face_from_json   (const char *json);

/* Fails where a mark reaches out of its page, or two lines of text or a text and a figure lie over each other. */
void              face_check_pages (const LapPages *pages);

/* All text in reading order, lines joined by a blank. */
char             *face_text        (const LapPages *pages);

G_END_DECLS
