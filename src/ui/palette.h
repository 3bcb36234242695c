/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The colours of the window by role, for light and dark and for high contrast. Drawn things ask lap_colour(); the
 * style sheet names the same colours @lap_work and so on, made from the same table, which also sets the accent and
 * surfaces of the platform.
 *
 * Measured WCAG 2.1 contrast on paper, light / dark: ink 16.2 / 14.5, ink2 7.3 / 7.9, line2 3.6 / 4.8, work 9.1 / 7.9,
 * talk 6.2 / 8.3, effort 5.9 / 7.0, stop 6.6 / 7.4. Text needs 4.5, graphics 3. work2 is always outlined in work.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum {
  LAP_COLOUR_PAPER, LAP_COLOUR_WINDOW, LAP_COLOUR_CARD, LAP_COLOUR_HEADER, LAP_COLOUR_FOLD, LAP_COLOUR_BUTTON,
  LAP_COLOUR_INK, LAP_COLOUR_INK2, LAP_COLOUR_LINE2, LAP_COLOUR_LINE, LAP_COLOUR_WORK, LAP_COLOUR_ON_WORK,
  LAP_COLOUR_WORK2, LAP_COLOUR_TALK, LAP_COLOUR_EFFORT, LAP_COLOUR_NOTE, LAP_COLOUR_ON_NOTE, LAP_COLOUR_STOP,
  LAP_N_COLOURS,
} LapColour;

/* Its colour in the style that is on now. */
GdkRGBA lap_colour          (LapColour   colour);

/* Gives @display the style, and the named colours again whenever dark or light is chosen. Once a program. */
void    lap_palette_install (GdkDisplay *display);

G_END_DECLS
