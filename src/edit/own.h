/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Exercises of one's own, made from one that is there: a session keeps them. The figure is borrowed from the exercise it
 * was made from; everything else is a copy that then goes its own way.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

/* Gives @session an exercise called @name, otherwise like @base, which is of @catalogue. *@id is its id, transfer full:
 * made of the name, and one that @catalogue doesn't know. */
LapEdits *lap_verb_make_own   (LapSession        *session,
                               const LapExercise *base,
                               const char        *name,
                               LapCatalogue      *catalogue,
                               char             **id);

/* Gives @own, which is one of the session's, another @value: of @field of the record of exercises, or of that of their
 * words (lap_say_record). Another kind of move brings its energy along. @label as of lap_edits_new(). NULL where a file
 * could not say that: LAP_ERROR_INVALID. */
LapEdits *lap_verb_change_own (LapSession        *session,
                               const LapExercise *own,
                               const LapField    *field,
                               const GValue      *value,
                               const char        *label,
                               GError           **error);

/* What @own asks of a joint or state: 0 nothing, 1 worth a mention, 2 really loads it. */
LapEdits *lap_verb_set_own_care (LapSession        *session,
                                 const LapExercise *own,
                                 LapCareWord        word,
                                 int                load,
                                 const char        *label);

/* Lends @own the figure of @other. */
LapEdits *lap_verb_borrow_figure (LapSession        *session,
                                  const LapExercise *own,
                                  const LapExercise *other);

/* Takes @own out of the session. NULL where a block uses it: LAP_ERROR_INVALID. */
LapEdits *lap_verb_remove_own (LapSession        *session,
                               const LapExercise *own,
                               GError           **error);

G_END_DECLS
