/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The layout of a pane at the side: one child, and a width counted in lines of text, so that the pane grows with the
 * text and not with what happens to be in it.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_COLUMN (lap_column_get_type ())
G_DECLARE_FINAL_TYPE (LapColumn, lap_column, LAP, COLUMN, GtkLayoutManager)

/* As wide as @lines lines of text are high; wider where the child can't be that narrow, and less, but as wide as a phone,
 * where that doesn't fit. */
GtkLayoutManager *lap_column_new  (double     lines);

G_END_DECLS
