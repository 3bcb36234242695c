/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The columns of a table of classes: what their headings are called, by us and by people, in English and in the
 * language that is set, and where in a table they are.
 */
#pragma once

#include "store/csv-read.h"

G_BEGIN_DECLS

typedef enum {
  LAP_COLUMN_CLASS, LAP_COLUMN_TITLE, LAP_COLUMN_KIND, LAP_COLUMN_DAY, LAP_COLUMN_DATE, LAP_COLUMN_START,
  LAP_COLUMN_END, LAP_COLUMN_MINUTES, LAP_COLUMN_FOR, LAP_COLUMN_ROOM, LAP_COLUMN_COACH, LAP_COLUMN_PLACES,
  LAP_COLUMN_EFFORT, LAP_COLUMN_SESSION, LAP_COLUMN_REGIONS, LAP_COLUMN_IN_OUT, LAP_COLUMN_TAKES_PART,
  LAP_COLUMN_FIXED, LAP_COLUMN_WISH_DAYS, LAP_COLUMN_WISH_BETWEEN, LAP_COLUMN_STATE, LAP_N_COLUMNS,
} LapClassColumn;

/* The row with the headings: the first that has two which are known, else the first with anything. The number of
 * rows where all are blank. */
guint       lap_class_columns_row     (const LapCsv  *csv);
/* Sets @at to where in @row each column is, -1 for one that isn't there. Returns the headings that nobody
 * knows. Transfer full. */
char      **lap_class_columns_read    (const LapCsv  *csv,
                                       guint          row,
                                       int            at[LAP_N_COLUMNS]);
/* The heading that is written, which is the name of the property that the cells are of. */
const char *lap_class_column_property (LapClassColumn column);

G_END_DECLS
