/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is done to the selected blocks by keys and menus: each an action "score.…" of the blocks lane, named in one
 * table, bound in the table of shortcuts. One deed is one step of undo; what cannot be done rings the bell.
 */
#pragma once

#include "edit/verbs-blocks.h"
#include "ui/score/blocks.h"

G_BEGIN_DECLS

/* In class_init of the blocks lane. */
void lap_score_verbs_install    (GtkWidgetClass  *klass);

/* Where something new comes: after the focused block, else at the end of the last main part, or of the last. */
void lap_score_spot             (LapScoreContext *context,
                                 LapSpot         *spot);
/* Puts @blocks, which belong to nobody yet, in at @spot and selects them. */
gboolean lap_score_insert       (LapScoreContext *context,
                                 const LapSpot   *spot,
                                 GPtrArray       *blocks,
                                 const char      *format,
                                 GPtrArray       *own);

G_END_DECLS
