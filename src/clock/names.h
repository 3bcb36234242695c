/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The names of a session that are spoken: which when. A name of the script that would begin while a tone sounds
 * waits until the tone is over.
 *
 * Always true: names stand in the order of their time, none begins in a tone.
 */
#pragma once

#include "clock/tones.h"
#include "talk/script.h"

G_BEGIN_DECLS

typedef struct {
  int   at; /* milliseconds on the session clock */
  char *text;
} LapName;

typedef struct {
  guint    n;
  LapName *names;
} LapNames;

LapNames *lap_names_new  (const LapScript *script,
                          const LapTones  *tones);
void      lap_names_free (LapNames        *names);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapNames, lap_names_free)

/* The last name that begins at or before @at, milliseconds; names->n before the first. */
guint     lap_names_find (const LapNames  *names,
                          gint64           at);

/* A name as it is heard: mono, 16 bits. */
typedef struct {
  guint   n;
  gint16 *samples;
} LapSpoken;

void      lap_spoken_free (LapSpoken       *spoken);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSpoken, lap_spoken_free)

/* Adds what there is of @spoken, whose first sample is sample @start of the session, to the @n samples from @from
 * on. */
void      lap_spoken_mix  (const LapSpoken *spoken,
                           gint64           start,
                           gint64           from,
                           guint            n,
                           gint16          *out);

G_END_DECLS
