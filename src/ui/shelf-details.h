/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to know of the current exercise of the catalogue: its other names, what it works and needs, the easier
 * and the harder one. "show-exercise" (id) asks for another one of the chain, "copy" to make one's own of it, "edit" and
 * "remove" to change one's own, or to take it away.
 */
#pragma once

#include "catalogue/catalogue.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_SHELF_DETAILS (lap_shelf_details_get_type ())
G_DECLARE_FINAL_TYPE (LapShelfDetails, lap_shelf_details, LAP, SHELF_DETAILS, GtkWidget)

typedef enum { LAP_SHELF_OF_EVERYBODY, LAP_SHELF_OF_SESSION, LAP_SHELF_OF_USER } LapShelfOwner;

/* NULL hides it. @owner is whose exercise it is: of the catalogue, the session's own, the user's in other sessions. */
void lap_shelf_details_show (LapShelfDetails *details,
                             LapCatalogue    *catalogue,
                             LapExercise     *exercise,
                             LapShelfOwner    owner,
                             gboolean         editable);

G_END_DECLS
