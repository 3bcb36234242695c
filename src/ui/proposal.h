/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an arranger proposes: the plan as it is and as it would be, what is done and what is left.
 *
 * Always true: all of it is made on a twin, a copy of the session that nobody else has, so that it may be made in a
 * worker; the session itself isn't touched, and nothing that was laid out from it is outdated.
 *
 * Calling order: lap_proposal_new() to show it; when it is taken, lap_proposal_edits() are for the history, as long as
 * the session still is what the twin was copied from.
 */
#pragma once

#include "arrange/adapt.h"
#include "ui/sides.h"

G_BEGIN_DECLS

typedef enum { LAP_ARRANGE_ORDER, LAP_ARRANGE_MEND, LAP_ARRANGE_ADAPT, LAP_ARRANGE_CHOOSE, LAP_N_ARRANGERS } LapArranger;

typedef struct {
  LapArranger arranger;
  LapFor      whom;    /* adapt */
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
  LapSession *twin;
  LapEdits  *edits;    /* of the twin, not applied */
} LapProposal;

/* @twin (transfer full) can be laid out. @tell (may be NULL) is told shares from 0 to 1 where they are known. NULL with
 * G_IO_ERROR_CANCELLED only. */
LapProposal *lap_proposal_new   (LapSession        *twin,
                                 LapCatalogue      *builtin,
                                 const LapRequest  *request,
                                 GCancellable      *cancellable,
                                 void             (*tell) (double share, gpointer data),
                                 gpointer           data,
                                 GError           **error);
void         lap_proposal_free  (LapProposal       *proposal);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapProposal, lap_proposal_free)

/* The edits that make @session, which is as the twin was, what was proposed. Transfer full. */
LapEdits    *lap_proposal_edits (const LapProposal *proposal,
                                 LapSession        *session);

G_END_DECLS
