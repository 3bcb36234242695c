/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/save.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <stdlib.h>
#include <unistd.h>

#include <glib/gi18n-lib.h>

#include "store/local-file.h"

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

/* Fills the file beside, gives it group and mode of the @old one and brings it to the disk. @now is its state
 * then. */
static gboolean
fill (int fd, GBytes *bytes, const struct stat *old, struct stat *now, const char *path, GError **error)
{
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);

  if (old->st_nlink > 0 && fchown (fd, -1, old->st_gid) != 0)
    return fail (error, path, _("belongs to a group you aren't in; save a copy under another name"));
  if (!write_all (fd, data, size) || (old->st_nlink > 0 && fchmod (fd, old->st_mode & 07777) != 0)
      || fsync (fd) != 0 || fstat (fd, now) != 0)
    return fail (error, path, g_strerror (errno));
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
lap_save_bytes (const char *path, GBytes *bytes, const char *etag, char **new_etag, GError **error)
{
  g_autofree char *target = follow (path, error);
  g_autofree char *folder = target != NULL ? g_path_get_dirname (target) : NULL;
  g_autofree char *beside = folder != NULL ? g_build_filename (folder, ".lapwing-XXXXXX", NULL) : NULL;
  struct stat old, written;
  gboolean good;
  int fd;

  if (target == NULL || !may_replace (target, &old, error) || !may_write_folder (folder, error))
    return FALSE;
  /* A new file has the mode that the umask leaves. One that takes the place of another is closed to all
   * others until it has that one's mode. */
  fd = g_mkstemp_full (beside, O_WRONLY | O_CLOEXEC, old.st_nlink > 0 ? 0600 : 0666);
  if (fd < 0)
    return fail (error, path, g_strerror (errno));
  good = fill (fd, bytes, &old, &written, path, error);
  if (close (fd) != 0 && good)
    good = fail (error, path, g_strerror (errno));
  good = good && is_unchanged (target, etag, path, error);
  if (good && rename (beside, target) != 0)
    good = fail (error, path, g_strerror (errno));
  if (!good)
    {
      unlink (beside);
      return FALSE;
    }
  sync_folder (folder);
  if (new_etag != NULL)
    *new_etag = lap_file_etag (&written);
  return TRUE;
}

typedef struct {
  char   *path;
  GBytes *bytes;
  char   *etag;
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  g_free (job->path);
  g_bytes_unref (job->bytes);
  g_free (job->etag);
  g_free (job);
}

static void
work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Job *job = data;
  char *new_etag = NULL;
  GError *error = NULL;

  if (lap_save_bytes (job->path, job->bytes, job->etag, &new_etag, &error))
    g_task_return_pointer (task, new_etag, g_free);
  else
    g_task_return_error (task, error);
}

void
lap_save_bytes_async (const char *path, GBytes *bytes, const char *etag, GAsyncReadyCallback callback,
                      gpointer data)
{
  g_autoptr(GTask) task = g_task_new (NULL, NULL, callback, data);
  Job *job = g_new0 (Job, 1);

  job->path = g_strdup (path);
  job->bytes = g_bytes_ref (bytes);
  job->etag = g_strdup (etag);
  g_task_set_task_data (task, job, job_free);
  g_task_run_in_thread (task, work);
}

gboolean
lap_save_bytes_finish (GAsyncResult *result, char **new_etag, GError **error)
{
  g_autoptr(GError) mistake = NULL;
  g_autofree char *etag = g_task_propagate_pointer (G_TASK (result), &mistake);

  if (mistake != NULL)
    {
      g_propagate_error (error, g_steal_pointer (&mistake));
      return FALSE;
    }
  if (new_etag != NULL)
    *new_etag = g_steal_pointer (&etag);
  return TRUE;
}
