/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/pool.h"

#include "catalogue/camera.h"

#include <math.h>

LapWishes
lap_wishes_of (const LapSession *s, LapPartKind kind)
{
  static const guint32 uses[] = {
    [LAP_PART_OPENING] = 0, [LAP_PART_WARM_UP] = LAP_BIT (LAP_USE_WARM_UP), [LAP_PART_MAIN] = LAP_BIT (LAP_USE_WORK),
    [LAP_PART_COOL_DOWN] = LAP_BIT (LAP_USE_COOL_DOWN), [LAP_PART_CLOSING] = 0,
  };

  return (LapWishes) {
    .uses = uses[kind], .kit = lap_kit_mask (s->kit), .quiet = s->quiet,
    .no_jumps = s->level == LAP_LEVEL_NEW,
    .width = s->space_width, .length = s->space_length,
    .lens = s->lens, .room = s->room, .portrait = s->frame == LAP_FRAME_PORTRAIT,
  };
}

static gboolean
has_space (const LapWishes *w, const LapExercise *e)
{
  if (w->width <= 0 || w->length <= 0)
    return TRUE;
  return (e->width <= w->width && e->length <= w->length) || (e->width <= w->length && e->length <= w->width);
}

gboolean
lap_wishes_allow (const LapWishes *w, const LapExercise *e)
{
  return (w->uses == 0 || (e->use_mask & w->uses)) && !(e->kit_mask & ~w->kit) &&
         (w->postures == 0 || (w->postures & LAP_BIT (e->posture))) && !(e->load_mask & w->without) &&
         !(w->quiet && e->noise == LAP_NOISE_LOUD) && !(w->no_jumps && e->impact == LAP_IMPACT_HIGH) &&
         has_space (w, e) && (w->lens <= 0 || lap_camera_distance (e, w->lens, w->portrait) <= w->room);
}

/* Steps along easier and harder links from one to the other, at most 8; -1 where no chain joins them. Chains are short
 * and have no loops: walk each way from @from. */
static int
chain_steps (LapCatalogue *catalogue, LapExercise *from, LapExercise *to)
{
  for (int way = 0; way < 2; way++) {
    LapExercise *e = from;

    for (int steps = 0; e != NULL && steps <= 8; steps++) {
      const char *next = way == 0 ? e->easier : e->harder;

      if (e == to)
        return steps;
      e = next != NULL ? lap_catalogue_find (catalogue, next) : NULL;
    }
  }
  return -1;
}

/* How far an exercise is, the worst first. */
typedef struct {
  int    taken;
  int    steps;
  int    shared;  /* negative: the more the nearer */
  int    pattern;
  double met;
} Distance;

static int
compare (const Distance *a, const Distance *b)
{
  if (a->taken != b->taken)
    return a->taken - b->taken;
  if (a->steps != b->steps)
    return a->steps - b->steps;
  if (a->shared != b->shared)
    return a->shared - b->shared;
  if (a->pattern != b->pattern)
    return a->pattern - b->pattern;
  return (a->met > b->met) - (a->met < b->met);
}

static gboolean
serves (const LapExercise *from, const LapExercise *e)
{
  return (e->primary_mask & from->primary_mask) || e->pattern == from->pattern ||
         (lap_muscle_regions (e->primary_mask) & lap_muscle_regions (from->primary_mask));
}

/* The nearest of those that serve the same, or of all with @any. What didn't jump isn't made to. */
static LapExercise *
nearest_of (LapCatalogue *catalogue, const LapWishes *wishes, LapExercise *from, GHashTable *taken, gboolean any)
{
  LapExercise *nearest = NULL;
  Distance least = { 0 };

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (catalogue, i);
    Distance d;
    int steps, order;

    if (e == from || !lap_wishes_allow (wishes, e) ||
        (e->impact == LAP_IMPACT_HIGH && from->impact != LAP_IMPACT_HIGH))
      continue;
    steps = chain_steps (catalogue, from, e);
    if (steps < 0 && !any && !serves (from, e))
      continue;
    d = (Distance) {
      .taken = taken != NULL && g_hash_table_contains (taken, e->id), .steps = steps < 0 ? 9 : steps,
      .shared = -__builtin_popcount (e->primary_mask & from->primary_mask), .pattern = e->pattern != from->pattern,
      .met = fabs (e->met_hard - from->met_hard),
    };
    order = nearest != NULL ? compare (&d, &least) : -1;
    if (order < 0 || (order == 0 && g_strcmp0 (e->id, nearest->id) < 0)) {
      nearest = e;
      least = d;
    }
  }
  return nearest;
}

LapExercise *
lap_pool_nearest (LapCatalogue *catalogue, const LapWishes *wishes, LapExercise *from, GHashTable *taken)
{
  LapExercise *nearest = nearest_of (catalogue, wishes, from, taken, FALSE);

  if (nearest == NULL && wishes->uses != 0 && !(wishes->uses & LAP_BIT (LAP_USE_WORK)))
    nearest = nearest_of (catalogue, wishes, from, taken, TRUE);
  return nearest;
}
