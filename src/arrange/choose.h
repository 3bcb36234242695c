/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Choosing exercises: filling what isn't chosen yet, within kit, space, quiet, level and care. Each choice goes to
 * the regions that have had least (those in focus twice as readily), keeps clear of its neighbours' muscles, and
 * takes what isn't in the part yet. Deterministic: chance comes from a seed.
 */
#pragma once

#include "arrange/pool.h"
#include "edit/edit.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef struct {
  LapCatalogue *catalogue;
  LapWishes     wishes;
  guint32       focus;     /* regions */
  guint32       seed;
  int           seconds[LAP_N_REGIONS]; /* work that each region has had; grows with each choice */
  GHashTable   *taken;     /* ids that are in the part */
} LapChoice;

/* Sets up @choice for parts of @kind; lap_choice_clear() when done. */
void         lap_choice_init  (LapChoice        *choice,
                               LapCatalogue     *catalogue,
                               const LapSession *session,
                               LapPartKind       kind,
                               guint32           seed);
void         lap_choice_clear (LapChoice        *choice);

/* The best exercise to stand between @before and @after (either may be NULL) for @work seconds, or NULL where the
 * wishes leave none. It counts as taken from then on. */
LapExercise *lap_choice_next  (LapChoice        *choice,
                               const LapExercise *before,
                               const LapExercise *after,
                               int                work);

/* The edits that fill all blocks without an exercise. *@left (may be NULL) is how many nothing was found for. */
LapEdits    *lap_choose       (const LapTimeline *timeline,
                               guint32            seed,
                               guint             *left);

G_END_DECLS
