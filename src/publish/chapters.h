/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chapters: one a part, and in the main parts one an exercise a round. Talks and pauses inside a main part belong
 * to the chapter before, and so does a chapter of less than ten seconds (common practice: players drop such
 * ones).
 *
 * Always true: the first starts at 0, each lasts to the start of the next, the last to the end of the film.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

typedef struct {
  int   start; /* seconds on the session clock */
  int   end;
  char *title; /* translated */
} LapChapter;

/* LapChapter, in the order of their time; transfer full. */
GArray  *lap_chapters_of        (const LapTimeline    *timeline);

gboolean lap_chapters_write     (const LapPublication *what,
                                 const char           *suffix,
                                 LapOutput            *output,
                                 GError              **error);
/* "0:00 Opening": a line a chapter, as people paste them below a film. */
gboolean lap_chapter_list_write (const LapPublication *what,
                                 const char           *suffix,
                                 LapOutput            *output,
                                 GError              **error);
/* The same lines added to @text. */
gboolean lap_chapter_list_add   (GString              *text,
                                 const LapPublication *what,
                                 GError              **error);

G_END_DECLS
