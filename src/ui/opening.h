/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window that says which file is being opened, where that takes so long that somebody would wonder. When the file
 * has been read it is gone and whoever asked is told; closing it, or its button, ends it all and nobody is told.
 */
#pragma once

#include "ui/reading.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_OPENING (lap_opening_get_type ())
G_DECLARE_FINAL_TYPE (LapOpening, lap_opening, LAP, OPENING, AdwApplicationWindow)

typedef void (*LapOpenedFunc) (LapReading *reading, gpointer data);

GtkWindow  *lap_opening_new  (GtkApplication *application,
                              LapReading     *reading,
                              LapOpenedFunc   opened,
                              gpointer        data);
const char *lap_opening_path (LapOpening     *opening);

G_END_DECLS
