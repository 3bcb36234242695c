/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The state is an anchor and what to make of it. While it goes, the plan stands at `clock` at the moment
 * `anchor` of the source and moves on from there by whole multiples; before the anchor it is counting in.
 * Held, it stands at `clock`.
 */
#include "clock/rehearsal.h"

struct _LapRehearsal {
  LapTimeline  *timeline;
  LapShots     *shots;
  LapTimeSource source;
  gpointer      data;
  LapRehearsalState state;
  gint64        anchor; /* of the source */
  gint64        clock;  /* that belongs to it */
  gint64        now;    /* of the source, at the last look */
  int           speed;
  gint64        from, until; /* what is repeated; both 0 for nothing */
  gboolean      away;
};

LapRehearsal *
lap_rehearsal_new (LapTimeline *timeline, LapTimeSource source, gpointer data)
{
  LapRehearsal *self = g_new0 (LapRehearsal, 1);

  self->timeline = lap_timeline_ref (timeline);
  self->shots = lap_shots_new (timeline);
  self->source = source;
  self->data = data;
  self->speed = 1;
  self->now = source (data);
  return self;
}

void
lap_rehearsal_free (LapRehearsal *self)
{
  lap_shots_free (self->shots);
  lap_timeline_unref (self->timeline);
  g_free (self);
}

static gint64
length (const LapRehearsal *self)
{
  return self->timeline->length * LAP_SECOND;
}

static gboolean
is_going (const LapRehearsal *self)
{
  return self->state == LAP_REHEARSAL_COUNT_IN || self->state == LAP_REHEARSAL_RUNNING;
}

/* Where the plan stands at @time if it goes on as it goes. */
static gint64
clock_at (const LapRehearsal *self, gint64 time)
{
  gint64 clock = self->clock;

  if (!is_going (self) || time < self->anchor)
    return clock;
  clock += (time - self->anchor) * self->speed;
  if (self->until > 0 && clock >= self->until)
    clock = self->from + (clock - self->until) % (self->until - self->from);
  return MIN (clock, length (self));
}

/* The clock goes on from here: what came before has no say any more. */
static void
set_anchor (LapRehearsal *self, gint64 clock, int count_in)
{
  self->clock = clock;
  self->anchor = self->now + CLAMP (count_in, 0, LAP_MOST_IN) * LAP_SECOND;
}

static gint64
last_boundary (const LapRehearsal *self, gint64 clock)
{
  const LapInterval *interval = lap_timeline_at (self->timeline, clock / LAP_SECOND);

  return interval != NULL ? interval->start * LAP_SECOND : MIN (clock, length (self));
}

static void
hold_at (LapRehearsal *self, gint64 clock, gboolean away)
{
  set_anchor (self, clock, 0);
  self->state = LAP_REHEARSAL_HELD;
  self->away = away;
}

gboolean
lap_rehearsal_tick (LapRehearsal *self)
{
  LapRehearsalState was = self->state;
  gint64 before = self->now;

  self->now = MAX (self->source (self->data), before);
  if (!is_going (self))
    return FALSE;
  if (self->now - before > LAP_GAP)
    hold_at (self, last_boundary (self, clock_at (self, before)), TRUE);
  else if (clock_at (self, self->now) >= length (self)) {
    set_anchor (self, length (self), 0);
    self->state = LAP_REHEARSAL_DONE;
  } else
    self->state = self->now < self->anchor ? LAP_REHEARSAL_COUNT_IN : LAP_REHEARSAL_RUNNING;
  return self->state != was;
}

void
lap_rehearsal_set_speed (LapRehearsal *self, int speed)
{
  gint64 clock;

  lap_rehearsal_tick (self);
  clock = clock_at (self, self->now);
  self->speed = MAX (speed, 1);
  set_anchor (self, clock, (lap_rehearsal_count_in (self) + LAP_SECOND - 1) / LAP_SECOND);
}

static void
go (LapRehearsal *self, gint64 clock, int count_in)
{
  set_anchor (self, clock, count_in);
  self->away = FALSE;
  self->state = count_in > 0 ? LAP_REHEARSAL_COUNT_IN : LAP_REHEARSAL_RUNNING;
}

void
lap_rehearsal_start (LapRehearsal *self, int count_in)
{
  lap_rehearsal_tick (self);
  if (!is_going (self))
    go (self, self->state == LAP_REHEARSAL_DONE ? 0 : self->clock, count_in);
}

