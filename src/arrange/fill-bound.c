/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What no timetable can be better than, by Lagrangian relaxation (Held and Karp 1971, Mathematical Programming 1:6).
 * Each quarter of a room and of a coach, and each further class of a coach on a day, gets a price; each class for
 * itself takes the place that is cheapest with the prices, or stays out; what is sold more than once gets dearer. The
 * sum, less the worth of all there is to sell, is a bound whatever the prices are, so rounding them does no harm. Wishes
 * of rhythm are left out; they only add points.
 */
#include "arrange/fill-table.h"

#include <string.h>

#define SCALE  256 /* prices are in 1/256 point */
#define ROUNDS 400
#define WORK   G_GUINT64_CONSTANT (400000000) /* looks at a place, over all rounds */
#define UNIT   1024 /* parts of one, for the direction of a price */
#define KEEP   236  /* of 256 parts of a step, those that keep the direction of the steps before */
#define FIRST  60   /* points that the first step changes a price by, for each one too many sold */
#define WEEK   (LAP_FILL_DAYS * LAP_FILL_QUARTERS)
#define SLOWER 14   /* thousandths by which each step is shorter than the one before */

/* What is sold: a quarter of a room, of a coach; one more of a coach's classes on a day, of the hard ones. */
enum { ROOMS, COACHES, COUNTS, HARDS, GOODS };

typedef struct {
  const LapFillTable *t;
  gsize   size[GOODS];
  gint64 *price[GOODS], *kept[GOODS], *sum[GOODS]; /* now; at the best bound; in front of each quarter */
  gint64 *way[GOODS];                              /* the direction in which the price goes, in 1/UNIT */
  gint32 *sold[GOODS];
  gint32 *stock[GOODS];                            /* NULL: one of each; below 0: any number */
  int   **rooms, **coaches;                        /* those that suit a class; [0] is how many */
} Market;

typedef struct {
  gint64 cost;
  int    day, quarter, length, room_length; /* in quarters */
  int    room, coach;
} Deal;

static gint64
price_of (const Market *m, int good, int who, int day, int quarter, int length)
{
  const gint64 *sum = m->sum[good] + who * (WEEK + 1) + day * LAP_FILL_QUARTERS;

  return sum[MIN (quarter + length, LAP_FILL_QUARTERS)] - sum[quarter];
}

/* The cheapest of the rooms for the quarters of @deal, and what it costs with its points. */
static gint64
cheapest_room (const Market *m, guint i, Deal *deal, gboolean with_points)
{
  const LapFillTable *t = m->t;
  const LapFillProblem *p = t->problem;
  gint64 least = p->n_rooms ? G_MAXINT64 : 0;

  deal->room = -1;
  for (int k = 1; k <= m->rooms[i][0]; k++) {
    int room = m->rooms[i][k];
    gint64 cost;

    if (!lap_fill_row_has (t->room_rows[lap_fill_slot (t->shape[i] * p->n_rooms + room, deal->day)], deal->quarter))
      continue;
    cost = price_of (m, ROOMS, room, deal->day, deal->quarter, lap_fill_room_quarters (p, i, room)) +
           (with_points ? SCALE * lap_fill_room_points (&p->classes[i], room) : 0);
    if (cost < least) {
      least = cost;
      deal->room = room;
      deal->room_length = lap_fill_room_quarters (p, i, room);
    }
  }
  return least;
}

static gint64
cheapest_coach (const Market *m, guint i, Deal *deal, gboolean with_points)
{
  const LapFillTable *t = m->t;
  const LapFillProblem *p = t->problem;
  const LapFillClass *c = &p->classes[i];
  gint64 least = p->n_coaches ? G_MAXINT64 : 0;

  deal->coach = -1;
  for (int k = 1; k <= m->coaches[i][0]; k++) {
    int coach = m->coaches[i][k], slot = lap_fill_slot (coach, deal->day);
    gint64 cost;

    if (!lap_fill_row_has (t->coach_rows[lap_fill_slot (t->shape[i] * p->n_coaches + coach, deal->day)],
                           deal->quarter))
      continue;
    cost = price_of (m, COACHES, coach, deal->day, deal->quarter, deal->length) + m->price[COUNTS][slot] +
           (c->hard && c->takes_part ? m->price[HARDS][slot] : 0) +
           (with_points ? SCALE * lap_fill_coach_points (c, coach) : 0);
    if (cost < least) {
      least = cost;
      deal->coach = coach;
    }
  }
  return least;
}

