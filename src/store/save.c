/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/save.h"

#include "store/saving.h"

gboolean
lap_save_bytes (const char *path, GBytes *bytes, const char *etag, char **new_etag, GError **error)
{
  g_autoptr(LapSaving) saving = lap_saving_new (path, error);

  return saving != NULL
         && lap_saving_write (saving, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), error)
         && lap_saving_finish (saving, etag, new_etag, error);
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
