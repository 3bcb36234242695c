/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "clock/moment.h"

#include "base/halve.h"

/* Seconds that a line stays after it should have been said: who is behind needs it longest. */
#define LINGER 2

/* The turn that @second is in or that comes next, or the number of turns. */
static guint
turn_at (const LapTimeline *timeline, int second)
{
  return LAP_HALVE (timeline->n_turns, i, timeline->turns[i].end <= second);
}

/* Blocks at their own pace share their work: what is next is what comes after it. */
static const LapTurn *
turn_after (const LapTimeline *timeline, guint turn)
{
  for (guint i = turn + 1; i < timeline->n_turns; i++)
    if (timeline->turns[i].start >= timeline->turns[turn].end)
      return &timeline->turns[i];
  return NULL;
}

static void
find_lines (LapMoment *moment, const LapScript *script, double second)
{
  const LapLine *last = lap_script_at (script, second);
  guint next = last != NULL ? last - script->lines + 1 : 0;

  if (last != NULL && second < last->start + last->seconds + LINGER) {
    moment->saying = TRUE;
    moment->lines[moment->n_lines++] = last;
  }
  while (moment->n_lines < LAP_MOMENT_LINES && next < script->n)
    moment->lines[moment->n_lines++] = &script->lines[next++];
}

LapMoment
lap_moment_at (const LapTimeline *timeline, const LapScript *script, gint64 clock)
{
  int second = clock / G_USEC_PER_SEC;
  guint turn = turn_at (timeline, second);
  LapMoment moment = { .interval = lap_timeline_at (timeline, second) };

  if (moment.interval != NULL) {
    gint64 start = (gint64) moment.interval->start * G_USEC_PER_SEC;
    gint64 whole = (gint64) moment.interval->seconds * G_USEC_PER_SEC;

    moment.gone = (clock - start) / (double) whole;
    moment.left = (start + whole - clock + G_USEC_PER_SEC - 1) / G_USEC_PER_SEC;
  }
  if (turn < timeline->n_turns) {
    moment.turn = &timeline->turns[turn];
    moment.next = turn_after (timeline, turn);
  }
  find_lines (&moment, script, clock / (double) G_USEC_PER_SEC);
  return moment;
}
