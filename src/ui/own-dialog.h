/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog of one of a session's own exercises: what it is called, how it is done, what it works and asks of the
 * joints, the words to say, its easier and harder one, whose figure it borrows. A row of the tables in own-dialog.c is a
 * row on screen. Each change is one step of the history, at once; when the dialog closes the exercise is kept for the
 * user's other sessions, too.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Opens it above @parent for the exercise @id of the session. Transfer none; it destroys itself when it is closed, and
 * closes when the exercise is there no more. */
GtkWidget *lap_own_dialog_open (GtkWindow   *parent,
                                LapDocument *document,
                                const char  *id);

G_END_DECLS
