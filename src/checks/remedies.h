/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a check offers what would mend it, for the theme files only: from its remedies(), the best first. Each is an idea
 * until it has been tried: see lap_warning_remedies().
 */
#pragma once

#include "checks/checkup.h"
#include "edit/verbs.h"

G_BEGIN_DECLS

/* Adds a remedy; an empty group of edits is dropped. Both are taken over. */
void        lap_remedy_add     (GPtrArray      *remedies,
                                char           *label,
                                LapEdits       *edits);
/* Adds "Swap … with …" for the block of @turn and each block of its part that may move, the nearest first. Those
 * that don't help are weeded out with all other remedies. */
void        lap_remedy_swap    (const LapCheckup *checkup,
                                const LapWarning *warning,
                                guint             turn,
                                GPtrArray        *remedies);
/* Adds "Use the easier …" where the block has an easier exercise that @fits (NULL for any). */
void        lap_remedy_easier  (const LapCheckup *checkup,
                                guint             turn,
                                GPtrArray        *remedies);

G_END_DECLS
