/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/read-file.h"

#include <errno.h>
#include <fcntl.h>
#include <unistd.h>

#include <glib/gi18n-lib.h>

#include "store/local-file.h"

static gboolean
fail (GError **error, const char *path, const char *what)
{
  return lap_file_fail (error, LAP_ERROR_INVALID, path, what);
}

static gboolean
is_readable (int fd, const char *path, struct stat *state, GError **error)
{
  if (fstat (fd, state) != 0)
    return fail (error, path, g_strerror (errno));
  if (S_ISDIR (state->st_mode))
    return fail (error, path, _("is a folder; expected a file"));
  if (!S_ISREG (state->st_mode))
    return fail (error, path, _("is a pipe or a device; expected a file"));
  if (state->st_size > LAP_FILE_MOST)
    return fail (error, path, _("is larger than 16 MiB; expected a smaller file"));
  return TRUE;
}

/* Up to the limit and no further: a file may grow while it is read, and some don't tell their size. */
static gboolean
read_all (int fd, const char *path, GByteArray *bytes, GError **error)
{
  for (;;)
    {
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
        return fail (error, path, _("is larger than 16 MiB; expected a smaller file"));
    }
}

GBytes *
lap_read_file (const char *path, char **etag, GError **error)
{
  g_autoptr(GByteArray) bytes = g_byte_array_new ();
  struct stat state;
  gboolean good;
  /* Without O_NONBLOCK opening a pipe would wait for somebody who writes to it. */
  int fd = open (path, O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY);

  if (fd < 0)
    {
      fail (error, path, g_strerror (errno));
      return NULL;
    }
  good = is_readable (fd, path, &state, error) && read_all (fd, path, bytes, error);
  close (fd);
  if (!good)
    return NULL;
  /* Of before reading: a change meanwhile then shows as one when saving. */
  if (etag != NULL)
    *etag = lap_file_etag (&state);
  return g_byte_array_free_to_bytes (g_steal_pointer (&bytes));
}
