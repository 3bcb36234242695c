/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The plan with a pane on either side. Where the width doesn't do for all of them a pane is folded: hidden until it is
 * asked for, and then over the plan. The pane at the end folds before the one at the start, and where both are folded
 * one at most is shown. Whether a pane is shown beside the plan outlives the time that it is folded.
 *
 * What is folded follows from the width alone and is settled while places are given, without a change of any child;
 * "folded" tells of it afterwards. Children are added as "start", "content" and "end". Escape, or a press beside it,
 * hides a pane that lies over the plan.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum { LAP_DESK_START, LAP_DESK_END, LAP_DESK_SIDES } LapDeskSide;

#define LAP_TYPE_DESK (lap_desk_get_type ())
G_DECLARE_FINAL_TYPE (LapDesk, lap_desk, LAP, DESK, GtkWidget)

/* Also properties, "show-start" and "show-end". */
gboolean lap_desk_get_shown (LapDesk     *desk,
                             LapDeskSide  side);
void     lap_desk_set_shown (LapDesk     *desk,
                             LapDeskSide  side,
                             gboolean     shown);
gboolean lap_desk_is_folded (LapDesk     *desk,
                             LapDeskSide  side);

G_END_DECLS
