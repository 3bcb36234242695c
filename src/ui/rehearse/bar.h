/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bar of the whole session at the foot of a rehearsal: what is done is hollow, what comes is filled.
 * Takes stand on it, a flag for one to be taken again, a tick for a good one.
 */
#pragma once

#include "ui/rehearse/panel.h"

G_BEGIN_DECLS

/* The second of the session at @x px of a bar of @width px. */
int lap_bar_second (LapPanel       *panel,
                    const LapScene *scene,
                    double          x,
                    int             width);

G_END_DECLS
