/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pictures to lay over a film: how long it still takes, what is done and what comes next, in the top left corner
 * so that feet stay in sight. Transparent elsewhere. All of it stands in the safe area for titles, 5 % from each
 * edge (EBU R 95). A picture changes once a second and nothing flashes (WCAG 2.2, 2.3.1).
 */
#pragma once

#include "timeline/timeline.h"

#include <cairo.h>

G_BEGIN_DECLS

/* Texts are interned: a session has few. */
typedef struct {
  const LapInterval *interval; /* NULL: nothing is shown */
  int                left;     /* seconds of it */
  const char        *title;    /* translated */
  const char        *next;     /* translated, "" for nothing */
} LapOverlayState;

/* The size of the film's pictures: 1920 by 1080, or upright. */
void             lap_overlay_size       (const LapTimeline     *timeline,
                                         int                   *width,
                                         int                   *height);

/* What is shown in the second from @second on. */
LapOverlayState  lap_overlay_state      (const LapTimeline     *timeline,
                                         int                    second);
/* For a hash table of LapOverlayState: equal are two that look the same. */
guint            lap_overlay_state_hash  (gconstpointer         state);
gboolean         lap_overlay_state_equal (gconstpointer         a,
                                          gconstpointer         b);

/* Clears the picture of @width by @height pixels and draws it; an empty one where @state is. */
void             lap_overlay_draw       (cairo_t               *cr,
                                         int                    width,
                                         int                    height,
                                         const LapOverlayState *state);

G_END_DECLS
