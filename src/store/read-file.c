/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/read-file.h"

#include "base/error.h"

#include <errno.h>
#include <fcntl.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static gboolean
fail (GError **error, const char *path, const char *what)
{
  g_set_error (error, LAP_ERROR, LAP_ERROR_INVALID, "%s: %s", path, what);
  return FALSE;
}

static gboolean
is_readable (int fd, const char *path, struct stat *st, GError **error)
{
  if (fstat (fd, st) != 0)
    return fail (error, path, g_strerror (errno));
  if (S_ISDIR (st->st_mode))
    return fail (error, path, "is a folder; expected a file");
  if (!S_ISREG (st->st_mode))
    return fail (error, path, "isn't a regular file");
  if (st->st_size > LAP_FILE_MOST)
    return fail (error, path, "is larger than 16 MiB");
  return TRUE;
}

/* Up to the limit and one byte: a file may grow while it is read. */
static gboolean
read_all (int fd, const char *path, GByteArray *bytes, GError **error)
{
  for (;;) {
    guint8 chunk[65536];
    gssize n = read (fd, chunk, sizeof chunk);

    if (n < 0 && errno == EINTR)
      continue;
    if (n < 0)
      return fail (error, path, g_strerror (errno));
    if (n == 0)
      return TRUE;
    g_byte_array_append (bytes, chunk, n);
    if (bytes->len > LAP_FILE_MOST)
      return fail (error, path, "is larger than 16 MiB");
  }
}

/* As GIO makes it for local files, so that g_file_replace() compares like with like. */
static char *
query_etag (const char *path)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GFileInfo) info = g_file_query_info (file, G_FILE_ATTRIBUTE_ETAG_VALUE, 0, NULL, NULL);

  return info != NULL ? g_strdup (g_file_info_get_etag (info)) : NULL;
}

GBytes *
lap_read_file (const char *path, char **etag, GError **error)
{
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  struct stat st;
  gboolean good;
  int fd = open (path, O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY);

  if (fd < 0) {
    fail (error, path, g_strerror (errno));
    return NULL;
  }
  /* The etag first: a change while reading then shows as one, not as what was read. */
  if (etag != NULL)
    *etag = query_etag (path);
  good = is_readable (fd, path, &st, error) && read_all (fd, path, bytes, error);
  close (fd);
  if (!good) {
    if (etag != NULL)
      g_clear_pointer (etag, g_free);
    return NULL;
  }
  return g_byte_array_free_to_bytes (g_steal_pointer (&bytes));
}
