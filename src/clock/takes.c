/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "clock/takes.h"

/* A hold this soon after work began is still about the talk: people hold when they notice. */
#define NOTICE (2 * LAP_SECOND)

/* What was measured before one shot, in microseconds. */
typedef struct {
  gint64 held;
  gint64 late; /* of "all is said"; below 0 early */
} Measure;

struct _LapTakes {
  LapRehearsal *rehearsal;
  GPtrArray    *marks;
  Measure      *measures;
  gint64        since; /* of the source: a hold that counts began; 0 for none */
  gint64        clock; /* where it stood then */
};

static void
mark_free (gpointer data)
{
  LapTakeMark *mark = data;

  g_free (mark->at);
  g_free (mark);
}

LapTakes *
lap_takes_new (LapRehearsal *rehearsal)
{
  LapTakes *self = g_new0 (LapTakes, 1);

  self->rehearsal = rehearsal;
  self->marks = g_ptr_array_new_with_free_func (mark_free);
  self->measures = g_new0 (Measure, lap_rehearsal_shots (rehearsal)->n + 1);
  return self;
}

void
lap_takes_free (LapTakes *self)
{
  g_ptr_array_unref (self->marks);
  g_free (self->measures);
  g_free (self);
}

static const LapShot *
nth (LapTakes *self, guint shot)
{
  return &lap_rehearsal_shots (self->rehearsal)->shots[shot];
}

/* Nothing can run over before a block that has no rest before it, nor behind the last. */
static gboolean
has_talk (LapTakes *self, guint shot)
{
  return shot < lap_rehearsal_shots (self->rehearsal)->n && nth (self, shot)->turn != LAP_NO_TURN &&
         nth (self, shot)->work > nth (self, shot)->start;
}

static gboolean
is_about_talk (LapTakes *self)
{
  guint shot = lap_rehearsal_shot (self->rehearsal);
  gint64 clock = lap_rehearsal_clock (self->rehearsal);

  return !lap_rehearsal_was_away (self->rehearsal) && has_talk (self, shot) &&
         clock > nth (self, shot)->start * LAP_SECOND && clock < nth (self, shot)->work * LAP_SECOND + NOTICE;
}

void
lap_takes_look (LapTakes *self)
{
  LapRehearsalState state = lap_rehearsal_state (self->rehearsal);
  gint64 now = lap_rehearsal_now (self->rehearsal);

  if (state == LAP_REHEARSAL_HELD) {
    if (self->since == 0 && is_about_talk (self)) {
      self->since = now;
      self->clock = lap_rehearsal_clock (self->rehearsal);
    } else if (self->since != 0 && lap_rehearsal_clock (self->rehearsal) != self->clock)
      self->since = 0;
    return;
  }
  if (self->since != 0 && state != LAP_REHEARSAL_DONE) {
    guint shot = lap_shots_find (lap_rehearsal_shots (self->rehearsal), self->clock / LAP_SECOND);

    /* What went on from somewhere else wasn't a pause for breath. */
    if (lap_rehearsal_clock (self->rehearsal) >= self->clock && lap_rehearsal_shot (self->rehearsal) == shot)
      self->measures[shot].held += now - self->since;
  }
  self->since = 0;
}

void
lap_takes_said (LapTakes *self)
{
  guint shot = lap_rehearsal_shot (self->rehearsal);

  if (has_talk (self, shot))
    self->measures[shot].late = lap_rehearsal_clock (self->rehearsal) - nth (self, shot)->work * LAP_SECOND;
}

void
lap_takes_again (LapTakes *self, guint shot)
{
  if (shot < lap_rehearsal_shots (self->rehearsal)->n)
    self->measures[shot] = (Measure) { 0 };
  self->since = 0;
}

double
lap_takes_over (LapTakes *self, guint shot)
{
  return (self->measures[shot].held + self->measures[shot].late) / (double) LAP_SECOND;
}

void
lap_takes_mark (LapTakes *self, guint shot, gboolean good, const char *at)
{
  LapTakeMark *mark = g_new (LapTakeMark, 1);

  *mark = (LapTakeMark) { g_strdup (at), lap_rehearsal_clock (self->rehearsal) / (double) LAP_SECOND, shot, good,
                          lap_takes_over (self, shot) };
  g_ptr_array_add (self->marks, mark);
}

guint
lap_takes_n (LapTakes *self)
{
  return self->marks->len;
}

const LapTakeMark *
lap_takes_nth (LapTakes *self, guint n)
{
  return g_ptr_array_index (self->marks, n);
}
