/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog of an arranger: the plan as it is beside what it would be, to take or to keep. Taking it is one step of
 * the history. What would be is found in a worker, which closing the dialog cancels. When the document changes
 * meanwhile, the dialog closes: what it shows is outdated.
 */
#pragma once

#include "ui/proposal.h"
#include "ui/window.h"

G_BEGIN_DECLS

#define LAP_TYPE_ARRANGE (lap_arrange_get_type ())
G_DECLARE_FINAL_TYPE (LapArrange, lap_arrange, LAP, ARRANGE, AdwWindow)

/* Gives windows the actions "win.order", "win.mend", "win.adapt" and "win.choose", which open the dialog. */
void               lap_arrange_install  (GtkWidgetClass *klass);

/* Opens it above @window. It destroys itself. */
LapArrange        *lap_arrange_open     (LapWindow      *window,
                                         LapArranger     arranger);
/* What it shows, or NULL while that is looked for. */
const LapProposal *lap_arrange_proposal (LapArrange     *arrange);

G_END_DECLS
