/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/order.h"

#include <string.h>

G_DEFINE_BOXED_TYPE (LapOrder, lap_order, lap_order_copy, lap_order_free)

LapOrder *
lap_order_copy (const LapOrder *order)
{
  LapOrder *copy = g_memdup2 (order, sizeof *order);

  copy->order = g_memdup2 (order->order, sizeof (guint) * (order->n + 1));
  return copy;
}

void
lap_order_free (LapOrder *order)
{
  g_free (order->order);
  g_free (order);
}

/* All orders, in the order of the alphabet, given up where they can't get better than the best so far. */
typedef struct {
  const LapCosts *costs;
  guint  *now, *best;
  guint32 used;
  int     least;
} All;

static void
try_place (All *all, guint k, int cost)
{
  const LapCosts *c = all->costs;
  guint n = c->n;

  if (cost >= all->least)
    return;
  if (k == n) {
    int total = lap_costs_total (c, all->now);

    if (total < all->least) {
      all->least = total;
      memcpy (all->best, all->now, sizeof (guint) * n);
    }
    return;
  }
  for (guint i = 0; i < n; i++) {
    int more;

    if ((all->used & LAP_BIT (i)) || c->places[i * n + k] == LAP_BARRED)
      continue;
    more = c->places[i * n + k] + (k > 0 ? c->pairs[all->now[k - 1] * n + i] : 0);
    if (k > 1)
      more += LAP_RULE * c->runs[(all->now[k - 2] * n + all->now[k - 1]) * n + i];
    all->used |= LAP_BIT (i);
    all->now[k] = i;
    try_place (all, k + 1, cost + more);
    all->used &= ~LAP_BIT (i);
  }
}

static void
look_at_all (const LapCosts *costs, LapOrder *found)
{
  All all = { .costs = costs, .best = found->order, .least = lap_costs_total (costs, found->order) };

  all.now = g_new (guint, costs->n + 1);
  /* One more, so that an equal order that comes earlier than today's still wins. */
  all.least++;
  try_place (&all, 0, 0);
  g_free (all.now);
  found->proven = TRUE;
}

/* Exchanges two blocks, or moves one, as long as that lowers the total. */

static gboolean
may_stand (const LapCosts *c, const guint *order)
{
  for (guint k = 0; k < c->n; k++)
    if (c->places[order[k] * c->n + k] == LAP_BARRED)
      return FALSE;
  return TRUE;
}

static void
move_one (guint *order, guint from, guint to)
{
  guint block = order[from];

  if (from < to)
    memmove (order + from, order + from + 1, (to - from) * sizeof (guint));
  else
    memmove (order + to + 1, order + to, (from - to) * sizeof (guint));
  order[to] = block;
}

static void
improve (const LapCosts *c, guint *order)
{
  g_autofree guint *trial = g_new (guint, c->n + 1);
  int total = lap_costs_total (c, order);
  gboolean better = TRUE;

  while (better) {
    better = FALSE;
    for (guint a = 0; a < c->n; a++)
      for (guint b = 0; b < c->n; b++)
        for (int how = 0; how < 2; how++) {
          int then;

          if (a == b || (how == 0 && b < a))
            continue;
          memcpy (trial, order, sizeof (guint) * c->n);
          if (how == 0) {
            trial[a] = order[b];
            trial[b] = order[a];
          } else {
            move_one (trial, a, b);
          }
          if (!may_stand (c, trial) || (then = lap_costs_total (c, trial)) >= total)
            continue;
          total = then;
          memcpy (order, trial, sizeof (guint) * c->n);
          better = TRUE;
        }
  }
}

static guint
count_free (const LapCosts *c)
{
  guint count = 0;

  for (guint i = 0; i < c->n; i++)
    count += c->is_free[i];
  return count;
}

/* The better of two starts: the order as it stands, and the one of least cost, each improved. */
static gboolean
search (const LapCosts *c, LapOrder *found, GCancellable *cancellable, void (*progress) (double, gpointer),
        gpointer data)
{
  g_autofree guint *other = g_new (guint, c->n + 1);

  if (count_free (c) <= LAP_ORDER_EXACT) {
    if (!lap_order_bound (c, other, &found->bound, cancellable, progress, data))
      return FALSE;
    if (found->bound >= 0 && lap_costs_runs (c, other) == 0) {
      memcpy (found->order, other, sizeof (guint) * c->n);
      found->proven = TRUE;
      return TRUE;
    }
    improve (c, other);
  }
  improve (c, found->order);
  if (found->bound >= 0 && lap_costs_total (c, other) < lap_costs_total (c, found->order))
    memcpy (found->order, other, sizeof (guint) * c->n);
  found->proven = lap_costs_total (c, found->order) == found->bound;
  return TRUE;
}

LapOrder *
lap_order_find (const LapCosts *c, GCancellable *cancellable, void (*progress) (double share, gpointer data),
                gpointer data, GError **error)
{
  g_autoptr (LapOrder) found = g_new0 (LapOrder, 1);
  gboolean good = TRUE;

  found->n = c->n;
  found->order = g_new (guint, c->n + 1);
  found->bound = -1;
  for (guint k = 0; k < c->n; k++)
    found->order[k] = k;
  found->was = lap_costs_total (c, found->order);
  found->was_runs = lap_costs_runs (c, found->order);
  if (count_free (c) <= LAP_ORDER_ALL && c->n <= 32) {
    g_autofree guint *least = g_new (guint, c->n + 1);

    look_at_all (c, found);
    good = lap_order_bound (c, least, &found->bound, cancellable, progress, data);
  } else {
    good = search (c, found, cancellable, progress, data);
  }
  if (!good) {
    g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_CANCELLED, "cancelled");
    return NULL;
  }
  found->cost = lap_costs_cost (c, found->order);
  found->runs = lap_costs_runs (c, found->order);
  found->total = found->cost + LAP_RULE * found->runs;
  return g_steal_pointer (&found);
}
