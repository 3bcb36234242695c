/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One block of the script: its name and clock, its words to write in, the seconds they need and have, and what helps
 * where they are too many. What is typed becomes an edit when its field is left; until then it only counts. A round
 * with other words has a row for itself, which says so and has a way back.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_SCRIPT_BLOCK (lap_script_block_get_type ())
G_DECLARE_FINAL_TYPE (LapScriptBlock, lap_script_block, LAP, SCRIPT_BLOCK, GtkBox)

/* Of an exercise or a talk; in @round alone, or 1 for all that have no row. Empty until it is shown. */
GtkWidget *lap_script_block_new    (LapScoreContext *context,
                                    LapBlock        *block,
                                    int              round);
LapBlock  *lap_script_block_block  (LapScriptBlock  *row);
int        lap_script_block_round  (LapScriptBlock  *row);
/* Whether what @task says in @round is shown in a row of its own, beside that of @first, the same block's. */
gboolean   lap_script_block_is_apart (const LapTask *first,
                                    const LapTask   *task,
                                    int              round);
/* As the plan is now: at its first turn, or, where it is a talk, the first of its own. G_MAXUINT for none. */
void       lap_script_block_show   (LapScriptBlock  *row,
                                    guint            index);
/* What has been typed and isn't an edit yet. */
void       lap_script_block_commit (LapScriptBlock  *row);
/* Makes the remedies of one warning; FALSE when all are there. */
gboolean   lap_script_block_fill   (LapScriptBlock  *row);

G_END_DECLS
