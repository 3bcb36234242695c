/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/saving.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <stdlib.h>
#include <unistd.h>

#include <glib/gi18n-lib.h>

#include "store/local-file.h"
#include "store/stale.h"

struct _LapSaving {
  char *path, *target, *folder;
  char *beside; /* NULL when it isn't there any more */
  struct stat old;
  int fd;
};

static gboolean
fail (GError **error, const char *path, const char *what)
{
  return lap_file_fail (error, LAP_ERROR_UNWRITABLE, path, what);
}

/* The file a chain of symbolic links leads to, which is what gets replaced; NULL where the chain is
 * broken. */
static char *
follow (const char *path, GError **error)
{
  struct stat state;
  char *real = realpath (path, NULL);
  int problem = errno;
  char *target;

  if (real == NULL && problem == ENOENT && lstat (path, &state) != 0)
    return g_strdup (path);
  if (real == NULL)
    {
      fail (error, path,
            problem == ENOENT ? _("is a link to a file that isn't there") : g_strerror (problem));
      return NULL;
    }
  target = g_strdup (real);
  free (real);
  return target;
}

/* Whether the file may be replaced; what is there goes to @old, whose st_nlink is 0 when nothing is. */
static gboolean
may_replace (const char *target, struct stat *old, GError **error)
{
  *old = (struct stat) { 0 };
  if (stat (target, old) != 0)
    return errno == ENOENT || fail (error, target, g_strerror (errno));
  if (S_ISDIR (old->st_mode))
    return fail (error, target, _("is a folder; expected a file"));
  if (!S_ISREG (old->st_mode))
    return fail (error, target, _("is a pipe or a device; expected a file"));
  if (old->st_uid != geteuid ())
    return fail (error, target, _("belongs to somebody else; save a copy under another name"));
  if (access (target, W_OK) != 0)
    return fail (error, target, _("is read-only; save a copy under another name"));
  return TRUE;
}

static gboolean
may_write_folder (const char *folder, GError **error)
{
  struct stat state;

  if (stat (folder, &state) != 0)
    return fail (error, folder, g_strerror (errno));
  if (!S_ISDIR (state.st_mode))
    return fail (error, folder, _("isn't a folder"));
  if (access (folder, W_OK | X_OK) != 0)
    return fail (error, folder, _("is a folder where you can't write"));
  return TRUE;
}

/* Beside the old file, with its group, closed to all others until it has that one's mode too. A new file has the
 * mode that the umask leaves. */
static gboolean
open_beside (LapSaving *saving, GError **error)
{
  g_autofree char *beside = g_build_filename (saving->folder, LAP_STALE_FILE, NULL);

  saving->fd = g_mkstemp_full (beside, O_RDWR | O_CLOEXEC, saving->old.st_nlink > 0 ? 0600 : 0666);
  if (saving->fd < 0)
    return fail (error, saving->path, g_strerror (errno));
  lap_stale_hold (saving->fd);
  saving->beside = g_steal_pointer (&beside);
  if (saving->old.st_nlink > 0 && fchown (saving->fd, -1, saving->old.st_gid) != 0)
    return fail (error, saving->path, _("belongs to a group you aren't in; save a copy under another name"));
  return TRUE;
}

LapSaving *
lap_saving_new (const char *path, GError **error)
{
  g_autoptr(LapSaving) saving = g_new0 (LapSaving, 1);

  saving->fd = -1;
  saving->path = g_strdup (path);
  saving->target = follow (path, error);
  if (saving->target == NULL || !may_replace (saving->target, &saving->old, error))
    return NULL;
  saving->folder = g_path_get_dirname (saving->target);
  if (!may_write_folder (saving->folder, error))
    return NULL;
  lap_stale_clear (saving->folder);
  if (!open_beside (saving, error))
    return NULL;
  return g_steal_pointer (&saving);
}

void
lap_saving_free (LapSaving *saving)
{
  if (saving->fd >= 0)
    close (saving->fd);
  if (saving->beside != NULL)
    unlink (saving->beside);
  g_free (saving->beside);
  g_free (saving->folder);
  g_free (saving->target);
  g_free (saving->path);
  g_free (saving);
}

int
lap_saving_fd (const LapSaving *saving)
{
  return saving->fd;
}

const char *
lap_saving_beside (const LapSaving *saving)
{
  return saving->beside;
}

static gboolean
write_all (int fd, const char *data, gsize size)
{
  while (size > 0)
    {
      gssize n = write (fd, data, size);

      if (n < 0 && errno != EINTR)
        return FALSE;
      data += MAX (n, 0);
      size -= MAX (n, 0);
    }
  return TRUE;
}

gboolean
lap_saving_write (LapSaving *saving, gconstpointer data, gsize size, GError **error)
{
  return write_all (saving->fd, data, size) || fail (error, saving->path, g_strerror (errno));
}

/* Gives the file beside the mode of the old one and brings it to the disk. @now is its state then. */
static gboolean
settle (LapSaving *saving, struct stat *now, GError **error)
{
  gboolean good = (saving->old.st_nlink == 0 || fchmod (saving->fd, saving->old.st_mode & 07777) == 0)
                  && fsync (saving->fd) == 0 && fstat (saving->fd, now) == 0;

  if (!good)
    return fail (error, saving->path, g_strerror (errno));
  if (close (g_steal_fd (&saving->fd)) != 0)
    return fail (error, saving->path, g_strerror (errno));
  return TRUE;
}

/* Whether the file at @target is still the one of @etag. */
static gboolean
is_unchanged (const char *target, const char *etag, const char *path, GError **error)
{
  struct stat state;
  g_autofree char *now = NULL;

  if (etag == NULL || stat (target, &state) != 0)
    return TRUE;
  now = lap_file_etag (&state);
  if (g_str_equal (now, etag))
    return TRUE;
  return lap_file_fail (error, LAP_ERROR_CHANGED, path,
                        _("was changed by somebody else since it was opened"));
}

/* The rename is on the disk only when its folder is. The new file stands by now: where a file system can't
 * sync a folder there is nothing to take back. */
static void
sync_folder (const char *folder)
{
  int fd = open (folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);

  if (fd < 0)
    return;
  fsync (fd);
  close (fd);
}

gboolean
lap_saving_finish (LapSaving *saving, const char *etag, char **new_etag, GError **error)
{
  struct stat written;

  if (!settle (saving, &written, error) || !is_unchanged (saving->target, etag, saving->path, error))
    return FALSE;
  if (rename (saving->beside, saving->target) != 0)
    return fail (error, saving->path, g_strerror (errno));
  g_clear_pointer (&saving->beside, g_free);
  sync_folder (saving->folder);
  if (new_etag != NULL)
    *new_etag = lap_file_etag (&written);
  return TRUE;
}
