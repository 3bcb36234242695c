/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A session laid out to the second: an immutable, flat array of intervals, made anew after every edit. Everything
 * shown, checked, printed and published is computed from it.
 *
 * Always true: intervals touch, start at 0, are at least 1 s long, and end at `length`; at most 20,000 of them and
 * 43,200 s. Every interval of an exercise block names a task: what the block asks for in that round, resolved
 * through options, in-round changes and steps. A turn is one block's go in one round: its work with all sets and
 * sides, without the rest after it.
 */
#pragma once

#include "base/seconds.h"
#include "model/session.h"

G_BEGIN_DECLS

typedef enum {
  LAP_INTERVAL_WORK, LAP_INTERVAL_REST, LAP_INTERVAL_SWITCH, LAP_INTERVAL_SET_REST, LAP_INTERVAL_ROUND_REST,
  LAP_INTERVAL_AFTER, LAP_INTERVAL_TALK, LAP_INTERVAL_PAUSE,
} LapIntervalKind;

extern const LapWords lap_interval_kinds;

typedef enum { LAP_SIDE_NONE, LAP_SIDE_LEFT, LAP_SIDE_RIGHT } LapSide;

#define LAP_NO_BLOCK G_MAXUINT16
#define LAP_NO_TASK  G_MAXUINT32

typedef struct {
  int     start;   /* seconds on the session clock */
  int     seconds;
  guint32 task;    /* index into tasks; LAP_NO_TASK for round rests, after, own pace */
  guint16 part;
  guint16 block;   /* LAP_NO_BLOCK for round rests, after, own pace */
  guint16 round;   /* from 1; 0 for after */
  guint8  kind;    /* LapIntervalKind */
  guint8  side;    /* LapSide */
} LapInterval;

/* What a block asks for in a round. Talks and pauses are tasks too, with neither exercise nor masks. */
typedef struct {
  LapBlock    *block;     /* held by the timeline's session */
  LapExercise *exercise;  /* as the block names it, NULL where unknown or not chosen */
  LapExercise *shown;     /* after the option; NULL like exercise */
  const char  *wanted;    /* the id asked for, also when unknown; NULL = not chosen yet */
  const LapSay *say;      /* the words of the block in this round, or NULL = those of the shown exercise */
  const char  *load, *note;
  double       met;       /* at its pace and option; 1.3 where unknown */
  int          work, rest; /* as written, seconds */
  guint        reps;
  int          estimate;  /* seconds the repetitions take, 0 without */
  int          pace;      /* LapPace */
  int          sides;     /* LapSides */
  int          option;    /* LapOption */
  guint32      primary, secondary; /* muscles of the shown exercise */
  guint32      care, load_mask;    /* care words with any load; with load 2 */
  guint32      kit;
} LapTask;

typedef struct {
  int      start, end; /* its work, sets and sides included */
  int      work;       /* seconds of work */
  int      rest;       /* as written, dropped or not */
  guint32  task;
  guint32  interval;   /* its first */
  guint16  part, block, round;
  guint8   part_kind;  /* LapPartKind */
  guint8   apart;      /* a talk, a pause or a part without work lies between it and the turn before */
  guint8   joined;     /* with the turn before it is one: the same block again, or the other side */
  guint8   repeats;    /* it and the five before it stood just so one round earlier */
} LapTurn;

typedef struct {
  LapPart *part;
  int      start, end;
  guint    interval, n_intervals;
  guint    turn, n_turns;
  int      work, rest; /* as written: dropped rests count, talks and pauses are neither */
} LapStretch;

typedef struct {
  LapSession   *session;
  LapCatalogue *catalogue; /* the session's own exercises included */
  int           length;    /* seconds */
  guint         n, n_tasks, n_turns, n_parts;
  LapInterval  *intervals;
  LapTask      *tasks;
  LapTurn      *turns;
  LapStretch   *parts;
  gatomicrefcount references;
} LapTimeline;

#define LAP_MOST_INTERVALS 20000
#define LAP_MOST_SECONDS   43200

#define LAP_TYPE_TIMELINE (lap_timeline_get_type ())
GType        lap_timeline_get_type (void);

/* NULL with @error (LAP_ERROR_INVALID about a pointer) where the session can't be laid out: too long, too many
 * intervals, or work too short to be split. @builtin is what the session's own exercises are laid over. */
LapTimeline *lap_timeline_new      (LapSession   *session,
                                    LapCatalogue *builtin,
                                    GError      **error);
LapTimeline *lap_timeline_ref      (LapTimeline  *timeline);
void         lap_timeline_unref    (LapTimeline  *timeline);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapTimeline, lap_timeline_unref)

/* The interval at @second, or NULL outside. */
const LapInterval *lap_timeline_at (const LapTimeline *timeline,
                                    int                second);

/* The first turn that starts after @second, or their number. */
guint        lap_timeline_turn     (const LapTimeline *timeline,
                                    double             second);

/* The task of an interval, or NULL. */
const LapTask *lap_timeline_task   (const LapTimeline *timeline,
                                    const LapInterval *interval);

/* Name of what is done: the shown exercise, else the wanted id, else "Not chosen yet". Translated. */
const char  *lap_task_name         (const LapTask *task);

/* Seconds that @reps of @exercise take, rounded up; 0 without repetitions or for a hold without tempo. */
int          lap_reps_seconds      (guint              reps,
                                    const char        *tempo,
                                    const LapExercise *exercise,
                                    gboolean           split);

G_END_DECLS
