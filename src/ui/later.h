/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place of a part of a window that is built when it is first shown, and not before the first frame of its window has
 * been painted: what nobody looks at costs nothing, and the plan doesn't wait for what lies beside it.
 *
 * Call lap_later_set() once. Until the part is built its place is empty; where `lines` is set it is as wide as it will
 * be, as ui/column.h says, so that nothing moves when the part comes.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_LATER (lap_later_get_type ())
G_DECLARE_FINAL_TYPE (LapLater, lap_later, LAP, LATER, GtkWidget)

/* Returns a new widget, ready to be shown. */
typedef GtkWidget *(*LapLaterBuild) (gpointer owner);

/* @owner must outlive @later. */
void       lap_later_set     (LapLater      *later,
                              LapLaterBuild  build,
                              gpointer       owner);
/* The part, built now where it wasn't. */
GtkWidget *lap_later_get     (LapLater      *later);
/* NULL while it isn't built. */
GtkWidget *lap_later_peek    (LapLater      *later);
/* The same for what a button opens: @build makes its popover when it is first opened. @owner must outlive @button. */
void       lap_later_popover (GtkMenuButton *button,
                              LapLaterBuild  build,
                              gpointer       owner);
void       lap_later_menu    (GtkMenuButton *button,
                              GMenuModel    *menu);

G_END_DECLS
