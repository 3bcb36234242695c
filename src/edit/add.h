/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a new exercise goes and what it starts with: it takes its work, rest and pace from the exercise beside it, so
 * that a plan in a steady beat keeps it.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

/* A new block of exercise @id, NULL for one that isn't chosen yet, as it starts at @position of @part: timed like the
 * exercise before it, else like the first one after it, else as is usual for its kind of part. */
LapBlock *lap_block_for_place    (LapPart        *part,
                                  guint           position,
                                  const char     *id);

/* Adds exercise @id (NULL: not chosen yet) after @after; where that is NULL, at the end of the part that exercise is
 * for, which is made where there is none. *@added is the new block, transfer none: it lives as long as the edits. */
LapEdits *lap_verb_add_exercise  (LapSession     *session,
                                  LapBlock       *after,
                                  const char     *id,
                                  LapCatalogue   *catalogue,
                                  LapBlock      **added);

G_END_DECLS
