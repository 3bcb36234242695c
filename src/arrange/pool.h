/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which exercises a plan may use, and which of them is nearest to another: shared by choosing, adapting and
 * composing.
 */
#pragma once

#include "model/session.h"

G_BEGIN_DECLS

typedef struct {
  guint32   uses;      /* of lap_uses; 0 = any */
  guint32   kit;       /* what there is */
  guint32   postures;  /* allowed; 0 = any */
  guint32   without;   /* care words that mustn't be loaded (2) */
  gboolean  quiet;     /* nothing loud */
  gboolean  no_jumps;  /* nothing of high impact */
  double    width, length; /* metres, 0 = not said */
  double    lens, room;    /* what the camera can take in; lens 0 = no camera */
  gboolean  portrait;
} LapWishes;

/* What @session and the use of a part of @kind ask for. */
LapWishes    lap_wishes_of       (const LapSession  *session,
                                  LapPartKind        kind);
gboolean     lap_wishes_allow    (const LapWishes   *wishes,
                                  const LapExercise *exercise);

/* The nearest of the exercises that @wishes allow: fewest steps along chains, most shared primary muscles, the same
 * pattern, least difference of MET, id; of these one that isn't in @taken (ids, may be NULL) comes first. Where
 * nothing shares a muscle or pattern, the same region will do; in a warm-up or cool-down anything of its use. What
 * doesn't jump isn't made to. NULL where nothing does. */
LapExercise *lap_pool_nearest    (LapCatalogue      *catalogue,
                                  const LapWishes   *wishes,
                                  LapExercise       *from,
                                  GHashTable        *taken);

G_END_DECLS
