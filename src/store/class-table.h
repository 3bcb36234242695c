/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A spreadsheet of classes becomes a week: what `publish --as table` writes of one, and what people type. Columns are
 * found by their headings, in any order; cells are read as store/class-cells.h says. A row whose `class` is the id of a
 * class of the week changes that class, each other row adds one, or one on each of its days. Rooms and coaches that
 * the week doesn't have are made.
 *
 * Nothing is half imported: while there is a fault there are no edits, and the week is never touched.
 */
#pragma once

#include "edit/edit.h"
#include "model/week.h"

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct {
  guint line;
  char *text; /* translated, without the line: "“half six” isn’t a time such as 18:30" */
} LapTableFault;

typedef struct {
  guint     line;
  LapClass *c;     /* of `week` */
  gboolean  added; /* not there before */
} LapTableRow;

typedef struct {
  LapWeek *week;    /* a copy of the week that was given, with what the table says, as far as it could be read */
  GArray  *rows;    /* LapTableRow, in the order of the table */
  GArray  *faults;  /* LapTableFault, in the order of the lines */
  char   **unknown; /* headings that mean nothing here: their columns are passed over */
  gboolean guessed; /* letters with accents may be wrong: see store/csv-read.h */
} LapClassTable;

/* @week is what the classes are for, perhaps an empty one. Paths of sessions are relative to the file @beside; NULL:
 * they stay as they are. NULL with LAP_ERROR_INVALID, "line 1: …", where it is no table of classes. */
LapClassTable *lap_class_table_read  (GBytes              *bytes,
                                      LapWeek             *week,
                                      const char          *beside,
                                      GError             **error);
void           lap_class_table_free  (LapClassTable       *table);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapClassTable, lap_class_table_free)

/* "Line 7: “half six” isn’t a time such as 18:30". Translated; transfer full. */
char          *lap_table_fault_told  (const LapTableFault *fault);

/* What makes of @week, the one that was given and unchanged since, what the table says. NULL while there are faults. */
LapEdits      *lap_class_table_edits (const LapClassTable *table,
                                      LapWeek             *week);

G_END_DECLS
