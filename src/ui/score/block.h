/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One visible box of the blocks lane: a focusable child with a spoken name. The lane makes few of these and binds
 * them to whatever box comes into view; it also gives them their place and size.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

#define LAP_TYPE_BLOCK_WIDGET (lap_block_widget_get_type ())
G_DECLARE_FINAL_TYPE (LapBlockWidget, lap_block_widget, LAP, BLOCK_WIDGET, GtkWidget)

GtkWidget *lap_block_widget_new    (LapScoreContext *context);
/* Shows @box, LAP_NO_BOX for none, which lies at @placed in the view, NULL where it did. Words are made anew only when
 * @anew or for another box; they keep to what is in view of it. */
void       lap_block_widget_bind   (LapBlockWidget  *widget,
                                    guint            box,
                                    const LapPlaced *placed,
                                    gboolean         anew);
guint      lap_block_widget_box    (LapBlockWidget  *widget);
/* The box, in the plan as it is now, of the block and round it shows; LAP_NO_BOX where that has gone. */
guint      lap_block_widget_locate (LapBlockWidget  *widget);
void       lap_block_widget_select (LapBlockWidget  *widget,
                                    gboolean         selected);
/* px a box needs where a line of text takes @line. */
int        lap_block_widget_height (int              line);
/* Top and height of the body in a lane @room px high, for what the lane draws itself. Room that is left is the
 * name's third line, and then the figure's. */
void       lap_block_widget_ground (int              line,
                                    int              room,
                                    int             *top,
                                    int             *height);

G_END_DECLS
