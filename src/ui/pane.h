/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pane of the selected block: what it is, its work and rest; for a talk or pause its words and seconds. Every
 * edit is one step of the history. Shows the block itself: what a later round does differently isn't edited here.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_PANE (lap_pane_get_type ())
G_DECLARE_FINAL_TYPE (LapPane, lap_pane, LAP, PANE, GtkWidget)

void lap_pane_set_context (LapPane         *pane,
                           LapScoreContext *context);
/* Applies what has been typed and isn't an edit yet: before saving or closing. */
void lap_pane_commit      (LapPane         *pane);
/* Opens what can be chosen for the block: that popover, or NULL where nothing can be, as for a talk. Transfer none. */
GtkWidget *lap_pane_choose (LapPane        *pane);

G_END_DECLS
