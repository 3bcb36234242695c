/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bar over the plan that finds words in the session: how many blocks have them, the next and the one before, each
 * selected in the score. Hidden until it is asked for; Escape hides it.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_FIND_BAR (lap_find_bar_get_type ())
G_DECLARE_FINAL_TYPE (LapFindBar, lap_find_bar, LAP, FIND_BAR, GtkWidget)

/* Once. */
void lap_find_bar_set_context (LapFindBar      *bar,
                               LapScoreContext *context);
/* Shows it, ready to be typed in. */
void lap_find_bar_begin       (LapFindBar      *bar);

G_END_DECLS
