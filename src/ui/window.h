/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A window holds one document: the score, the warnings, the pane of the selected block.
 */
#pragma once

#include "ui/keeper.h"
#include "ui/pane.h"
#include "ui/score/view.h"
#include "ui/shelf.h"
#include "ui/warnings.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_WINDOW (lap_window_get_type ())
G_DECLARE_FINAL_TYPE (LapWindow, lap_window, LAP, WINDOW, AdwApplicationWindow)

GtkWidget       *lap_window_new        (GtkApplication *application,
                                        LapDocument    *document);
LapDocument     *lap_window_document   (LapWindow      *window);
LapScoreContext *lap_window_context    (LapWindow      *window);
LapScoreView    *lap_window_score      (LapWindow      *window);
/* Applies what has been typed somewhere and isn't an edit yet: before saving or closing. */
void             lap_window_commit     (LapWindow      *window);
LapPane         *lap_window_pane       (LapWindow      *window);
LapShelf        *lap_window_shelf      (LapWindow      *window);
LapWarnings     *lap_window_warnings   (LapWindow      *window);

/* A dialog with one line of what went wrong. */
void             lap_window_tell_error (LapWindow      *window,
                                        const char     *what,
                                        const char     *why);
/* A toast. */
void             lap_window_tell       (LapWindow      *window,
                                        const char     *text,
                                        gboolean        undoable);

/* Keeps drafts of the document until the window closes. */
void             lap_window_set_keeper (LapWindow      *window,
                                        LapKeeper      *keeper);
/* Closes it without a question; the draft goes, too. */
void             lap_window_close_anyway (LapWindow    *window);

G_END_DECLS
