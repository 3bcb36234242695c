/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The exercises of a catalogue as a list to search and choose from. "chosen" carries the id.
 */
#pragma once

#include "catalogue/catalogue.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_CHOOSER (lap_chooser_get_type ())
G_DECLARE_FINAL_TYPE (LapChooser, lap_chooser, LAP, CHOOSER, GtkWidget)

/* Shows @catalogue with an empty search; NULL lets it go. */
void lap_chooser_set_catalogue (LapChooser   *chooser,
                                LapCatalogue *catalogue);
/* How many match. */
guint lap_chooser_n            (LapChooser   *chooser);

G_END_DECLS
