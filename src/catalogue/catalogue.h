/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All exercises by id: the built-in ones, or a session's own laid over them. Immutable: shared by reference,
 * also between threads. An id that an exercise had formerly finds it too.
 */
#pragma once

#include "catalogue/exercise.h"

G_BEGIN_DECLS

typedef struct _LapCatalogue LapCatalogue;

#define LAP_TYPE_CATALOGUE (lap_catalogue_get_type ())
GType             lap_catalogue_get_type    (void);

/* The exercises that the program carries; read once, the same object every time. Transfer full. */
LapCatalogue     *lap_catalogue_builtin     (void);

/* @own (of LapExercise, NULL for none) laid over @base, which may be NULL. An own id hides a base one. */
LapCatalogue     *lap_catalogue_new_over    (LapCatalogue *base,
                                             GPtrArray    *own);
LapCatalogue     *lap_catalogue_ref         (LapCatalogue *catalogue);
void              lap_catalogue_unref       (LapCatalogue *catalogue);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapCatalogue, lap_catalogue_unref)

/* NULL where nothing has that id. Transfer none. */
LapExercise      *lap_catalogue_find        (LapCatalogue *catalogue,
                                             const char   *id);
/* By name, own ones first. An own exercise that hides a base one stands in its place once. */
guint             lap_catalogue_n           (LapCatalogue *catalogue);
LapExercise      *lap_catalogue_nth         (LapCatalogue *catalogue,
                                             guint         n);

/* Whether both hold the very same exercises in the same order. */
gboolean          lap_catalogue_is_same     (LapCatalogue *a,
                                             LapCatalogue *b);

/* One step along the chain of @exercise for @option. Where the chain ends it is @exercise itself, and *@factor
 * is what its MET is multiplied with: 0.85 easier, 1.15 harder (common practice); else 1. */
LapExercise      *lap_catalogue_shown       (LapCatalogue *catalogue,
                                             LapExercise  *exercise,
                                             LapOption     option,
                                             double       *factor);

/* What to look for; words that people type are lap_finder_new()'s. Masks of 0 ask for nothing. */
typedef struct {
  guint32     regions;   /* works one of these hard */
  guint32     postures;
  guint32     uses;
  gboolean    has_kit;   /* whether `kit` counts */
  guint32     kit;       /* needs nothing else */
  int         impact;    /* at most this; -1 = any */
  gboolean    quiet;     /* not loud */
  guint32     without;   /* care words it doesn't load (2) */
} LapFilter;

#define LAP_FILTER_ANY ((LapFilter) { .impact = -1 })

gboolean          lap_filter_matches        (const LapFilter   *filter,
                                             const LapExercise *exercise);

/* The id nearest to the unknown @id, or NULL. */
const char       *lap_catalogue_nearest     (LapCatalogue *catalogue,
                                             const char   *id);

G_END_DECLS
