/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The load of sessions and weeks from what people say it felt like: no pulse needed (Foster 1998, 2001).
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Load of a session: a rating of 0…10 times its minutes. */
double   lap_load          (double        rating,
                            double        minutes);

/* Mean of @n daily loads over their sample standard deviation (n − 1). FALSE, and *@monotony untouched, where all
 * days are equal: there is no variation to divide by. */
gboolean lap_load_monotony (const double *daily,
                            guint         n,
                            double       *monotony);

double   lap_load_strain   (double        load,
                            double        monotony);

G_END_DECLS
