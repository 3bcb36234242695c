/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The overview: the whole session on one thin strip, and on it what the score has in view, to travel by. The strip
 * is an axis of its own that always shows everything at one scale; what is drawn on it and what a press hits are
 * asked for here.
 *
 * Always true: the window lies on the strip and is wide enough to be grabbed, also where the score shows next to
 * nothing of a long session.
 */
#pragma once

#include "place/score.h"

G_BEGIN_DECLS

#define LAP_WINDOW_LEAST 12 /* px of the window, as far as the strip has them */

typedef struct {
  int x, width;
} LapOverviewWindow;

typedef enum { LAP_OVERVIEW_BEFORE, LAP_OVERVIEW_WINDOW, LAP_OVERVIEW_AFTER } LapOverviewHit;

/* The axis of a strip of @width px. Transfer full. */
LapAxis          *lap_overview_axis   (const LapScore *score,
                                       double          width,
                                       gboolean        mirrored);
/* What @axis, the score's, has in view: whole px of @strip. */
LapOverviewWindow lap_overview_window (const LapAxis  *strip,
                                       const LapAxis  *axis);
/* What is at @x of the strip; before and after are meant in time. */
LapOverviewHit    lap_overview_hit    (const LapAxis  *strip,
                                       const LapAxis  *axis,
                                       double          x);
/* The inverse: the offset of @axis whose view begins with what is at @x of the strip, held to the content. */
double            lap_overview_offset (const LapAxis  *strip,
                                       const LapAxis  *axis,
                                       double          x);
/* And the one whose middle it is. */
double            lap_overview_centre (const LapAxis  *strip,
                                       const LapAxis  *axis,
                                       double          x);

G_END_DECLS
