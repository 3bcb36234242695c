/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/brackets.h"

#include "base/halve.h"

#include <math.h>

static void
add (GArray *all, LapBracketKind kind, guint part, guint round, int start, int end)
{
  LapBracket bracket = { start, end, part, round, kind, FALSE };

  g_array_append_val (all, bracket);
}

/* The rounds of @part and the rests between; returns the first round of the next part. */
static guint
add_rounds (GArray *all, const LapScore *score, guint part, guint first)
{
  guint i = first;

  for (; i < score->n_rounds && score->rounds[i].part == part; i++) {
    const LapRoundBox *round = &score->rounds[i];

    if (i > first)
      add (all, LAP_BRACKET_BETWEEN, part, round[-1].round, round[-1].end, round->start);
    add (all, LAP_BRACKET_ROUND, part, round->round, round->start, round->end);
  }
  if (i > first)
    g_array_index (all, LapBracket, all->len - 1).ends = TRUE;
  return i;
}

LapBrackets *
lap_brackets_new (const LapScore *score)
{
  GArray *all = g_array_new (FALSE, FALSE, sizeof (LapBracket));
  LapBrackets *self = g_new (LapBrackets, 1);
  guint round = 0;

  for (guint p = 0; p < score->timeline->n_parts; p++) {
    const LapStretch *part = &score->timeline->parts[p];
    int end = MAX (part->start, part->end - part->part->rest_after);

    if (part->end == part->start)
      continue;
    add (all, LAP_BRACKET_PART, p, 0, part->start, end);
    g_array_index (all, LapBracket, all->len - 1).ends = TRUE;
    round = add_rounds (all, score, p, round);
    add (all, LAP_BRACKET_AFTER, p, 0, end, part->end);
  }
  self->n = all->len;
  self->all = (LapBracket *) g_array_free (all, FALSE);
  return self;
}

void
lap_brackets_free (LapBrackets *self)
{
  if (self == NULL)
    return;
  g_free (self->all);
  g_free (self);
}

gboolean
lap_bracket_is_upper (const LapBracket *bracket)
{
  return bracket->kind == LAP_BRACKET_PART || bracket->kind == LAP_BRACKET_AFTER;
}

gboolean
lap_bracket_is_rest (const LapBracket *bracket)
{
  return bracket->kind == LAP_BRACKET_BETWEEN || bracket->kind == LAP_BRACKET_AFTER;
}

/* The first bracket that starts at @second or later: starts never fall. */
static guint
first_from (const LapBrackets *self, double second)
{
  return LAP_HALVE (self->n, i, self->all[i].start < second);
}

void
lap_brackets_visible (const LapBrackets *self, const LapAxis *axis, guint *first, guint *end)
{
  double from = lap_axis_second (axis, axis->mirrored ? axis->view + LAP_BRACKET_GRIP : -LAP_BRACKET_GRIP);
  double to = lap_axis_second (axis, axis->mirrored ? -LAP_BRACKET_GRIP : axis->view + LAP_BRACKET_GRIP);

  *first = first_from (self, from);
  *end = first_from (self, to + 1);
  /* What started before and still lasts: its part, at the latest, comes before all of that. */
  if (*first > 0)
    (*first)--;
  while (*first > 0 && self->all[*first].kind != LAP_BRACKET_PART)
    (*first)--;
}

static gboolean
is_last (const LapBracket *bracket, const LapAxis *axis)
{
  return bracket->end >= axis->length;
}

/* A thin rest between rounds has its grip round it. One after a part has it behind, for before it is the part's; but
 * behind the last is nothing that could be pressed, so there the part's is before it. */
LapBracketPlace
lap_bracket_place (const LapBracket *bracket, const LapAxis *axis)
{
  int from = lround (lap_axis_x (axis, bracket->start)), to = lround (lap_axis_x (axis, bracket->end));
  LapBracketPlace place = { MIN (from, to), ABS (to - from) };
  int more = LAP_BRACKET_GRIP - place.width;

  if (!lap_bracket_is_rest (bracket) || more <= 0)
    return place;
  place.width = LAP_BRACKET_GRIP;
  if (bracket->kind == LAP_BRACKET_BETWEEN)
    place.x -= more / 2;
  else if (axis->mirrored != is_last (bracket, axis))
    place.x -= more;
  return place;
}

gboolean
lap_bracket_is_open (const LapBracket *bracket, const LapAxis *axis)
{
  return axis->n > 0 && !axis->pieces[lap_axis_piece_at (axis, MAX (bracket->end - 1, 0))].folded;
}

guint
lap_brackets_step (const LapBrackets *self, guint from, int by)
{
  if (from >= self->n)
    return LAP_NO_BRACKET;
  for (gint64 i = (gint64) from + by; i >= 0 && i < self->n; i += by)
    if (lap_bracket_is_upper (&self->all[i]) == lap_bracket_is_upper (&self->all[from]))
      return i;
  return LAP_NO_BRACKET;
}

gboolean
lap_brackets_are_apart (const LapBrackets *self, const LapAxis *axis, guint index)
{
  const LapBracket *bracket = &self->all[index];
  guint before;

  if (!lap_bracket_is_rest (bracket))
    return lap_bracket_place (bracket, axis).width >= LAP_MERGE_BELOW;
  before = lap_brackets_step (self, index, -1);
  return before != LAP_NO_BRACKET && lap_bracket_place (&self->all[before], axis).width >= 3 * LAP_BRACKET_GRIP;
}

static gboolean
is_at_end (const LapBracket *bracket, const LapAxis *axis, double x)
{
  double end = lap_axis_x (axis, bracket->end), into = axis->mirrored ? x - end : end - x;

  /* Before the grip of the rest, where that lies inside. */
  if (lap_bracket_is_upper (bracket) && is_last (bracket, axis))
    into -= LAP_BRACKET_GRIP;
  return bracket->ends && into >= 0 && into <= LAP_BRACKET_GRIP;
}

guint
lap_brackets_hit (const LapBrackets *self, const LapAxis *axis, double x, gboolean upper, gboolean *at_end)
{
  guint found = LAP_NO_BRACKET, first, end;

  *at_end = FALSE;
  lap_brackets_visible (self, axis, &first, &end);
  for (guint i = first; i < end; i++) {
    const LapBracket *bracket = &self->all[i];
    LapBracketPlace place = lap_bracket_place (bracket, axis);
    gboolean rest = lap_bracket_is_rest (bracket);

    if (lap_bracket_is_upper (bracket) != upper || x < place.x || x > place.x + place.width ||
        !lap_brackets_are_apart (self, axis, i) || (found != LAP_NO_BRACKET && (!rest || *at_end)))
      continue;
    found = i;
    *at_end = (rest || is_at_end (bracket, axis, x)) && lap_bracket_is_open (bracket, axis);
  }
  return found;
}

guint
lap_brackets_find (const LapBrackets *self, LapBracketKind kind, guint part, guint round)
{
  for (guint i = 0; i < self->n; i++)
    if (self->all[i].kind == kind && self->all[i].part == part && self->all[i].round == round)
      return i;
  return LAP_NO_BRACKET;
}

double
lap_brackets_round_seconds (const LapScore *score, guint part)
{
  const LapStretch *stretch = &score->timeline->parts[part];
  int round_rest = stretch->part->round_rest;

  return (stretch->end - stretch->part->rest_after - stretch->start + round_rest) / (double) stretch->part->rounds;
}
