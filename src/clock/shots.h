/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A session cut into what is said and done in one go: a shot is the rest, the talk and the pause before a
 * block with the block's work behind it, all its sets and sides. It is what a rehearsal goes back to and what
 * a camera takes again.
 *
 * Always true: shots touch, start at 0 and end at the length of the timeline; each but the last has a turn,
 * the last only where nothing comes after the last work. Immutable once made.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

#define LAP_NO_TURN G_MAXUINT32

typedef struct {
  int     start; /* of the rest before, or of the work where there is none */
  int     work;  /* where the work starts; without a turn, the end */
  int     end;
  guint32 turn;  /* the first turn of it, or LAP_NO_TURN behind the last */
} LapShot;

typedef struct {
  guint    n;
  LapShot *shots;
} LapShots;

LapShots *lap_shots_new  (const LapTimeline *timeline);
void      lap_shots_free (LapShots          *shots);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapShots, lap_shots_free)

/* The shot that @second is in, the last from its end on. There is one unless the session is empty. */
guint     lap_shots_find (const LapShots    *shots,
                          int                second);

G_END_DECLS
