/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What can be done to a part by keys and menus: its rounds, the rests between and after them, folding, its properties, a
 * part beside it, its place among the parts, its end. The same
 * actions for the blocks and for the brackets: each is about the part that the lane says it is at.
 */
#pragma once

#include "ui/score/lane.h"

#include "edit/verbs-time.h"

G_BEGIN_DECLS

/* In class_init of a lane: the actions "score.rounds-more" and so on, and their keys. */
void     lap_part_verbs_install (GtkWidgetClass  *klass);
/* One round more or less; FALSE where that can't be. */
gboolean lap_part_add_rounds    (LapScoreContext *context,
                                 LapPart         *part,
                                 int              by);
/* What @source says becomes the next multiple of @by; FALSE where it can be no more, or less. */
gboolean lap_part_change_time   (LapScoreContext *context,
                                 const LapTimeSource *source,
                                 int              by);
/* Menu sections of a part: its rounds and rests, the part itself, what is open. */
void     lap_part_verbs_menu    (GMenu           *menu,
                                 const LapPart   *part,
                                 LapDocument     *document);

G_END_DECLS
