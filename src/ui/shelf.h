/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The catalogue beside the score: search, chips that narrow it, tiles in groups by region. Enter or a double click adds
 * an exercise after the selected block; a tile can also be dragged.
 */
#pragma once

#include "ui/score/context.h"
#include "ui/shelf-grid.h"

G_BEGIN_DECLS

#define LAP_TYPE_SHELF (lap_shelf_get_type ())
G_DECLARE_FINAL_TYPE (LapShelf, lap_shelf, LAP, SHELF, GtkWidget)

void          lap_shelf_set_context (LapShelf        *shelf,
                                     LapScoreContext *context);
/* Leads the keys to the search. */
void          lap_shelf_find        (LapShelf        *shelf);
/* Makes one's own of the current exercise, called @name: the session keeps it, and other sessions can use it. */
void          lap_shelf_make_own    (LapShelf        *shelf,
                                     const char      *name);
LapShelfGrid *lap_shelf_grid        (LapShelf        *shelf);

G_END_DECLS
