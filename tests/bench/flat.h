/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A fill that is another one in each frame: what drawing is held against.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define BENCH_TYPE_FLAT (bench_flat_get_type ())
G_DECLARE_FINAL_TYPE (BenchFlat, bench_flat, BENCH, FLAT, GtkWidget)

G_END_DECLS
