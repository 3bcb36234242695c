/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Publishing from the window: which format, in which file; then a dialog that says how far it is and lets people
 * cancel. The work is done by a worker on a session of its own, so that the plan can be edited meanwhile.
 */
#pragma once

#include "publish/formats.h"
#include "ui/window.h"

G_BEGIN_DECLS

/* The dialog that asks for the format. Shown by the caller. */
GtkWindow *lap_publish_dialog_new (LapWindow       *window);

/* Below the dialog: writes @path and tells in @window how it went. */
void       lap_publish_to         (LapWindow       *window,
                                   const LapFormat *format,
                                   gboolean         takes,
                                   const char      *path);

G_END_DECLS
