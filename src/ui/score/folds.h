/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Parts and rounds, open or folded on the one axis. A piece of the axis is a round of a part that has several, else
 * a part. What is folded stays so over edits, since parts and rounds are known by what they are, not where they stand.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

typedef struct {
  guint part;
  int   round; /* 0: the whole part */
} LapPiece;

/* Lays the pieces of the score on the axis; for the context, after each change of the plan. */
void      lap_folds_lay        (LapScoreContext *context);
/* The piece of the axis, or NULL beyond the last. */
const LapPiece *lap_folds_nth  (LapScoreContext *context,
                                guint            piece);
/* Opens @round (0: all rounds) of @part and folds the rest; once more, and all is open. With @keep nothing else
 * changes: what was open is folded, unless nothing would stay open. */
void      lap_folds_open       (LapScoreContext *context,
                                guint            part,
                                int              round,
                                gboolean         keep);
/* All to one scale. */
void      lap_folds_unfold     (LapScoreContext *context);
gboolean  lap_folds_any        (LapScoreContext *context);
/* Zooms to what is selected, or to the round it is in. FALSE without a selection. */
gboolean  lap_folds_fit        (LapScoreContext *context,
                                gboolean         round);
/* What a folded piece holds: "Same as round 1", "Round 2, changed: Squat jump", "6 blocks, 4:00". Transfer full. */
char     *lap_folds_words      (LapScoreContext *context,
                                guint            piece);

G_END_DECLS
