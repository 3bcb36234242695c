/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "clock/tones.h"

#include "base/halve.h"

#include <math.h>
#include <string.h>

const LapToneShape lap_tone_shapes[LAP_N_TONES] = {
  [LAP_TONE_COUNT] = { 880, 120 }, [LAP_TONE_WORK] = { 1320, 500 }, [LAP_TONE_REST] = { 660, 400 },
  [LAP_TONE_HALF] = { 990, 60 },
};

#define COUNT     3  /* short tones before work, a second apart */
#define SPAN_HALF 30 /* seconds of work from which half-way is told, as in the script */

static void
add (GArray *tones, int at, LapToneKind kind)
{
  LapTone tone = { at, kind };

  g_array_append_val (tones, tone);
}

/* Before the work @v, but not before the end of the last work was told: a short rest has less of a count. */
static void
add_count_in (GArray *tones, const LapInterval *v)
{
  for (int left = COUNT; left > 0; left--) {
    int at = (v->start - left) * 1000;

    if (at >= 0 && (tones->len == 0 || g_array_index (tones, LapTone, tones->len - 1).at < at))
      add (tones, at, LAP_TONE_COUNT);
  }
}

/* Sides have a change of their own in the middle. */
static gboolean
has_half (const LapTimeline *timeline, const LapInterval *v)
{
  const LapTask *task = lap_timeline_task (timeline, v);

  return v->seconds >= SPAN_HALF && (task == NULL || task->sides != LAP_SIDES_SPLIT);
}

LapTones *
lap_tones_new (const LapTimeline *timeline)
{
  LapTones *tones = g_new (LapTones, 1);
  GArray *list = g_array_new (FALSE, FALSE, sizeof (LapTone));

  for (guint i = 0; i < timeline->n; i++) {
    const LapInterval *v = &timeline->intervals[i];
    int end = v->start + v->seconds;

    if (v->kind != LAP_INTERVAL_WORK)
      continue;
    add_count_in (list, v);
    add (list, v->start * 1000, LAP_TONE_WORK);
    if (has_half (timeline, v))
      add (list, v->start * 1000 + v->seconds * 500, LAP_TONE_HALF);
    if (i + 1 == timeline->n || v[1].kind != LAP_INTERVAL_WORK)
      add (list, end * 1000, LAP_TONE_REST);
  }
  tones->n = list->len;
  tones->tones = (LapTone *) g_array_free (list, FALSE);
  return tones;
}

void
lap_tones_free (LapTones *tones)
{
  g_free (tones->tones);
  g_free (tones);
}

static int
end_of (const LapTone *tone)
{
  return tone->at + lap_tone_shapes[tone->kind].length;
}

guint
lap_tones_find (const LapTones *tones, int at)
{
  return LAP_HALVE (tones->n, i, end_of (&tones->tones[i]) <= at);
}

int
lap_tones_end (const LapTones *tones, const LapTimeline *timeline)
{
  const LapTone *last = tones->n > 0 ? &tones->tones[tones->n - 1] : NULL;

  return MAX (timeline->length * 1000, last != NULL ? last->at + lap_tone_shapes[last->kind].length : 0);
}

/* A cosine, so that the very first sample is heard, between linear fades, so that it doesn't click. */
static gint16 *
render_shape (const LapToneShape *shape, int rate, guint n)
{
  gint16 *samples = g_new (gint16, n);
  double fade = MAX (1, rate * LAP_TONE_FADE / 1000), turn = 2 * G_PI * shape->frequency / rate;

  for (guint i = 0; i < n; i++) {
    double level = MIN (1, MIN (i + 1, n - i) / fade);

    samples[i] = lround (LAP_TONE_PEAK * G_MAXINT16 * level * cos (turn * i));
  }
  return samples;
}

LapToneBank *
lap_tone_bank_new (int rate)
{
  LapToneBank *bank = g_new (LapToneBank, 1);

  bank->rate = rate;
  for (guint k = 0; k < LAP_N_TONES; k++) {
    bank->n[k] = (guint) ((gint64) rate * lap_tone_shapes[k].length / 1000);
    bank->samples[k] = render_shape (&lap_tone_shapes[k], rate, bank->n[k]);
  }
  return bank;
}

void
lap_tone_bank_free (LapToneBank *bank)
{
  for (guint k = 0; k < LAP_N_TONES; k++)
    g_free (bank->samples[k]);
  g_free (bank);
}

void
lap_tones_render (const LapTones *tones, const LapToneBank *bank, gint64 from, guint n, gint16 *out)
{
  gint64 rate = bank->rate, until = from + n;

  memset (out, 0, n * sizeof *out);
  if (until <= 0)
    return;
  for (guint i = lap_tones_find (tones, (int) (MAX (from, 0) * 1000 / rate) - 1); i < tones->n; i++) {
    const LapTone *tone = &tones->tones[i];
    gint64 start = (tone->at * rate + 500) / 1000, end = start + bank->n[tone->kind];
    gint64 first = MAX (start, from), last = MIN (end, until);

    if (start >= until)
      return;
    if (first < last)
      memcpy (out + (first - from), bank->samples[tone->kind] + (first - start), (last - first) * sizeof *out);
  }
}
