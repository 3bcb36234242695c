/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of comma-separated values (RFC 4180): quoted where they must be, a comma or, behind the last of a row, a
 * line end after them.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* NULL is an empty field. */
void lap_csv_text   (GString    *csv,
                     const char *text,
                     gboolean    last);
/* An empty field where it isn't @there. */
void lap_csv_whole  (GString    *csv,
                     int         number,
                     gboolean    there);
/* Milliseconds at most, and no more digits than it needs; the same in every locale. */
void lap_csv_number (GString    *csv,
                     double      number,
                     gboolean    last);

G_END_DECLS
