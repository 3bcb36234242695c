/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The layout of a row of a list: children beside each other, each as wide as it likes, and the one that expands has
 * the rest of the width. The height follows from the width and never the other way round: a box also looks for the
 * least width at which words that wrap are as high as it is, which lays out each text dozens of times.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_AROUND (lap_around_get_type ())
G_DECLARE_FINAL_TYPE (LapAround, lap_around, LAP, AROUND, GtkLayoutManager)

G_END_DECLS
