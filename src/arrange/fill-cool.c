/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ejection search with cooling (Glover 1996, Discrete Applied Mathematics 65:223, on ejection chains; Kirkpatrick,
 * Gelatt, Vecchi 1983, Science 220:671). One try moves a class somewhere it may be, lifts those that are in its way,
 * and is kept by chance, the less likely the worse it made things and the cooler it is. All in whole numbers.
 */
#include "arrange/fill-table.h"

#include <string.h>

/* Temperatures as powers of two of 1/256 point, in steps of 1/4096. */
#define HOT  (11 << 12)
#define COLD (5 << 12)
#define HEATS 2    /* how often it is heated */
#define PAUSE 4096 /* tries between two looks at whether it was cancelled */
#define MOST_IN_THE_WAY 6
#define PLACES_TO_GO 4 /* that one who was in the way looks at */
#define DRAWS 8        /* places drawn for a class until one can be had */

typedef struct {
  LapFillTable *t;
  guint64   random;
  guint    *movable, n_movable;
  guint    *outside, *place_of, n_outside; /* movable classes that stand nowhere, and where each is in that list */
  int     **rooms, **coaches;              /* for each class those that suit it; [0] is how many */
  LapFillRow *wanted;                      /* starts within the wanted hours */
} Cooling;

static gboolean
is_empty (LapFillRow row)
{
  return !(row.early | row.late);
}

/* xorshift64* (Vigna 2016, ACM TOMS 42:30). */
static guint32
draw (Cooling *c)
{
  c->random ^= c->random >> 12;
  c->random ^= c->random << 25;
  c->random ^= c->random >> 27;
  return (c->random * G_GUINT64_CONSTANT (0x2545F4914F6CDD1D)) >> 32;
}

static guint
draw_below (Cooling *c, guint count)
{
  return (guint64) draw (c) * count >> 32;
}

/* 2 to the power of @x / 4096, straight between whole powers. */
static guint64
power (guint x)
{
  return ((guint64) (4096 + (x & 4095)) << (x >> 12)) >> 12;
}

/* How much worse a change may be: the temperature times -log2 of a draw, straight between whole powers. In points. */
static int
draw_allowance (Cooling *c, guint64 temperature)
{
  guint32 u = draw (c) | 1;
  guint top = 31 - __builtin_clz (u);
  guint64 log = ((guint64) (32 - top) << 12) - (top >= 12 ? u >> (top - 12) : (guint64) u << (12 - top)) + 4096;

  return temperature * log >> 20;
}

static guint
count_row (LapFillRow row)
{
  return __builtin_popcountll (row.early) + __builtin_popcountll (row.late);
}

static guint
draw_quarter (Cooling *c, LapFillRow row)
{
  guint which = draw_below (c, count_row (row)), early = __builtin_popcountll (row.early);
  guint64 half = which < early ? row.early : row.late;
  guint base = which < early ? 0 : LAP_FILL_HALF;

  if (which >= early)
    which -= early;
  for (; which; which--)
    half &= half - 1;
  return base + __builtin_ctzll (half);
}

static void
go_out (Cooling *c, guint i)
{
  c->place_of[i] = c->n_outside;
  c->outside[c->n_outside++] = i;
}

static void
come_in (Cooling *c, guint i)
{
  guint last = c->outside[--c->n_outside];

  c->outside[c->place_of[i]] = last;
  c->place_of[last] = c->place_of[i];
}

static gboolean
stands_legally (const LapFillTable *t, guint i, const LapFillPlace *at)
{
  return !lap_fill_time_rules (t, i, at->day, at->start) &&
         !(lap_fill_room_rules (t, i, at->day, at->start, at->room) & ~(guint) (LAP_FILL_ROOM | LAP_FILL_TURN)) &&
         !(lap_fill_coach_rules (t, i, at->day, at->start, at->coach) &
           ~(guint) (LAP_FILL_COACH | LAP_FILL_MOST | LAP_FILL_HARDS));
}

