/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words of JSON: one string, number or literal is read at a cursor. Internal to base/json-scan.c, which
 * owns the grammar between the words.
 *
 * What always holds: a reader that returns TRUE has moved the cursor just behind its word; one that returns
 * FALSE has left in fault a sentence (what is wrong, what was expected) and in at the byte where it is wrong.
 * Nothing beyond end is looked at, and the bytes need no closing NUL.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct {
  const char *start;
  const char *at;
  const char *end;
  char *fault;           /* owned; NULL as long as all is well */
} LapJsonCursor;

/* A string as it stands between its quotes. */
typedef struct {
  const char *bytes;
  gsize length;
  gboolean escaped;      /* has at least one backslash */
} LapJsonText;

typedef struct {
  gboolean whole;        /* no point, no exponent */
  gint64 integer;        /* where it is whole */
  double fraction;       /* where it isn't */
} LapJsonNumber;

typedef enum { LAP_JSON_TRUE, LAP_JSON_FALSE, LAP_JSON_NULL } LapJsonLiteral;

/* Sets the fault, a printf sentence, unless there is one already. Returns FALSE, to be returned. */
gboolean lap_json_fault (LapJsonCursor *cursor, const char *format, ...) G_GNUC_PRINTF (2, 3);

/* What stands at the cursor, for a person: a few characters in quotes, or "the end of the text". Transfer
 * full. */
char    *lap_json_found (const LapJsonCursor *cursor);

void     lap_json_skip_space (LapJsonCursor *cursor);

/* The cursor is on the opening quote. */
gboolean lap_json_read_string (LapJsonCursor *cursor, LapJsonText *text);

/* The cursor is on a minus or a digit. */
gboolean lap_json_read_number (LapJsonCursor *cursor, LapJsonNumber *number);

/* Anything that is neither string, number nor container. */
gboolean lap_json_read_literal (LapJsonCursor *cursor, LapJsonLiteral *literal);

/* The characters that @text, already read without a fault, stands for. Transfer full, closed by a NUL. */
char    *lap_json_unescape (const LapJsonText *text);

G_END_DECLS
