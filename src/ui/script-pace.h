/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How fast the session is talked, and how long changes take: what all seconds of the script are counted with. It is
 * written into the file; each change is one step of the history.
 */
#pragma once

#include "ui/document.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_SCRIPT_PACE (lap_script_pace_get_type ())
G_DECLARE_FINAL_TYPE (LapScriptPace, lap_script_pace, LAP, SCRIPT_PACE, AdwBin)

GtkWidget *lap_script_pace_new  (LapDocument   *document);
/* As the session is now. */
void       lap_script_pace_show (LapScriptPace *pace);

G_END_DECLS
