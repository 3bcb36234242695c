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

/* LapFoundFile, the newest first; transfer container and content. Fewer when it was cancelled. */
GPtrArray *lap_index_scan (const char   *folder,
                           guint         depth,
                           guint         most,
                           GCancellable *cancellable);

G_END_DECLS
