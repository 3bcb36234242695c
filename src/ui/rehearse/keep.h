/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a rehearsal leaves in the session: the takes, kept as they are marked, and where talk ran over, edits
 * that give it the time it took.
 */
#pragma once

#include "ui/document.h"
#include "ui/rehearse/scene.h"

G_BEGIN_DECLS

/* Keeps the @n th take of @scene in the session, as one step. Takes of a plan that has changed since can't be
 * told from those of this one and go with the first new take. FALSE where the document can't be changed. */
gboolean   lap_rehearse_keep_take (LapDocument    *document,
                                   const LapScene *scene,
                                   guint           n);

/* Where talk ran over by a second or more. */
typedef struct {
  char     *text;     /* "The talk before block 7, Squat, overran by 12 s." */
  char     *remedy;   /* "Rest 35 s"; NULL where no number of the plan would help */
  LapObject *holder;  /* what is set: a block or a part */
  const char *property;
  int       seconds;  /* what it becomes */
} LapOverrun;

/* Transfer full: a GPtrArray of LapOverrun, in the order of the plan. */
GPtrArray *lap_rehearse_overruns  (const LapScene *scene);
/* The edit of one that has a remedy. */
LapEdits  *lap_rehearse_mend      (const LapOverrun *overrun);

G_END_DECLS
