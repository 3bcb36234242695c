/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The menu of the selected blocks: what can be done to them now, each with its keys beside it.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

/* A popover of the actions of the blocks lane, to be given that lane as a parent. Transfer floating. */
GtkWidget *lap_score_menu_new (LapScoreContext *context);

G_END_DECLS
