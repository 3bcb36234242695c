/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The score: labels, lanes one under the other, all over one axis, and the overview below. Turns the wheel and pinches
 * into zoom and scroll about the pointer.
 */
#pragma once

#include "ui/score/blocks.h"

G_BEGIN_DECLS

#define LAP_TYPE_SCORE_VIEW (lap_score_view_get_type ())
G_DECLARE_FINAL_TYPE (LapScoreView, lap_score_view, LAP, SCORE_VIEW, GtkWidget)

/* Fills an empty view with the lanes of @context. Once, before it is shown. */
void           lap_score_view_set_context (LapScoreView    *view,
                                           LapScoreContext *context);
LapBlocksLane *lap_score_view_blocks      (LapScoreView    *view);
/* Lane @n from above, NULL beyond the last; hidden ones count. */
const LapLaneKind *lap_score_view_nth (LapScoreView    *view,
                                       guint            n);
/* Shows or hides the lane @id, or moves it up (-1) or down; the choice is kept. The clock stays above all. */
void           lap_score_view_show     (LapScoreView    *view,
                                        const char      *id,
                                        gboolean         shown);
gboolean       lap_score_view_is_shown (LapScoreView    *view,
                                        const char      *id);
void           lap_score_view_move     (LapScoreView    *view,
                                        const char      *id,
                                        int              by);
/* Leaves out what explains the lanes. */
void           lap_score_view_set_narrow  (LapScoreView    *view,
                                           gboolean         narrow);
/* Zooms by a factor about the selected block, else about the middle. */
void           lap_score_view_zoom        (LapScoreView    *view,
                                           double           factor);

G_END_DECLS
