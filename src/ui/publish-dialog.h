/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Asks what a session or a week is to be exported as, for film and web: a row for each thing that the chosen format
 * can be told, and none for what means nothing to it.
 */
#pragma once

#include "ui/window.h"

G_BEGIN_DECLS

#define LAP_TYPE_PUBLISH_DIALOG (lap_publish_dialog_get_type ())
G_DECLARE_FINAL_TYPE (LapPublishDialog, lap_publish_dialog, LAP, PUBLISH_DIALOG, AdwMessageDialog)

GtkWindow *lap_publish_dialog_new (LapWindow *window);

G_END_DECLS
