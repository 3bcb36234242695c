/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words of an exercise block, changed member by member. What a block doesn't say itself is its exercise's, so an
 * empty text takes the block's own words away.
 *
 * A round in which a block differs (`in-round`) has words for itself: a change there stays there. All other rounds
 * share the block's.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

/* The words in @round. @texts by LAP_SAY_SETUP … LAP_SAY_HARDER, NULL for what stays as it is. Cues stand one a line;
 * in the others a new line is a space. Empty when nothing would change. */
LapEdits *lap_verb_set_words  (LapBlock          *block,
                               int                round,
                               const char *const  texts[LAP_N_SAY],
                               LapCatalogue      *catalogue);
/* Adds to @edits: all words in @round become @say, NULL for the exercise's. */
void      lap_verb_put_words  (LapEdits          *edits,
                               LapBlock          *block,
                               int                round,
                               const LapSay      *say);
/* From now on @block has words of its own in @round (2 or more), to begin with the ones it has. */
LapEdits *lap_verb_own_words  (LapBlock          *block,
                               int                round,
                               LapCatalogue      *catalogue);
/* And back: what else differs in @round stays. */
LapEdits *lap_verb_same_words (LapBlock          *block,
                               int                round,
                               LapCatalogue      *catalogue);
gboolean  lap_has_own_words   (const LapBlock    *block,
                               int                round);

G_END_DECLS
