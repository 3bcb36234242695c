/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Comma-separated values (RFC 4180) as spreadsheets of all locales write them: with commas, semicolons or tabs, which
 * the first row tells (or a line "sep=;" before it), in UTF-8, in UTF-16 with its mark, or else in Windows-1252.
 *
 * Always true: a row knows the line of the file that it starts on; an empty line is a row without cells; a quotation
 * mark inside an unquoted cell is itself. What can't be read whole isn't read at all.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

#define LAP_CSV_ROWS_MOST  5000
#define LAP_CSV_CELLS_MOST 256 /* in a row */

typedef struct {
  guint line;  /* from 1 */
  guint first; /* in `cells` */
  guint n;
} LapCsvRow;

typedef struct {
  char    *text;  /* what the cells point into */
  GArray  *cells; /* char * */
  GArray  *rows;  /* LapCsvRow */
  gboolean guessed; /* it was neither UTF-8 nor UTF-16: letters with accents may be wrong */
} LapCsv;

/* NULL with LAP_ERROR_INVALID and "line 12: …". */
LapCsv     *lap_csv_read (GBytes        *bytes,
                          GError       **error);
void        lap_csv_free (LapCsv        *csv);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapCsv, lap_csv_free)

#define lap_csv_row(csv, i) (&g_array_index ((csv)->rows, LapCsvRow, (i)))
/* Empty where the row is shorter. */
const char *lap_csv_cell     (const LapCsv  *csv,
                              guint          row,
                              guint          column);
/* Whether the cells of a row hold nothing but blanks. */
gboolean    lap_csv_is_blank (const LapCsv  *csv,
                              guint          row);

G_END_DECLS
