/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A document of a window: a session or a week, its history, its file, and what is computed from it. After each change
 * of the history timeline and warnings are made anew, once, and "changed" is emitted; nothing in the window listens to
 * the model itself, which remedies also try things on. A week's document changes, too, when a session of its classes
 * is written by somebody.
 *
 * Always true: the session can be laid out, the week's parts fit together. lap_document_apply() takes an edit back
 * that would make it impossible, and says so. "told" (text, whether undoing it is offered) carries what people should
 * read about a change. The classes of an open week name their sessions by whole paths: see store/week-paths.h.
 */
#pragma once

#include "checks/checks.h"
#include "edit/history.h"
#include "effort/attached.h"

#include <gio/gio.h>

G_BEGIN_DECLS

typedef enum {
  LAP_DOCUMENT_CLEAN,
  LAP_DOCUMENT_DIRTY,
  LAP_DOCUMENT_SAVING,
  LAP_DOCUMENT_CHANGED_OUTSIDE, /* a save found that somebody else wrote the file */
  LAP_DOCUMENT_READ_ONLY,       /* written by a newer version */
  LAP_DOCUMENT_RECOVERED,       /* from a draft, and not saved since */
} LapDocumentState;

#define LAP_TYPE_DOCUMENT (lap_document_get_type ())
G_DECLARE_FINAL_TYPE (LapDocument, lap_document, LAP, DOCUMENT, GObject)

/* The document of @root, a LapSession or a LapWeek, which it keeps, without a file. NULL where that is impossible. */
LapDocument     *lap_document_new         (gpointer      root,
                                           GError      **error);
/* NULL with one line in @error: file, line, pointer, what was expected. */
LapDocument     *lap_document_read        (const char   *path,
                                           GError      **error);

/* The same of @bytes, which were read from the file @path when it had @etag; but the sessions that the classes of a week
 * name aren't read before lap_document_read_sessions(): no window has to wait for other files. */
LapDocument     *lap_document_from_file   (GBytes       *bytes,
                                           const char   *path,
                                           const char   *etag,
                                           GError      **error);

void             lap_document_read_sessions (LapDocument *document);

/* What a crash left of a document: @bytes of a draft, of the file @path (may be NULL) that had @etag then. It counts
 * as modified until it is saved, and a save asks about a file that has been changed since. */
LapDocument     *lap_document_recover     (GBytes       *bytes,
                                           const char   *path,
                                           const char   *etag,
                                           GError      **error);

/* A document of its own, without a file, that begins as @document is now. Transfer full. */
LapDocument     *lap_document_duplicate   (LapDocument  *document);

LapSession      *lap_document_session     (LapDocument  *document); /* NULL for a week */
LapWeek         *lap_document_week        (LapDocument  *document); /* NULL for a session */
LapHistory      *lap_document_history     (LapDocument  *document);
LapTimeline     *lap_document_timeline    (LapDocument  *document); /* NULL for a week */
LapCheckup      *lap_document_checkup     (LapDocument  *document);
/* What is known of the sessions of a week's classes. NULL for a session. */
LapAttachments  *lap_document_attachments (LapDocument  *document);
LapCatalogue    *lap_document_catalogue   (LapDocument  *document);
const char      *lap_document_path        (LapDocument  *document); /* NULL without a file */
const char      *lap_document_etag        (LapDocument  *document); /* of its file when it was read or written */
/* The bytes that a save would write now. Transfer full. */
GBytes          *lap_document_bytes       (LapDocument  *document);
LapDocumentState lap_document_state       (LapDocument  *document);
const char      *lap_document_title       (LapDocument  *document);
/* Has changes that no file holds. */
gboolean         lap_document_is_modified (LapDocument  *document);
gboolean         lap_document_is_editable (LapDocument  *document);
/* Why it can't be changed, translated; NULL where it can. */
const char      *lap_document_why_not     (LapDocument  *document);
/* Of a session: "31:00 of 30:00, 1:00 over", "29:50 of 30:00, on time", "31:00". Translated; transfer full. */
char            *lap_document_length_text (LapDocument  *document);

/* The Monday of the week that is looked at, and that the checkup of a week is about; 0 is the week as it always is. It
 * is no part of the document: setting it to the week of @date emits "changed", but there is nothing to undo or save. */
int              lap_document_date        (LapDocument  *document);
void             lap_document_set_date    (LapDocument  *document,
                                           int           date);

/* Applies @edits (transfer full) as one step. FALSE when that would be impossible, or the document is read-only, which
 * it says. */
gboolean         lap_document_apply       (LapDocument  *document,
                                           LapEdits     *edits);
/* A drag: each call applies @edits (transfer full) in place of those of the call before; nothing can be undone
 * meanwhile. FALSE when that would be impossible; then all is as before the first. */
gboolean         lap_document_hold        (LapDocument  *document,
                                           LapEdits     *edits);
/* Keeps what is held as one step, or takes it back. */
void             lap_document_keep        (LapDocument  *document);
void             lap_document_let_go      (LapDocument  *document);
/* Says @text to whoever reads: "told". */
void             lap_document_tell        (LapDocument  *document,
                                           const char   *text);
void             lap_document_undo        (LapDocument  *document);
void             lap_document_redo        (LapDocument  *document);

/* Makes it what its file holds now, as one step that can be undone. FALSE with @error where that can't be read. */
gboolean         lap_document_reload      (LapDocument  *document,
                                           GError      **error);
/* To be called when its file may have been written: the state is "changed outside" where somebody else did. */
void             lap_document_look_outside (LapDocument *document);

/* Saves to @path (NULL: its own file), in a worker. The file's former writer is asked about by LAP_ERROR_CHANGED
 * unless @whatever. On success @path is its file. */
void             lap_document_save        (LapDocument  *document,
                                           const char   *path,
                                           gboolean      whatever,
                                           GAsyncReadyCallback callback,
                                           gpointer      data);
gboolean         lap_document_save_finish (LapDocument  *document,
                                           GAsyncResult *result,
                                           GError      **error);

G_END_DECLS
