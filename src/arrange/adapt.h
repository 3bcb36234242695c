/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A version of a session for somebody else: the same clock, block by block another exercise where the shown one
 * doesn't suit, with the reason for each swap, and by name what couldn't be solved.
 */
#pragma once

#include "edit/edit.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef enum {
  LAP_FOR_QUIET, LAP_FOR_WRISTS, LAP_FOR_KNEES, LAP_FOR_LOWER_BACK, LAP_FOR_SHOULDERS, LAP_FOR_BALANCE,
  LAP_FOR_AFTER_BIRTH, LAP_FOR_NOT_LYING, LAP_FOR_ON_CHAIR, LAP_FOR_STANDING, LAP_FOR_NO_KIT, LAP_FOR_NEW, LAP_N_FOR,
} LapFor;

extern const LapWords lap_fors;

/* What happened to one block (in one round). */
typedef struct {
  guint    part, block;
  int      round;   /* 0 = all that have no change of their own */
  char    *was, *now; /* names; now is NULL where nothing was found, equal to was where a word spares the joint */
  char    *reason;
  gboolean solved;
} LapSwap;

/* The edits that adapt the session of @timeline, as one group; *@swaps (of LapSwap, transfer full) says why. */
LapEdits *lap_adapt      (const LapTimeline *timeline,
                          LapFor             whom,
                          GPtrArray        **swaps);
void      lap_swap_free  (LapSwap           *swap);

/* The exercises of @builtin that suit @whom, and those that @session has anyway: what may be mended with, once it is
 * adapted. Transfer full. */
LapCatalogue *lap_adapt_catalogue (LapCatalogue     *builtin,
                                   const LapSession *session,
                                   LapFor            whom);

G_END_DECLS
