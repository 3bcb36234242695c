/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Blocks to and from a clipboard, as a small session: under its own type for other windows of the program, and as
 * text for everything else.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

void lap_score_copy  (LapScoreContext *context,
                      GdkClipboard    *clipboard,
                      GPtrArray       *blocks);
/* Puts in what the clipboard holds, after the focused block, as soon as it has come; says in one line why not, where
 * it isn't blocks. */
void lap_score_paste (LapScoreContext *context,
                      GdkClipboard    *clipboard);

G_END_DECLS
