/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The safety words that stand on every sheet, in the rehearsal and in the help. Health forms are never put in, and no
 * person's name with a health matter is stored.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* The first line, for the distance; translated. */
const char *lap_safety_first (void);
/* What comes after it; translated. */
const char *lap_safety_more  (void);

G_END_DECLS
