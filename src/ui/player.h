/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The figure of an exercise, large, with a button that lets it move at the pace of its repetitions. It stands still
 * until then, where it begins pale behind where it ends; and always where people asked their desktop for less motion,
 * without the button.
 */
#pragma once

#include "catalogue/catalogue.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_PLAYER (lap_player_get_type ())
G_DECLARE_FINAL_TYPE (LapPlayer, lap_player, LAP, PLAYER, GtkWidget)

/* Shows @exercise of @catalogue at @per_rep seconds a repetition, 0 for a hold; NULL for none. Another exercise
 * stands still at first. */
void     lap_player_show     (LapPlayer    *player,
                              LapCatalogue *catalogue,
                              LapExercise  *exercise,
                              double        per_rep);
gboolean lap_player_is_moving (LapPlayer   *player);
/* What has been played of it, in seconds. */
double   lap_player_seconds  (LapPlayer    *player);

G_END_DECLS
