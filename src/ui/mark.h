/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The mark of a warning: its number in a shape that tells its rank without colour. A stop is a dark lozenge with a
 * light number, a warning a light lozenge with a dark number and rim, a note a ring.
 */
#pragma once

#include "checks/checks.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_MARK (lap_mark_get_type ())
G_DECLARE_FINAL_TYPE (LapMark, lap_mark, LAP, MARK, GtkWidget)

void lap_mark_set   (LapMark     *mark,
                     LapSeverity  severity,
                     guint        number);
/* Paints such a mark @size px wide and high, for lanes. */
void lap_mark_paint (cairo_t     *cr,
                     LapSeverity  severity,
                     PangoLayout *number,
                     double       x,
                     double       y,
                     double       size);

G_END_DECLS
