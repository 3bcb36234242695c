/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/costs.h"

#include <math.h>

#define MOST_TASTE (24 * LAP_QUARTERS)

/* Left and right of one exercise in two blocks are one. */
static gboolean
is_one (const LapTask *a, const LapTask *b)
{
  return a->shown == b->shown && ((a->sides == LAP_SIDES_LEFT && b->sides == LAP_SIDES_RIGHT) ||
                                  (a->sides == LAP_SIDES_RIGHT && b->sides == LAP_SIDES_LEFT));
}

static int
taste (const LapTask *a, const LapTask *b)
{
  int quarters = 4 * LAP_QUARTERS * __builtin_popcount (a->load_mask & b->load_mask) +
                 3 * LAP_QUARTERS * (__builtin_popcount (a->primary & b->secondary) +
                                     __builtin_popcount (b->primary & a->secondary));

  if (a->shown->impact == LAP_IMPACT_HIGH && b->shown->impact == LAP_IMPACT_HIGH)
    quarters += 4 * LAP_QUARTERS;
  if (a->shown->pattern == b->shown->pattern)
    quarters += LAP_QUARTERS;
  quarters += 3 * ABS (lap_change_steps (a->shown->posture, b->shown->posture));
  return MIN (quarters, MOST_TASTE);
}

/* What @a directly before @b costs with @seconds between them. */
static int
cost_of_pair (const LapTimeline *t, const LapPart *part, const LapTask *a, const LapTask *b, int seconds)
{
  guint32 focus = lap_words_mask (&lap_regions, (const char * const *) t->session->focus), shared;
  LapChangeRule rule = lap_session_rule (t->session);
  int cost;

  if (a->shown == NULL || b->shown == NULL || is_one (a, b))
    return 0;
  cost = taste (a, b);
  if (lap_exercises_tire (a->shown, b->shown, &shared) && part->aim == 0 &&
      (focus == 0 || (lap_muscle_regions (shared) & ~focus)))
    cost += LAP_RULE;
  if (lap_change_seconds (&rule, a->shown, b->shown, part->run == LAP_RUN_STATIONS) > seconds)
    cost += LAP_RULE;
  return cost;
}

/* The tasks of the part, by round from 0 and block; NULL for a talk or pause. */
static const LapTask **
gather_tasks (const LapTimeline *t, guint p, guint n, int rounds)
{
  const LapTask **tasks = g_new0 (const LapTask *, MAX (1, n * rounds));
  const LapStretch *s = &t->parts[p];

  for (guint i = s->turn; i < s->turn + s->n_turns; i++)
    tasks[(t->turns[i].round - 1) * n + t->turns[i].block] = &t->tasks[t->turns[i].task];
  return tasks;
}

static int
rest_of (const LapTimeline *t, guint p, const LapTask *task)
{
  const LapPart *part = t->parts[p].part;

  if (part->run == LAP_RUN_ON_THE_MINUTE)
    return part->every - MIN (part->every, task->estimate > 0 ? task->estimate : task->work);
  return task->rest;
}

static int
place_cost (const LapTask *task, guint k, guint n)
{
  const guint32 weights = LAP_BIT (LAP_KIT_DUMBBELLS) | LAP_BIT (LAP_KIT_DUMBBELL) | LAP_BIT (LAP_KIT_KETTLEBELL);
  double at = (double) k / n, cost = 0;

  if (task == NULL || task->shown == NULL)
    return 0;
  if (task->shown->impact == LAP_IMPACT_HIGH)
    cost += 3 * MAX (0, 1 - 6 * at) + 4 * MAX (0, 4 * at - 3);
  if ((task->care & LAP_BIT (LAP_CARE_BALANCE)) ||
      (task->shown->pattern == LAP_PATTERN_HINGE && (task->kit & weights)))
    cost += 3 * MAX (0, 3 * at - 2);
  return (int) floor (cost * LAP_QUARTERS + 0.5);
}

/* Warnings that three in a row raise: one joint in all three, hard landings in all three. */
static guint8
run_of (const LapTimeline *t, const LapTask *a, const LapTask *b, const LapTask *c)
{
  guint32 also = lap_words_mask (&lap_care_words, (const char * const *) t->session->also_for);
  guint32 joints;

  if (a == NULL || b == NULL || c == NULL || a->shown == NULL || b->shown == NULL || c->shown == NULL)
    return 0;
  joints = (a->load_mask | (a->care & also)) & (b->load_mask | (b->care & also)) & (c->load_mask | (c->care & also));
  return ((joints & ~LAP_BIT (LAP_CARE_BALANCE)) != 0) +
         (a->shown->impact == LAP_IMPACT_HIGH && b->shown->impact == LAP_IMPACT_HIGH &&
          c->shown->impact == LAP_IMPACT_HIGH);
}

