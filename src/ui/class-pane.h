/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the selected classes of a week are, to be changed together: what they are called, when and where they are, what
 * they ask of bodies, what is wished for them, and the session they hold. With one class selected and a week of the
 * year looked at, what is different on its date comes first.
 *
 * "open-session" carries the id of a class whose session somebody wants to see.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_CLASS_PANE (lap_class_pane_get_type ())
G_DECLARE_FINAL_TYPE (LapClassPane, lap_class_pane, LAP, CLASS_PANE, GtkWidget)

/* Once; the document of a week. */
void lap_class_pane_set_document (LapClassPane       *pane,
                                  LapDocument        *document);
/* Edits the classes called @ids from now on. */
void lap_class_pane_select       (LapClassPane       *pane,
                                  const char * const *ids);
/* Applies what is typed and isn't an edit yet. */
void lap_class_pane_commit       (LapClassPane       *pane);
/* All selected classes hold the session at @path, NULL: none. */
void lap_class_pane_set_session  (LapClassPane       *pane,
                                  const char         *path);

G_END_DECLS
