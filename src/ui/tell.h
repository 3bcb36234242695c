/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What went wrong, said calmly over whatever window there is.
 */
#pragma once

#include <adwaita.h>

G_BEGIN_DECLS

/* A dialog over @window: @what in a few words, @why in one line. */
void lap_tell_error (GtkWindow  *window,
                     const char *what,
                     const char *why);
/* A toast in @dialog, which says @text as it stands. */
void lap_tell_in    (AdwPreferencesWindow *dialog,
                     const char *text);
/* For "told" of a document that @dialog edits: what was changed is to be seen in it, why something can't be isn't. */
void lap_tell_refused (AdwPreferencesWindow *dialog,
                       const char *text,
                       gboolean    undoable);

G_END_DECLS
