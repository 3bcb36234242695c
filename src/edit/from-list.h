/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A session from a list that somebody wrote: one exercise a line, by any of its names, with "40/20" behind it where work
 * and rest are said. Numbers and bullets in front are passed over. A line such as "Warm-up:" begins that part; without
 * one, all is the main part. What isn't known becomes a block that isn't chosen yet, with the line as its note.
 */
#pragma once

#include "model/session.h"

G_BEGIN_DECLS

typedef struct {
  guint       line;    /* from 1 */
  char       *text;    /* without number, bullet and seconds */
  const char *nearest; /* the name of the nearest exercise, translated, or NULL */
} LapUnknownLine;

/* Seconds that aren't said are those of the line before, at first 40/20. @unknown (GArray of LapUnknownLine, transfer
 * full) lists what isn't known, in the order of the lines; it may be NULL. Transfer full. */
LapSession *lap_session_from_list (const char    *title,
                                   const char    *text,
                                   LapCatalogue  *catalogue,
                                   GArray       **unknown);

/* "Line 3, “Burpeez”, isn’t known; it may be Burpee." Translated; transfer full. */
char       *lap_unknown_line_told (const LapUnknownLine *line);

G_END_DECLS
