/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lines of the week with their classes: the widget that scrolls, is clicked and dragged on. Only classes in view
 * are widgets, and the one with the cursor; after a change of the plan a class keeps its widget, and so the focus.
 */
#pragma once

#include "ui/week/card.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_STRIP (lap_week_strip_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekStrip, lap_week_strip, LAP, WEEK_STRIP, GtkWidget)

/* @across is what the strip scrolls up and down by. */
GtkWidget    *lap_week_strip_new        (LapWeekScene  *scene,
                                         GtkAdjustment *across);
LapWeekScene *lap_week_strip_scene      (LapWeekStrip  *strip);
/* The widget of the class @id, or NULL. */
GtkWidget    *lap_week_strip_find       (LapWeekStrip  *strip,
                                         const char    *id);
guint         lap_week_strip_n_live     (LapWeekStrip  *strip);
/* Scrolls up or down to the class with the cursor. */
void          lap_week_strip_reveal     (LapWeekStrip  *strip);
/* Gives the focus to the class with the cursor, else to the strip itself. */
void          lap_week_strip_take_focus (LapWeekStrip  *strip);
/* Text beside the pointer while something is dragged; NULL: none. */
void          lap_week_strip_set_tag    (LapWeekStrip  *strip,
                                         const char    *tag,
                                         double         x,
                                         double         y);

G_END_DECLS
