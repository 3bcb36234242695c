/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Dragging classes: on the lines, at their ends, out of the tray and back into it. Nothing moves until the button is
 * released: what would be is drawn beside what is, and a tag says where that is and what would be wrong there. So
 * Escape has nothing to take back, and a drag is one step of undo.
 */
#pragma once

#include "ui/week/view.h"

G_BEGIN_DECLS

/* Once a view. */
void lap_week_drag_install (LapWeekView *view);

G_END_DECLS