/* Where a class stands now may be between two quarters; only those it takes whole are sold. */
static void
stay_where_it_is (const Market *m, guint i, gboolean with_points, Deal *best)
{
  const LapFillProblem *p = m->t->problem;
  const LapFillClass *c = &p->classes[i];
  LapFillPlace at = c->was;
  Deal deal = { .day = at.day, .quarter = lap_fill_quarters (at.start), .room = at.room, .coach = at.coach };

  if (!lap_fill_is_whole (p, &at) || at.start % 15 == 0 ||
      lap_fill_time_rules (m->t, i, at.day, at.start) ||
      lap_fill_room_rules (m->t, i, at.day, at.start, at.room) ||
      lap_fill_coach_rules (m->t, i, at.day, at.start, at.coach))
    return;
  deal.length = MAX ((at.start + c->minutes) / 15 - deal.quarter, 0);
  deal.room_length = deal.length;
  if (at.room >= 0)
    deal.room_length = MAX ((at.start + c->minutes + p->rooms[at.room].turnaround) / 15 - deal.quarter, 0);
  deal.cost = with_points ? SCALE * lap_fill_wishes (p, i, &at) : 0;
  if (at.room >= 0)
    deal.cost += price_of (m, ROOMS, at.room, at.day, deal.quarter, deal.room_length);
  if (at.coach >= 0)
    deal.cost += price_of (m, COACHES, at.coach, at.day, deal.quarter, deal.length) +
                 m->price[COUNTS][lap_fill_slot (at.coach, at.day)] +
                 (c->hard && c->takes_part ? m->price[HARDS][lap_fill_slot (at.coach, at.day)] : 0);
  if (deal.cost < best->cost)
    *best = deal;
}

static Deal
best_deal (const Market *m, guint i, gboolean with_points)
{
  const LapFillTable *t = m->t;
  const LapFillClass *c = &t->problem->classes[i];
  Deal best = { .cost = SCALE * LAP_FILL_UNPLACED, .day = -1 };

  for (int day = 0; day < LAP_FILL_DAYS; day++)
    for (int q = 0; q < LAP_FILL_QUARTERS; q++) {
      Deal deal = { .day = day, .quarter = q, .length = lap_fill_quarters (c->minutes) };
      gint64 more;

      if (!lap_fill_row_has (t->open_rows[t->shape[i] * LAP_FILL_DAYS + day], q))
        continue;
      deal.cost = with_points ? SCALE * lap_fill_time_points (c, day, q * 15) : 0;
      if (deal.cost >= best.cost || (more = cheapest_room (m, i, &deal, with_points)) >= best.cost - deal.cost)
        continue;
      deal.cost += more;
      if ((more = cheapest_coach (m, i, &deal, with_points)) >= best.cost - deal.cost)
        continue;
      deal.cost += more;
      best = deal;
    }
  stay_where_it_is (m, i, with_points, &best);
  return best;
}

static void
add_up (Market *m)
{
  for (int good = ROOMS; good <= COACHES; good++)
    for (gsize who = 0; who < m->size[good] / WEEK; who++) {
      gint64 *sum = m->sum[good] + who * (WEEK + 1);

      sum[0] = 0;
      for (gsize q = 0; q < WEEK; q++)
        sum[q + 1] = sum[q] + m->price[good][who * WEEK + q];
    }
}

static void
sell (Market *m, guint i, const Deal *deal)
{
  const LapFillClass *c = &m->t->problem->classes[i];
  gsize from = deal->day * LAP_FILL_QUARTERS + deal->quarter;

  for (int k = 0; deal->room >= 0 && k < deal->room_length && deal->quarter + k < LAP_FILL_QUARTERS; k++)
    m->sold[ROOMS][(gsize) deal->room * WEEK + from + k]++;
  for (int k = 0; deal->coach >= 0 && k < deal->length && deal->quarter + k < LAP_FILL_QUARTERS; k++)
    m->sold[COACHES][(gsize) deal->coach * WEEK + from + k]++;
  if (deal->coach >= 0) {
    m->sold[COUNTS][lap_fill_slot (deal->coach, deal->day)]++;
    if (c->hard && c->takes_part)
      m->sold[HARDS][lap_fill_slot (deal->coach, deal->day)]++;
  }
}

/* The bound that these prices give, in 1/256 point. */
static gint64
hold_market (Market *m, gboolean with_points)
{
  const LapFillProblem *p = m->t->problem;
  gint64 bound = 0;

  add_up (m);
  for (int good = 0; good < GOODS; good++) {
    memset (m->sold[good], 0, sizeof (gint32) * m->size[good]);
    for (gsize k = 0; k < m->size[good]; k++)
      bound -= m->price[good][k] * (m->stock[good] ? MAX (m->stock[good][k], 0) : 1);
  }
  for (guint i = 0; i < p->n_classes; i++) {
    Deal deal;

    if (p->classes[i].fixed)
      continue;
    deal = best_deal (m, i, with_points);
    bound += deal.cost;
    if (deal.day >= 0)
      sell (m, i, &deal);
  }
  return bound;
}

/* How much more than there is was sold of a good; 0 where there is any number. */
static gint64
oversold (const Market *m, int good, gsize k)
{
  if (m->stock[good] && m->stock[good][k] < 0)
    return 0;
  return m->sold[good][k] - (m->stock[good] ? m->stock[good][k] : 1);
}

/* Each step goes on in part in the direction of those before it (Camerini, Fratta, Maffioli 1975, Mathematical
 * Programming Study 3:26). @length: of the step, in 1/SCALE points. */
