/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The best order of a part's blocks. Up to 9 free blocks every order is looked at; up to 19 a search over subsets
 * finds the least cost of all orders, and where that order has no three in a row that break a rule it is the best;
 * else, and beyond 19, exchanges of two and moves of one improve what there is. What was proven is said.
 *
 * lap_order_find() only reads @costs: it may run in a worker. Ties go to the order that comes first.
 */
#pragma once

#include "arrange/costs.h"
#include "edit/edit.h"

#include <gio/gio.h>

G_BEGIN_DECLS

#define LAP_ORDER_ALL   9  /* free blocks up to which all orders are looked at */
#define LAP_ORDER_EXACT 19 /* up to which a bound is found */

typedef struct {
  guint     n;
  guint    *order;     /* order[k] = index of the block now at place k */
  int       cost, runs, total; /* quarters, but runs */
  int       was;       /* the total of the order as it stands */
  int       was_runs;
  int       bound;     /* no order costs less, runs aside; -1 where none was found */
  gboolean  proven;    /* no order has a lower total */
} LapOrder;

#define LAP_TYPE_ORDER (lap_order_get_type ())
GType     lap_order_get_type (void);

/* NULL with G_IO_ERROR_CANCELLED only. @progress (may be NULL) is told shares from 0 to 1. */
LapOrder *lap_order_find   (const LapCosts *costs,
                            GCancellable   *cancellable,
                            void          (*progress) (double share, gpointer data),
                            gpointer        data,
                            GError        **error);
LapOrder *lap_order_copy   (const LapOrder *order);
void      lap_order_free   (LapOrder       *order);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapOrder, lap_order_free)

/* The edits that put the blocks of @part into @order; empty when they stand so. */
LapEdits *lap_order_edits  (const LapOrder *order,
                            LapPart        *part);

/* What it gains, in words: "two runs on the wrists gone, one more change of posture". Translated. */
char     *lap_order_words  (const LapOrder    *order,
                            const LapTimeline *timeline,
                            guint              part);

/* The least cost over all orders, runs aside, and an order that has it (the first of them); FALSE when cancelled.
 * *@bound is -1 where the costs are too large to be summed exactly (beyond 2^23 quarters). */
gboolean  lap_order_bound  (const LapCosts *costs,
                            guint          *order,
                            int            *bound,
                            GCancellable   *cancellable,
                            void          (*progress) (double share, gpointer data),
                            gpointer        data);

G_END_DECLS
