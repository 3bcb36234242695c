/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "effort/load.h"

#include <math.h>

double
lap_load (double rating, double minutes)
{
  return rating * minutes;
}

gboolean
lap_load_monotony (const double *daily, guint n, double *monotony)
{
  double sum = 0, squares = 0, mean;
  gboolean varies = FALSE;

  for (guint i = 0; i < n; i++) {
    sum += daily[i];
    varies = varies || daily[i] != daily[0];
  }
  if (!varies)
    return FALSE;
  mean = sum / n;
  for (guint i = 0; i < n; i++)
    squares += (daily[i] - mean) * (daily[i] - mean);
  *monotony = mean / sqrt (squares / (n - 1));
  return TRUE;
}

double
lap_load_strain (double load, double monotony)
{
  return load * monotony;
}
