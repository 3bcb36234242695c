/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The menu of the classes that are selected, or of an empty place.
 */
#pragma once

#include "ui/week/scene.h"

G_BEGIN_DECLS

/* @day is where the menu is opened, for copies of it; -1 without. Transfer full. */
GMenu *lap_week_menu_new (LapWeekScene *scene,
                          int           day);

G_END_DECLS
