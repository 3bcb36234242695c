/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A layout that sets children beside each other, each as wide as it likes, and goes on in a new line where the
 * width ends: for buttons and chips. One that expands has what its line leaves.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_FLOW (lap_flow_get_type ())
G_DECLARE_FINAL_TYPE (LapFlow, lap_flow, LAP, FLOW, GtkLayoutManager)

/* @child or the first sibling after it that is laid out, or NULL. */
GtkWidget *lap_flow_next (GtkWidget *child);

G_END_DECLS
