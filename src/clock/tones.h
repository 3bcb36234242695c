/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The tones of a session: which sounds when, and how they sound. Before work three short tones, one a second, and
 * a long one where it begins; a low one where work ends; a tick half-way through longer work. Work and rest
 * differ in pitch and in pattern. Shapes: common practice, within what ISO 7731 and EBU R 128 ask of level and
 * pitch.
 *
 * Always true: tones stand in the order of their time and never overlap; none sounds before 0. Times don't depend
 * on a sample rate; a sample rate puts each on the nearest sample.
 *
 * Calling order: lap_tones_new() for a timeline, lap_tone_bank_new() for a sample rate; then lap_tones_render()
 * for stretches of samples in any order. The file that is published and what is heard in a rehearsal come from
 * here.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef enum { LAP_TONE_COUNT, LAP_TONE_WORK, LAP_TONE_REST, LAP_TONE_HALF, LAP_N_TONES } LapToneKind;

typedef struct {
  int frequency; /* Hz */
  int length;    /* milliseconds, fades included */
} LapToneShape;

extern const LapToneShape lap_tone_shapes[LAP_N_TONES];

#define LAP_TONE_FADE 10  /* milliseconds, in and out */
#define LAP_TONE_PEAK 0.155 /* of full scale: -16 dBFS, which makes -23 LUFS (EBU R 128) of the pattern */

typedef struct {
  int         at;   /* milliseconds on the session clock */
  LapToneKind kind;
} LapTone;

typedef struct {
  guint    n;
  LapTone *tones;
} LapTones;

LapTones *lap_tones_new  (const LapTimeline *timeline);
void      lap_tones_free (LapTones          *tones);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapTones, lap_tones_free)

/* The first tone that isn't over at @at, milliseconds; tones->n behind the last. */
guint     lap_tones_find (const LapTones    *tones,
                          int                at);
/* Milliseconds at which all is over: the end of the session, or of the tone that tells it. */
int       lap_tones_end  (const LapTones    *tones,
                          const LapTimeline *timeline);

/* The samples of each kind at one sample rate: mono, 16 bits. */
typedef struct {
  int     rate;
  guint   n[LAP_N_TONES];
  gint16 *samples[LAP_N_TONES];
} LapToneBank;

LapToneBank *lap_tone_bank_new  (int          rate);
void         lap_tone_bank_free (LapToneBank *bank);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapToneBank, lap_tone_bank_free)

/* Fills @out with the @n samples from @from on, counted from second 0 of the session; silence where there is no
 * tone, and before 0. */
void         lap_tones_render   (const LapTones    *tones,
                                 const LapToneBank *bank,
                                 gint64             from,
                                 guint              n,
                                 gint16            *out);

G_END_DECLS
