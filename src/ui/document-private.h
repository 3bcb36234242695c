/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For the files of the document only: what it consists of. document.c has what it is and how it changes, document-file.c
 * how it is read and written.
 */
#pragma once

#include "ui/document.h"
#include "ui/week-sessions.h"

G_BEGIN_DECLS

struct _LapDocument {
  GObject       parent_instance;
  LapObject    *root;
  LapSession   *session; /* the root, or NULL */
  LapWeek      *week;    /* the root, or NULL */
  LapHistory   *history;
  LapCatalogue *builtin;
  LapTimeline  *timeline; /* of a session */
  LapWeekSessions *sessions; /* of a week */
  int           date;        /* of a week: the Monday that is looked at, 0 = as always */
  LapCheckup   *checkup;
  char         *path, *etag;
  gboolean      trying, saving, outside, recovered;
  LapDocumentState state;
};

/* The document of @root, whose file is @path as it was when it had @etag; both may be NULL. @waiting as of
 * lap_attachments_set_waiting(). */
LapDocument *lap_document_make         (gpointer     root,
                                        const char  *path,
                                        const char  *etag,
                                        gboolean     waiting,
                                        GError     **error);
/* Its file is @path from now on, as it was when it had @etag. Both may be NULL. */
void         lap_document_set_file     (LapDocument *document,
                                        const char  *path,
                                        const char  *etag);
/* The file holds the state of @revision; LAP_HISTORY_NEVER: no file holds any. */
void         lap_document_note_saved   (LapDocument *document,
                                        guint64      revision);
/* To be called when what the state follows from has changed. */
void         lap_document_update_state (LapDocument *document);

G_END_DECLS
