/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The warnings as text, to be sent to somebody: what, where, why and whose rule it is, in the order of the list. Those
 * kept as fine are left out; LAP_WARNINGS_TEXT_MOST at most are told, then how many more there are.
 */
#pragma once

#include "checks/checks.h"

G_BEGIN_DECLS

#define LAP_WARNINGS_TEXT_MOST 500

/* "2 stops and 1 note": what there is of each rank; "" where there is nothing. Translated; transfer full. */
char *lap_warnings_counts (const LapCheckup *checkup);
/* @title is the document's. Translated; transfer full. */
char *lap_warnings_text   (const LapCheckup *checkup,
                           const char       *title);

G_END_DECLS
