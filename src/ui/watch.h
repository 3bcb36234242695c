/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks whether somebody else writes the file of a document, so that people hear of it before they go on, not when
 * they save.
 */
#pragma once

#include "ui/document.h"

G_BEGIN_DECLS

#define LAP_TYPE_WATCH (lap_watch_get_type ())
G_DECLARE_FINAL_TYPE (LapWatch, lap_watch, LAP, WATCH, GObject)

/* Watches until it is let go of. Doesn't hold @document. */
LapWatch *lap_watch_new (LapDocument *document);

G_END_DECLS
