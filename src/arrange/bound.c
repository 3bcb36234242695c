/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Exact search over subsets (Held and Karp 1962, J. Soc. Indust. Appl. Math. 10:196). The free places of the part are
 * its slots 0 … m-1, the free blocks its items. done[S][j] is the least cost of filling the remaining slots when the
 * items S stand in the first |S| slots and j stands in the last of them; it is computed from the full set down,
 * so that walking forwards and taking the first item that keeps the least cost gives the first of the best orders.
 *
 * The block in the first place meets the last one at the seam. Where the first place is free there is one table for
 * each first item, over the sets of the others; else one table over the sets of all.
 */
#include "arrange/order.h"

#include <string.h>

typedef struct {
  const LapCosts *costs;
  guint  m;        /* items and slots */
  guint *items;    /* block of item i */
  guint *slots;    /* place of slot s */
  int   *step;     /* [s][i][j]: from i in slot s to j in slot s + 1, the place of j included */
  int   *close;    /* [f][i]: from i in the last slot to the end and over the seam, f in the first slot */
  gboolean seam;   /* the first place is free: closing depends on the first item */
} Search;

/* A whole number of quarters. Floats hold those exactly below 2^24; larger sums are refused before they are made. */
typedef float Cost;

#define INFINITE (1 << 24)

/* The blocks that stand fixed from place @from up to @to, taken along from @i. Returns the last block. */
static guint
walk (const LapCosts *c, guint i, guint from, guint to, int *cost)
{
  for (guint k = from; k < to; k++) {
    *cost += c->pairs[i * c->n + k] + c->places[k * c->n + k];
    i = k;
  }
  return i;
}

static void
set_up (Search *s, const LapCosts *c)
{
  guint n = c->n;

  s->costs = c;
  s->items = g_new (guint, n + 1);
  s->slots = g_new (guint, n + 1);
  for (guint i = 0; i < n; i++)
    if (c->is_free[i]) {
      s->items[s->m] = i;
      s->slots[s->m++] = i;
    }
  s->step = g_new (int, s->m * s->m * s->m + 1);
  s->close = g_new (int, s->m * s->m + 1);
  s->seam = s->m > 0 && s->slots[0] == 0;
  for (guint k = 0; k + 1 < s->m; k++)
    for (guint i = 0; i < s->m; i++)
      for (guint j = 0; j < s->m; j++) {
        int cost = 0;
        guint last = walk (c, s->items[i], s->slots[k] + 1, s->slots[k + 1], &cost);

        cost += c->pairs[last * n + s->items[j]] + c->places[s->items[j] * n + s->slots[k + 1]];
        s->step[(k * s->m + i) * s->m + j] = cost;
      }
  for (guint f = 0; f < s->m; f++)
    for (guint i = 0; i < s->m; i++) {
      int cost = 0;
      guint last = walk (c, s->items[i], s->slots[s->m - 1] + 1, n, &cost);

      s->close[f * s->m + i] = cost + c->seam[last * n + (s->seam ? s->items[f] : 0)];
    }
}

/* Whether the dearest order is still a number that Cost holds exactly. */
static gboolean
is_exact (const Search *s)
{
  gint64 dearest = 0;

  for (guint k = 0; k < s->m; k++) {
    int most = 0;

    for (guint i = 0; i < s->m * s->m; i++)
      most = MAX (most, k + 1 < s->m ? s->step[k * s->m * s->m + i] : s->close[i]);
    dearest += most;
  }
  return dearest < INFINITE / 2;
}

static void
tear_down (Search *s)
{
  g_free (s->items);
  g_free (s->slots);
  g_free (s->step);
  g_free (s->close);
}

/* The cost of everything up to and with @f in the first slot. */
static int
opening (const Search *s, guint f)
{
  const LapCosts *c = s->costs;
  guint n = c->n, first = s->slots[0];
  int cost = c->places[s->items[f] * n + first];

  for (guint k = 0; k < first; k++)
    cost += c->places[k * n + k] + c->pairs[k * n + (k + 1 < first ? k + 1 : s->items[f])];
  return cost;
}

/* All numbers are whole and finite, so the least is simply the least. */
#pragma GCC optimize ("finite-math-only", "no-signed-zeros")

/* The items a table is over, and where they stand. */
typedef struct {
  const Search *search;
  guint  w;         /* how many */
  guint  items[32]; /* of the search, ascending */
  guint  before;    /* slots filled before them: 0 or 1 */
  guint  first;     /* the item in slot 0 when before is 1 */
  guint  stride;    /* w rounded up, so that rows are whole vectors */
  Cost  *step;      /* [k][j][i], rows of stride: from i to j, k = the slot of i less before */
  Cost  *done;      /* [set][i], rows of stride; what stands at an i that isn't in the set means nothing */
} Table;

static guint
stride_of (guint w)
{
  return MAX (4, (w + 3) / 4 * 4);
}

static void
table_init (Table *t, const Search *s, int first)
{
  *t = (Table) { .search = s, .before = first >= 0, .first = MAX (0, first) };
  for (guint i = 0; i < s->m; i++)
    if ((int) i != first)
      t->items[t->w++] = i;
  t->stride = stride_of (t->w);
  t->step = g_new0 (Cost, t->w * t->w * t->stride + 1);
  for (guint k = 0; k + 1 < t->w; k++)
    for (guint i = 0; i < t->w; i++)
      for (guint j = 0; j < t->w; j++)
        t->step[(k * t->w + j) * t->stride + i] =
          s->step[((k + t->before) * s->m + t->items[i]) * s->m + t->items[j]];
}

