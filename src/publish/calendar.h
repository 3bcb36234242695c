/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A session or a week for a calendar, as iCalendar (RFC 5545). A session is one event at the time that `at` and
 * `timezone` say. A week is one weekly event for each class from `from` on (else from the week's own first day) until
 * the week ends; one without an end goes on for five years, as long as a week may be. What doesn't take place is taken
 * out of the series, what is different on a date is an event that replaces it.
 *
 * Always true: publishing again gives each event the same UID, so that a calendar replaces what it had; read back, the
 * events are those of lap_occurrences_between() that are held.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

gboolean lap_calendar_write (const LapPublication *what,
                             const char           *suffix,
                             LapOutput            *output,
                             GError              **error);

G_END_DECLS
