/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Classes to and from the clipboard, as the text of a small week.
 */
#pragma once

#include "ui/week/scene.h"

G_BEGIN_DECLS

void lap_week_copy  (LapWeekScene *scene,
                     GdkClipboard *clipboard,
                     GPtrArray    *classes);
/* Adds what is on it, each on the first day on which its place is free; says so where nothing is. */
void lap_week_paste (LapWeekScene *scene,
                     GdkClipboard *clipboard);
/* What a paste does with the text it got; for tests. FALSE where it holds no classes. */
gboolean lap_week_paste_bytes (LapWeekScene *scene,
                               GBytes       *bytes);

G_END_DECLS
