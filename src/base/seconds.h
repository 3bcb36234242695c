/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Time in a plan is whole seconds in an int, never negative but for the film clock. A span is half open: the
 * second at `end` isn't in it.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct {
  int start;
  int end;
} LapSpan;

/* "5:00", "1:05:00", "−1:30": minutes and seconds, hours from an hour on. The same in every locale. */
char *lap_clock_text    (int seconds);

/* "40 s", "1:30 min": how a length is said in a sentence, below two minutes in seconds. Translated. */
char *lap_duration_text (int seconds);

G_END_DECLS
