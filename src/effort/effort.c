/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One exponential for each interval makes the trace; the running integral beside it makes every mean a difference of
 * two numbers, and every search a bisection. What is asked for between two moments is answered piece by piece: a
 * piece is the stretch of one segment that lies between them.
 */
#include "effort/effort.h"

#include "base/halve.h"
#include "effort/demand.h"

#include <math.h>

#define SAME_PEAK 1e-6
#define SAME_MOMENT 1e-6 /* seconds: a run that was left a hair too early isn't found again */
#define SPREAD 0.25 /* of energy, either way */
#define RIBBON 2.0  /* METs of fitness, either way */

/* The part of a segment between two moments. */
typedef struct {
  LapCurve curve;   /* begins with the piece */
  double   start, seconds;
  double   to;
} Piece;

static guint
segment_at (const LapEffort *effort, double second)
{
  return lap_last_of (LAP_HALVE (effort->n, i, effort->segments[i].start <= second));
}

/* FALSE when nothing of segment @i lies between @start and @end. */
static gboolean
piece_of (const LapEffort *effort, guint i, double start, double end, Piece *piece)
{
  const LapEffortSegment *segment;
  double from, to;

  if (i >= effort->n)
    return FALSE;
  segment = &effort->segments[i];
  from = MAX (start, segment->start);
  to = MIN (end, segment->start + segment->seconds);
  if (from >= to)
    return FALSE;
  piece->curve = segment->curve;
  if (from > segment->start)
    piece->curve.from = lap_curve_at (&segment->curve, from - segment->start);
  piece->start = from;
  piece->seconds = to - from;
  piece->to = to < segment->start + segment->seconds ? lap_curve_at (&piece->curve, piece->seconds) : segment->to;
  return TRUE;
}

/* All of segment @i lies between @start and @end. */
static gboolean
is_whole (const LapEffort *effort, guint i, double start, double end)
{
  return i < effort->n && effort->segments[i].start >= start &&
         effort->segments[i].start + effort->segments[i].seconds <= end;
}

static void
trace (LapEffort *effort, const double *mets)
{
  double x = LAP_EFFORT_START, area = 0;

  for (guint i = 0; i < effort->n; i++) {
    const LapInterval *interval = &effort->timeline->intervals[i];
    LapEffortSegment *segment = &effort->segments[i];
    double demand = lap_demand (mets[i], effort->fitness), target = CLAMP (demand, 0, 1);

    *segment = (LapEffortSegment) {
      .start = interval->start, .seconds = interval->seconds, .kind = interval->kind, .met = mets[i],
      .demand = demand, .area = area,
      .curve = { x, target, lap_kinetics_tau (&lap_kinetics, x, target, mets[i]) },
    };
    x = segment->to = lap_curve_go (&segment->curve, interval->seconds, &area);
  }
}

static void
sum_up (LapEffort *effort)
{
  const LapTimeline *t = effort->timeline;
  double energy;

  effort->mean = lap_effort_mean (effort, 0, t->length);
  effort->peak = lap_effort_peak (effort, 0, t->length, NULL);
  lap_session_band (t->session, &effort->low, &effort->high);
  for (guint i = 0; i < effort->n; i++)
    effort->met_minutes += effort->segments[i].met * effort->segments[i].seconds / 60;
  for (guint p = 0; p < t->n_parts; p++)
    if (t->parts[p].part->kind == LAP_PART_MAIN)
      effort->in_band += lap_effort_within (effort, t->parts[p].start, t->parts[p].end, effort->low, effort->high);
  energy = lap_energy (effort->met_minutes, t->session->mass);
  effort->kcal_low = 10 * (int) round (energy * (1 - SPREAD) / 10);
  effort->kcal_high = 10 * (int) round (energy * (1 + SPREAD) / 10);
}

LapEffort *
lap_effort_new_as (LapTimeline *timeline, double fitness, guint station)
{
  LapEffort *effort = g_new0 (LapEffort, 1);
  g_autofree double *mets = lap_demand_mets (timeline, station);

  effort->timeline = lap_timeline_ref (timeline);
  effort->fitness = fitness;
  effort->rest_pulse = timeline->session->rest_pulse;
  effort->maximum = lap_maximum_pulse (timeline->session->age);
  effort->n = timeline->n;
  effort->segments = g_new (LapEffortSegment, MAX (1, effort->n));
  trace (effort, mets);
  sum_up (effort);
  return effort;
}

LapEffort *
lap_effort_new (LapTimeline *timeline)
{
  return lap_effort_new_as (timeline, lap_session_fitness (timeline->session), 0);
}

void
lap_effort_free (LapEffort *effort)
{
  lap_timeline_unref (effort->timeline);
  g_free (effort->segments);
  g_free (effort);
}

double
lap_effort_at (const LapEffort *effort, double second)
{
  const LapEffortSegment *segment;

  if (effort->n == 0)
    return LAP_EFFORT_START;
  segment = &effort->segments[segment_at (effort, second)];
  return lap_curve_at (&segment->curve, CLAMP (second - segment->start, 0, segment->seconds));
}

