/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Keeps a draft of a document: within LAP_KEEPER_WAIT milliseconds of the first change that no draft holds, one is
 * written, by a worker. A document that is as its file says has no draft: saving it, or undoing back to what was
 * saved, takes the draft away. One that could not be written is told once by "told" of the document.
 *
 * At most one write is under way; what is asked for meanwhile is done after it. Closing a document for good is
 * lap_keeper_discard(); a keeper that is only let go of leaves the draft where it is.
 */
#pragma once

#include "store/drafts.h"
#include "ui/document.h"

G_BEGIN_DECLS

#define LAP_KEEPER_WAIT 700

#define LAP_TYPE_KEEPER (lap_keeper_get_type ())
G_DECLARE_FINAL_TYPE (LapKeeper, lap_keeper, LAP, KEEPER, GObject)

/* @drafts outlives the keeper. @id of the draft that @document was recovered from, else NULL. */
LapKeeper *lap_keeper_new     (LapDocument *document,
                               LapDrafts   *drafts,
                               const char  *id);
/* The document is closed, and what isn't saved is not wanted: no draft is left. */
void       lap_keeper_discard (LapKeeper   *keeper);
/* The revision that the draft on the disk holds, or LAP_HISTORY_NEVER where there is none. */
guint64    lap_keeper_kept    (LapKeeper   *keeper);

G_END_DECLS
