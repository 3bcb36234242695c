/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the pointer holds over a lane: how far it was carried, Escape and the modifiers meanwhile, whoever has the
 * focus, and the view that scrolls while the pointer is near its edge.
 *
 * Take it when the press has become a drag, move it with the pointer, and let go. Between, "moved" is called whenever
 * the pointer, what lies under it or a modifier is another, and "escaped" once, after the grip has let go.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

typedef struct {
  void (*moved)   (gpointer data);
  void (*escaped) (gpointer data); /* NULL: Escape is not taken */
} LapGripFuncs;

typedef struct {
  LapLane            *lane;
  const LapGripFuncs *funcs;
  gpointer            data;
  gboolean            held, stretches;
  double              began, x; /* px of the lane */
  GdkModifierType     state;
  double              scrolled; /* px of content that came by while it was held at an edge, in the order of time */
  double              ahead;    /* those of them for which there was nothing to scroll to */
  guint               tick;
  GtkWidget          *root;     /* that has the keys, or NULL */
  GtkEventController *keys;
} LapGrip;

void   lap_grip_init    (LapGrip            *grip,
                         LapLane            *lane,
                         const LapGripFuncs *funcs,
                         gpointer            data);
/* Also when it is not held. */
void   lap_grip_let_go  (LapGrip            *grip);
/* It was pressed at @began; @stretches: the content becomes longer with it. */
void   lap_grip_take    (LapGrip            *grip,
                         double              began,
                         gboolean            stretches);
void   lap_grip_move    (LapGrip            *grip,
                         double              x,
                         GdkModifierType     state);
/* By how many seconds it was carried, as they are drawn where nothing is folded. */
double lap_grip_seconds (const LapGrip      *grip);
/* Steps of seconds: five, or one with Alt. */
int    lap_grip_grid    (const LapGrip      *grip);

/* A few words beside what is held, in ink, kept within the view: after the lane's own drawing. */
void   lap_grip_draw_tag (const LapGrip     *grip,
                          GtkSnapshot       *snapshot,
                          const char        *text);

G_END_DECLS
