/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Resolves what a block asks for in a round; only the expansion uses it.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

/* @step is the part's step for the round, or NULL. In-round changes win over steps, steps over the block. */
LapTask lap_task_resolve (LapCatalogue  *catalogue,
                          const LapPart *part,
                          LapBlock      *block,
                          int            round,
                          const LapStep *step);

G_END_DECLS
