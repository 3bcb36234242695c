/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures, sets of them, and where a player is.
 */
#include "figure/figure.h"

#include "figure/draw.h"

#define TAKE_UP 1.6   /* seconds to take up a held pose */
#define USUAL_REP 4.0 /* seconds a repetition where the exercise doesn't say */
#define DOWN 0.3      /* share of a repetition with a pause that goes down, and up */

struct _LapFigureSet {
  LapFigureLookup lookup;
  gpointer data;
  GHashTable *figures; /* id → LapFigure */
};

/* ---- Reading ---- */

static LapFigure *
read_expanded (const char *id, JsonObject *full, GError **error)
{
  g_autoptr (LapFigure) figure = g_new0 (LapFigure, 1);

  figure->id = g_strdup (id);
  if (!lap_figure_read (figure, full, error))
    return NULL;
  for (guint i = 0; i < figure->n_keys; i++)
    lap_solve (figure, &figure->keys[i], &figure->poses[i]);
  return g_steal_pointer (&figure);
}

LapFigure *
lap_figure_new (const char *id, JsonObject *object, LapFigureLookup lookup, gpointer data, GError **error)
{
  g_autoptr (JsonObject) full = lap_figure_expand (id, object, lookup, data, error);
  g_autoptr (LapFigure) figure = full != NULL ? read_expanded (id, full, error) : NULL;

  if (figure == NULL)
    return NULL;
  if (figure->alternates)
    {
      g_autoptr (JsonObject) other = lap_figure_swap (full);

      figure->swapped = read_expanded (id, other, error);
      if (figure->swapped == NULL)
        return NULL;
    }
  lap_figure_measure (figure);
  return g_steal_pointer (&figure);
}

void
lap_figure_free (LapFigure *figure)
{
  if (figure == NULL)
    return;
  lap_figure_free (figure->swapped);
  g_free (figure->id);
  g_free (figure);
}

LapFigureSet *
lap_figure_set_new (LapFigureLookup lookup, gpointer data)
{
  LapFigureSet *set = g_new0 (LapFigureSet, 1);

  set->lookup = lookup;
  set->data = data;
  set->figures = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, (GDestroyNotify) lap_figure_free);
  return set;
}

void
lap_figure_set_free (LapFigureSet *set)
{
  if (set == NULL)
    return;
  g_hash_table_unref (set->figures);
  g_free (set);
}

const LapFigure *
lap_figure_set_get (LapFigureSet *set, const char *id, GError **error)
{
  LapFigure *figure = g_hash_table_lookup (set->figures, id);
  JsonObject *object = NULL;

  if (figure != NULL)
    return figure;
  object = set->lookup (id, set->data);
  if (object == NULL)
    return NULL;
  figure = lap_figure_new (id, object, set->lookup, set->data, error);
  if (figure != NULL)
    g_hash_table_insert (set->figures, g_strdup (id), figure);
  return figure;
}

/* ---- Asking ---- */

guint
lap_figure_poster_key (const LapFigure *figure)
{
  return figure->poster;
}

/* ---- Playing ---- */

typedef struct {
  guint a, b;
  double t;
  gboolean even;
} LapMoment;

/* Two keys of a loop are the ends of a swing. */
static gboolean
turns_back (const LapFigure *figure)
{
  return figure->cycle == LAP_FIGURE_THERE_AND_BACK ||
         (figure->cycle == LAP_FIGURE_LOOP && figure->n_keys <= 2);
}

static LapMoment
moment_forward (const LapFigure *figure, double share)
{
  double s = CLAMP (share, 0.0, 1.0) * (figure->n_keys - 1);
  guint i = MIN ((guint) s, figure->n_keys - 2);

  return (LapMoment) { i, i + 1, s - i, figure->cycle == LAP_FIGURE_LOOP && figure->n_keys > 2 };
}

static LapMoment
moment_at (const LapFigure *figure, double phase)
{
  LapMoment moment = { 0 };

  if (figure->n_keys == 1)
    return moment;
  if (turns_back (figure))
    moment = moment_forward (figure, 1.0 - fabs (1.0 - 2.0 * phase));
  else if (figure->cycle == LAP_FIGURE_HOLD_BOTTOM)
    moment = moment_forward (figure, MIN (phase, 1.0 - phase) / DOWN);
  else
    moment = moment_forward (figure, phase);
  return moment;
}

/* One that alternates does one side in the first half of its phase and the other in the second. */
static const LapFigure *
side_at (const LapFigure *figure, double *phase)
{
  *phase = figure->cycle == LAP_FIGURE_HOLD ? CLAMP (*phase, 0.0, 1.0) : *phase - floor (*phase);
  if (figure->swapped == NULL || figure->cycle == LAP_FIGURE_HOLD)
    return figure;
  *phase *= 2.0;
  if (*phase < 1.0)
    return figure;
  *phase -= 1.0;
  return figure->swapped;
}

const LapFigure *
lap_figure_side (const LapFigure *figure, double phase)
{
  return side_at (figure, &phase);
}

/* The picture goes along with a traveller, so that they stay in it. */
static void
follow (const LapFigure *figure, double phase, LapFigurePose *pose)
{
  double way =
    figure->poses[figure->n_keys - 1].p[LAP_JOINT_PELVIS].x - figure->poses[0].p[LAP_JOINT_PELVIS].x;

  for (guint i = 0; i < LAP_N_JOINTS; i++)
    pose->p[i].x -= way * phase;
  for (guint i = 0; i < LAP_N_SPINE; i++)
    pose->spine[i].x -= way * phase;
}

void
lap_figure_pose (const LapFigure *figure, double phase, LapFigurePose *pose)
{
  const LapFigure *side = side_at (figure, &phase);
  LapMoment moment = moment_at (side, phase);

  lap_blend (side, moment.a, moment.b, moment.t, moment.even, pose);
  if (figure->cycle == LAP_FIGURE_TRAVEL)
    follow (side, phase, pose);
}

double
lap_figure_key_phase (const LapFigure *figure, guint key)
{
  double share = figure->n_keys > 1 ? (double) key / (figure->n_keys - 1) : 0.0;

  if (figure->cycle == LAP_FIGURE_HOLD)
    return share;
  if (turns_back (figure))
    share /= 2.0;
  else if (figure->cycle == LAP_FIGURE_HOLD_BOTTOM)
    share *= DOWN;
  return figure->swapped != NULL ? share / 2.0 : share;
}

double
lap_figure_phase (const LapFigure *figure, double seconds, double per_rep)
{
  double reps = seconds / (per_rep > 0.0 ? per_rep : USUAL_REP);

  if (figure->cycle == LAP_FIGURE_HOLD || figure->n_keys == 1)
    return CLAMP (seconds / TAKE_UP, 0.0, 1.0);
  if (figure->swapped != NULL)
    reps /= 2.0;
  return reps - floor (reps);
}
