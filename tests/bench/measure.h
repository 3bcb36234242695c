/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What benchmarks measure with.
 */
#pragma once

/* Processor time of the program until now, in ms. */
double measure_cpu  (void);
/* Sorts @n of them, the least first. */
void   measure_sort (double *times,
                     int     n);
