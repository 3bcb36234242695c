/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the letters of a widget take. Sizes here are counted in lines of text, so that all grows with the letters that
 * people choose; they are asked for many times a frame, and found once for each type.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* px that a line of text takes in @widget; in what takes its type from @pango. */
int    lap_text_line    (GtkWidget    *widget);
int    lap_pango_line   (PangoContext *pango);
/* The same by the size of the letters alone, 1.2 of it, as CSS has it for most faces: the face isn't looked for, which the
 * first frame would wait for. For what grows with the letters and has none itself. */
int    lap_usual_line   (GtkWidget    *widget);
/* px of the size of its letters. */
double lap_letters_size (PangoContext *pango);

G_END_DECLS
