/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The expanded timeline as data: JSON for programs, a table (CSV, RFC 4180) for spreadsheets. Names of members and
 * columns are the same in every locale.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

GBytes  *lap_publish_timeline (const LapTimeline    *timeline);
GBytes  *lap_publish_table    (const LapTimeline    *timeline);

gboolean lap_timeline_write   (const LapPublication *what,
                               const char           *suffix,
                               LapOutput            *output,
                               GError              **error);
gboolean lap_table_write      (const LapPublication *what,
                               const char           *suffix,
                               LapOutput            *output,
                               GError              **error);

G_END_DECLS
