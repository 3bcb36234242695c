/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog of a new session: blank, by a formula, or from a list of exercises pasted in. Lines that aren't known are
 * named while one types, with what they may mean; they don't stand in the way.
 */
#pragma once

#include "ui/application.h"

G_BEGIN_DECLS

#define LAP_TYPE_NEW (lap_new_get_type ())
G_DECLARE_FINAL_TYPE (LapNew, lap_new, LAP, NEW, AdwWindow)

/* An empty week in the timezone of this place, where that has a name. */
LapWeek   *lap_new_week   (const char *title);
/* @over may be NULL. */
GtkWindow *lap_new_dialog (LapApplication *application,
                           GtkWindow      *over);

G_END_DECLS
