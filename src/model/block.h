/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A block: an exercise with its work and rest, or a talk, or a pause. Its kind is decided when it is made or read
 * and never changes. Everything of a block moves, copies and goes with it. Read the fields; write by edits.
 */
#pragma once

#include "catalogue/say.h"
#include "catalogue/vocabulary.h"
#include "model/changes.h"
#include "model/object.h"

G_BEGIN_DECLS

typedef enum { LAP_BLOCK_EXERCISE, LAP_BLOCK_TALK, LAP_BLOCK_PAUSE } LapBlockKind;

#define LAP_TYPE_BLOCK (lap_block_get_type ())
#define LAP_BLOCK(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_BLOCK, LapBlock))
#define LAP_IS_BLOCK(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_BLOCK))

typedef struct {
  LapObject    parent_instance;
  LapBlockKind kind;
  char        *exercise; /* id; NULL = not chosen yet */
  char        *talk;     /* the words of a talk */
  char        *pause;    /* what a pause is for */
  int          seconds;  /* of a talk or pause, 1–10,800 */
  int          work;     /* seconds, 1–10,800 */
  int          rest;     /* seconds, 0–10,800 */
  guint        reps;     /* LAP_REPS (low, high); 0 = by time */
  char        *tempo;    /* "3-1-1": seconds down, hold, up */
  char        *load;     /* words: "8 kg" */
  int          pace;     /* LapPace, -1 = the part's own */
  int          sides;    /* LapSides, -1 = the exercise's */
  int          switch_seconds; /* between the halves of split work */
  int          option;   /* LapOption */
  gboolean     fixed;    /* arranging leaves it where it is */
  int          with;     /* 0 alone, 1 with a partner */
  LapSay      *say;      /* its own words; NULL = the exercise's */
  char        *note;
  char       **fine;     /* check ids kept quiet here */
  LapChanges  *in_round; /* what is different in later rounds, or NULL */
} LapBlock;

typedef struct {
  LapObjectClass parent_class;
} LapBlockClass;

GType     lap_block_get_type     (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapBlock, g_object_unref)

/* A repetition range in one number: @low = @high for an exact count. */
#define LAP_REPS(low, high) (((guint) (high) << 16) | (guint) (low))
#define LAP_REPS_LOW(reps)  ((int) ((reps) & 0xffff))
#define LAP_REPS_HIGH(reps) ((int) ((reps) >> 16))

LapBlock *lap_block_new_exercise (const char *exercise,
                                  int         work,
                                  int         rest);
LapBlock *lap_block_new_talk     (const char *words,
                                  int         seconds);
LapBlock *lap_block_new_pause    (const char *what,
                                  int         seconds);

/* Whether @exercise is done in it, in any round. */
gboolean  lap_block_does         (LapBlock   *block,
                                  const char *exercise);

/* Seconds of one repetition from a tempo such as "3-1-1"; 0 for NULL, "" or anything else. */
int       lap_tempo_seconds      (const char *tempo);

/* Partner words and the kind of repetitions, also used by in-round changes. */
extern const LapKind lap_kind_reps;

G_END_DECLS