/* A place for the class, whoever stands there. */
static gboolean
draw_place (Cooling *c, guint i, LapFillPlace *at)
{
  const LapFillTable *t = c->t;
  const LapFillClass *class = &t->problem->classes[i];
  guint32 luck = draw (c);
  LapFillRow row;

  if (lap_fill_is_whole (t->problem, &class->was) && (luck & 7) == 0) {
    *at = class->was;
    return stands_legally (t, i, at);
  }
  at->day = draw_below (c, LAP_FILL_DAYS);
  while (class->days && (luck & 0x30) && !(class->days & 1u << at->day))
    at->day = draw_below (c, LAP_FILL_DAYS);
  at->room = c->rooms[i][0] ? c->rooms[i][1 + draw_below (c, c->rooms[i][0])] : -1;
  at->coach = c->coaches[i][0] ? c->coaches[i][1 + draw_below (c, c->coaches[i][0])] : -1;
  row = lap_fill_starts (t, i, at->day, at->room, at->coach, (luck & 0x300) != 0);
  if (is_empty (row) && (luck & 0x300))
    row = lap_fill_starts (t, i, at->day, at->room, at->coach, FALSE);
  if (luck & 0x3000) {
    LapFillRow narrow = { row.early & c->wanted[i].early, row.late & c->wanted[i].late };

    if (!is_empty (narrow))
      row = narrow;
  }
  if (is_empty (row))
    return FALSE;
  at->start = 15 * draw_quarter (c, row);
  return TRUE;
}

typedef struct {
  guint classes[MOST_IN_THE_WAY];
  guint count;
} Crowd;

static gboolean
add_to_crowd (const LapFillTable *t, Crowd *crowd, guint j)
{
  for (guint k = 0; k < crowd->count; k++)
    if (crowd->classes[k] == j)
      return TRUE;
  if (t->problem->classes[j].fixed || crowd->count == MOST_IN_THE_WAY)
    return FALSE;
  crowd->classes[crowd->count++] = j;
  return TRUE;
}

static gboolean
is_in_crowd (const Crowd *crowd, guint j)
{
  for (guint k = 0; k < crowd->count; k++)
    if (crowd->classes[k] == j)
      return TRUE;
  return FALSE;
}

/* One more of the coach's day, so that its count is kept; @hards: a hard one that the coach takes part in. */
static gboolean
add_one_of_day (Cooling *c, Crowd *crowd, int slot, gboolean hards)
{
  const LapFillTable *t = c->t;
  guint seen = 0, chosen = 0;

  for (int j = t->coach_first[slot]; j >= 0; j = t->next_of_coach[j]) {
    const LapFillClass *class = &t->problem->classes[j];

    if (class->fixed || is_in_crowd (crowd, j) || (hards && !(class->hard && class->takes_part)))
      continue;
    if (draw_below (c, ++seen) == 0)
      chosen = j;
  }
  return seen && add_to_crowd (t, crowd, chosen);
}

/* Who has to go for the class to stand there; FALSE when someone can't. */
static gboolean
find_crowd (Cooling *c, guint i, const LapFillPlace *at, Crowd *crowd)
{
  const LapFillTable *t = c->t;
  const LapFillClass *class = &t->problem->classes[i];
  guint count, hards, most;
  int slot;

  crowd->count = 0;
  if (at->room >= 0)
    for (int j = t->room_first[lap_fill_slot (at->room, at->day)]; j >= 0; j = t->next_in_room[j])
      if (lap_fill_collide (t, i, at, j) && !add_to_crowd (t, crowd, j))
        return FALSE;
  if (at->coach < 0)
    return TRUE;
  slot = lap_fill_slot (at->coach, at->day);
  for (int j = t->coach_first[slot]; j >= 0; j = t->next_of_coach[j])
    if (at->start < t->at[j].start + t->problem->classes[j].minutes && t->at[j].start < at->start + class->minutes &&
        !add_to_crowd (t, crowd, j))
      return FALSE;
  count = t->count[slot];
  hards = t->hards[slot];
  most = t->problem->coaches[at->coach].most;
  for (guint k = 0; k < crowd->count; k++) {
    const LapFillClass *other = &t->problem->classes[crowd->classes[k]];
    const LapFillPlace *its = &t->at[crowd->classes[k]];

    if (its->coach == at->coach && its->day == at->day) {
      count--;
      hards -= other->hard && other->takes_part;
    }
  }
  if (class->hard && class->takes_part && hards >= LAP_FILL_HARD) {
    if (!add_one_of_day (c, crowd, slot, TRUE))
      return FALSE;
    count--;
  }
  return !most || count < most || add_one_of_day (c, crowd, slot, FALSE);
}

