/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes JSON the way all our files have it: two spaces of indent, members in the order they are called,
 * numbers as short as they can be and still read back the same, one newline at the end. json-glib's own
 * generator has another layout and writes 40.0 for 40.
 *
 * What always holds: an object has one member a line; an array of scalars stands on one line when that line,
 * with a comma behind it, stays within 100 columns, and else has one item a line; other arrays have one item
 * a line. Empty ones are {} and []. The output doesn't depend on the locale.
 *
 * Calling order: one value makes the text. Between begin_object and end_object each value follows a member;
 * between begin_array and end_array values follow each other. lap_json_writer_finish() when all that was
 * begun is ended. A wrong order is a mistake in the calling code and a critical warning.
 *
 *   g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
 *   lap_json_writer_begin_object (writer);
 *   lap_json_writer_member (writer, "version");
 *   lap_json_writer_int (writer, 1);
 *   lap_json_writer_end_object (writer);
 *   bytes = lap_json_writer_finish (writer);
 */
#pragma once

#include <json-glib/json-glib.h>

G_BEGIN_DECLS

typedef struct _LapJsonWriter LapJsonWriter;

LapJsonWriter *lap_json_writer_new (void);
void           lap_json_writer_free (LapJsonWriter *writer);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapJsonWriter, lap_json_writer_free)

void           lap_json_writer_begin_object (LapJsonWriter *writer);
void           lap_json_writer_end_object (LapJsonWriter *writer);
void           lap_json_writer_begin_array (LapJsonWriter *writer);
void           lap_json_writer_end_array (LapJsonWriter *writer);

void           lap_json_writer_member (LapJsonWriter *writer, const char *name);

/* NULL is written as null. What isn't UTF-8 in @text is replaced by U+FFFD. */
void           lap_json_writer_string (LapJsonWriter *writer, const char *text);
void           lap_json_writer_int (LapJsonWriter *writer, gint64 value);

/* A finite number; one that is whole is written without a point. */
void           lap_json_writer_number (LapJsonWriter *writer, double value);
void           lap_json_writer_boolean (LapJsonWriter *writer, gboolean value);
void           lap_json_writer_null (LapJsonWriter *writer);

/* A member and its value in one call. */
void           lap_json_writer_member_string (LapJsonWriter *writer, const char *name, const char *text);
void           lap_json_writer_member_int (LapJsonWriter *writer, const char *name, gint64 value);
void           lap_json_writer_member_number (LapJsonWriter *writer, const char *name, double value);

/* A whole subtree, members in its own order. */
void           lap_json_writer_node (LapJsonWriter *writer, JsonNode *node);

/* The text, transfer full; a NUL that isn't counted stands behind it. The writer is empty afterwards. */
GBytes        *lap_json_writer_finish (LapJsonWriter *writer);

G_END_DECLS
