/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The length of a session against its target, drawn: a bar to the target's mark, and what is over it hatched. The
 * words that go with it are its accessible label.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_METER (lap_meter_get_type ())
G_DECLARE_FINAL_TYPE (LapMeter, lap_meter, LAP, METER, GtkWidget)

/* @target 0 hides it. */
void lap_meter_set (LapMeter   *meter,
                    int         length,
                    int         target,
                    const char *words);

G_END_DECLS
