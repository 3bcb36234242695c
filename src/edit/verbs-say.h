/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words of an exercise block, changed member by member. What a block doesn't say itself is its exercise's, so an
 * empty text takes the block's own words away.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

/* @texts by LAP_SAY_SETUP … LAP_SAY_HARDER, NULL for what stays as it is. Cues stand one a line; in the others a new
 * line is a space. Empty when nothing would change. */
LapEdits *lap_verb_set_words (LapBlock          *block,
                              const char *const  texts[LAP_N_SAY],
                              LapCatalogue      *catalogue);

G_END_DECLS
