/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "clock/shots.h"

#include "base/halve.h"

LapShots *
lap_shots_new (const LapTimeline *timeline)
{
  GArray *array = g_array_new (FALSE, FALSE, sizeof (LapShot));
  LapShots *shots = g_new0 (LapShots, 1);
  int end = 0;

  for (guint i = 0; i < timeline->n_turns; i++) {
    const LapTurn *turn = &timeline->turns[i];
    LapShot shot = { end, turn->start, turn->end, i };

    /* Blocks that people go through at their own pace share one stretch of work. */
    if (turn->start < end)
      continue;
    g_array_append_val (array, shot);
    end = turn->end;
  }
  if (end < timeline->length) {
    LapShot last = { end, timeline->length, timeline->length, LAP_NO_TURN };

    g_array_append_val (array, last);
  }
  shots->n = array->len;
  shots->shots = (LapShot *) g_array_free (array, FALSE);
  return shots;
}

void
lap_shots_free (LapShots *shots)
{
  g_free (shots->shots);
  g_free (shots);
}

guint
lap_shots_find (const LapShots *shots, int second)
{
  return lap_last_of (LAP_HALVE (shots->n, i, shots->shots[i].start <= second));
}
