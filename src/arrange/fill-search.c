/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/fill-table.h"

#include <string.h>

/* What is easiest to relax comes first; in the order of LapFillRule. */
static const guint8 ease[LAP_FILL_RULES] = { 2, 3, 3, 4, 4, 5, 5, 6, 6, 6, 20, 20 };

/* How often the search tries unless told otherwise. */
static guint64
usual_tries (guint n)
{
  return n <= 80 ? 15000 * (guint64) n : n <= 200 ? 800000 : 4000 * (guint64) n;
}

void
lap_fill_free (LapFill *fill)
{
  g_free (fill->places);
  g_free (fill->barred);
  g_free (fill);
}

/* The first timetable */

typedef struct {
  guint   i;
  guint64 ways;
} Waiting;

static int
by_ways (gconstpointer a, gconstpointer b)
{
  const Waiting *x = a, *y = b;

  return x->ways != y->ways ? (x->ways < y->ways ? -1 : 1) : (int) x->i - (int) y->i;
}

/* How many starts there are, over all rooms and coaches, each for itself: their product over the quarters of a day
 * would be the exact number of ways, and takes far longer for the same order. */
static guint64
count_ways (const LapFillTable *t, guint i)
{
  const LapFillProblem *p = t->problem;
  const LapFillClass *c = &p->classes[i];
  guint64 ways = 0;

  for (int day = 0; day < LAP_FILL_DAYS; day++) {
    guint in_rooms = 0, with_coaches = 0;

    for (guint r = 0; r < p->n_rooms; r++)
      if (!c->rooms[r]) {
        LapFillRow row = lap_fill_starts (t, i, day, r, -1, FALSE);

        in_rooms += __builtin_popcountll (row.early) + __builtin_popcountll (row.late);
      }
    for (guint k = 0; k < p->n_coaches; k++)
      if (!c->coaches[k]) {
        LapFillRow row = lap_fill_starts (t, i, day, -1, k, FALSE);

        with_coaches += __builtin_popcountll (row.early) + __builtin_popcountll (row.late);
      }
    ways += (guint64) (p->n_rooms ? in_rooms : 1) * (p->n_coaches ? with_coaches : 1);
  }
  return ways;
}

typedef struct {
  LapFillPlace place;
  guint points;
} Choice;

/* The cheapest start on one day in one room with one coach, when it is cheaper than what there is. */
static void
look_at_day (const LapFillTable *t, guint i, int day, int room, int coach, guint apart, Choice *best)
{
  LapFillRow row = lap_fill_starts (t, i, day, room, coach, TRUE);

  for (int q = 0; q < LAP_FILL_QUARTERS && apart < best->points; q++) {
    guint points;

    if (!lap_fill_row_has (row, q))
      continue;
    points = apart + lap_fill_time_points (&t->problem->classes[i], day, q * 15);
    if (points >= best->points || lap_fill_room_rules (t, i, day, q * 15, room) ||
        lap_fill_coach_rules (t, i, day, q * 15, coach))
      continue;
    *best = (Choice) { { day, q * 15, room, coach }, points };
  }
}

static void
put_cheapest (LapFillTable *t, guint i)
{
  const LapFillProblem *p = t->problem;
  const LapFillClass *c = &p->classes[i];
  Choice best = { { -1, 0, -1, -1 }, G_MAXUINT };

  for (int room = p->n_rooms ? 0 : -1; room < (int) p->n_rooms; room++) {
    if (room >= 0 && c->rooms[room])
      continue;
    for (int coach = p->n_coaches ? 0 : -1; coach < (int) p->n_coaches; coach++) {
      guint apart = lap_fill_room_points (c, room) + lap_fill_coach_points (c, coach);

      for (int day = 0; day < LAP_FILL_DAYS && !(coach >= 0 && c->coaches[coach]); day++)
        look_at_day (t, i, day, room, coach, apart, &best);
    }
  }
  if (best.place.day >= 0)
    lap_fill_put (t, i, &best.place);
}

static guint
rules_at (const LapFillTable *t, guint i, const LapFillPlace *at)
{
  return lap_fill_time_rules (t, i, at->day, at->start) |
         lap_fill_room_rules (t, i, at->day, at->start, at->room) |
         lap_fill_coach_rules (t, i, at->day, at->start, at->coach);
}

/* What stands and may, stays to begin with; the others follow, those with the fewest ways first. By itself, so that the
 * benchmark can count what it takes. */
