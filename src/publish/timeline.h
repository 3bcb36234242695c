/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The expanded timeline as data: JSON for programs, a table (CSV, RFC 4180) for spreadsheets. Names of members and
 * columns are the same in every locale.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

GBytes *lap_publish_timeline (const LapTimeline *timeline);
GBytes *lap_publish_table    (const LapTimeline *timeline);

G_END_DECLS
