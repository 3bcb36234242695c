/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words to say of an exercise block, in the round that is shown, and below them the seconds that they need and
 * those there are, counted while they are typed. Nothing is applied here: "apply" says that somebody has finished
 * typing, and whoever shows the words takes their edits.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_PANE_WORDS (lap_pane_words_get_type ())
G_DECLARE_FINAL_TYPE (LapPaneWords, lap_pane_words, LAP, PANE_WORDS, GtkBox)

/* Shows the focused block of @context, an exercise. */
void      lap_pane_words_show  (LapPaneWords    *words,
                                LapScoreContext *context);
/* What has been typed and isn't an edit yet, one step, or NULL. A block has been shown. */
LapEdits *lap_pane_words_edits (LapPaneWords    *words);

G_END_DECLS
