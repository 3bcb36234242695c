/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads JSON strictly (RFC 8259) into the nodes of json-glib, in one pass. The parser of json-glib alone takes
 * comments, octal numbers, repeated names and an empty file for JSON, and falls over deep nesting.
 *
 * What always holds: the scan uses no recursion and time that grows as n log n at worst, whatever the bytes
 * are. An error is LAP_ERROR_INVALID with one printable line, "line 12, /parts/0/blocks/3: expected …", where
 * lines count from 1 and the place is a JSON Pointer (RFC 6901); for the root the place is left out. A name
 * of more than 40 characters is cut with an ellipsis in that line.
 *
 * Calling order: lap_json_parse() for the tree; keep the bytes as long as an error may be found in the tree,
 * and ask lap_json_line_of() for its line. lap_json_scan() alone says whether bytes may be read.
 */
#pragma once

#include <json-glib/json-glib.h>

G_BEGIN_DECLS

/* Containers inside each other, the root included. */
#define LAP_JSON_DEPTH_MAX 64

/* TRUE when the bytes are one JSON value with, beyond the grammar: UTF-8 without a byte order mark, at most
 * LAP_JSON_DEPTH_MAX containers deep, no name twice in an object, no \u0000, no half of a surrogate pair,
 * whole numbers (no point, no exponent) within 64 bits with sign, other numbers finite. */
gboolean  lap_json_scan (const char *bytes, gsize length, GError **error);

/* The same, and the tree: immutable, transfer full. */
JsonNode *lap_json_parse (const char *bytes, gsize length, GError **error);

/* The line on which the value at @pointer starts. Where there is none, the line of the nearest container that
 * would hold it. 0 for a @pointer that isn't one ("" or "/…"), or bytes that don't hold a value. */
guint     lap_json_line_of (const char *bytes, gsize length, const char *pointer);

G_END_DECLS
