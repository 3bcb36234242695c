/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How brackets look: parts with their titles in the upper of two rows, rounds in the lower, rests hatched between.
 */
#pragma once

#include "place/brackets.h"
#include "ui/score/lane.h"

G_BEGIN_DECLS

/* px of a row, where a line of text takes @line. */
int  lap_brackets_row  (int                line);
/* Those that lie in the view. */
void lap_brackets_draw (LapLane           *lane,
                        const LapBrackets *brackets,
                        GtkSnapshot       *snapshot);

G_END_DECLS
