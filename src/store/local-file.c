/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/local-file.h"

#include <string.h>

/* As long as Linux lets a path be. */
#define PATH_MOST 4096

gboolean
lap_file_fail (GError **error, LapError code, const char *path, const char *what)
{
  g_autofree char *name = g_filename_display_name (path);
  g_autoptr(GString) line = g_string_new (NULL);

  lap_append_printable (line, name, strlen (name), PATH_MOST);
  g_set_error (error, LAP_ERROR, code, "%s: %s", line->str, what);
  return FALSE;
}

char *
lap_file_etag (const struct stat *state)
{
  return g_strdup_printf ("%" G_GINT64_FORMAT ".%09ld-%" G_GINT64_FORMAT, (gint64) state->st_mtim.tv_sec,
                          (long) state->st_mtim.tv_nsec, (gint64) state->st_size);
}