static gint64
total (const LapFillTable *t)
{
  return (gint64) LAP_FILL_UNPLACED * t->unplaced + t->points;
}

/* The place that the class which came has left, with the coach who was there if that one may, else with another. */
static gboolean
draw_left (Cooling *c, guint i, const LapFillPlace *left, gboolean with_coach, LapFillPlace *at)
{
  const LapFillClass *class = &c->t->problem->classes[i];

  *at = *left;
  if (left->room >= 0 && class->rooms[left->room])
    return FALSE;
  if (!with_coach || (left->coach >= 0 && class->coaches[left->coach]))
    at->coach = c->coaches[i][0] ? c->coaches[i][1 + draw_below (c, c->coaches[i][0])] : -1;
  return stands_legally (c->t, i, at);
}

/* Puts a class that was just lifted to where nobody stands; the cheapest of a few places. Where the house is full the
 * place that the one who came has @left is nearly the only one. */
static void
try_again (Cooling *c, guint i, const LapFillPlace *left)
{
  LapFillTable *t = c->t;
  LapFillPlace best = { -1, 0, -1, -1 }, at;
  guint least = G_MAXUINT;
  Crowd crowd;

  for (guint k = 0; k < PLACES_TO_GO && least > 0; k++) {
    gboolean drawn = left->day >= 0 && k < 2 ? draw_left (c, i, left, k == 0, &at) : draw_place (c, i, &at);
    guint points;

    if (!drawn || !find_crowd (c, i, &at, &crowd) || crowd.count)
      continue;
    points = lap_fill_wishes (t->problem, i, &at);
    if (points < least) {
      least = points;
      best = at;
    }
  }
  if (best.day >= 0)
    lap_fill_put (t, i, &best);
}

/* Moves the class and lifts those in its way, who look for another place; all of it is taken back when it made things
 * worse than allowed. */
static void
try_move (Cooling *c, guint i, int allowance)
{
  LapFillTable *t = c->t;
  LapFillPlace was = t->at[i], at, stood[MOST_IN_THE_WAY];
  gint64 before = total (t);
  gboolean found = FALSE;
  Crowd crowd;

  if (was.day >= 0)
    lap_fill_lift (t, i);
  for (guint k = 0; k < DRAWS && !found; k++)
    found = draw_place (c, i, &at) && find_crowd (c, i, &at, &crowd) && crowd.count <= 2 + (was.day < 0);
  if (!found) {
    if (was.day >= 0)
      lap_fill_put (t, i, &was);
    return;
  }
  for (guint k = 0; k < crowd.count; k++) {
    stood[k] = t->at[crowd.classes[k]];
    lap_fill_lift (t, crowd.classes[k]);
  }
  lap_fill_put (t, i, &at);
  for (guint k = 0; k < crowd.count; k++)
    try_again (c, crowd.classes[k], &was);
  if (total (t) - before <= allowance) {
    if (was.day < 0)
      come_in (c, i);
    for (guint k = 0; k < crowd.count; k++)
      if (t->at[crowd.classes[k]].day < 0)
        go_out (c, crowd.classes[k]);
    return;
  }
  lap_fill_lift (t, i);
  for (guint k = 0; k < crowd.count; k++)
    if (t->at[crowd.classes[k]].day >= 0)
      lap_fill_lift (t, crowd.classes[k]);
  for (guint k = 0; k < crowd.count; k++)
    lap_fill_put (t, crowd.classes[k], &stood[k]);
  if (was.day >= 0)
    lap_fill_put (t, i, &was);
}

