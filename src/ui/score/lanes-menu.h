/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The button "Lanes": which are shown, and in which order.
 */
#pragma once

#include "ui/score/view.h"

G_BEGIN_DECLS

GtkWidget *lap_lanes_menu_new (LapScoreView *view);

G_END_DECLS
