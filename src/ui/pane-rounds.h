/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What later rounds of an exercise block do otherwise than round 1, one line a round with a way back; and in a later
 * round that is as round 1 a way to let it differ. Hidden where there is nothing of either. Each is one step of the
 * history.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_PANE_ROUNDS (lap_pane_rounds_get_type ())
G_DECLARE_FINAL_TYPE (LapPaneRounds, lap_pane_rounds, LAP, PANE_ROUNDS, GtkBox)

/* Shows the focused block of @context, an exercise. FALSE where the focus was here and nothing is left to take it. */
gboolean lap_pane_rounds_show (LapPaneRounds   *rounds,
                               LapScoreContext *context);

G_END_DECLS
