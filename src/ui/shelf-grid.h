/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Exercises as tiles in groups under headings, to walk through, drag and choose from. It scrolls itself and makes
 * tiles for what is seen only; where they lie is told by place/tiling.h.
 *
 * Always true: all tiles are one stop of Tab, the arrows lead on from there. "activated" (exercise id) is a double click
 * or Enter; "current" says that another exercise is the current one, after a click no sooner than a double click would
 * be over; "dragging" that one is on its way out.
 */
#pragma once

#include "catalogue/catalogue.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef struct {
  char      *title; /* translated */
  GPtrArray *exercises; /* LapExercise, by reference */
} LapShelfGroup;

/* An array of LapShelfGroup that frees what is in them. */
GArray      *lap_shelf_groups_new   (void);

#define LAP_TYPE_SHELF_GRID (lap_shelf_grid_get_type ())
G_DECLARE_FINAL_TYPE (LapShelfGrid, lap_shelf_grid, LAP, SHELF_GRID, GtkWidget)

/* Shows @groups (LapShelfGroup, held) of @catalogue. The current exercise stays where it is among them. */
void         lap_shelf_grid_show    (LapShelfGrid *grid,
                                     LapCatalogue *catalogue,
                                     GArray       *groups);
guint        lap_shelf_grid_n       (LapShelfGrid *grid);
/* The exercise the keys start from, or NULL. */
LapExercise *lap_shelf_grid_current (LapShelfGrid *grid);
/* Makes @exercise the current one and scrolls to it; with @focus the keys follow. NULL for none. */
void         lap_shelf_grid_go      (LapShelfGrid *grid,
                                     LapExercise  *exercise,
                                     gboolean      focus);

/* For tests and benchmarks: the tile that shows @exercise, or NULL; how many show one, and how many there are. */
GtkWidget   *lap_shelf_grid_find    (LapShelfGrid *grid,
                                     LapExercise  *exercise);
guint        lap_shelf_grid_n_live  (LapShelfGrid *grid);
guint        lap_shelf_grid_n_all   (LapShelfGrid *grid);

G_END_DECLS
