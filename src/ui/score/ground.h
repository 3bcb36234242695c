/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The ground of a block, the signature of the score: a body for the work and a hatched tail for the rest, to scale.
 * Painted once for each look and size and shared, since most blocks of a session are alike: strokes are most of what a
 * frame costs. Main thread only.
 */
#pragma once

#include "place/score.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef struct {
  int      kind;     /* LapBoxKind */
  gboolean pale;     /* of a later round */
  gboolean hollow;   /* of an exercise that isn't chosen, or that nobody knows */
  gboolean mirrored; /* time runs from right to left */
  int      width;    /* px of body and tail */
  int      body;     /* px of the body */
  int      height;
  int      scale;    /* device px in one */
} LapGround;

/* At the left edge, @top px down, in the colours of the style that is on. */
void lap_ground_draw (GtkSnapshot     *snapshot,
                      const LapGround *ground,
                      int              top);
/* The ground where nothing stands yet: a dashed line, @width px long. */
void lap_ground_draw_none (GtkSnapshot *snapshot,
                           int          width,
                           int          top,
                           int          height);

G_END_DECLS
