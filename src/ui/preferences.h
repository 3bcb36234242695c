/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The settings: what new sessions begin with, and where sessions are. Each change is kept at once. A file never depends
 * on any of it: what is set here is written into new files, and nowhere else.
 */
#pragma once

#include "model/session.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* Shows them over @parent (may be NULL). Transfer none. */
GtkWindow *lap_preferences_open  (GtkWindow  *parent);
/* Forgets all that is set there. */
void       lap_preferences_reset (void);
/* Writes the first values into @session, which is new. */
void       lap_preferences_fill  (LapSession *session);

G_END_DECLS
