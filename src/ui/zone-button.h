/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The timezones of the system beside a line in which one is typed: a list to search and choose from. What is chosen is
 * written into the line and counts, as if it had been typed and Enter pressed.
 */
#pragma once

#include <adwaita.h>

G_BEGIN_DECLS

/* To be put at the end of @row. */
GtkWidget *lap_zone_button_new (AdwEntryRow *row);

G_END_DECLS
