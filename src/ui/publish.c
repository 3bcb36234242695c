/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/publish.h"

#include "ui/help.h"
#include "publish/cuts.h"
#include "store/documents.h"
#include "ui/notify.h"

#include <glib/gi18n-lib.h>

#define LOOK 100 /* milliseconds between two looks at how far it is */

typedef struct {
  LapWindow       *window;
  const LapFormat *format;
  LapPublication   how;
  char            *at, *timezone, *from; /* what @how points to */
  char            *path;
  GBytes          *bytes;
  GCancellable    *cancellable;
  GtkWidget       *dialog, *bar;
  gint64           began;
  guint            look;
  int              done; /* thousandths; atomic */
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  g_clear_object (&job->window);
  g_clear_object (&job->cancellable);
  g_clear_pointer (&job->bytes, g_bytes_unref);
  g_free (job->at);
  g_free (job->timezone);
  g_free (job->from);
  g_free (job->path);
  g_free (job);
}

static void
progress_cb (double done, gpointer data)
{
  Job *job = data;

  g_atomic_int_set (&job->done, (int) (done * 1000));
}

static void
work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Job *job = data;
  GError *error = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapObject) root = lap_document_from_bytes (job->bytes, &error);
  g_autoptr (LapTimeline) timeline = NULL;
  LapProgress watch = { progress_cb, job, cancellable };
  LapPublication what = job->how;

  if (LAP_IS_SESSION (root))
    timeline = lap_timeline_new (LAP_SESSION (root), builtin, &error);
  else
    what.week = root;
  what.timeline = timeline;
  if (error == NULL && lap_publish (job->format, &what, job->path, &watch, &error))
    g_task_return_boolean (task, TRUE);
  else
    g_task_return_error (task, error);
}

static void
done_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  Job *job = g_task_get_task_data (G_TASK (result));
  g_autoptr (GError) error = NULL;
  g_autofree char *name = g_path_get_basename (job->path);

  g_clear_handle_id (&job->look, g_source_remove);
  gtk_window_destroy (GTK_WINDOW (job->dialog));
  g_clear_object (&job->dialog);
  if (g_task_propagate_boolean (G_TASK (result), &error)) {
    g_autofree char *text = g_strdup_printf (_("Exported as %s"), name);

    lap_notify_ended (GTK_WINDOW (job->window), job->began, text,
                      lap_document_title (lap_window_document (job->window)), job->path);
    lap_window_tell (job->window, text, FALSE);
  } else if (!g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED)) {
    lap_notify_ended (GTK_WINDOW (job->window), job->began, _("It couldn’t be exported"), error->message, NULL);
    lap_window_tell_error (job->window, _("It couldn’t be exported"), error->message);
  }
}

static gboolean
look_cb (gpointer data)
{
  Job *job = data;

  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (job->bar), g_atomic_int_get (&job->done) / 1000.0);
  return G_SOURCE_CONTINUE;
}

static void
cancel_cb (AdwMessageDialog *dialog, const char *response, gpointer data)
{
  g_cancellable_cancel (data);
}

static void
show_progress (Job *job)
{
  job->dialog = adw_message_dialog_new (GTK_WINDOW (job->window), _(job->format->title), NULL);
  g_object_ref (job->dialog);
  gtk_widget_set_name (job->dialog, LAP_HELP_EXPORTING);
  job->bar = gtk_progress_bar_new ();
  gtk_accessible_update_property (GTK_ACCESSIBLE (job->bar), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Export"), -1);
  adw_message_dialog_set_extra_child (ADW_MESSAGE_DIALOG (job->dialog), job->bar);
  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (job->dialog), "cancel", _("_Cancel"));
  adw_message_dialog_set_close_response (ADW_MESSAGE_DIALOG (job->dialog), "cancel");
  g_signal_connect_data (job->dialog, "response", G_CALLBACK (cancel_cb), g_object_ref (job->cancellable),
                         (GClosureNotify) (GCallback) g_object_unref, 0);
  job->look = g_timeout_add (LOOK, look_cb, job);
  gtk_window_present (GTK_WINDOW (job->dialog));
}

void
lap_publish_to (LapWindow *window, const LapFormat *format, const LapPublication *how, const char *path)
{
  LapTimeline *timeline = lap_document_timeline (lap_window_document (window));
  g_autoptr (GTask) task = NULL;
  Job *job = g_new0 (Job, 1);

  job->window = g_object_ref (window);
  job->format = format;
  if (how != NULL)
    job->how = *how;
  job->how.at = job->at = g_strdup (job->how.at);
  job->how.timezone = job->timezone = g_strdup (job->how.timezone);
  job->how.from = job->from = g_strdup (job->how.from);
  job->path = g_strdup (path);
  job->bytes = lap_document_bytes (lap_window_document (window));
  job->cancellable = g_cancellable_new ();
  task = g_task_new (NULL, job->cancellable, done_cb, NULL);
  g_task_set_task_data (task, job, job_free);
  job->began = g_get_monotonic_time ();
  show_progress (job);
  if (timeline != NULL && (job->how.takes || format->flags & LAP_FORMAT_OF_TAKES) && lap_cuts_are_old (timeline))
    lap_window_tell (window, _("The plan was changed since its takes were filmed"), FALSE);
  g_task_run_in_thread (task, work);
}
