/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one error domain. Every public function that can fail sets a GError of this domain (or of G_IO_ERROR
 * where GIO's own words serve) whose message is one line that says what, where and what was expected.
 * The commands turn the code into their exit status with lap_error_exit_code().
 *
 * An error about a place in a document carries that place as a JSON Pointer (RFC 6901) beside its message, so
 * that whoever holds the bytes can add file and line; see lap_error_at() and lap_error_pointer().
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

#define LAP_ERROR (lap_error_quark ())

/* The numbers are the exit statuses of the commands. */
typedef enum {
  LAP_ERROR_USAGE = 2,      /* wrong use of a command */
  LAP_ERROR_INVALID = 3,    /* can't be read, or isn't valid */
  LAP_ERROR_UNWRITABLE = 4, /* can't be written; what was there is untouched */
  LAP_ERROR_CONFLICT = 5,   /* the wishes can't all be met */
  LAP_ERROR_MISSING = 6,    /* an optional part isn't installed */
  LAP_ERROR_CHANGED = 7,    /* the file was changed by somebody else since it was read */
} LapError;

GQuark      lap_error_quark     (void);

/* The exit status of a command that ends with @error: 0 without one, 3 for an error of another domain. */
int         lap_error_exit_code (const GError *error);

/* Sets LAP_ERROR_INVALID about the value at @pointer; the message doesn't repeat the pointer. */
void        lap_error_at        (GError    **error,
                                 const char *pointer,
                                 const char *format,
                                 ...) G_GNUC_PRINTF (3, 4);

/* The JSON Pointer that @error is about, or NULL. */
const char *lap_error_pointer   (const GError *error);

/* Appends @bytes to @out so that they stay on one line and can be seen: what can't be printed as \u or byte
 * escapes, cut with an ellipsis after @most characters. For messages about what a file holds. */
void        lap_append_printable (GString    *out,
                                  const char *bytes,
                                  gsize       length,
                                  guint       most);

G_END_DECLS
