/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The view "Rehearse" of a window: the safety words, on which screen and how, and the way to begin;
 * afterwards the takes and what to give more time. The rehearsal itself has a window of its own.
 */
#pragma once

#include "ui/rehearse/keep.h"
#include "ui/rehearse/window.h"
#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_REHEARSE_PAGE (lap_rehearse_page_get_type ())
G_DECLARE_FINAL_TYPE (LapRehearsePage, lap_rehearse_page, LAP, REHEARSE_PAGE, AdwBin)

void               lap_rehearse_page_set_context (LapRehearsePage *page,
                                                  LapScoreContext *context);
/* Opens the window of a rehearsal that stands at @second. It destroys itself. */
LapRehearseWindow *lap_rehearse_page_open        (LapRehearsePage *page,
                                                  int              second);

G_END_DECLS
