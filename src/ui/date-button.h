/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A calendar beside a line in which dates are typed: a day that is chosen there is written into the line, and counts
 * when the calendar closes, as if it had been typed and Enter pressed.
 */
#pragma once

#include <adwaita.h>

G_BEGIN_DECLS

/* For a line with one date. To be put at its end. */
GtkWidget *lap_date_button_new      (AdwEntryRow *row);
/* For a line with dates and spans, behind which the day comes. */
GtkWidget *lap_date_button_new_list (AdwEntryRow *row);

G_END_DECLS
