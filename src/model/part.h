/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A part of a session: opening, warm-up, main, cool-down, closing, with its blocks and how they are run. Read the
 * fields; write by edits.
 */
#pragma once

#include "base/rows.h"
#include "model/block.h"
#include "model/list.h"

G_BEGIN_DECLS

typedef enum { LAP_PART_OPENING, LAP_PART_WARM_UP, LAP_PART_MAIN, LAP_PART_COOL_DOWN, LAP_PART_CLOSING } LapPartKind;
typedef enum { LAP_RUN_TOGETHER, LAP_RUN_STATIONS, LAP_RUN_OWN_PACE, LAP_RUN_ON_THE_MINUTE } LapRun;

extern const LapWords lap_part_kinds, lap_runs;

/* Work and rest of one round of all exercise blocks. */
typedef struct {
  int        work;
  int        rest;
  GPtrArray *extras;
} LapStep;

#define LAP_TYPE_PART (lap_part_get_type ())
#define LAP_PART(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_PART, LapPart))
#define LAP_IS_PART(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_PART))

typedef struct {
  LapObject parent_instance;
  int       kind;  /* LapPartKind */
  char     *title; /* NULL or "" = the kind's label */
  int       run;   /* LapRun */
  int       rounds, sets; /* 1–100 */
  int       set_rest;   /* seconds between the sets of a block */
  int       round_rest; /* seconds added after each round but the last */
  gboolean  keep_last_rest;
  int       rest_after; /* seconds after the part */
  char     *rest_as;    /* id of an exercise done in rests, or NULL */
  LapRows  *steps;      /* LapStep, one for each round, cycled; NULL = the blocks' own */
  int       cap;        /* own pace: seconds of the part */
  int       every;      /* on the minute: seconds from one start to the next */
  int       per_station; /* people at a station */
  int       aim;        /* 1 = to tire: neighbours may share muscles on purpose */
  char    **fine;
  LapList  *blocks;     /* LapBlock */
} LapPart;

typedef struct {
  LapObjectClass parent_class;
} LapPartClass;

GType       lap_part_get_type (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapPart, g_object_unref)

LapPart    *lap_part_new      (LapPartKind kind);
/* Its title, else the translated label of its kind. Transfer none. */
const char *lap_part_title    (const LapPart *part);
guint       lap_part_n        (const LapPart *part);
LapBlock   *lap_part_nth      (const LapPart *part,
                               guint          n);

extern const LapRowsKind lap_kind_steps;

G_END_DECLS
