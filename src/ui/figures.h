/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures for widgets: pictures of exercises in the colours of the style that is on, each painted once a size and
 * kept. Main thread only.
 */
#pragma once

#include "catalogue/catalogue.h"
#include "model/block.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* The pose that says most about @exercise, standing on the lower edge of @width × @height px, without a floor, half
 * as strong when @pale; NULL where it has no figure. See ui/picture.h. Transfer none. */
GskRenderNode *lap_figure_picture (LapCatalogue *catalogue,
                                   LapExercise  *exercise,
                                   int           width,
                                   int           height,
                                   int           scale,
                                   gboolean      pale);

/* Paints @exercise as it is after @seconds at @per_rep seconds a repetition (0 for a hold), so that its whole movement
 * has room on @width × @height px, without a floor; @still: where it begins pale behind where it ends, whatever the
 * time. Nothing where it has no figure. */
void        lap_figure_play    (cairo_t      *cr,
                                LapCatalogue *catalogue,
                                LapExercise  *exercise,
                                double        seconds,
                                double        per_rep,
                                gboolean      still,
                                int           width,
                                int           height);

/* Seconds of one repetition of @shown in @block: its tempo, else the exercise's own; 0 for a hold. */
double      lap_figure_rep_seconds (const LapBlock    *block,
                                    const LapExercise *shown);

G_END_DECLS
