/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a session works, in seconds of work: what the body gets and what it stands in meanwhile. Seconds of several
 * regions overlap, since an exercise works several; those of postures don't.
 */
#pragma once

#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef struct {
  int work;                         /* of exercises that are known */
  int primary[LAP_N_REGIONS];       /* a muscle of the region works hard */
  int secondary[LAP_N_REGIONS];     /* one helps, and none works hard */
  int push, pull;                   /* by pattern, horizontal and vertical */
  int front, back;                  /* of the legs: thigh front, hip bend and shin; seat, thigh back and calf */
  int posture[LAP_N_POSTURES];
  int care[LAP_N_CARE];             /* really loaded (2) */
} LapBalance;

/* Over the parts whose kind is in @kinds, a mask of LapPartKind. At their own pace the blocks of a part share its
 * seconds by what their repetitions take. */
void lap_balance_of (const LapTimeline *timeline,
                     guint32            kinds,
                     LapBalance        *balance);

G_END_DECLS
