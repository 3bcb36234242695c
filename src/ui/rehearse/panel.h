/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One piece of the screen of a rehearsal, drawn anew only when what it shows has changed. Panels are widgets
 * of their own, each clipped to its place, so that a figure that moves doesn't have the whole screen painted
 * with it.
 *
 * Sizes are in units of the scene. Text that doesn't fit gets smaller, then takes more lines, and at last
 * ends in dots.
 */
#pragma once

#include "ui/rehearse/scene.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_PANEL (lap_panel_get_type ())
G_DECLARE_FINAL_TYPE (LapPanel, lap_panel, LAP, PANEL, GtkWidget)

typedef struct {
  /* Changes when what is drawn does. */
  gint64 (*stamp) (const LapScene *scene);
  void   (*draw)  (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height);
  /* What it says, for those who can't see it; NULL for nothing. Transfer full. */
  char * (*tell)  (const LapScene *scene);
} LapPanelKind;

extern const LapPanelKind lap_panel_head, lap_panel_figure, lap_panel_ground, lap_panel_name, lap_panel_count,
                          lap_panel_say, lap_panel_next, lap_panel_bar, lap_panel_edge, lap_panel_sync;

/* @scene must outlive it. */
GtkWidget   *lap_panel_new    (const LapPanelKind *kind,
                               const LapScene     *scene);
/* After each tick: draws what has changed. */
void         lap_panel_look   (LapPanel           *panel);
gboolean     lap_panel_is_rtl (LapPanel           *panel);

/* Text of @most units, or less down to @least, that fits @width × @height px. Transfer full. */
PangoLayout *lap_panel_text   (LapPanel           *panel,
                               const char         *text,
                               PangoWeight         weight,
                               double              most,
                               double              least,
                               double              width,
                               double              height);
/* Draws and frees it, at @x from the side where reading begins, in a panel of @width px. */
void         lap_panel_put    (LapPanel           *panel,
                               GtkSnapshot        *snapshot,
                               PangoLayout        *layout,
                               guint               colour,
                               double              x,
                               double              y,
                               double              width);

/* A stamp of the parts that matter. */
#define LAP_STAMP(a, b, c) (((gint64) (a) << 40) ^ ((gint64) (b) << 20) ^ (gint64) (c))

G_END_DECLS
