/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sheet of a document to be laid out in a worker: it has what that needs, and nothing of the document. A session is
 * copied and laid out in the worker. A week's sheet has one or a few pages, which are made at once: what they say of
 * the sessions of its classes is the document's.
 */
#pragma once

#include "ui/document-sheets.h"

G_BEGIN_DECLS

typedef struct _LapSheetJob LapSheetJob;

/* Copies @options with its date. */
LapSheetJob *lap_sheet_job_new   (LapDocument           *document,
                                  const LapSheet        *sheet,
                                  const LapSheetOptions *options);
void         lap_sheet_job_free  (LapSheetJob           *job);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSheetJob, lap_sheet_job_free)

/* Once, in any thread. Transfer full. */
LapPages    *lap_sheet_job_pages (LapSheetJob           *job);

G_END_DECLS
