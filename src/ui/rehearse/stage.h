/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The screen of a rehearsal: panels laid out by the size of the window, moved on by the frames of the
 * display. While the window isn't drawn a slower pulse takes over, so that a covered window doesn't hold the
 * rehearsal.
 *
 * "changed" tells that the state or the interval is another one; "jump" (second) that a place of the bar was
 * pressed; "pressed" that the rest of the screen was.
 */
#pragma once

#include "ui/rehearse/scene.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_STAGE (lap_stage_get_type ())
G_DECLARE_FINAL_TYPE (LapStage, lap_stage, LAP, STAGE, GtkWidget)

/* Takes @scene over. */
GtkWidget *lap_stage_new        (LapScene *scene);
LapScene  *lap_stage_scene      (LapStage *stage);
/* Left and right changed over, for a glass in front of a camera. */
void       lap_stage_set_mirror (LapStage *stage,
                                 gboolean  mirror);
gboolean   lap_stage_mirror     (LapStage *stage);
/* After a deed: shows it at once. */
void       lap_stage_look       (LapStage *stage);

/* How far away, in metres, text of @units is read: its capitals under 16 minutes of arc (NUREG-0700 1.3.1), on a
 * screen of @height_mm whose unit is @share of its height. */
double     lap_stage_reads_from (double    units,
                                 double    share,
                                 double    height_mm);

G_END_DECLS
