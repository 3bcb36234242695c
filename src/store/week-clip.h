/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Classes on a clipboard: a small week that holds them with the rooms and coaches they name, as the bytes of its file.
 * So they are text that anybody can read, keep and send, and what is pasted may be a whole week as well.
 */
#pragma once

#include "model/week.h"

G_BEGIN_DECLS

#define LAP_WEEK_CLIP_MIME "application/vnd.lapwing.week+json"

/* @classes (of LapClass) of @week. */
GBytes    *lap_week_clip_write (LapWeek    *week,
                                GPtrArray  *classes);
/* The classes in @bytes, without an owner, with ids of their own, and without rooms and coaches that @week hasn't.
 * Transfer full. NULL with one line of @error where the bytes aren't a week, or have no class. */
GPtrArray *lap_week_clip_read  (LapWeek    *week,
                                GBytes     *bytes,
                                GError    **error);

G_END_DECLS
