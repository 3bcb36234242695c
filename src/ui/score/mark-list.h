/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a mark for several warnings stands for, as a list that opens at the mark: choosing a row chooses its warning, as
 * a click on a mark of its own would.
 */
#pragma once

#include "place/marks.h"
#include "ui/score/context.h"

G_BEGIN_DECLS

/* A popover about the warnings of @mark, each a row, @width px wide; whoever makes it gives it a parent. */
GtkWidget *lap_mark_list_new (LapScoreContext *context,
                              const LapMarks  *marks,
                              guint            mark,
                              int              width);

G_END_DECLS