static void
fill_runs (LapCosts *c, const LapTimeline *t, const LapTask **tasks)
{
  guint n = c->n;
  int seams = c->circles ? c->rounds : c->rounds - 1;

  for (guint i = 0; i < n; i++)
    for (guint j = 0; j < n; j++)
      for (guint k = 0; k < n; k++) {
        guint at = (i * n + j) * n + k;

        if (i == j || j == k)
          continue;
        for (int r = 0; r < c->rounds; r++) {
          int next = (r + 1) % c->rounds;

          c->runs[at] = MAX (c->runs[at], run_of (t, tasks[r * n + i], tasks[r * n + j], tasks[r * n + k]));
          if (r >= seams)
            continue;
          c->runs_over[at] = MAX (c->runs_over[at],
                                  run_of (t, tasks[r * n + i], tasks[r * n + j], tasks[next * n + k]));
          c->runs_under[at] = MAX (c->runs_under[at],
                                   run_of (t, tasks[r * n + i], tasks[next * n + j], tasks[next * n + k]));
        }
      }
}

static void
fill_pairs (LapCosts *c, const LapTimeline *t, guint p, const LapTask **tasks)
{
  const LapPart *part = t->parts[p].part;
  guint n = c->n;
  int seams = c->circles ? c->rounds : c->rounds - 1;

  for (guint i = 0; i < n; i++)
    for (guint j = 0; j < n; j++)
      for (int r = 0; r < c->rounds; r++) {
        const LapTask *before = tasks[r * n + i], *after = tasks[r * n + j], *next = tasks[(r + 1) % c->rounds * n + j];

        if (before == NULL || after == NULL)
          continue;
        if (i != j)
          c->pairs[i * n + j] += cost_of_pair (t, part, before, after, rest_of (t, p, before));
        if (r < seams && next->block != before->block)
          c->seam[i * n + j] += cost_of_pair (t, part, before, next, rest_of (t, p, before) + part->round_rest);
      }
}

static void
fill_places (LapCosts *c, const LapTask **tasks)
{
  for (guint i = 0; i < c->n; i++)
    for (guint k = 0; k < c->n; k++)
      c->places[i * c->n + k] = i != k && !(c->is_free[i] && c->is_free[k]) ? LAP_BARRED
                                                                             : place_cost (tasks[i], k, c->n);
}

LapCosts *
lap_costs_new (const LapTimeline *t, guint p)
{
  LapPart *part = t->parts[p].part;
  LapCosts *c = g_new0 (LapCosts, 1);
  guint n = lap_part_n (part);
  g_autofree const LapTask **tasks = NULL;

  c->n = n;
  c->rounds = part->run == LAP_RUN_OWN_PACE ? 1 : part->rounds;
  c->circles = part->run == LAP_RUN_STATIONS || part->run == LAP_RUN_OWN_PACE;
  c->is_free = g_new0 (gboolean, n + 1);
  c->is_work = g_new0 (gboolean, n + 1);
  c->pairs = g_new0 (int, n * n + 1);
  c->seam = g_new0 (int, n * n + 1);
  c->places = g_new0 (int, n * n + 1);
  c->runs = g_malloc0 (n * n * n + 1);
  c->runs_over = g_malloc0 (n * n * n + 1);
  c->runs_under = g_malloc0 (n * n * n + 1);
  for (guint i = 0; i < n; i++) {
    c->is_work[i] = lap_part_nth (part, i)->kind == LAP_BLOCK_EXERCISE;
    c->is_free[i] = c->is_work[i] && !lap_part_nth (part, i)->fixed;
  }
  tasks = gather_tasks (t, p, n, c->rounds);
  fill_pairs (c, t, p, tasks);
  fill_places (c, tasks);
  fill_runs (c, t, tasks);
  return c;
}

void
lap_costs_free (LapCosts *c)
{
  g_free (c->is_free);
  g_free (c->is_work);
  g_free (c->pairs);
  g_free (c->seam);
  g_free (c->places);
  g_free (c->runs);
  g_free (c->runs_over);
  g_free (c->runs_under);
  g_free (c);
}

int
lap_costs_cost (const LapCosts *c, const guint *order)
{
  guint n = c->n;
  int cost = 0;

  if (n == 0)
    return 0;
  for (guint k = 0; k < n; k++)
    cost += c->places[order[k] * n + k];
  for (guint k = 0; k + 1 < n; k++)
    cost += c->pairs[order[k] * n + order[k + 1]];
  return cost + c->seam[order[n - 1] * n + order[0]];
}

int
lap_costs_runs (const LapCosts *c, const guint *order)
{
  guint n = c->n;
  int runs = 0;

  for (guint k = 0; k + 2 < n; k++)
    runs += c->runs[(order[k] * n + order[k + 1]) * n + order[k + 2]];
  if (n >= 3) {
    runs += c->runs_over[(order[n - 2] * n + order[n - 1]) * n + order[0]];
    runs += c->runs_under[(order[n - 1] * n + order[0]) * n + order[1]];
  }
  return runs;
}

int
lap_costs_total (const LapCosts *c, const guint *order)
{
  return lap_costs_cost (c, order) + LAP_RULE * lap_costs_runs (c, order);
}
