/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to know of the current exercise of the catalogue: its other names, what it works and needs, the easier
 * and the harder one. "show" (id) asks for another one of the chain, "own" to make one's own of it, or to rename it.
 */
#pragma once

#include "catalogue/catalogue.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_SHELF_DETAILS (lap_shelf_details_get_type ())
G_DECLARE_FINAL_TYPE (LapShelfDetails, lap_shelf_details, LAP, SHELF_DETAILS, GtkWidget)

/* NULL hides it. @own is whether it is one of the session's own. */
void lap_shelf_details_show (LapShelfDetails *details,
                             LapCatalogue    *catalogue,
                             LapExercise     *exercise,
                             gboolean         own,
                             gboolean         editable);

G_END_DECLS
