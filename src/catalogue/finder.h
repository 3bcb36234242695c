/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looking for exercises by what people type. The words of every exercise — its name, as it is and translated, its
 * other names, the muscles and regions it works hard — are folded once; each letter typed then costs only comparisons.
 *
 * Always true: every word typed must begin some word of the exercise; order, case and accents don't matter, and an
 * empty text finds everything.
 */
#pragma once

#include "catalogue/catalogue.h"

G_BEGIN_DECLS

typedef struct _LapFinder LapFinder;

/* Holds @catalogue. */
LapFinder *lap_finder_new      (LapCatalogue      *catalogue);
void       lap_finder_free     (LapFinder         *finder);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFinder, lap_finder_free)

/* What is looked for; NULL for nothing in particular. */
void       lap_finder_set_text (LapFinder         *finder,
                                const char        *text);
/* Whether @exercise, which is of the catalogue, is found. */
gboolean   lap_finder_matches  (const LapFinder   *finder,
                                const LapExercise *exercise);
/* How far @exercise is from what is looked for: less is nearer, and who presses Enter means the nearest. A name that
 * begins with the text counts its length, all others are as far as can be. */
gsize      lap_finder_distance (const LapFinder   *finder,
                                const LapExercise *exercise);

G_END_DECLS
