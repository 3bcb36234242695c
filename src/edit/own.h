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

/* Calls exercise @own, which is one of the session's, by another @name. */
LapEdits *lap_verb_rename_own (LapSession        *session,
                               const LapExercise *own,
                               const char        *name);

G_END_DECLS
