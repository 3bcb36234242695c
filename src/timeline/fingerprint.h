/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What tells one timeline from another: the takes of a film are of the plan they were shot on.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

/* SHA-256, in hexadecimal, over what is done when: equal for plans that are filmed the same, whatever their words,
 * paces and settings. Transfer full. */
char *lap_timeline_fingerprint (const LapTimeline *timeline);

G_END_DECLS
