/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a clipboard holds, as bytes: at most as many as a file of ours has.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Exactly one of @bytes and @why, one line of what went wrong, is there. */
typedef void (*LapClipboardFunc) (GObject *object, GBytes *bytes, const char *why);

/* Reads the first of @types (MIME) that @clipboard has, and tells @func, in the main loop. @object is held meanwhile. */
void lap_clipboard_read (GdkClipboard     *clipboard,
                         const char      **types,
                         LapClipboardFunc  func,
                         gpointer          object);

G_END_DECLS