void
lap_rehearsal_hold (LapRehearsal *self)
{
  lap_rehearsal_tick (self);
  if (is_going (self))
    hold_at (self, clock_at (self, self->now), FALSE);
}

void
lap_rehearsal_sleep (LapRehearsal *self)
{
  if (is_going (self))
    hold_at (self, last_boundary (self, clock_at (self, self->now)), TRUE);
}

/* To @clock, keeping the state and what is left of a count-in. What is repeated stays so as long as it is in
 * there. */
static void
move (LapRehearsal *self, gint64 clock)
{
  clock = CLAMP (clock, 0, length (self));
  if (clock < self->from || clock >= self->until)
    self->from = self->until = 0;
  self->clock = clock;
  if (self->state != LAP_REHEARSAL_COUNT_IN)
    self->anchor = self->now;
  if (clock == length (self))
    self->state = LAP_REHEARSAL_DONE;
  else if (self->state == LAP_REHEARSAL_DONE)
    self->state = LAP_REHEARSAL_HELD;
}

void
lap_rehearsal_skip (LapRehearsal *self)
{
  const LapInterval *interval;

  lap_rehearsal_tick (self);
  interval = lap_timeline_at (self->timeline, lap_rehearsal_clock (self) / LAP_SECOND);
  if (interval != NULL)
    move (self, (interval->start + interval->seconds) * LAP_SECOND);
}

void
lap_rehearsal_back (LapRehearsal *self)
{
  gint64 clock, boundary;

  lap_rehearsal_tick (self);
  clock = lap_rehearsal_clock (self);
  boundary = last_boundary (self, MIN (clock, length (self) - 1));
  if (clock - boundary < LAP_GAP && boundary > 0)
    boundary = last_boundary (self, boundary - 1);
  move (self, MAX (boundary, 0));
}

void
lap_rehearsal_jump (LapRehearsal *self, int second)
{
  lap_rehearsal_tick (self);
  move (self, second * LAP_SECOND);
}

guint
lap_rehearsal_retakes (LapRehearsal *self)
{
  guint shot = lap_rehearsal_shot (self);

  if (shot > 0 && lap_rehearsal_clock (self) == self->shots->shots[shot].start * LAP_SECOND)
    shot--;
  return shot;
}

void
lap_rehearsal_retake (LapRehearsal *self, int count_in)
{
  lap_rehearsal_tick (self);
  if (self->shots->n == 0)
    return;
  move (self, self->shots->shots[lap_rehearsal_retakes (self)].start * LAP_SECOND);
  go (self, self->clock, count_in);
}

void
lap_rehearsal_set_repeat (LapRehearsal *self, gboolean repeat)
{
  gint64 clock;
  const LapShot *shot;

  lap_rehearsal_tick (self);
  if (repeat == lap_rehearsal_repeat (self) || self->state == LAP_REHEARSAL_DONE || self->shots->n == 0)
    return;
  clock = clock_at (self, self->now);
  shot = &self->shots->shots[lap_rehearsal_shot (self)];
  self->from = repeat ? shot->start * LAP_SECOND : 0;
  self->until = repeat ? shot->end * LAP_SECOND : 0;
  move (self, clock);
}

gboolean
lap_rehearsal_repeat (LapRehearsal *self)
{
  return self->until > 0;
}

LapRehearsalState
lap_rehearsal_state (LapRehearsal *self)
{
  return self->state;
}

gboolean
lap_rehearsal_was_away (LapRehearsal *self)
{
  return self->away;
}

gint64
lap_rehearsal_now (LapRehearsal *self)
{
  return self->now;
}

gint64
lap_rehearsal_clock (LapRehearsal *self)
{
  return clock_at (self, self->now);
}

gint64
lap_rehearsal_count_in (LapRehearsal *self)
{
  return self->state == LAP_REHEARSAL_COUNT_IN ? MAX (self->anchor - self->now, 0) : 0;
}

const LapShots *
lap_rehearsal_shots (LapRehearsal *self)
{
  return self->shots;
}

guint
lap_rehearsal_shot (LapRehearsal *self)
{
  return lap_shots_find (self->shots, lap_rehearsal_clock (self) / LAP_SECOND);
}

gboolean
lap_rehearsal_ahead (LapRehearsal *self, gint64 time, gint64 *clock)
{
  if (!is_going (self))
    return FALSE;
  *clock = time < self->anchor ? self->clock - (self->anchor - time) : clock_at (self, time);
  return *clock < length (self);
}
