/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What to take at a station for each of three levels: the easier way, as shown, the harder way. Only what the plan
 * itself says is filled in: of a range its lighter end for the easier and its heavier end for the harder way, a single
 * weight as shown. No published table says which weight suits whom, so the rest is left to be written by hand.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

enum { LAP_LOAD_EASIER, LAP_LOAD_AS_SHOWN, LAP_LOAD_HARDER, LAP_N_LOADS };

typedef struct {
  char       *texts[LAP_N_LOADS]; /* "8 kg"; NULL = to be written */
  const char *unit;               /* behind what is written: "kg", or "" */
} LapLoads;

/* FALSE where the kit has no weights or strengths to choose from. */
gboolean lap_loads_of    (const LapTask *task,
                          LapLoads      *loads);
void     lap_loads_clear (LapLoads      *loads);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (LapLoads, lap_loads_clear)

G_END_DECLS
