/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The menu of blocks.
 */
#pragma once

#include "ui/menus.h"
#include "ui/score/context.h"

G_BEGIN_DECLS

/* For what is selected in @context. Transfer full. */
GMenu *lap_score_menu_new (LapScoreContext *context);

G_END_DECLS
