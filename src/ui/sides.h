/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan as it is and as it would be, line by line: what stands beside what, what differs, and how.
 *
 * A side is a picture of a session at one time and doesn't change with it; both sides are taken from the same session
 * object, before and after it was changed, so that a block is known again wherever it went.
 */
#pragma once

#include "checks/checks.h"

G_BEGIN_DECLS

typedef struct {
  LapObject *object;  /* a LapPart or a LapBlock */
  GBytes    *bytes;   /* of a block: all that it was */
  gboolean   heading; /* it is a part */
  gboolean   chosen;  /* not a block without an exercise */
  guint      number;  /* of a block in its part, from 1 */
  char      *name, *time; /* "Squat", "40/20"; of a part its title, "2 rounds" or NULL */
} LapPlanRow;

typedef struct {
  GPtrArray *rows;    /* LapPlanRow */
  char      *summary; /* "29:50, 3 warnings and 2 notes" */
} LapPlanSide;

/* Two rows that stand beside each other; one of them may be NULL. What was changed in a row stands below it. */
typedef struct {
  const LapPlanRow *before, *after;
  char             *before_change, *after_change; /* NULL = nothing was changed */
} LapPlanPair;

LapPlanSide   *lap_plan_side_new       (LapTimeline   *timeline);
void       lap_plan_side_free      (LapPlanSide       *side);

/* Of LapPlanPair, which point into both sides. @reasons (block -> words) says why blocks were changed. Transfer
 * full. */
GPtrArray *lap_plan_pairs     (const LapPlanSide *before,
                               const LapPlanSide *after,
                               GHashTable    *reasons);
/* "Squat, 40/20" of a block, "Main, 2 rounds" of a part. Transfer full. */
char      *lap_plan_row_text  (const LapPlanRow *row);

G_END_DECLS
