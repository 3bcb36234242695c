/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For random walks over the score: where they begin, and what must hold after each step.
 */
#pragma once

#include "ui/windows.h"

G_BEGIN_DECLS

/* What a walk may do next, and how often. */
typedef struct {
  guint       share; /* of 100, which all of a table make together */
  const char *name;
  void      (*go) (gpointer walk);
} WalksStep;

/* Takes one of @steps for @walk. */
void       walks_take          (const WalksStep *steps,
                                gpointer         walk);
/* A session with every kind of box: work and rest, talk, a pause, gaps between rounds and at one's own pace. */
LapWindow *walks_window        (void);
/* The boxes of the score are those of a timeline made anew. */
void       walks_assert_boxes  (LapWindow  *window);
/* Every block that can be seen alone has a widget, where it belongs once that is @drawn; what is selected is a block
 * of the session. */
void       walks_assert_placed (LapWindow  *window,
                                gboolean    drawn);
/* Undo of everything returns to @first. */
void       walks_back          (LapWindow  *window,
                                const char *first);

G_END_DECLS
