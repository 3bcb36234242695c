/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The exercises that are selected, each in its round, as they were when a pane began to show them: what is half typed
 * goes to those, whatever is selected by then.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

typedef struct {
  LapBlock *block;
  int       round; /* at least 1 */
} LapChosen;

/* The focused one, an exercise, comes first, then the others in the order of parts and blocks. Of LapChosen; holds them. */
GArray  *lap_chosen_exercises (LapScoreContext *context);
/* Whether @member, as it is called in files, isn't the same in all. */
gboolean lap_chosen_differ    (const GArray    *chosen,
                               const char      *member);
/* @member becomes @value in all of them, as one step called @label. */
LapEdits *lap_chosen_put      (const GArray    *chosen,
                               const char      *member,
                               const GValue    *value,
                               const char      *label);

G_END_DECLS