/* Whether any start is legal when only fixed classes stand; those that have none are never tried. */
static gboolean
has_a_start (const Cooling *c, guint i)
{
  const LapFillTable *t = c->t;
  const int *rooms = c->rooms[i], *coaches = c->coaches[i];

  if ((t->problem->n_rooms && !rooms[0]) || (t->problem->n_coaches && !coaches[0]))
    return FALSE;
  for (int day = 0; day < LAP_FILL_DAYS; day++)
    for (int r = 0; r < MAX (rooms[0], 1); r++)
      for (int k = 0; k < MAX (coaches[0], 1); k++)
        if (!is_empty (lap_fill_starts (t, i, day, rooms[0] ? rooms[r + 1] : -1, coaches[0] ? coaches[k + 1] : -1,
                                        FALSE)))
          return TRUE;
  return FALSE;
}

static void
set_up (Cooling *c, LapFillTable *t)
{
  const LapFillProblem *p = t->problem;
  guint n = p->n_classes;

  c->t = t;
  c->random = G_GUINT64_CONSTANT (0x9E3779B97F4A7C15);
  c->movable = g_new (guint, n + 1);
  c->outside = g_new (guint, n + 1);
  c->place_of = g_new0 (guint, n + 1);
  c->rooms = g_new0 (int *, n + 1);
  c->coaches = g_new0 (int *, n + 1);
  c->wanted = g_new0 (LapFillRow, n + 1);
  for (guint i = 0; i < n; i++) {
    const LapFillClass *class = &p->classes[i];

    if (class->fixed)
      continue;
    c->rooms[i] = lap_fill_suitable (class->rooms, p->n_rooms);
    c->coaches[i] = lap_fill_suitable (class->coaches, p->n_coaches);
    for (int q = 0; q < LAP_FILL_QUARTERS; q++)
      if (!class->until || (q * 15 >= class->from && q * 15 + class->minutes <= class->until))
        lap_fill_row_set (&c->wanted[i], q);
    if (t->at[i].day < 0 && !has_a_start (c, i))
      continue;
    c->movable[c->n_movable++] = i;
    if (t->at[i].day < 0)
      go_out (c, i);
  }
}

static void
tear_down (Cooling *c)
{
  for (guint i = 0; i < c->t->problem->n_classes; i++) {
    g_free (c->rooms[i]);
    g_free (c->coaches[i]);
  }
  g_free (c->rooms);
  g_free (c->coaches);
  g_free (c->wanted);
  g_free (c->movable);
  g_free (c->outside);
  g_free (c->place_of);
}

static void
stand_as (LapFillTable *t, const LapFillPlace *places)
{
  const LapFillClass *classes = t->problem->classes;

  for (guint i = 0; i < t->problem->n_classes; i++)
    if (t->at[i].day >= 0 && !classes[i].fixed)
      lap_fill_lift (t, i);
  for (guint i = 0; i < t->problem->n_classes; i++)
    if (places[i].day >= 0 && !classes[i].fixed)
      lap_fill_put (t, i, &places[i]);
}

gboolean
lap_fill_cool (LapFillTable *t, guint64 tries, GCancellable *cancellable,
               void (*progress) (double share, gpointer data), gpointer data)
{
  guint n = t->problem->n_classes;
  g_autofree LapFillPlace *best = g_memdup2 (t->at, sizeof (LapFillPlace) * (n + 1));
  gint64 least = total (t);
  gboolean cancelled = FALSE;
  guint64 temperature = 0, heat = tries / HEATS + 1;
  Cooling c = { 0 };

  set_up (&c, t);
  for (guint64 k = 0; k < tries && c.n_movable && least > 0; k++) {
    if (k % PAUSE == 0) {
      temperature = power (HOT - (HOT - COLD) * (k % heat) / heat);
      if (progress)
        progress (1.0 * k / tries, data);
      cancelled = g_cancellable_is_cancelled (cancellable);
      if (cancelled)
        break;
    }
    try_move (&c, c.n_outside && (draw (&c) & 3) == 0 ? c.outside[draw_below (&c, c.n_outside)]
                                                      : c.movable[draw_below (&c, c.n_movable)],
              draw_allowance (&c, temperature));
    if (total (t) < least) {
      least = total (t);
      memcpy (best, t->at, sizeof (LapFillPlace) * n);
    }
  }
  stand_as (t, best);
  tear_down (&c);
  return !cancelled;
}
