/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where what is carried over the score would land, before it is let go: how long it is there, how long the session
 * would be, and the warnings that it would bring. The edits are tried on the session and taken back; the score itself
 * stays as it is, with a caret and a dashed outline over it.
 */
#pragma once

#include "place/score-drop.h"
#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* One of the blocks that would land. */
typedef struct {
  int          body, seconds; /* of the work, and with the rest after it */
  char        *name;
  LapExercise *shown;         /* or NULL: not chosen, unknown, or no exercise */
  guint32      hard, helps;   /* rows of muscles, see place/muscles.h */
} LapGhost;

typedef struct {
  LapDropPlace place;
  GArray      *ghosts;  /* LapGhost, in the order of time */
  LapCheckup  *checkup; /* as it would be, or NULL where that can't be */
  GArray      *fresh;   /* guint: the warnings of it that are not there now */
  char        *words;   /* what it would be, for a tag */
  LapCheckup  *now;     /* of the plan as it is */
  GHashTable  *known;   /* char *: the warnings of that */
} LapLanding;

/* @edits put @blocks to @place; their title is @title. What is known of the plan as it is comes from @before, the landing
 * that was shown before this one, where it is of the same plan; it may be NULL. */
LapLanding *lap_landing_new    (LapDocument     *document,
                                const LapLanding *before,
                                LapEdits        *edits,
                                GPtrArray       *blocks,
                                const LapDropPlace *place,
                                const char      *title);
void        lap_landing_free   (LapLanding      *landing);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapLanding, lap_landing_free)

/* The seconds that all of it takes. */
int         lap_landing_seconds (const LapLanding *landing);

G_END_DECLS
