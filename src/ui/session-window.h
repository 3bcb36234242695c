/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of a session: the score, the warnings, the pane of the selected block, the catalogue; the rehearsal, the
 * sheets, the script.
 */
#pragma once

#include "ui/pane.h"
#include "ui/score/view.h"
#include "ui/shelf.h"
#include "ui/warnings.h"
#include "ui/window.h"

G_BEGIN_DECLS

#define LAP_TYPE_SESSION_WINDOW (lap_session_window_get_type ())
G_DECLARE_FINAL_TYPE (LapSessionWindow, lap_session_window, LAP, SESSION_WINDOW, LapWindow)

GtkWidget       *lap_session_window_new (GtkApplication *application,
                                         LapDocument    *document);

/* Of a window that is one. */
LapScoreContext *lap_window_context     (LapWindow      *window);
LapScoreView    *lap_window_score       (LapWindow      *window);
LapPane         *lap_window_pane        (LapWindow      *window);
LapShelf        *lap_window_shelf       (LapWindow      *window);
LapWarnings     *lap_window_warnings    (LapWindow      *window);

G_END_DECLS
