/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The overview strip below the lanes: the whole session in miniature with its parts, work and rest, and warnings, and
 * a window that shows what the lanes have in view. It takes the place of a scroll bar: the window is dragged, a press
 * beside it goes there, the wheel and the keys travel.
 *
 * The miniature is painted once for each plan, width and style; a frame that travels moves the window only.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_STRIP (lap_strip_get_type ())
G_DECLARE_FINAL_TYPE (LapStrip, lap_strip, LAP, STRIP, GtkWidget)

GtkWidget *lap_strip_new         (void);
/* Once, before it is shown. */
void       lap_strip_set_context (LapStrip        *strip,
                                  LapScoreContext *context);
/* "5:00 to 12:30 of 30:10". */
const char *lap_strip_words      (LapStrip        *strip);
/* How many times the miniature was painted. */
guint      lap_strip_n_painted   (LapStrip        *strip);

G_END_DECLS
