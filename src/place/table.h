/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A table that goes over as many pages as it needs: rows of cells, each cell a few paragraphs, none cut. The headings
 * stand on each page; a row that introduces what follows is never the last on a page.
 *
 * Calling order: columns, then rows with their cells from left to right, then lap_table_put() page after page.
 */
#pragma once

#include "place/wrap.h"

G_BEGIN_DECLS

#define LAP_TABLE_COLUMNS 10

typedef struct {
  double      width;   /* mm, a gap of 2 mm to the next included */
  const char *heading; /* translated */
} LapColumn;

typedef struct _LapTable LapTable;
typedef struct _LapTableRow LapTableRow;

LapTable    *lap_table_new    (const LapMeasure *measure,
                               const LapColumn  *columns,
                               guint             n,
                               const LapType    *heading);
void         lap_table_free   (LapTable         *table);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapTable, lap_table_free)

guint        lap_table_n      (const LapTable   *table);

/* A new last row. @introduces: it is kept with the row that follows. */
LapTableRow *lap_table_row    (LapTable         *table,
                               gboolean          introduces);
/* Adds a paragraph to the cell of @row at @column; with @span it takes the width of that many columns. */
void         lap_table_cell   (LapTable         *table,
                               LapTableRow      *row,
                               guint             column,
                               guint             span,
                               LapWeight         weight,
                               const char       *text,
                               const LapType    *type);
/* The same with a sign before its first line. */
void         lap_table_sign   (LapTable         *table,
                               LapTableRow      *row,
                               guint             column,
                               LapSign           sign,
                               LapWeight         weight,
                               const char       *text,
                               const LapType    *type);
/* The ground at the start of the row: @work and @rest to scale, @role for its solid part. */
void         lap_table_ground (LapTableRow      *row,
                               LapRole           role,
                               int               work,
                               int               rest);
/* A figure in @column, at least @height high. */
void         lap_table_figure (LapTableRow      *row,
                               guint             column,
                               LapExercise      *exercise,
                               double            height);

/* Puts rows from @from on between @y and @bottom, headings first. At least one row is put. Returns the first row that
 * is left. With @page NULL nothing is put, to count pages. */
guint        lap_table_put    (LapTable         *table,
                               guint             from,
                               LapPage          *page,
                               double            x,
                               double            y,
                               double            bottom);

G_END_DECLS
