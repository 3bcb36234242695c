/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where something that is held over the score would go: between two blocks, or onto one.
 */
#pragma once

#include "place/score.h"

G_BEGIN_DECLS

typedef struct {
  guint  part;     /* G_MAXUINT where the session has none */
  guint  position; /* before this block of the part, or at its end */
  guint  round;    /* the one it was held over */
  double second;   /* where the caret stands */
  guint  onto;     /* the box it would replace, or LAP_NO_BOX */
} LapDropPlace;

/* The place at @x of the view. The halves of a block lead before and after it; with @may_replace its middle half is the
 * block itself. Beyond the end it is the first part there that is empty, else the end of the last. */
LapDropPlace lap_score_drop_place (const LapScore *score,
                                   const LapAxis  *axis,
                                   double          x,
                                   gboolean        may_replace);

G_END_DECLS
