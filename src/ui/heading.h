/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands over the score: the title, the formula of the main part, who leads, and the length against the target.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_HEADING (lap_heading_get_type ())
G_DECLARE_FINAL_TYPE (LapHeading, lap_heading, LAP, HEADING, GtkWidget)

void lap_heading_show (LapHeading *heading, LapDocument *document);

/* Shows that the session would last @seconds, as "30:10 → 29:40"; as long as it does: no more. */
void lap_heading_preview (LapHeading *heading, int seconds);

/* Opens the line in which a formula is typed. */
void lap_heading_type_formula (LapHeading *heading);

G_END_DECLS