/* Integral of effort from 0 to @second. */
static double
area_to (const LapEffort *effort, double second)
{
  const LapEffortSegment *segment = &effort->segments[segment_at (effort, second)];

  return segment->area + lap_curve_area (&segment->curve, CLAMP (second - segment->start, 0, segment->seconds));
}

double
lap_effort_mean (const LapEffort *effort, double start, double end)
{
  if (effort->n == 0 || start >= end)
    return lap_effort_at (effort, start);
  return (area_to (effort, end) - area_to (effort, start)) / (end - start);
}

double
lap_effort_peak (const LapEffort *effort, double start, double end, double *when)
{
  double peak = lap_effort_at (effort, start), at = start;
  Piece piece;

  for (guint i = segment_at (effort, start);; i++) {
    if (is_whole (effort, i, start, end) && effort->segments[i].to < peak - SAME_PEAK)
      continue;
    if (!piece_of (effort, i, start, end, &piece))
      break;
    if (piece.to < peak - SAME_PEAK)
      continue;
    peak = MAX (peak, piece.to);
    at = piece.start + piece.seconds;
  }
  if (when != NULL)
    *when = at;
  return peak;
}

/* Below, within or above the band from @low to @high: −1, 0, 1. Effort only rises or only falls in a segment, so that
 * all of it lies where both of its ends do. */
static int
zone_of (double x, double low, double high)
{
  return x < low ? -1 : x > high;
}

double
lap_effort_within (const LapEffort *effort, double start, double end, double low, double high)
{
  double seconds = 0, beyond = nextafter (high, INFINITY);
  Piece piece;

  for (guint i = segment_at (effort, start);; i++) {
    const LapEffortSegment *segment = &effort->segments[i];

    if (is_whole (effort, i, start, end) &&
        zone_of (segment->curve.from, low, high) == zone_of (segment->to, low, high)) {
      seconds += zone_of (segment->to, low, high) == 0 ? segment->seconds : 0;
      continue;
    }
    if (!piece_of (effort, i, start, end, &piece))
      return seconds;
    seconds += lap_curve_above (&piece.curve, piece.seconds, piece.to, low) -
               lap_curve_above (&piece.curve, piece.seconds, piece.to, beyond);
  }
}

/* The first segment from @i on that isn't whole or that effort doesn't stay on one side of @level in: it only rises or
 * only falls in a segment, so that its ends tell. */
static guint
skip (const LapEffort *effort, guint i, double start, double end, double level, gboolean below)
{
  while (is_whole (effort, i, start, end) && (effort->segments[i].curve.from < level) == below &&
         (effort->segments[i].to < level) == below)
    i++;
  return i;
}

gboolean
lap_effort_next_run (const LapEffort *effort, double start, double end, double level, gboolean below,
                     LapEffortRun *run)
{
  gboolean inside = FALSE;
  Piece piece;

  for (guint i = segment_at (effort, start);; i++) {
    guint from = i;
    gboolean begins, ends;
    double passes;

    i = skip (effort, from, start, end, level, below == inside);
    if (i > from)
      run->end = effort->segments[i - 1].start + effort->segments[i - 1].seconds;
    if (!piece_of (effort, i, start, end, &piece))
      break;
    begins = (piece.curve.from < level) == below;
    ends = (piece.to < level) == below;
    passes = begins == ends ? 0 : CLAMP (lap_curve_passes (&piece.curve, level), 0, piece.seconds);
    if (begins && !inside)
      run->start = piece.start;
    inside = inside || begins;
    if (inside && !ends) {
      run->end = piece.start + passes;
      if (run->end - run->start > SAME_MOMENT)
        return TRUE;
      inside = FALSE;
    }
    if (!inside && ends) {
      run->start = piece.start + passes;
      inside = TRUE;
    }
    run->end = piece.start + piece.seconds;
  }
  return inside;
}

guint
lap_effort_starts (const LapTimeline *timeline)
{
  guint most = 1;

  for (guint p = 0; p < timeline->n_parts; p++)
    most = MAX (most, lap_demand_stations (&timeline->parts[p]));
  return most;
}

LapRibbon *
lap_ribbon_new (LapTimeline *timeline)
{
  LapRibbon *ribbon = g_new (LapRibbon, 1);
  double fitness = lap_session_fitness (timeline->session);
  guint starts = lap_effort_starts (timeline);

  ribbon->n = 2 * starts;
  ribbon->traces = g_new (LapEffort *, ribbon->n);
  for (guint i = 0; i < starts; i++) {
    ribbon->traces[2 * i] = lap_effort_new_as (timeline, MAX (fitness - RIBBON, RIBBON), i);
    ribbon->traces[2 * i + 1] = lap_effort_new_as (timeline, fitness + RIBBON, i);
  }
  return ribbon;
}

void
lap_ribbon_free (LapRibbon *ribbon)
{
  for (guint i = 0; i < ribbon->n; i++)
    lap_effort_free (ribbon->traces[i]);
  g_free (ribbon->traces);
  g_free (ribbon);
}

void
lap_ribbon_at (const LapRibbon *ribbon, double second, double *low, double *high)
{
  *low = 1;
  *high = 0;
  for (guint i = 0; i < ribbon->n; i++) {
    double x = lap_effort_at (ribbon->traces[i], second);

    *low = MIN (*low, x);
    *high = MAX (*high, x);
  }
}
