/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What was done to a document, to undo and redo without limit. Every state has a revision number of its own, so
 * "modified" is: the number now isn't the number saved; undoing to what was saved clears it.
 *
 * A drag opens a group on press, applies a new group of edits on each motion (the one before is taken back first),
 * and closes or cancels it on release: one step of undo, whatever lay between. While a group is open nothing can
 * be undone. "changed" is emitted after each change of state, when the model is whole.
 */
#pragma once

#include "edit/edit.h"

G_BEGIN_DECLS

/* No state has this revision. */
#define LAP_HISTORY_NEVER G_MAXUINT64

#define LAP_TYPE_HISTORY (lap_history_get_type ())
G_DECLARE_FINAL_TYPE (LapHistory, lap_history, LAP, HISTORY, GObject)

LapHistory *lap_history_new        (void);

/* Applies @edits (transfer full) as one step. An empty group is dropped. In an open group it replaces what the
 * group held before. */
void        lap_history_apply      (LapHistory *history,
                                    LapEdits   *edits);
void        lap_history_begin      (LapHistory *history);
/* Keeps the last edits applied since lap_history_begin() as one step. */
void        lap_history_end        (LapHistory *history);
/* Takes them back: as if nothing had been. */
void        lap_history_cancel     (LapHistory *history);
gboolean    lap_history_is_open    (LapHistory *history);

gboolean    lap_history_undo       (LapHistory *history);
gboolean    lap_history_redo       (LapHistory *history);
/* What would be undone or redone, or NULL. */
const char *lap_history_undo_label (LapHistory *history);
const char *lap_history_redo_label (LapHistory *history);

guint64     lap_history_revision   (LapHistory *history);
/* The state of @revision is what the file holds; LAP_HISTORY_NEVER where it holds none of them. */
void        lap_history_saved      (LapHistory *history,
                                    guint64     revision);
gboolean    lap_history_modified   (LapHistory *history);

G_END_DECLS
