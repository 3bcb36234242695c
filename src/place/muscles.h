/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What works when: a row for each region and one for what leaves people breathless, a bar on it for each block that
 * works it hard or has it help, and a clash where two blocks running on work the same muscles hard. In px of a view,
 * found anew for what is seen. Folded up, all clashes lie in one row and there are no bars.
 *
 * Bars of a row never overlap. Whole px, like the boxes of the score, so that a bar lies under the body of its block.
 */
#pragma once

#include "place/score.h"

G_BEGIN_DECLS

/* The rows are the regions in their order, and one more. */
#define LAP_ROW_BREATHLESS LAP_N_REGIONS
#define LAP_N_ROWS         (LAP_N_REGIONS + 1)
/* Seconds over which a hard load fades. */
#define LAP_FADE           45

typedef struct {
  int    x, width; /* left edge */
  int    fade;     /* px that a hard load fades over, until the next one in its row: after it in time */
  guint8 row;
  guint8 helps;    /* else it works hard */
  guint8 later;    /* of a round after the first that is as in the first */
} LapLoad;

/* Two neighbours that work the same muscles: the time between them. */
typedef struct {
  int     x, width;
  int     start, end; /* seconds: of the first's work, of the second's */
  guint32 rows;       /* regions that they share */
  guint8  later;
} LapClash;

/* The rows that a task works hard, and those that it has help; bits of both, none where its exercise isn't known. */
void     lap_task_rows     (const LapTask  *task,
                            guint32        *hard,
                            guint32        *helps);

/* Of the boxes in the view, by time. */
GArray  *lap_score_loads   (const LapScore *score,
                            const LapAxis  *axis);
GArray  *lap_score_clashes (const LapScore *score,
                            const LapAxis  *axis);

/* px that the rows take where a line of text takes @line, open or folded up. */
int      lap_load_rows_height   (int             line,
                            gboolean        open);
/* Where @row lies; all lie in one where they are folded up. */
void     lap_load_rows_place    (int             line,
                            gboolean        open,
                            guint           row,
                            int            *top,
                            int            *height);
/* "Thighs", "Breathless". Translated. */
const char *lap_load_row_label  (guint           row);

G_END_DECLS
