/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Verbs for several blocks at once, which may stand in several parts: each is one group with one name. Blocks are
 * given in the order of parts and places, as they stand in the session. What holds for one holds here: all that is a
 * block's own goes with it, and in-round changes beyond the rounds of where it goes stay behind.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

/* A place in a session: before block @position of @part, or at its end. @part NULL is a new main part at the end. */
typedef struct {
  LapPart *part;
  guint    position;
} LapSpot;

/* "Squat", or "3 blocks". Translated; transfer full. */
char      *lap_blocks_title       (GPtrArray    *blocks,
                                   LapCatalogue *catalogue);
/* Copies, of LapBlock without an owner. Transfer full. */
GPtrArray *lap_blocks_copy        (GPtrArray    *blocks);

/* Where one step forward (@by 1) or back (-1) leads @blocks, which go together: past their neighbour, or over the edge
 * of the part into the next one. FALSE where there is nowhere to go. */
gboolean   lap_blocks_step        (LapSession   *session,
                                   GPtrArray    *blocks,
                                   int           by,
                                   LapSpot      *spot);
LapEdits  *lap_verb_move_blocks   (LapSession   *session,
                                   GPtrArray    *blocks,
                                   const LapSpot *spot,
                                   LapCatalogue *catalogue);
LapEdits  *lap_verb_remove_blocks (GPtrArray    *blocks,
                                   LapCatalogue *catalogue);
/* Puts @blocks, which belong to nobody yet, in; @format says what that is called and takes their title. */
LapEdits  *lap_verb_insert_blocks (LapSession   *session,
                                   const LapSpot *spot,
                                   GPtrArray    *blocks,
                                   const char   *format,
                                   LapCatalogue *catalogue);

/* Adds to @edits: @own, exercises that came along with @blocks (may be NULL), become the session's where @catalogue
 * doesn't know them. */
void       lap_verb_take_own      (LapEdits     *edits,
                                   LapSession   *session,
                                   GPtrArray    *own,
                                   LapCatalogue *catalogue);

/* Replaces the exercise as it is in @round: in that round's change where it has one of its own. */
LapEdits  *lap_verb_set_exercise_in (LapBlock   *block,
                                   int           round,
                                   const char   *id,
                                   LapCatalogue *catalogue);
/* No edits yet, called by @format, which has the block's title and then the round. */
LapEdits  *lap_verb_named_in      (const char   *format,
                                   LapBlock     *block,
                                   int           round,
                                   LapCatalogue *catalogue);
/* From now on @block differs in @round (2 or more): exercise, work and rest are written down for it, so that a change
 * there stays there and a change of the block passes it by. */
LapEdits  *lap_verb_only_here     (LapBlock     *block,
                                   int           round,
                                   LapCatalogue *catalogue);
/* In @round as in round 1 again. */
LapEdits  *lap_verb_same_again    (LapBlock     *block,
                                   int           round,
                                   LapCatalogue *catalogue);

G_END_DECLS
