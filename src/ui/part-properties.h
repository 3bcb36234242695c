/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog of what a part is and how it is run: kind, title, all together or in stations, rounds, sets, rests. Only
 * what counts for the way it is run is shown. Each change is an edit of its own.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Opens it over @parent for @part of the session of @document. Transfer none. */
GtkWidget *lap_part_properties_open (GtkWindow   *parent,
                                     LapDocument *document,
                                     LapPart     *part);

G_END_DECLS
