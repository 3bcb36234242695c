/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people write into the cells of a timetable, in their own notation: "Mon", "Monday", "Mon, Wed & Fri", "Mon–Fri";
 * "18:30", "18.30", "18h30", "1830", "6:30 pm"; "45", "45 min", "0:45", "1 h". Days are known by their English names,
 * by those of the language of the program, and by as many first letters as name one only. Case, accents and signs
 * between the letters don't matter. Everything is read from a whole cell, or not at all.
 */
#pragma once

#include "model/when.h"

G_BEGIN_DECLS

/* Letters and digits alone, small, without accents: what two headings or names are compared by. Transfer full. */
char    *lap_cell_fold    (const char     *text);
/* The days as bits; 0 where it isn't days. */
guint    lap_cell_days    (const char     *text);
/* The words of the list that are said by id or label, as bits; 0 where one isn't known. */
guint32  lap_cell_words   (const char     *text,
                           const LapWords *words);
/* Minutes from midnight up to and with @most; -1 where it is no time. */
int      lap_cell_time    (const char     *text,
                           int             most);
/* "18:30–19:15", or one time, then *@end is -1. */
gboolean lap_cell_times   (const char     *text,
                           int            *start,
                           int            *end);
/* A length; -1 where it is none. */
int      lap_cell_minutes (const char     *text);
/* Yes 1, no 0; -1 where it is neither. */
int      lap_cell_flag    (const char     *text);

G_END_DECLS
