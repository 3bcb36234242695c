/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an arranger proposes: the plan as it is and as it would be, what is done and what is left. All of it is made on
 * a private copy of the session; the session itself isn't touched, and nothing that was laid out from it is outdated.
 *
 * Calling order: lap_proposal_new() to show it; when it is taken, lap_request_edits() on the session itself gives the
 * same edits for the history, since arrangers are deterministic. What they need to be searched for long, orders, is
 * found before and stands in the request.
 */
#pragma once

#include "arrange/adapt.h"
#include "arrange/order.h"
#include "ui/sides.h"

G_BEGIN_DECLS

typedef enum { LAP_ARRANGE_ORDER, LAP_ARRANGE_MEND, LAP_ARRANGE_ADAPT, LAP_ARRANGE_CHOOSE, LAP_N_ARRANGERS } LapArranger;

typedef struct {
  LapArranger arranger;
  LapFor      whom;    /* adapt */
  GPtrArray  *orders;  /* order: LapOrder of each part, NULL where it has none; not owned */
} LapRequest;

/* One thing that is done, and why. */
typedef struct {
  char *what, *why;
} LapDeed;

typedef struct {
  char      *heading;  /* what it gains, in words */
  GPtrArray *done;     /* LapDeed */
  GPtrArray *left;     /* char *, what couldn't be solved */
  LapPlanSide   *before, *after;
  GPtrArray *pairs;    /* LapPlanPair, into both */
  gboolean   possible; /* something would change */
} LapProposal;

/* The parts that order is for: main ones with more than one block. */
gboolean     lap_order_suits    (const LapTimeline *timeline,
                                 guint              part);

/* @session can be laid out. */
LapProposal *lap_proposal_new   (LapSession        *session,
                                 LapCatalogue      *builtin,
                                 const LapRequest  *request);
void         lap_proposal_free  (LapProposal       *proposal);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapProposal, lap_proposal_free)

/* The edits on @session, not applied. What was laid out from @session before must not be read any more: lay it out
 * anew, as applying them does. */
LapEdits    *lap_request_edits  (const LapRequest  *request,
                                 LapSession        *session,
                                 LapCatalogue      *builtin);

G_END_DECLS
