/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/output.h"

#include "base/error.h"
#include "publish/folder.h"

#include <errno.h>
#include <glib/gi18n-lib.h>
#include <stdio.h>

struct _LapOutput {
  LapProgress watch;
  char       *path;
  LapSaving  *saving; /* NULL for standard output and folders */
  LapFolder  *folder; /* that is being filled, NULL for files */
};

static LapOutput *
output_new (const char *path, const LapProgress *watch)
{
  LapOutput *output = g_new0 (LapOutput, 1);

  output->path = g_strdup (path);
  if (watch != NULL)
    output->watch = *watch;
  if (output->watch.cancellable != NULL)
    g_object_ref (output->watch.cancellable);
  return output;
}

LapOutput *
lap_output_open_file (const char *path, const LapProgress *watch, GError **error)
{
  g_autoptr (LapOutput) output = output_new (path, watch);

  if (g_str_equal (path, "-"))
    return g_steal_pointer (&output);
  output->saving = lap_saving_new (path, error);
  return output->saving != NULL ? g_steal_pointer (&output) : NULL;
}

LapOutput *
lap_output_open_folder (const char *path, const LapProgress *watch, GError **error)
{
  g_autoptr (LapOutput) output = output_new (path, watch);

  if (g_str_equal (path, "-")) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("a folder can’t go to standard output: expected a name"));
    return NULL;
  }
  output->folder = lap_folder_beside (path, error);
  return output->folder != NULL ? g_steal_pointer (&output) : NULL;
}

void
lap_output_free (LapOutput *output)
{
  g_clear_pointer (&output->saving, lap_saving_free);
  g_clear_pointer (&output->folder, lap_folder_free);
  g_clear_object (&output->watch.cancellable);
  g_free (output->path);
  g_free (output);
}

static gboolean
fail (GError **error)
{
  g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("standard output can’t be written: %s"),
               g_strerror (errno));
  return FALSE;
}

gboolean
lap_output_write (LapOutput *output, gconstpointer data, gsize size, GError **error)
{
  if (g_cancellable_set_error_if_cancelled (output->watch.cancellable, error))
    return FALSE;
  if (output->saving != NULL)
    return lap_saving_write (output->saving, data, size, error);
  return fwrite (data, 1, size, stdout) == size || fail (error);
}

gboolean
lap_output_write_bytes (LapOutput *output, GBytes *bytes, GError **error)
{
  return lap_output_write (output, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), error);
}

gboolean
lap_output_write_text (LapOutput *output, GString *text, GError **error)
{
  g_autoptr (GBytes) bytes = g_string_free_to_bytes (text);

  return lap_output_write_bytes (output, bytes, error);
}

gboolean
lap_output_progress (LapOutput *output, double done, GError **error)
{
  if (output->watch.progress != NULL)
    output->watch.progress (CLAMP (done, 0, 1), output->watch.data);
  return !g_cancellable_set_error_if_cancelled (output->watch.cancellable, error);
}

LapSaving *
lap_output_saving (LapOutput *output)
{
  return output->saving;
}

const char *
lap_output_folder (LapOutput *output)
{
  return output->folder != NULL ? lap_folder_path (output->folder) : NULL;
}

const LapProgress *
lap_output_watch (LapOutput *output)
{
  return &output->watch;
}

/* Reads what @process says until it says no more. */
static gboolean
listen (LapOutput *output, GSubprocess *process, double done, double (*line) (const char *line, gpointer data),
        gpointer data, GString *complaints, GError **error)
{
  g_autoptr (GDataInputStream) lines = g_data_input_stream_new (g_subprocess_get_stdout_pipe (process));
  GError *mistake = NULL;

  for (;;) {
    g_autofree char *text = g_data_input_stream_read_line (lines, NULL, output->watch.cancellable, &mistake);
    double share;

    if (mistake != NULL)
      g_propagate_error (error, mistake);
    if (text == NULL)
      return mistake == NULL;
    share = line != NULL ? line (text, data) : -1;
    if (share < 0)
      g_string_append_printf (complaints, "%s%s", complaints->len > 0 ? "; " : "", g_strstrip (text));
    else if (!lap_output_progress (output, done + (1 - done) * share, error))
      return FALSE;
  }
}

gboolean
lap_output_run (LapOutput *output, const char *const *words, double done,
                double (*line) (const char *line, gpointer data), gpointer data, GError **error)
{
  g_autoptr (GSubprocess) process = g_subprocess_newv (words, G_SUBPROCESS_FLAGS_STDOUT_PIPE |
                                                              G_SUBPROCESS_FLAGS_STDERR_MERGE, error);
  g_autoptr (GString) complaints = g_string_new (NULL);

  if (process == NULL)
    return FALSE;
  if (!listen (output, process, done, line, data, complaints, error)) {
    g_subprocess_force_exit (process);
    g_subprocess_wait (process, NULL, NULL);
    return FALSE;
  }
  g_subprocess_wait (process, NULL, NULL);
  if (g_subprocess_get_successful (process))
    return TRUE;
  g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("%1$s failed: %2$s"), words[0], complaints->str);
  return FALSE;
}

gboolean
lap_output_finish (LapOutput *output, GError **error)
{
  if (!lap_output_progress (output, 1, error))
    return FALSE;
  if (output->saving != NULL)
    return lap_saving_finish (output->saving, NULL, NULL, error);
  if (output->folder != NULL)
    return lap_folder_place (output->folder, output->path, error);
  return fflush (stdout) == 0 || fail (error);
}
