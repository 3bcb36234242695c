/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Saving bytes that are all there: lap_saving_new(), whose header says what holds, in one call or in a worker.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

/* Writes @bytes to @path, whole or not at all: see lap_saving_finish(). */
gboolean lap_save_bytes        (const char           *path,
                                GBytes               *bytes,
                                const char           *etag,
                                char                **new_etag,
                                GError              **error);

/* The same in a worker; @callback runs in the caller's main context. */
void     lap_save_bytes_async  (const char           *path,
                                GBytes               *bytes,
                                const char           *etag,
                                GAsyncReadyCallback   callback,
                                gpointer              data);
gboolean lap_save_bytes_finish (GAsyncResult         *result,
                                char                **new_etag,
                                GError              **error);

G_END_DECLS
