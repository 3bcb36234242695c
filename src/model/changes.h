/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a block does differently in later rounds: the member `in-round`, an object of round numbers. A LapChanges
 * is a value, ascending by round, each round once; an edit sets a changed copy.
 */
#pragma once

#include "catalogue/say.h"

G_BEGIN_DECLS

/* Which of its members a change gives; the bits of `present`, in file order. */
enum {
  LAP_CHANGE_EXERCISE, LAP_CHANGE_WORK, LAP_CHANGE_REST, LAP_CHANGE_REPS, LAP_CHANGE_LOAD, LAP_CHANGE_PACE,
  LAP_CHANGE_OPTION, LAP_CHANGE_SIDES, LAP_CHANGE_SAY, LAP_CHANGE_NOTE, LAP_N_CHANGES,
};

typedef struct {
  int        round; /* from 2 */
  guint64    present;
  char      *exercise;
  int        work, rest;
  guint      reps;
  char      *load;
  int        pace, option, sides;
  LapSay    *say;
  char      *note;
  GPtrArray *extras;
} LapChange;

#define LAP_CHANGE_HAS(change, bit) (((change)->present >> (bit)) & 1)

typedef struct {
  GPtrArray *items; /* LapChange */
} LapChanges;

#define LAP_TYPE_CHANGES (lap_changes_get_type ())
GType       lap_changes_get_type (void);
LapChanges *lap_changes_new      (void);
LapChanges *lap_changes_copy     (const LapChanges *changes);
void        lap_changes_free     (LapChanges       *changes);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapChanges, lap_changes_free)

/* The change for @round, or NULL; @changes may be NULL. */
LapChange  *lap_changes_find     (const LapChanges *changes,
                                  int               round);
/* The change for @round of a value that isn't shared yet, made where there is none. */
LapChange  *lap_changes_ensure   (LapChanges       *changes,
                                  int               round);
/* A copy with the rounds above @rounds left out (and @without, 0 for none); NULL when nothing is left. */
LapChanges *lap_changes_within   (const LapChanges *changes,
                                  int               rounds,
                                  int               without);

extern const LapRecord lap_change_record;
/* A slot that holds a LapChanges. */
extern const LapKind lap_kind_changes;

G_END_DECLS
