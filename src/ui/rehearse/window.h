/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of a rehearsal, full screen where one likes: the stage, and below it what can be done, for
 * fingers and for those who don't know the keys yet. Keys are in the table of shortcuts; a remote clicker's
 * pages and blank are among them.
 *
 * The screen stays awake while it runs. The pointer and the row below go after two seconds without a move,
 * and come back with the next. The sleep signal of the system holds it.
 *
 * "marked" (n) tells of each new take; "left" that it was closed.
 */
#pragma once

#include "ui/rehearse/stage.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_REHEARSE_WINDOW (lap_rehearse_window_get_type ())
G_DECLARE_FINAL_TYPE (LapRehearseWindow, lap_rehearse_window, LAP, REHEARSE_WINDOW, AdwWindow)

#define LAP_COUNT_IN 3 /* seconds */

/* Takes @scene over. */
GtkWidget *lap_rehearse_window_new   (GtkWindow         *parent,
                                      LapScene          *scene);
LapStage  *lap_rehearse_window_stage (LapRehearseWindow *window);
/* Says @text on the screen for some seconds. */
void       lap_rehearse_window_tell  (LapRehearseWindow *window,
                                      const char        *text);
/* The time of a rehearsal: what runs on while the computer sleeps. */
gint64     lap_rehearse_time         (gpointer           unused);

G_END_DECLS
