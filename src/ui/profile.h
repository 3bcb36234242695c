/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The small picture of a session's or a week's shape, as ui/glance.h writes it: main parts in the colour of work, the
 * others in grey. It is a picture beside words that say more, and has none of its own.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_PROFILE (lap_profile_get_type ())
G_DECLARE_FINAL_TYPE (LapProfile, lap_profile, LAP, PROFILE, GtkWidget)

GtkWidget *lap_profile_new       (void);
/* @shape may be NULL or "": nothing is drawn. */
void       lap_profile_set_shape (LapProfile *profile,
                                  const char *shape);

G_END_DECLS
