/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The layout of what gives way: one child that asks for no width, and isn't shown where it has less than it needs. It is
 * laid out all the same, so that it knows how narrow it is.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_YIELD (lap_yield_get_type ())
G_DECLARE_FINAL_TYPE (LapYield, lap_yield, LAP, YIELD, GtkLayoutManager)

GtkLayoutManager *lap_yield_new (void);

G_END_DECLS
