/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Members of an exercise block as they are in one of its rounds, by their names in files. Some of them a later round may
 * have for itself (LapChange): `pace`, `option`, `sides`, `reps`, `load`, `note`. Where a block differs in a round
 * (`in-round`), what is set of these there stays there; all else is the block's. Times and words have rules of their own:
 * verbs-time.h, verbs-say.h.
 */
#pragma once

#include "edit/edit.h"
#include "model/block.h"

G_BEGIN_DECLS

/* Whether @block differs in @round, so that what is set there stays there. */
gboolean lap_round_is_own   (const LapBlock *block,
                             int             round);
/* As it holds in @round. @value is zero-filled; initialised here. */
void     lap_round_get      (const LapBlock *block,
                             int             round,
                             const char     *member,
                             GValue         *value);
/* Adds to @edits: @member becomes @value in @round, or in the block where the round doesn't differ. */
void     lap_verb_put_round (LapEdits       *edits,
                             LapBlock       *block,
                             int             round,
                             const char     *member,
                             const GValue   *value);

G_END_DECLS
