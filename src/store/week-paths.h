/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the sessions of a week are. Its file names them relative to itself, so that a folder can be moved as a whole.
 * A week that is open names them by whole paths instead: they stay the same files when the week is saved elsewhere,
 * copied, or undone to what it was in another folder.
 */
#pragma once

#include "model/week.h"

G_BEGIN_DECLS

/* The classes of @week, which was read from @file, name whole paths from now on. */
void    lap_week_paths_whole  (LapWeek    *week,
                               const char *file);
/* The bytes of @week in @file: sessions are named relative to it. With @file NULL their paths stay whole. Changes
 * nothing. */
GBytes *lap_week_paths_bytes  (LapWeek    *week,
                               const char *file);

G_END_DECLS
