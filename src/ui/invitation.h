/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands under the blocks while the session is empty: the ways to begin, each a button that does it. Composing
 * looks for a session that meets what the properties say, in a worker; it is taken over as one step that can be
 * undone, unless something was planned meanwhile.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_INVITATION (lap_invitation_get_type ())
G_DECLARE_FINAL_TYPE (LapInvitation, lap_invitation, LAP, INVITATION, GtkWidget)

GtkWidget *lap_invitation_new          (void);
/* Once, before it is shown. */
void       lap_invitation_set_document (LapInvitation *invitation,
                                        LapDocument   *document);
gboolean   lap_invitation_is_composing (LapInvitation *invitation);

G_END_DECLS
