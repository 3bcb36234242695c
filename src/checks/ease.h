/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Remedies that add to or lengthen a warm-up or a cool-down; for theme files.
 */
#pragma once

#include "checks/checkup.h"

G_BEGIN_DECLS

/* Adds "Add a warm-up of 5 min": a new part before the first main part or after the last. */
void lap_remedy_ease     (const LapCheckup *checkup, LapPartKind kind, int seconds, GPtrArray *remedies);
/* Adds "45 s each": every block of the parts of @kind longer, so that @seconds are gained. */
void lap_remedy_longer   (const LapCheckup *checkup, LapPartKind kind, int seconds, GPtrArray *remedies);
/* Adds "Add …" to @part: an exercise of its use for one of @regions (0 = any) with at least @impact. */
void lap_remedy_ease_for (const LapCheckup *checkup, guint part, guint32 regions, LapImpact impact,
                          GPtrArray *remedies);
/* Adds "Take …" for a block without an exercise, or with one that can't stay: what suits the session, for the regions
 * that have had least first. */
void lap_remedy_choose   (const LapCheckup *checkup, guint turn, GPtrArray *remedies);

G_END_DECLS
