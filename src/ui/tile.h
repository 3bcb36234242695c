/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One exercise as a tile: its figure on a line, its name below in at most two lines. A grid makes few of these and
 * shows in them whatever exercise comes into view.
 */
#pragma once

#include "catalogue/catalogue.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_TILE (lap_tile_get_type ())
G_DECLARE_FINAL_TYPE (LapTile, lap_tile, LAP, TILE, GtkWidget)

GtkWidget   *lap_tile_new      (void);
/* Shows @exercise of @catalogue; NULL lets both go. */
void         lap_tile_show     (LapTile      *tile,
                                LapCatalogue *catalogue,
                                LapExercise  *exercise);
/* NULL where it shows none. */
LapExercise *lap_tile_exercise (LapTile      *tile);
/* Which of how many it is, for who hears it. */
void         lap_tile_number   (LapTile      *tile,
                                int           position,
                                int           of);
/* Height and least width in px where a line of text takes @line. */
int          lap_tile_height   (int           line);
int          lap_tile_width    (int           line);

/* "Standing. Works: Front of the thigh. Needs: mat." Translated; transfer full. */
char        *lap_exercise_told (const LapExercise *exercise);

G_END_DECLS
