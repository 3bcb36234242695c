/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A part as people write it down: "40/20 x 10 x 2" is 40 seconds of work, 20 of rest, ten exercises, two rounds. What is
 * left out stays as it is.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

typedef struct {
  int work;   /* seconds; 0 = not said */
  int rest;   /* seconds, -1 = not said */
  int blocks; /* exercises in a round; 0 = not said */
  int rounds; /* 0 = not said */
} LapShape;

/* Reads "40/20 x 10 x 2", also with × or *, without spaces, or with less: "40/20", "45 x 8". FALSE with one line in
 * @error that says what was expected (LAP_ERROR_INVALID). */
gboolean  lap_shape_parse   (const char      *text,
                             LapShape        *shape,
                             GError         **error);

/* How @part would be written, as far as its exercises agree: "40/20 × 10 × 2". Transfer full. */
char     *lap_shape_of      (LapPart         *part);

/* Gives every exercise of @part the work and rest, in later rounds too; takes exercises from the end, or adds some that
 * aren't chosen yet. Talks, pauses and what is fixed stay. Empty when nothing would change. */
LapEdits *lap_verb_reshape  (LapPart         *part,
                             const LapShape  *shape);

/* The same for the main part of @session, which is made where there is none. */
LapEdits *lap_verb_reshape_session (LapSession     *session,
                                    const LapShape *shape);

G_END_DECLS
