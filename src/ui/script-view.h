/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The view "Script" of a window: the pace, and every exercise and talk with its words, in the order of the session.
 * Its rows stay as long as the blocks and their order do, so that an edit leaves the focus where it is.
 */
#pragma once

#include "ui/score/context.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_SCRIPT_VIEW (lap_script_view_get_type ())
G_DECLARE_FINAL_TYPE (LapScriptView, lap_script_view, LAP, SCRIPT_VIEW, AdwBin)

void       lap_script_view_set_context (LapScriptView   *view,
                                        LapScoreContext *context);
/* Applies what has been typed and isn't an edit yet: before saving or closing. */
void       lap_script_view_commit      (LapScriptView   *view);

G_END_DECLS
