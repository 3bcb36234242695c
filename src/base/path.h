/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a reader stands in a JSON document: a list on the stack from the value up to the root, turned into a
 * JSON Pointer (RFC 6901) only when something is wrong there.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct _LapPath LapPath;
struct _LapPath {
  const LapPath *up;   /* NULL at the root, whose name and index don't count */
  const char    *name; /* member of an object, or NULL: the element `index` of an array */
  guint          index;
};

#define LAP_PATH_MEMBER(up_, name_)   (&(LapPath) { (up_), (name_), 0 })
#define LAP_PATH_ELEMENT(up_, index_) (&(LapPath) { (up_), NULL, (index_) })

/* Sets LAP_ERROR_INVALID about the value at @path. */
void  lap_path_error   (GError       **error,
                        const LapPath *path,
                        const char    *format,
                        ...) G_GNUC_PRINTF (3, 4);

G_END_DECLS
