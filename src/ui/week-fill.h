/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog that places the classes that have no time. A worker searches, and closing the dialog cancels it; then it
 * shows what would be placed where, what couldn't be and what to relax for it, and which wishes aren't kept. Taking it
 * is one step of the history. When the document changes meanwhile, the dialog closes: what it shows is outdated.
 */
#pragma once

#include "arrange/fill.h"
#include "ui/window.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_FILL (lap_week_fill_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekFill, lap_week_fill, LAP, WEEK_FILL, AdwWindow)

/* Opens it above @window. It destroys itself. */
LapWeekFill   *lap_week_fill_open  (LapWindow   *window);
/* What was found, or NULL while it is looked for. */
const LapFill *lap_week_fill_found (LapWeekFill *fill);

G_END_DECLS
