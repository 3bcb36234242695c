/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One class of the week as a child of the strip: its bar to scale, above that crests for its effort, below it the
 * mark of its warning and its name. What it shows, and where, are a box of the score; it draws and hits nothing else.
 */
#pragma once

#include "ui/week/scene.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_CARD (lap_week_card_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekCard, lap_week_card, LAP, WEEK_CARD, GtkWidget)

GtkWidget  *lap_week_card_new   (LapWeekScene *scene);
/* Shows @box, @position of @of; LAP_NO_WEEK_BOX: nothing. To be called for each change of the plan or the axis. */
void        lap_week_card_bind  (LapWeekCard  *card,
                                 guint         box,
                                 guint         position,
                                 guint         of);
/* Where it is in the strip. */
void        lap_week_card_area  (LapWeekCard  *card,
                                 GdkRectangle *area);

/* A bar as a card has it, and the crests of an effort. */
typedef struct {
  int      strain; /* LapStrain; -1 = not known */
  gboolean off, changed;
} LapBarLook;

void        lap_week_bar_draw   (cairo_t          *cr,
                                 const LapBarLook *look,
                                 double            x,
                                 double            y,
                                 double            width,
                                 double            height);
/* One crest for easy, two, three for hard, on a line at @y, from the side where time comes from. */
void        lap_week_crests_draw (cairo_t         *cr,
                                  int              strain,
                                  double           x,
                                  double           y,
                                  double           height,
                                  gboolean         mirrored);

G_END_DECLS