static G_GNUC_NO_INLINE void
construct (LapFillTable *t)
{
  const LapFillProblem *p = t->problem;
  g_autofree Waiting *waiting = g_new (Waiting, p->n_classes + 1);
  guint n = 0;

  for (guint i = 0; i < p->n_classes; i++) {
    const LapFillClass *c = &p->classes[i];

    if (c->fixed)
      continue;
    if (lap_fill_is_whole (p, &c->was) && !rules_at (t, i, &c->was))
      lap_fill_put (t, i, &c->was);
    else
      waiting[n++] = (Waiting) { i, count_ways (t, i) };
  }
  qsort (waiting, n, sizeof *waiting, by_ways);
  for (guint k = 0; k < n; k++)
    put_cheapest (t, waiting[k].i);
}

/* What would have to be otherwise */

static guint
weigh (guint rules)
{
  guint weight = 0;

  for (guint k = 0; k < LAP_FILL_RULES; k++)
    if (rules & 1u << k)
      weight += ease[k];
  return weight;
}

/* The room, or the coach, whose rules are relaxed most easily at a time. */
static guint
easiest (const LapFillTable *t, guint i, int day, int start, guint count,
         guint (*rules_of) (const LapFillTable *t, guint i, int day, int start, int who), int *who)
{
  guint least = G_MAXUINT, rules = 0;

  *who = -1;
  for (guint k = 0; k < count; k++) {
    guint its = rules_of (t, i, day, start, k), weight = weigh (its);

    if (weight < least) {
      least = weight;
      rules = its;
      *who = k;
    }
  }
  return rules;
}

/* Rooms and coaches break different rules, so the best of each is the best of both. */
static guint
nearest (const LapFillTable *t, guint i, LapFillPlace *place)
{
  const LapFillClass *c = &t->problem->classes[i];
  guint least = G_MAXUINT, found = 0;

  for (int day = 0; day < LAP_FILL_DAYS; day++)
    for (int start = 0; start + c->minutes <= LAP_FILL_DAY; start += 15) {
      guint rules = lap_fill_time_rules (t, i, day, start), weight = 0;
      LapFillPlace at = { day, start, -1, -1 };

      if (weigh (rules) * 8 >= least)
        continue;
      rules |= easiest (t, i, day, start, t->problem->n_rooms, lap_fill_room_rules, &at.room);
      rules |= easiest (t, i, day, start, t->problem->n_coaches, lap_fill_coach_rules, &at.coach);
      /* Of equals the one nearer to what was wished. */
      weight = weigh (rules) * 8 + MIN (lap_fill_wishes (t->problem, i, &at), 7);
      if (weight < least) {
        least = weight;
        found = rules;
        *place = at;
      }
    }
  return found;
}

guint
lap_fill_nearest (const LapFillProblem *p, const LapFill *fill, guint i, LapFillPlace *place)
{
  g_autoptr (LapFillTable) t = lap_fill_table_new (p);

  for (guint j = 0; j < p->n_classes; j++)
    if (j != i && fill->places[j].day >= 0 && !p->classes[j].fixed)
      lap_fill_put (t, j, &fill->places[j]);
  return nearest (t, i, place);
}

/* All of it */

typedef struct {
  void   (*progress) (double share, gpointer data);
  gpointer data;
  double   from, to;
} Stretch;

static void
tell_share (double share, gpointer data)
{
  const Stretch *s = data;

  s->progress (s->from + (s->to - s->from) * share, s->data);
}

static void
find_barred (const LapFillTable *t, LapFill *fill)
{
  for (guint i = 0; i < fill->n; i++) {
    LapFillPlace place;

    if (!t->problem->classes[i].fixed)
      fill->barred[i] = nearest (t, i, &place);
  }
}

LapFill *
lap_fill_find (const LapFillProblem *p, guint64 tries, GCancellable *cancellable,
               void (*progress) (double share, gpointer data), gpointer data, GError **error)
{
  g_autoptr (LapFill) fill = g_new0 (LapFill, 1);
  g_autoptr (LapFillTable) t = lap_fill_table_new (p), empty = lap_fill_table_new (p);
  Stretch search = { progress, data, 0, 0.7 }, bound = { progress, data, 0.7, 1 };
  void (*tell) (double, gpointer) = progress ? tell_share : NULL;

  fill->n = p->n_classes;
  fill->barred = g_new0 (guint16, p->n_classes + 1);
  find_barred (empty, fill);
  construct (t);
  fill->first_unplaced = t->unplaced;
  fill->first_points = t->points;
  if (!lap_fill_cool (t, tries ? tries : usual_tries (p->n_classes), cancellable, tell, &search) ||
      !lap_fill_bound (empty, (guint64) LAP_FILL_UNPLACED * t->unplaced + t->points, &fill->least,
                       &fill->least_unplaced, cancellable, tell, &bound)) {
    g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_CANCELLED, "cancelled");
    return NULL;
  }
  fill->unplaced = t->unplaced;
  fill->points = t->points;
  fill->places = g_steal_pointer (&t->at);
  return g_steal_pointer (&fill);
}
