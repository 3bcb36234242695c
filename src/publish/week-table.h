/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A week for a spreadsheet, and the hours of each coach in it, as comma-separated values. With `from` the week that
 * this day lies in, after what is different then; else the week as it always is.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

/* A row for each class: date (empty in the week as it always is), day, start, end, minutes, class, title, kind, for,
 * room, coach, places, state, effort, session, regions, in-out, takes-part, fixed, wish-days, wish-between. Those without
 * a day come last. store/class-table.h reads it again. */
gboolean lap_week_table_write (const LapPublication *what,
                               const char           *suffix,
                               LapOutput            *output,
                               GError              **error);
/* A row for each coach: coach, name, classes, the minutes on each day, minutes, hours. */
gboolean lap_hours_write      (const LapPublication *what,
                               const char           *suffix,
                               LapOutput            *output,
                               GError              **error);

G_END_DECLS
