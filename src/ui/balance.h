/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A chart of what the main parts work: for each region of the body a solid bar of the seconds in which it works hard
 * and an outlined one of those in which it helps; push against pull, the front of the legs against their back. It
 * grows with the text, is mirrored where text runs from the right, and says its numbers as words to who can't see it.
 */
#pragma once

#include "timeline/timeline.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_BALANCE_CHART (lap_balance_chart_get_type ())
G_DECLARE_FINAL_TYPE (LapBalanceChart, lap_balance_chart, LAP, BALANCE_CHART, GtkWidget)

/* Shows the main parts of @timeline; nothing where they work nothing. */
void        lap_balance_chart_show  (LapBalanceChart   *chart,
                                     const LapTimeline *timeline);
/* The numbers in words, "" without work. */
const char *lap_balance_chart_words (LapBalanceChart   *chart);

G_END_DECLS