static void
change_prices (Market *m, gint64 length)
{
  for (int good = 0; good < GOODS; good++)
    for (gsize k = 0; k < m->size[good]; k++) {
      gint64 *way = &m->way[good][k], over = oversold (m, good, k);

      if (over < 0 && m->price[good][k] == 0)
        over = 0;
      *way = (*way * KEEP + over * UNIT * (256 - KEEP)) / 256;
      m->price[good][k] = MAX (0, m->price[good][k] + *way * length / UNIT);
    }
}

static void
copy_prices (Market *m, gint64 **to, gint64 **from)
{
  for (int good = 0; good < GOODS; good++)
    memcpy (to[good], from[good], sizeof (gint64) * m->size[good]);
}

/* The looks at a place that one round takes. */
static guint64
count_looks (const Market *m)
{
  const LapFillTable *t = m->t;
  guint64 looks = 1;

  for (guint i = 0; i < t->problem->n_classes; i++)
    for (int day = 0; day < LAP_FILL_DAYS && !t->problem->classes[i].fixed; day++) {
      LapFillRow row = t->open_rows[t->shape[i] * LAP_FILL_DAYS + day];
      guint starts = __builtin_popcountll (row.early) + __builtin_popcountll (row.late);

      looks += (guint64) starts * (1 + m->rooms[i][0] + m->coaches[i][0]);
    }
  return looks;
}

static void
set_up (Market *m, const LapFillTable *t)
{
  const LapFillProblem *p = t->problem;
  gsize days = p->n_coaches * LAP_FILL_DAYS;

  m->t = t;
  m->size[ROOMS] = (gsize) p->n_rooms * WEEK;
  m->size[COACHES] = (gsize) p->n_coaches * WEEK;
  m->size[COUNTS] = m->size[HARDS] = days;
  for (int good = 0; good < GOODS; good++) {
    m->price[good] = g_new0 (gint64, m->size[good] + 1);
    m->kept[good] = g_new0 (gint64, m->size[good] + 1);
    m->way[good] = g_new0 (gint64, m->size[good] + 1);
    m->sold[good] = g_new0 (gint32, m->size[good] + 1);
  }
  m->sum[ROOMS] = g_new0 (gint64, (gsize) p->n_rooms * (WEEK + 1) + 1);
  m->sum[COACHES] = g_new0 (gint64, (gsize) p->n_coaches * (WEEK + 1) + 1);
  m->stock[COUNTS] = g_new0 (gint32, days + 1);
  m->stock[HARDS] = g_new0 (gint32, days + 1);
  for (gsize k = 0; k < days; k++) {
    int most = p->coaches[k / LAP_FILL_DAYS].most;

    m->stock[COUNTS][k] = most ? MAX (most - (int) t->count[k], 0) : -1;
    m->stock[HARDS][k] = MAX (LAP_FILL_HARD - (int) t->hards[k], 0);
  }
  m->rooms = g_new0 (int *, p->n_classes + 1);
  m->coaches = g_new0 (int *, p->n_classes + 1);
  for (guint i = 0; i < p->n_classes; i++) {
    m->rooms[i] = lap_fill_suitable (p->classes[i].rooms, p->n_rooms);
    m->coaches[i] = lap_fill_suitable (p->classes[i].coaches, p->n_coaches);
  }
}

static void
tear_down (Market *m)
{
  for (int good = 0; good < GOODS; good++) {
    g_free (m->price[good]);
    g_free (m->kept[good]);
    g_free (m->sum[good]);
    g_free (m->way[good]);
    g_free (m->sold[good]);
    g_free (m->stock[good]);
  }
  for (guint i = 0; i < m->t->problem->n_classes; i++) {
    g_free (m->rooms[i]);
    g_free (m->coaches[i]);
  }
  g_free (m->rooms);
  g_free (m->coaches);
}

gboolean
lap_fill_bound (const LapFillTable *t, guint64 found, guint64 *least, guint *least_unplaced,
                GCancellable *cancellable, void (*progress) (double share, gpointer data), gpointer data)
{
  Market m = { 0 };
  gint64 known = ((gint64) found - t->points) * SCALE, best = 0, length = FIRST * SCALE;
  guint rounds;
  gboolean cancelled = FALSE;

  set_up (&m, t);
  rounds = CLAMP (WORK / count_looks (&m), 1, ROUNDS);
  for (guint round = 0; round < rounds && known - best >= SCALE && !cancelled; round++) {
    gint64 bound = hold_market (&m, TRUE);

    if (bound > best) {
      best = bound;
      copy_prices (&m, m.kept, m.price);
    }
    length = length * (1000 - SLOWER) / 1000;
    change_prices (&m, length);
    if (progress)
      progress (1.0 * round / rounds, data);
    cancelled = g_cancellable_is_cancelled (cancellable);
  }
  *least = t->points + (best + SCALE - 1) / SCALE;
  copy_prices (&m, m.price, m.kept);
  best = hold_market (&m, FALSE);
  *least_unplaced = best <= 0 ? 0 : (best + SCALE * LAP_FILL_UNPLACED - 1) / (SCALE * LAP_FILL_UNPLACED);
  tear_down (&m);
  return !cancelled;
}
