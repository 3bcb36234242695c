/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/seconds.h"

#include <glib/gi18n-lib.h>
#include <stdlib.h>

char *
lap_clock_text (int seconds)
{
  const char *sign = seconds < 0 ? "\xe2\x88\x92" : "";
  int s = abs (seconds);

  if (s >= 3600)
    return g_strdup_printf ("%s%d:%02d:%02d", sign, s / 3600, s / 60 % 60, s % 60);
  return g_strdup_printf ("%s%d:%02d", sign, s / 60, s % 60);
}

char *
lap_duration_text (int seconds)
{
  g_autofree char *clock = NULL;

  if (seconds < 120)
    return g_strdup_printf (_("%d s"), seconds);
  clock = lap_clock_text (seconds);
  /* Translators: a length of time such as "5:30 min". */
  return g_strdup_printf (_("%s min"), clock);
}
