/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people do to a plan, as edits: each verb returns a named group (transfer full) and changes nothing. The
 * rules that hold everywhere are kept here once: fewer rounds take the in-round changes beyond them along, a
 * block moves and copies with all that is its own.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

/* What a user would call @block: its exercise's name in @catalogue, "Talk", "Pause". Translated; transfer full. */
char     *lap_block_title      (LapBlock *block, LapCatalogue *catalogue);

LapEdits *lap_verb_add_block   (LapPart *part, guint position, LapBlock *block, LapCatalogue *catalogue);
/* To @to of @target, counted before the move. In the part itself or in another; a move to another part leaves
 * in-round changes beyond its rounds behind. Empty when nothing would move. */
LapEdits *lap_verb_move        (LapPart *part, guint from, LapPart *target, guint to, LapCatalogue *catalogue);
LapEdits *lap_verb_swap        (LapPart *part, guint a, guint b, LapCatalogue *catalogue);

LapEdits *lap_verb_set_work    (LapBlock *block, int seconds, LapCatalogue *catalogue);
LapEdits *lap_verb_set_rest    (LapBlock *block, int seconds, LapCatalogue *catalogue);
LapEdits *lap_verb_set_seconds (LapBlock *block, int seconds, LapCatalogue *catalogue);
LapEdits *lap_verb_set_exercise (LapBlock *block, const char *id, LapCatalogue *catalogue);
LapEdits *lap_verb_set_option  (LapBlock *block, LapOption option, LapCatalogue *catalogue);
LapEdits *lap_verb_set_rounds  (LapPart *part, int rounds);

/* Adds to @edits: the in-round changes of @block beyond @rounds go. */
void      lap_verb_keep_within (LapEdits *edits, LapBlock *block, int rounds);

/* Keeps @check quiet at @holder (a session, part or block), or lets it speak again. */
LapEdits *lap_verb_fine        (LapObject *holder, const char *check, gboolean fine);

G_END_DECLS
