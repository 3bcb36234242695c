/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chips that narrow the catalogue: what a chip asks for is on where it shows a tick. "changed" says that another
 * filter holds.
 */
#pragma once

#include "catalogue/catalogue.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_SHELF_FILTER (lap_shelf_filter_get_type ())
G_DECLARE_FINAL_TYPE (LapShelfFilter, lap_shelf_filter, LAP, SHELF_FILTER, GtkWidget)

LapFilter lap_shelf_filter_get     (LapShelfFilter *filter);
/* Whether any chip is on. */
gboolean  lap_shelf_filter_is_on   (LapShelfFilter *filter);
void      lap_shelf_filter_clear   (LapShelfFilter *filter);
/* What kit the chip "kit at hand" means, as a mask. */
void      lap_shelf_filter_set_kit (LapShelfFilter *filter,
                                    guint32         kit);

G_END_DECLS