/* One row: for all items that may be the last of @set at once, the best way on over the items that aren't in it. Going
 * over the lasts in the inner loop keeps the least costs in vector registers, and floats have a minimum of their own
 * in every x86-64 vector unit while whole numbers don't: a quarter of the instructions of the other nesting with
 * ints, as measured. @stride is a constant wherever this is inlined. */
static inline __attribute__ ((always_inline)) void
fill_row (const Table *t, guint32 set, guint32 all, guint stride)
{
  const Cost *steps = t->step + (gsize) (__builtin_popcount (set) - 1) * t->w * stride;
  Cost least[32];

  for (guint i = 0; i < stride; i++)
    least[i] = INFINITE;
  for (guint32 open = all & ~set; open != 0; open &= open - 1) {
    guint j = __builtin_ctz (open);
    Cost on = t->done[(gsize) (set | LAP_BIT (j)) * stride + j];
    const Cost *step = steps + (gsize) j * stride;

    for (guint i = 0; i < stride; i++) {
      Cost cost = step[i] + on;

      least[i] = MIN (least[i], cost);
    }
  }
  memcpy (t->done + (gsize) set * stride, least, stride * sizeof (Cost));
}

/* Rows from @from down to and without @to. */
static void
fill_rows (const Table *t, guint32 from, guint32 to, guint32 all)
{
#define ROWS(stride) for (guint32 set = from; set > to; set--) fill_row (t, set, all, stride)
  switch (t->stride) {
  case 4: ROWS (4); break;
  case 8: ROWS (8); break;
  case 12: ROWS (12); break;
  case 16: ROWS (16); break;
  default: ROWS (20); break;
  }
#undef ROWS
}

#define ROWS_A_LOOK 0x4000 /* between two looks at the cancellable */

static gboolean
table_fill (Table *t, GCancellable *cancellable)
{
  const Search *s = t->search;
  guint32 all = (guint32) ((1ull << t->w) - 1);

  for (guint i = 0; i < t->w; i++)
    t->done[(gsize) all * t->stride + i] = s->close[t->first * s->m + t->items[i]];
  for (guint32 from = all > 0 ? all - 1 : 0; from > 0;) {
    guint32 to = from > ROWS_A_LOOK ? from - ROWS_A_LOOK : 0;

    fill_rows (t, from, to, all);
    from = to;
    if (g_cancellable_is_cancelled (cancellable))
      return FALSE;
  }
  return TRUE;
}

/* The least cost of everything behind the first slot, or of everything without one. */
static int
table_best (const Table *t)
{
  const Search *s = t->search;
  int best = INFINITE;

  if (t->w == 0)
    return s->close[t->first * s->m + t->first];
  for (guint j = 0; j < t->w; j++) {
    int cost = (int) t->done[(gsize) LAP_BIT (j) * t->stride + j];

    cost += t->before ? s->step[t->first * s->m + t->items[j]] : opening (s, t->items[j]);
    best = MIN (best, cost);
  }
  return best;
}

/* Walks forwards, each time to the first item that keeps the least cost @best. */
static void
table_walk (const Table *t, int best, guint *order)
{
  const Search *s = t->search;
  guint32 set = 0;
  guint last = 0;

  if (t->before)
    order[s->slots[0]] = s->items[t->first];
  for (guint k = 0; k < t->w; k++)
    for (guint j = 0; j < t->w; j++) {
      int cost;

      if (set & LAP_BIT (j))
        continue;
      if (k > 0)
        cost = (int) t->step[((k - 1) * t->w + j) * t->stride + last];
      else
        cost = t->before ? s->step[t->first * s->m + t->items[j]] : opening (s, t->items[j]);
      if (cost + (int) t->done[(gsize) (set | LAP_BIT (j)) * t->stride + j] != best)
        continue;
      best -= cost;
      set |= LAP_BIT (j);
      last = j;
      order[s->slots[k + t->before]] = s->items[t->items[j]];
      break;
    }
}

static gboolean
search_run (Search *s, guint *order, int *bound, GCancellable *cancellable, void (*progress) (double, gpointer),
            gpointer data)
{
  guint tables = s->seam ? s->m : 1, width = s->seam ? s->m - 1 : s->m;
  Cost *done = g_new (Cost, ((gsize) 1 << width) * stride_of (width));
  gboolean good = TRUE;

  *bound = INFINITE;
  for (guint f = 0; f < tables && good; f++) {
    Table table;
    int best, opened = s->seam ? opening (s, f) : 0;

    table_init (&table, s, s->seam ? (int) f : -1);
    table.done = done;
    good = table_fill (&table, cancellable);
    best = good ? table_best (&table) : INFINITE;
    if (best < INFINITE && best + opened < *bound) {
      *bound = best + opened;
      table_walk (&table, best, order);
    }
    g_free (table.step);
    if (progress != NULL)
      progress ((f + 1.0) / tables, data);
  }
  g_free (done);
  return good;
}

gboolean
lap_order_bound (const LapCosts *costs, guint *order, int *bound, GCancellable *cancellable,
                 void (*progress) (double share, gpointer data), gpointer data)
{
  Search s = { 0 };
  gboolean good = TRUE;

  for (guint k = 0; k < costs->n; k++)
    order[k] = k;
  set_up (&s, costs);
  if (s.m == 0)
    *bound = lap_costs_cost (costs, order);
  else if (is_exact (&s))
    good = search_run (&s, order, bound, cancellable, progress, data);
  else
    *bound = -1;
  tear_down (&s);
  return good;
}
