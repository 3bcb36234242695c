/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The files of sessions and weeks in a folder and below it, by their names' ends. Internal to store/.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct {
  char  *path, *etag;
  gint64 written; /* seconds since 1970 */
} LapFoundFile;

/* LapFoundFile, the newest first, each once, with those of @also (may be NULL) that are there; transfer container and
 * content. Without a folder only those. Fewer when it was cancelled. */
GPtrArray *lap_index_scan (const char         *folder,
                           const char * const *also,
                           guint               depth,
                           guint               most,
                           GCancellable       *cancellable);

G_END_DECLS
