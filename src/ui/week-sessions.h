/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The sessions that the classes of an open week name by whole paths: read when asked for, watched, and read again
 * when somebody has written them. "changed" says that they aren't what they were.
 */
#pragma once

#include "effort/attached.h"
#include "model/week.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK_SESSIONS (lap_week_sessions_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekSessions, lap_week_sessions, LAP, WEEK_SESSIONS, GObject)

LapWeekSessions *lap_week_sessions_new         (void);
/* What is known of them. Transfer none. */
LapAttachments  *lap_week_sessions_attachments (LapWeekSessions *sessions);
/* The week's file, NULL without: a session that has gone is sought beside it. */
void             lap_week_sessions_set_file    (LapWeekSessions *sessions,
                                                const char      *file);
/* Watches those that @week names now. To be called after each of its changes. */
void             lap_week_sessions_watch       (LapWeekSessions *sessions,
                                                const LapWeek   *week);

G_END_DECLS
