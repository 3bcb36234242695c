/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The coaches of a week with what it asks of them: hours, classes, hard ones; and when they are away, to be typed.
 */
#pragma once

#include "effort/week-load.h"
#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_COACHES (lap_week_coaches_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekCoaches, lap_week_coaches, LAP, WEEK_COACHES, GtkWidget)

/* Once; the document of a week. */
void lap_week_coaches_set_document (LapWeekCoaches    *coaches,
                                    LapDocument       *document);
/* @load of the week as it is now. */
void lap_week_coaches_show         (LapWeekCoaches    *coaches,
                                    const LapWeekLoad *load);
/* Applies what is typed and isn't an edit yet. */
void lap_week_coaches_commit       (LapWeekCoaches    *coaches);

G_END_DECLS
