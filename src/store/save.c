/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * GIO writes over a file in place when it has other hard links, or a group that the new file can't be given: a crash
 * would leave halves. So it is asked to replace the file as if there had been none, and mode and group are kept here.
 */
#include "store/save.h"

#include "base/error.h"

#include <gio/gfiledescriptorbased.h>

#include <errno.h>
#include <fcntl.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

static gboolean
fail (GError **error, int code, const char *path, const char *what)
{
  g_set_error (error, LAP_ERROR, code, "%s: %s", path, what);
  return FALSE;
}

/* The file a chain of symbolic links leads to, which is what gets replaced. */
static char *
follow (const char *path)
{
  char *real = realpath (path, NULL);
  char *target = g_strdup (real != NULL ? real : path);

  free (real);
  return target;
}

static gboolean
is_writable_folder (const char *folder, GError **error)
{
  struct stat st;

  if (stat (folder, &st) != 0)
    return fail (error, LAP_ERROR_UNWRITABLE, folder, g_strerror (errno));
  if (!S_ISDIR (st.st_mode))
    return fail (error, LAP_ERROR_UNWRITABLE, folder, "isn't a folder");
  if (access (folder, W_OK | X_OK) != 0)
    return fail (error, LAP_ERROR_UNWRITABLE, folder, "the folder can't be written");
  return TRUE;
}

/* Whether there is no file at @path yet, or one that may be replaced; then @old tells of it, and has a mode. */
static gboolean
is_replaceable (const char *path, struct stat *old, GError **error)
{
  if (lstat (path, old) != 0) {
    old->st_mode = 0;
    return errno == ENOENT || fail (error, LAP_ERROR_UNWRITABLE, path, g_strerror (errno));
  }
  if (S_ISLNK (old->st_mode))
    return fail (error, LAP_ERROR_UNWRITABLE, path, "is a link that leads nowhere");
  if (!S_ISREG (old->st_mode))
    return fail (error, LAP_ERROR_UNWRITABLE, path, "isn't a regular file");
  if (old->st_uid != geteuid ())
    return fail (error, LAP_ERROR_UNWRITABLE, path, "belongs to somebody else; save a copy under another name");
  if (access (path, W_OK) != 0)
    return fail (error, LAP_ERROR_UNWRITABLE, path, "is read-only");
  return TRUE;
}

/* The rename itself is only safe on disk when its folder is. */
static void
sync_folder (const char *folder)
{
  int fd = open (folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);

  if (fd < 0)
    return;
  fsync (fd);
  close (fd);
}

/* Gives the new file mode and group of the old one. */
static gboolean
keep_rights (GFileOutputStream *out, const struct stat *old, GError **error)
{
  struct stat now;
  int fd;

  if (old->st_mode == 0 || !G_IS_FILE_DESCRIPTOR_BASED (out))
    return TRUE;
  fd = g_file_descriptor_based_get_fd (G_FILE_DESCRIPTOR_BASED (out));
  if (fstat (fd, &now) == 0 && (now.st_gid == old->st_gid || fchown (fd, -1, old->st_gid) == 0) &&
      fchmod (fd, old->st_mode & 07777) == 0)
    return TRUE;
  g_set_error (error, G_IO_ERROR, g_io_error_from_errno (errno), "its group and mode can't be kept: %s",
               g_strerror (errno));
  return FALSE;
}

static gboolean
write_out (GFile *file, GBytes *bytes, const char *etag, const struct stat *old, char **new_etag, GError **error)
{
  /* Private until it has the rights of the old one. */
  GFileCreateFlags flags = old->st_mode != 0 ? G_FILE_CREATE_REPLACE_DESTINATION | G_FILE_CREATE_PRIVATE
                                             : G_FILE_CREATE_NONE;
  g_autoptr (GFileOutputStream) out = g_file_replace (file, etag, FALSE, flags, NULL, error);
  g_autoptr (GCancellable) given_up = g_cancellable_new ();

  if (out == NULL)
    return FALSE;
  if (!g_output_stream_write_all (G_OUTPUT_STREAM (out), g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes),
                                  NULL, NULL, error) ||
      !keep_rights (out, old, error)) {
    /* Closing with a cancelled operation leaves the old file where it was. */
    g_cancellable_cancel (given_up);
    g_output_stream_close (G_OUTPUT_STREAM (out), given_up, NULL);
    return FALSE;
  }
  if (!g_output_stream_close (G_OUTPUT_STREAM (out), NULL, error))
    return FALSE;
  if (new_etag != NULL)
    *new_etag = g_file_output_stream_get_etag (out);
  return TRUE;
}

gboolean
lap_save_bytes (const char *path, GBytes *bytes, const char *etag, char **new_etag, GError **error)
{
  g_autofree char *target = follow (path);
  g_autofree char *folder = g_path_get_dirname (target);
  g_autoptr (GFile) file = g_file_new_for_path (target);
  g_autoptr (GError) mistake = NULL;
  struct stat old;

  if (!is_writable_folder (folder, error) || !is_replaceable (target, &old, error))
    return FALSE;
  if (!write_out (file, bytes, etag, &old, new_etag, &mistake)) {
    if (g_error_matches (mistake, G_IO_ERROR, G_IO_ERROR_WRONG_ETAG))
      return fail (error, LAP_ERROR_CHANGED, path, "was changed by somebody else since it was opened");
    return fail (error, LAP_ERROR_UNWRITABLE, path, mistake->message);
  }
  sync_folder (folder);
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
lap_save_bytes_async (const char *path, GBytes *bytes, const char *etag, GAsyncReadyCallback callback, gpointer data)
{
  g_autoptr (GTask) task = g_task_new (NULL, NULL, callback, data);
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
  g_autoptr (GError) mistake = NULL;
  g_autofree char *etag = g_task_propagate_pointer (G_TASK (result), &mistake);

  if (mistake != NULL) {
    g_propagate_error (error, g_steal_pointer (&mistake));
    return FALSE;
  }
  if (new_etag != NULL)
    *new_etag = g_steal_pointer (&etag);
  return TRUE;
}
