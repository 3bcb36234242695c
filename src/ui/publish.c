/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/publish.h"

#include "publish/cuts.h"
#include "store/documents.h"
#include "ui/files.h"

#include <glib/gi18n-lib.h>

#define LOOK 100 /* milliseconds between two looks at how far it is */

/* What the dialog offers: one row a format and suffix. */
typedef struct {
  const LapFormat *format;
  char            *suffix;
} Choice;

typedef struct {
  LapWindow       *window;
  const LapFormat *format;
  gboolean         takes;
  char            *path;
  GBytes          *session;
  GCancellable    *cancellable;
  GtkWidget       *dialog, *bar;
  guint            look;
  int              done; /* thousandths; atomic */
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  g_clear_object (&job->window);
  g_clear_object (&job->cancellable);
  g_clear_pointer (&job->session, g_bytes_unref);
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
  g_autoptr (LapSession) session = lap_session_from_bytes (job->session, &error);
  g_autoptr (LapTimeline) timeline = session != NULL ? lap_timeline_new (session, builtin, &error) : NULL;
  LapProgress watch = { progress_cb, job, cancellable };
  LapPublication what = { .timeline = timeline, .takes = job->takes };

  if (timeline != NULL && lap_publish (job->format, &what, job->path, &watch, &error))
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

    lap_window_tell (job->window, text, FALSE);
  } else if (!g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED))
    lap_window_tell_error (job->window, _("It couldn’t be exported"), error->message);
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
lap_publish_to (LapWindow *window, const LapFormat *format, gboolean takes, const char *path)
{
  LapTimeline *timeline = lap_document_timeline (lap_window_document (window));
  g_autoptr (GTask) task = NULL;
  Job *job = g_new0 (Job, 1);

  job->window = g_object_ref (window);
  job->format = format;
  job->takes = takes;
  job->path = g_strdup (path);
  job->session = lap_session_to_bytes (timeline->session);
  job->cancellable = g_cancellable_new ();
  task = g_task_new (NULL, job->cancellable, done_cb, NULL);
  g_task_set_task_data (task, job, job_free);
  show_progress (job);
  if ((takes || format->flags & LAP_FORMAT_OF_TAKES) && lap_cuts_are_old (timeline))
    lap_window_tell (window, _("The plan was changed since its takes were filmed"), FALSE);
  g_task_run_in_thread (task, work);
}

/* The dialog */

typedef struct {
  LapWindow *window;
  GArray    *choices;
  GtkWidget *row, *takes;
} Dialog;

/* What the file chooser answers to. */
typedef struct {
  LapWindow       *window;
  const LapFormat *format;
  gboolean         takes;
} Question;

static void
choice_clear (gpointer data)
{
  g_free (((Choice *) data)->suffix);
}

static void
dialog_free (gpointer data, GClosure *closure)
{
  Dialog *dialog = data;

  g_object_unref (dialog->window);
  g_array_unref (dialog->choices);
  g_free (dialog);
}

static void
where_cb (const char *path, gpointer data)
{
  Question *question = data;

  if (path != NULL)
    lap_publish_to (question->window, question->format, question->takes, path);
  g_object_unref (question->window);
  g_free (question);
}

static void
response_cb (AdwMessageDialog *widget, const char *response, gpointer data)
{
  Dialog *dialog = data;
  guint n = adw_combo_row_get_selected (ADW_COMBO_ROW (dialog->row));
  const Choice *choice = &g_array_index (dialog->choices, Choice, n);
  gboolean folder = g_str_equal (choice->suffix, "/");
  g_autofree char *ending = folder ? g_strdup ("") : g_strconcat (".", choice->suffix, NULL);
  g_autofree char *name = NULL;
  Question *question;

  if (!g_str_equal (response, "export"))
    return;
  name = g_strdup_printf (_("%1$s - %2$s"), lap_document_title (lap_window_document (dialog->window)),
                          _(choice->format->title));
  question = g_new (Question, 1);
  *question = (Question) { g_object_ref (dialog->window), choice->format, FALSE };
  question->takes = choice->format->flags & LAP_FORMAT_TAKES && gtk_switch_get_active (GTK_SWITCH (dialog->takes));
  lap_files_save (GTK_WINDOW (dialog->window), _("Export"), name, ending, where_cb, question);
}

static void
fill_choices (Dialog *dialog, GtkStringList *titles)
{
  for (guint i = 0; i < lap_formats_n (); i++) {
    const LapFormat *format = lap_formats_nth (i);
    g_auto (GStrv) suffixes = g_strsplit (format->suffixes, " ", -1);

    /* What needs a day isn't for film and web, and this asks for none. */
    if (!(format->flags & LAP_FORMAT_SESSION) || format->flags & LAP_FORMAT_AT)
      continue;
    for (guint k = 0; suffixes[k] != NULL; k++) {
      Choice choice = { format, g_strdup (suffixes[k]) };
      gboolean folder = g_str_equal (suffixes[k], "/");
      g_autofree char *title = g_strdup_printf (folder ? _("%s (folder)") : "%s (.%s)", _(format->title), suffixes[k]);

      g_array_append_val (dialog->choices, choice);
      gtk_string_list_append (titles, title);
    }
  }
}

static GtkWidget *
rows_of (Dialog *dialog)
{
  g_autoptr (GtkStringList) titles = gtk_string_list_new (NULL);
  GtkWidget *group = adw_preferences_group_new (), *takes = adw_action_row_new ();
  LapTimeline *timeline = lap_document_timeline (lap_window_document (dialog->window));

  fill_choices (dialog, titles);
  dialog->row = adw_combo_row_new ();
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (dialog->row), _("Format"));
  adw_combo_row_set_model (ADW_COMBO_ROW (dialog->row), G_LIST_MODEL (titles));
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), dialog->row);
  dialog->takes = gtk_switch_new ();
  gtk_widget_set_valign (dialog->takes, GTK_ALIGN_CENTER);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (takes), _("On the takes that were kept"));
  adw_action_row_add_suffix (ADW_ACTION_ROW (takes), dialog->takes);
  adw_action_row_set_activatable_widget (ADW_ACTION_ROW (takes), dialog->takes);
  gtk_widget_set_sensitive (takes, lap_rows_n (timeline->session->takes) > 0);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), takes);
  return group;
}

GtkWindow *
lap_publish_dialog_new (LapWindow *window)
{
  GtkWidget *widget = adw_message_dialog_new (GTK_WINDOW (window), _("Export for film and web"), NULL);
  AdwMessageDialog *message = ADW_MESSAGE_DIALOG (widget);
  Dialog *dialog = g_new0 (Dialog, 1);

  dialog->window = g_object_ref (window);
  dialog->choices = g_array_new (FALSE, FALSE, sizeof (Choice));
  g_array_set_clear_func (dialog->choices, choice_clear);
  adw_message_dialog_set_extra_child (message, rows_of (dialog));
  adw_message_dialog_add_responses (message, "cancel", _("_Cancel"), "export", _("_Export…"), NULL);
  adw_message_dialog_set_response_appearance (message, "export", ADW_RESPONSE_SUGGESTED);
  adw_message_dialog_set_default_response (message, "export");
  adw_message_dialog_set_close_response (message, "cancel");
  g_signal_connect_data (widget, "response", G_CALLBACK (response_cb), dialog, dialog_free, 0);
  return GTK_WINDOW (widget);
}
