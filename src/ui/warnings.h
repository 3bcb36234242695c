/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The list of warnings under the score, numbered as the marks are. Choosing one selects its block.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_WARNINGS (lap_warnings_get_type ())
G_DECLARE_FINAL_TYPE (LapWarnings, lap_warnings, LAP, WARNINGS, GtkWidget)

void       lap_warnings_set_context (LapWarnings     *warnings,
                                     LapScoreContext *context);
/* The row of warning @n of the checkup, or NULL where it isn't in a list. */
GtkWidget *lap_warnings_row         (LapWarnings     *warnings,
                                     guint            n);

G_END_DECLS
