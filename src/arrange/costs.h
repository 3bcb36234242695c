/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an order of a part's blocks costs: the likings of the trade as whole numbers of quarters, so that sums are
 * exact and equal on every machine. A pair that breaks a rule costs 1000, a mere matter of taste at most 24.
 *
 * Immutable, and holds no model objects: it may go to a worker.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

#define LAP_QUARTERS 4
#define LAP_RULE     (1000 * LAP_QUARTERS)
#define LAP_BARRED   G_MAXINT /* in places: not allowed there */

typedef struct {
  guint     n;          /* blocks of the part */
  int       rounds;
  gboolean  circles;    /* the last block is followed by the first, in one round too */
  gboolean *is_free;    /* may move */
  gboolean *is_work;    /* an exercise block */
  int      *pairs;      /* n × n: i directly before j, over all rounds */
  int      *seam;       /* n × n: i last, j first, over all seams */
  int      *places;     /* n × n: i at place k; LAP_BARRED where not allowed */
  guint8   *runs;       /* n × n × n: warnings of three that i, j, k in a row raise */
  guint8   *runs_over;  /* the same with the seam between j and k */
  guint8   *runs_under; /* the same with the seam between i and j */
} LapCosts;

/* The costs of part @part of @timeline. Transfer full. */
LapCosts *lap_costs_new   (const LapTimeline *timeline,
                           guint              part);
void      lap_costs_free  (LapCosts          *costs);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapCosts, lap_costs_free)

/* @order[k] is the block at place k. */
int       lap_costs_cost  (const LapCosts    *costs,
                           const guint       *order);
/* Warnings of three in a row, each counted once. */
int       lap_costs_runs  (const LapCosts    *costs,
                           const guint       *order);
int       lap_costs_total (const LapCosts    *costs,
                           const guint       *order);

G_END_DECLS
