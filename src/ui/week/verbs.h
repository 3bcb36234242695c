/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What keys and menus do to the classes that are selected.
 */
#pragma once

#include "ui/week/view.h"

G_BEGIN_DECLS

/* In class_init of the view: installs the actions "week.…". */
void lap_week_verbs_install (GtkWidgetClass *klass);

G_END_DECLS
