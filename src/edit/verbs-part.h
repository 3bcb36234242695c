/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people do to a part as a whole: verbs as in verbs.h. Its rounds and rests are in verbs.h and verbs-time.h, what is
 * plain to set is set by its property.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

/* A new part of @kind at @position, with one block to begin with: a talk in an opening or closing, else an exercise that
 * isn't chosen yet. *@added is the block, transfer none: it lives as long as the edits. */
LapEdits *lap_verb_add_part    (LapSession  *session,
                                guint        position,
                                LapPartKind  kind,
                                LapBlock   **added);
/* With all of its blocks. */
LapEdits *lap_verb_remove_part (LapSession  *session,
                                LapPart     *part);
/* To the place of the part before (@by −1) or after it (1); empty where there is none. */
LapEdits *lap_verb_move_part   (LapSession  *session,
                                LapPart     *part,
                                int          by);
/* Adds to @edits: @part is run like that. At one's own pace it gets a length where it has none: the one that its blocks
 * and rounds had. */
void      lap_verb_put_run     (LapEdits    *edits,
                                LapPart     *part,
                                LapRun       run);

G_END_DECLS
