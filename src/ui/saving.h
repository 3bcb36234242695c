/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A window's document and its file: saving, saving elsewhere, going back to what the file holds, a copy to work on
 * beside it, and the question before unsaved work is closed. Whatever goes wrong is said in a dialog, and neither file
 * nor document loses by it.
 */
#pragma once

#include "ui/window.h"

G_BEGIN_DECLS

/* Gives windows the actions "win.save", "win.save-as", "win.revert" and "win.duplicate". */
void lap_saving_install            (GtkWidgetClass *klass);

/* Below the dialogs: saves to @path, NULL for the document's own, and says how it went. @close closes after. */
void lap_saving_to                 (LapWindow      *window,
                                    const char     *path,
                                    gboolean        close);
/* Opens the question, which closes the window where the answer is so. */
void lap_saving_ask_before_closing (LapWindow      *window);

G_END_DECLS
