/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Timelines for tests, from the members of a session as a file has them.
 */
#pragma once

#include "timeline/timeline.h"

/* @members is everything of the session but format, version, id and title, in single quotes instead of double
 * ones: "'parts': [ … ]". Fails the test when it can't be read or laid out. */
LapTimeline *test_timeline (const char *members);

/* One part of exercise blocks that is run together: @kind, its rounds, and the text of its blocks. */
LapTimeline *test_part     (const char *kind,
                            int         rounds,
                            const char *blocks);
