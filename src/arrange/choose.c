/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/choose.h"

#include <glib/gi18n-lib.h>

void
lap_choice_init (LapChoice *c, LapCatalogue *catalogue, const LapSession *session, LapPartKind kind, guint32 seed)
{
  *c = (LapChoice) { .catalogue = lap_catalogue_ref (catalogue), .wishes = lap_wishes_of (session, kind), .seed = seed };
  c->wishes.without = lap_words_mask (&lap_care_words, (const char * const *) session->also_for);
  c->focus = lap_words_mask (&lap_regions, (const char * const *) session->focus);
  c->taken = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
}

void
lap_choice_clear (LapChoice *c)
{
  g_hash_table_unref (c->taken);
  lap_catalogue_unref (c->catalogue);
}

/* Counts an exercise that is there already. */
static void
count_in (LapChoice *c, const LapExercise *e, int work)
{
  guint32 regions = lap_muscle_regions (e->primary_mask);

  g_hash_table_add (c->taken, g_strdup (e->id));
  for (guint r = 0; r < LAP_N_REGIONS; r++)
    if (regions & LAP_BIT (r))
      c->seconds[r] += work;
}

/* A number that looks like chance, from the seed and an id: the same on every machine. */
static guint32
chance (guint32 seed, const char *id)
{
  guint32 hash = 2166136261u ^ seed;

  for (; *id != '\0'; id++)
    hash = (hash ^ (guchar) *id) * 16777619u;
  return hash ^ (hash >> 15);
}

/* How much @e is wanted now, in points; a point is about what one more second of a rested region is worth. */
static int
score (const LapChoice *c, const LapExercise *e, const LapExercise *before, const LapExercise *after, int work)
{
  guint32 regions = lap_muscle_regions (e->primary_mask), helped = lap_muscle_regions (e->secondary_mask);
  int points = chance (c->seed, e->id) % 20, least = G_MAXINT;

  for (guint r = 0; r < LAP_N_REGIONS; r++)
    least = MIN (least, c->seconds[r]);
  for (guint r = 0; r < LAP_N_REGIONS; r++) {
    gboolean rested = c->seconds[r] == least;

    if (regions & LAP_BIT (r))
      points += (rested ? 40 : -(c->seconds[r] - least) / 2) + (c->focus & LAP_BIT (r) ? 80 : 0);
    else if ((helped & LAP_BIT (r)) && rested)
      points += 10;
  }
  points -= g_hash_table_contains (c->taken, e->id) ? 400 : 0;
  points -= before != NULL && lap_exercises_tire (before, e, NULL) ? 200 : 0;
  points -= after != NULL && lap_exercises_tire (e, after, NULL) ? 200 : 0;
  points -= 15 * __builtin_popcount (e->load_mask);
  points -= before != NULL ? 6 * ABS (lap_change_steps (before->posture, e->posture)) : 0;
  points -= e->sides == LAP_SIDES_SPLIT && work < 30 ? 60 : 0;
  points += e->impact == LAP_IMPACT_HIGH ? -10 : 0;
  points -= e->easier == NULL ? 10 : 0;
  return points;
}

LapExercise *
lap_choice_next (LapChoice *c, const LapExercise *before, const LapExercise *after, int work)
{
  LapExercise *best = NULL;
  int most = G_MININT;

  for (guint i = 0; i < lap_catalogue_n (c->catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (c->catalogue, i);
    int points;

    if (!lap_wishes_allow (&c->wishes, e) || (points = score (c, e, before, after, work)) <= most)
      continue;
    most = points;
    best = e;
  }
  if (best != NULL)
    count_in (c, best, work);
  return best;
}

static const LapExercise *
neighbour (const LapTimeline *t, const LapPart *part, int block)
{
  const LapBlock *b;

  if (block < 0 || block >= (int) lap_part_n (part))
    return NULL;
  b = lap_part_nth (part, block);
  return b->kind == LAP_BLOCK_EXERCISE && b->exercise != NULL ? lap_catalogue_find (t->catalogue, b->exercise) : NULL;
}

static void
fill_part (const LapTimeline *t, guint p, guint32 seed, LapEdits *edits, guint *left)
{
  const LapPart *part = t->parts[p].part;
  const LapExercise *before = NULL;
  LapChoice choice;

  lap_choice_init (&choice, t->catalogue, t->session, part->kind, seed);
  for (guint i = 0; i < lap_part_n (part); i++)
    if (neighbour (t, part, i) != NULL)
      count_in (&choice, neighbour (t, part, i), lap_part_nth (part, i)->work);
  for (guint i = 0; i < lap_part_n (part); i++) {
    LapBlock *block = lap_part_nth (part, i);
    LapExercise *e;

    if (block->kind != LAP_BLOCK_EXERCISE || block->exercise != NULL) {
      before = neighbour (t, part, i);
      continue;
    }
    e = lap_choice_next (&choice, before, neighbour (t, part, i + 1), block->work);
    if (e != NULL)
      lap_edits_set_text (edits, block, "exercise", e->id);
    else
      (*left)++;
    before = e;
  }
  lap_choice_clear (&choice);
}

LapEdits *
lap_choose (const LapTimeline *t, guint32 seed, guint *left)
{
  LapEdits *edits = lap_edits_new (_("Choose exercises"));
  guint none = 0;

  for (guint p = 0; p < t->n_parts; p++)
    fill_part (t, p, seed, edits, &none);
  if (left != NULL)
    *left = none;
  return edits;
}
