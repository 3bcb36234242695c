/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bytes of a file, read in a worker: a folder may be slow, and a window isn't to stand still for it.
 *
 * It begins with lap_reading_new(). What is there soon is waited for; else somebody is told, in the main loop, once.
 * Whoever isn't interested any more forgets it: the worker goes on by itself to its end, and nobody is told.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct _LapReading LapReading;

/* In the worker: as lap_read_file(). */
typedef GBytes *(*LapReader)  (const char *path, char **etag, GError **error);
typedef void    (*LapReadFunc) (gpointer data);

LapReading *lap_reading_new    (const char  *path,
                                LapReader    reader);
LapReading *lap_reading_ref    (LapReading  *reading);
void        lap_reading_unref  (LapReading  *reading);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapReading, lap_reading_unref)

const char *lap_reading_path   (LapReading  *reading);
/* Whether it is done, @ms milliseconds from now at the latest. */
gboolean    lap_reading_wait   (LapReading  *reading,
                                int          ms);
void        lap_reading_tell   (LapReading  *reading,
                                LapReadFunc  func,
                                gpointer     data);
void        lap_reading_forget (LapReading  *reading);
/* When it is done, once: the bytes and the etag (transfer full), or NULL with @error. */
GBytes     *lap_reading_take   (LapReading  *reading,
                                char       **etag,
                                GError     **error);

G_END_DECLS
