/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/ticks.h"

#include <math.h>

/* Seconds from label to label, and from tick to tick between them. */
static const struct { int label, tick; } steps[] = {
  { 5, 1 }, { 10, 1 }, { 15, 5 }, { 30, 5 }, { 60, 10 }, { 120, 30 }, { 300, 60 }, { 600, 60 }, { 900, 300 },
  { 1800, 300 }, { 3600, 600 }, { 7200, 1800 }, { 14400, 3600 },
};

#define TICK_LEAST 4 /* px between ticks */

static guint
step_for (double zoom, double label)
{
  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (steps[i].label * zoom >= label && steps[i].tick * zoom >= TICK_LEAST)
      return i;
  return G_N_ELEMENTS (steps) - 1;
}

static void
add (GArray *ticks, const LapAxis *axis, int second, gboolean labelled)
{
  double x = lap_axis_x (axis, second);

  if (x > -80 && x < axis->view + 80)
    g_array_append_vals (ticks, &(LapTick) { x, second, labelled }, 1);
}

/* The first multiple of @step on the clock at or after @second. */
static int
multiple_from (int second, int lead, int step)
{
  int clock = second + lead;

  return (clock >= 0 ? (clock + step - 1) / step * step : clock / step * step) - lead;
}

static double
x_in (const LapAxisPiece *piece, int second)
{
  return piece->x + (second - piece->start) * piece->width / (piece->end - piece->start);
}

/* Labels depend on where labels before them stand, never on where the view begins: in an open piece all from @from on
 * have one, and where the last of them stands is what the next piece has to know. */
static int
labels_of (const LapAxisPiece *piece, int lead, int step, double room, double *labelled)
{
  int from = multiple_from (piece->start, lead, step), last;

  if (from < piece->end && x_in (piece, from) - *labelled < room)
    from += step;
  if (from >= piece->end)
    return from;
  last = from + (piece->end - 1 - from) / step * step;
  *labelled = x_in (piece, last);
  return from;
}

static void
add_open (GArray *ticks, const LapAxis *axis, const LapAxisPiece *piece, int lead, guint step, int labels, double first,
          double last)
{
  int tick = steps[step].tick, from = multiple_from (MAX (piece->start, (int) first - steps[step].label), lead, tick);

  for (int s = from; s < piece->end && s <= last + steps[step].label; s += tick)
    add (ticks, axis, s, s >= labels && (s + lead) % steps[step].label == 0);
}

GArray *
lap_ticks (const LapAxis *axis, int lead, double label)
{
  GArray *ticks = g_array_new (FALSE, FALSE, sizeof (LapTick));
  guint step = step_for (axis->zoom, label);
  double first = lap_axis_first (axis), last = lap_axis_last (axis);
  double labelled = -G_MAXDOUBLE; /* where the last label stands, px of the content */

  for (guint i = 0; i < axis->n; i++) {
    const LapAxisPiece *piece = &axis->pieces[i];

    if (piece->folded) {
      gboolean has = piece->x - labelled >= label;

      if (has)
        labelled = piece->x;
      add (ticks, axis, piece->start, has);
    } else {
      int labels = labels_of (piece, lead, steps[step].label, label, &labelled);

      add_open (ticks, axis, piece, lead, step, labels, first, last);
    }
  }
  return ticks;
}
