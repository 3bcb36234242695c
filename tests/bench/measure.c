/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/measure.h"

#include <stdlib.h>
#include <time.h>

double
measure_cpu (void)
{
  struct timespec t;

  clock_gettime (CLOCK_PROCESS_CPUTIME_ID, &t);
  return t.tv_sec * 1e3 + t.tv_nsec / 1e6;
}

static int
by_size (const void *a, const void *b)
{
  double x = *(const double *) a, y = *(const double *) b;

  return (x > y) - (x < y);
}

void
measure_sort (double *times, int n)
{
  qsort (times, n, sizeof (double), by_size);
}
