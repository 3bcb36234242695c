/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Documents from bytes and to bytes. Reading is: the strict scan, json-glib's tree, the records of the model. An
 * error is one line that says where (line and JSON Pointer) and what was expected; nothing is half read.
 */
#pragma once

#include "model/session.h"
#include "model/week.h"

G_BEGIN_DECLS

/* A session from the bytes of a file, or NULL. One of a newer version is read as far as it can be: compare its
 * `version` with LAP_SESSION_VERSION and don't write it. */
LapSession *lap_session_from_bytes (GBytes      *bytes,
                                    GError     **error);

/* The bytes of its file. */
GBytes     *lap_session_to_bytes   (LapSession  *session);

/* Whether the file of @session with that @value of @property could be read again, or why not: what a file may say is
 * told in one place only. */
gboolean    lap_session_allows     (LapSession   *session,
                                    const char   *property,
                                    const GValue *value,
                                    GError      **error);

/* The same of a week; compare with LAP_WEEK_VERSION. */
LapWeek    *lap_week_from_bytes    (GBytes      *bytes,
                                    GError     **error);
GBytes     *lap_week_to_bytes      (LapWeek     *week);

/* A session or a week, by the member `format`. */
LapObject  *lap_document_from_bytes (GBytes     *bytes,
                                     GError    **error);

/* Adds "line 12, /parts/0: " to an error about a pointer into @bytes; other errors stay. */
void        lap_error_add_line     (GError      *error,
                                    GBytes      *bytes);

G_END_DECLS
