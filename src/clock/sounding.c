/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "clock/sounding.h"

#include <string.h>

#define COUNTED 3 /* tones before a count-in is over, a second apart */

struct _LapSounding {
  LapRehearsal *rehearsal;
  LapTimeline  *timeline;
  LapTones     *tones;
  LapToneBank  *bank;
  LapNames     *names;  /* or NULL */
  GHashTable   *spoken; /* text -> LapSpoken */
  gboolean      live, mute;
};

LapSounding *
lap_sounding_new (LapRehearsal *rehearsal, LapTimeline *timeline, gboolean live)
{
  LapSounding *self = g_new (LapSounding, 1);

  *self = (LapSounding) { rehearsal, lap_timeline_ref (timeline), lap_tones_new (timeline),
                          lap_tone_bank_new (LAP_SOUNDING_RATE), .live = live };
  self->spoken = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, (GDestroyNotify) lap_spoken_free);
  return self;
}

void
lap_sounding_free (LapSounding *self)
{
  g_hash_table_unref (self->spoken);
  g_clear_pointer (&self->names, lap_names_free);
  lap_tone_bank_free (self->bank);
  lap_tones_free (self->tones);
  lap_timeline_unref (self->timeline);
  g_free (self);
}

static gint64
sample_at (gint64 clock)
{
  return (clock * LAP_SOUNDING_RATE + (clock < 0 ? -LAP_SECOND / 2 : LAP_SECOND / 2)) / LAP_SECOND;
}

/* Puts a tone that starts at sample @start into the @n samples from @from on. */
static void
put_tone (const LapSounding *self, LapToneKind kind, gint64 start, gint64 from, gint64 n, gint16 *out)
{
  gint64 first = MAX (start, from), last = MIN (start + self->bank->n[kind], from + n);

  if (first < last && !self->mute)
    memcpy (out + (first - from), self->bank->samples[kind] + (first - start), (last - first) * sizeof *out);
}

static gboolean
is_quiet (const LapSounding *self, gint64 clock)
{
  const LapInterval *interval = lap_timeline_at (self->timeline, clock / LAP_SECOND);

  return self->live && interval != NULL && interval->kind == LAP_INTERVAL_WORK;
}

/* A name is over when the next begins. */
static void
fill_name (const LapSounding *self, gint64 from, guint n, gint16 *out)
{
  guint i = lap_names_find (self->names, (from + n) * 1000 / LAP_SOUNDING_RATE);
  const LapName *name = i < self->names->n ? &self->names->names[i] : NULL;
  const LapSpoken *spoken = name != NULL ? g_hash_table_lookup (self->spoken, name->text) : NULL;

  if (spoken != NULL)
    lap_spoken_mix (spoken, (gint64) name->at * LAP_SOUNDING_RATE / 1000, from, n, out);
}

/* The plan's own from where it goes on; the tone at 0:00 where the plan has none. */
static void
fill_plan (const LapSounding *self, gint64 from, guint n, gint16 *out)
{
  if (!self->mute)
    lap_tones_render (self->tones, self->bank, from, n, out);
  if (self->tones->n == 0 || self->tones->tones[0].at > 1000)
    put_tone (self, LAP_TONE_WORK, 0, from, n, out);
  if (self->names != NULL)
    fill_name (self, from, n, out);
}

void
lap_sounding_fill (LapSounding *self, gint64 time, gint16 *out)
{
  gint64 clock, count = lap_rehearsal_count_in (self->rehearsal), from, border, before;

  memset (out, 0, LAP_SOUNDING_CHUNK * sizeof *out);
  if (!lap_rehearsal_ahead (self->rehearsal, time, &clock))
    return;
  from = sample_at (clock);
  border = count > 0 ? sample_at (lap_rehearsal_clock (self->rehearsal)) : from;
  before = CLAMP (border - from, 0, LAP_SOUNDING_CHUNK);
  if (before < LAP_SOUNDING_CHUNK && !is_quiet (self, MAX (clock, 0)))
    fill_plan (self, from + before, LAP_SOUNDING_CHUNK - before, out + before);
  for (int i = 1; i <= COUNTED && before > 0; i++)
    put_tone (self, LAP_TONE_COUNT, border - i * LAP_SOUNDING_RATE, from, before, out);
}

void
lap_sounding_mute (LapSounding *self)
{
  self->mute = TRUE;
}

void
lap_sounding_speak (LapSounding *self, const LapScript *script)
{
  g_clear_pointer (&self->names, lap_names_free);
  self->names = lap_names_new (script, self->tones);
}

const LapNames *
lap_sounding_names (LapSounding *self)
{
  return self->names;
}

void
lap_sounding_teach (LapSounding *self, const char *text, LapSpoken *spoken)
{
  g_hash_table_replace (self->spoken, g_strdup (text), spoken);
}
