/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drafts: what was typed and not saved yet, kept where a crash or a power cut doesn't reach it. Each running
 * program has a folder of its own under the one of all drafts and holds a lock on it while it lives; a folder whose
 * lock is free was left by a program that ended without closing its documents, and its drafts are offered again.
 * So two programs at once never touch each other's.
 *
 * A draft is a file: three lines that say what it is a draft of, then the bytes of the document. It is written like
 * any other file of ours, whole or not at all, and moves from one folder to another by one rename.
 *
 * Order of calls: lap_drafts_new(), lap_drafts_left() once, then lap_drafts_write() and lap_drafts_remove() as
 * documents change and close, and lap_drafts_free(). Writing and removing may be done by a worker; what belongs to one
 * document must not overlap.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct _LapDrafts LapDrafts;

typedef struct {
  char   *id;    /* of the draft, to write it again or to remove it */
  char   *path;  /* of the file it is a draft of, or NULL for a document that has none */
  char   *etag;  /* of that file when it was read, or NULL */
  GBytes *bytes; /* of the document */
} LapDraft;

void       lap_draft_free      (LapDraft    *draft);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapDraft, lap_draft_free)

/* The drafts under @folder, which is made where it isn't there. NULL with LAP_ERROR_UNWRITABLE where it can't be: a
 * program then works without. */
LapDrafts *lap_drafts_new      (const char  *folder,
                                GError     **error);
/* Lets go of them. Those that are still there are found by the next program. */
void       lap_drafts_free     (LapDrafts   *drafts);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapDrafts, lap_drafts_free)

/* Takes over what ended programs left. LapDraft, oldest first; transfer container and content. They stay on the disk
 * until they are removed. A file that isn't a draft is left where it is. */
GPtrArray *lap_drafts_left     (LapDrafts   *drafts);

/* Keeps @bytes as the draft @id. Syncs the disk. */
gboolean   lap_drafts_write    (LapDrafts   *drafts,
                                const char  *id,
                                const char  *path,
                                const char  *etag,
                                GBytes      *bytes,
                                GError     **error);
/* Nothing happens where there is none. */
void       lap_drafts_remove   (LapDrafts   *drafts,
                                const char  *id);

G_END_DECLS
