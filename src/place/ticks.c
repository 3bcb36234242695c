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

GArray *
lap_ticks (const LapAxis *axis, double label)
{
  GArray *ticks = g_array_new (FALSE, FALSE, sizeof (LapTick));
  guint step = step_for (axis->zoom, label);
  double first = lap_axis_second (axis, axis->mirrored ? axis->view : 0);
  double last = lap_axis_second (axis, axis->mirrored ? 0 : axis->view);
  double labelled = -G_MAXDOUBLE; /* where the last label stands, px of the content */

  for (guint i = 0; i < axis->n; i++) {
    const LapAxisPiece *piece = &axis->pieces[i];
    int tick = piece->folded ? piece->end - piece->start : steps[step].tick;
    int from = piece->folded ? piece->start : (piece->start + tick - 1) / tick * tick;

    /* Labels depend on where labels before them stand, never on where the view begins: skip by whole ticks only. */
    for (int s = from; s < piece->end; s += tick) {
      gboolean wants = piece->folded || s % steps[step].label == 0;
      double x = piece->x + (s - piece->start) * piece->width / (piece->end - piece->start);
      gboolean has = wants && x - labelled >= label;

      if (has)
        labelled = x;
      if (s >= first - steps[step].label && s <= last + steps[step].label)
        add (ticks, axis, s, has);
    }
  }
  return ticks;
}
