/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Effort and script as data. Names of members are the same in every locale, and so are all numbers.
 */
#pragma once

#include "talk/script.h"

G_BEGIN_DECLS

/* The model, a segment for each interval, and the sums. Effort is a share of heart-rate reserve, 0…1. */
GBytes *lap_publish_effort (const LapEffort *effort);
/* The lines, in the order of their time. */
GBytes *lap_publish_script (const LapScript *script);

G_END_DECLS
