/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The numbered marks of warnings on lanes: which lane shows which trouble, how marks are painted, what they say.
 */
#pragma once

#include "place/marks.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* px of a mark beside text whose lines take @line. */
int       lap_marks_size  (int               line);
/* The marks of the lane @id; all of them on the ruler. */
LapMarks *lap_marks_of    (const LapCheckup *checkup,
                           const LapAxis    *axis,
                           int               line,
                           const char       *id);
/* Paints @mark with its middle at @y, its number in the type of @layout; of several the number of the first, and how
 * many more there are, on the side where time goes to. */
void      lap_marks_paint (cairo_t          *cr,
                           const LapCheckup *checkup,
                           const LapMarkPlace *mark,
                           int               size,
                           int               y,
                           PangoLayout      *layout,
                           gboolean          mirrored);
/* The words of its warnings, a line each. Transfer full. */
char     *lap_marks_words (const LapCheckup *checkup,
                           const LapMarks   *marks,
                           guint             mark);
/* Whether @id is a check that lane @lane shows. */
gboolean  lap_marks_shows (const char       *lane,
                           const char       *id);
/* Whether it is shown nowhere but on the ruler, which shows all. */
gboolean  lap_marks_only_ruler (const char  *id);

G_END_DECLS
