/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What else there is to say of an exercise block, below its work and rest: pace, sides, option, fixed, repetitions,
 * tempo, load, partner, note; the words to say with the seconds they need; what later rounds do differently; whom to
 * spare. Where the round that is shown differs, what is changed here stays in it. Pace, sides, option, fixed and partner
 * change all blocks that are selected. Each change is one step of the history.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_PANE_MORE (lap_pane_more_get_type ())
G_DECLARE_FINAL_TYPE (LapPaneMore, lap_pane_more, LAP, PANE_MORE, GtkWidget)

/* Shows the focused block of @context; nothing where that isn't an exercise. */
void lap_pane_more_show   (LapPaneMore     *more,
                           LapScoreContext *context);
/* Applies what has been typed and isn't an edit yet. */
void lap_pane_more_commit (LapPaneMore     *more);

G_END_DECLS
