/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What went wrong, said calmly over whatever window there is.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* A dialog over @window: @what in a few words, @why in one line. */
void lap_tell_error (GtkWindow  *window,
                     const char *what,
                     const char *why);

G_END_DECLS
