/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The program with windows: opens files, each once, in a window of its own; started bare it lists the sessions that
 * are there.
 */
#pragma once

#include "ui/document.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_APPLICATION (lap_application_get_type ())
G_DECLARE_FINAL_TYPE (LapApplication, lap_application, LAP, APPLICATION, AdwApplication)

/* Whether there is a display to open windows on. */
gboolean        lap_application_has_display (void);

LapApplication *lap_application_new       (void);

/* Opens the file at @path in a window, or raises the window that has it. NULL with @error. */
GtkWindow      *lap_application_open_path (LapApplication *application,
                                           const char     *path,
                                           GError        **error);
/* @document in a window of its own, with drafts. */
GtkWindow      *lap_application_show      (LapApplication *application,
                                           LapDocument    *document);
/* The list of sessions and weeks, which closes when one is opened. */
GtkWindow      *lap_application_show_library (LapApplication *application);
/* A new document, the demo, in a window. */
GtkWindow      *lap_application_open_demo (LapApplication *application);

G_END_DECLS
