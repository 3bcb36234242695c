/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a widget that changes a document is like where the document can't be changed: there to be read, out of reach,
 * and it says why. Call it whenever the document is shown anew.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* @widget can be used where @possible, unless @document is read-only. */
void lap_read_only_show (GtkWidget   *widget,
                         LapDocument *document,
                         gboolean     possible);

G_END_DECLS
