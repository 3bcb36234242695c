/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/saving.h"

#include "base/error.h"
#include "ui/application.h"
#include "ui/files.h"
#include "ui/help.h"
#include "ui/recent.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapWindow *window;
  char      *path;  /* NULL = its own */
  gboolean   close;
} Saving;

static Saving *
saving_new (LapWindow *self, const char *path, gboolean close)
{
  Saving *saving = g_new (Saving, 1);

  *saving = (Saving) { g_object_ref (self), g_strdup (path), close };
  return saving;
}

static void
saving_free (Saving *saving)
{
  g_object_unref (saving->window);
  g_free (saving->path);
  g_free (saving);
}

static GtkWidget *
question_new (LapWindow *self, const char *what, const char *more)
{
  GtkWidget *dialog = adw_message_dialog_new (GTK_WINDOW (self), what, more);

  gtk_widget_set_name (dialog, LAP_HELP_FILE);
  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (dialog), "cancel", _("_Cancel"));
  adw_message_dialog_set_close_response (ADW_MESSAGE_DIALOG (dialog), "cancel");
  return dialog;
}

static void save (Saving *saving, gboolean whatever);
static void ask_where (LapWindow *self, gboolean close);

static void
overwrite_cb (AdwMessageDialog *dialog, const char *response, Saving *saving)
{
  if (g_str_equal (response, "overwrite"))
    save (saving, TRUE);
  else {
    if (g_str_equal (response, "copy"))
      ask_where (saving->window, saving->close);
    saving_free (saving);
  }
}

static void
ask_about_other_writer (Saving *saving)
{
  GtkWidget *dialog = question_new (saving->window, _("The file was changed by somebody else"),
                                    _("Saving replaces what was written since you opened it."));
  AdwMessageDialog *message = ADW_MESSAGE_DIALOG (dialog);

  adw_message_dialog_add_responses (message, "copy", _("Save a _copy…"), "overwrite", _("_Replace"), NULL);
  adw_message_dialog_set_response_appearance (message, "overwrite", ADW_RESPONSE_DESTRUCTIVE);
  g_signal_connect (dialog, "response", G_CALLBACK (overwrite_cb), saving);
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
saved_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  Saving *saving = data;
  LapWindow *self = saving->window;
  g_autoptr (GError) error = NULL;

  if (lap_document_save_finish (lap_window_document (self), result, &error)) {
    g_autofree char *name = g_path_get_basename (lap_document_path (lap_window_document (self)));
    g_autofree char *text = g_strdup_printf (_("Saved as %s"), name);

    lap_window_tell (self, text, FALSE);
    lap_recent_note (lap_document_path (lap_window_document (self)), lap_document_week (lap_window_document (self)) != NULL);
    if (saving->close)
      lap_window_close_anyway (self);
  } else if (g_error_matches (error, LAP_ERROR, LAP_ERROR_CHANGED)) {
    ask_about_other_writer (saving);
    return;
  } else
    lap_window_tell_error (self, _("It couldn’t be saved"), error->message);
  saving_free (saving);
}

static void
save (Saving *saving, gboolean whatever)
{
  lap_document_save (lap_window_document (saving->window), saving->path, whatever, saved_cb, saving);
}

void
lap_saving_to (LapWindow *self, const char *path, gboolean close)
{
  lap_window_commit (self);
  save (saving_new (self, path, close), FALSE);
}

static void
where_cb (const char *path, gpointer data)
{
  Saving *saving = data;

  if (path != NULL)
    lap_saving_to (saving->window, path, saving->close);
  saving_free (saving);
}

static void
ask_where (LapWindow *self, gboolean close)
{
  LapDocument *document = lap_window_document (self);
  gboolean week = lap_document_week (document) != NULL;

  lap_files_save (GTK_WINDOW (self), week ? _("Save the week") : _("Save the session"), lap_document_title (document),
                  week ? ".lapweek" : ".lapwing", where_cb, saving_new (self, NULL, close));
}

static void
save_or_ask (LapWindow *self, gboolean close)
{
  if (lap_document_path (lap_window_document (self)) != NULL)
    lap_saving_to (self, NULL, close);
  else
    ask_where (self, close);
}

/* What can't be changed can't be written either; that it says. */
static void
save_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapDocument *document = lap_window_document (LAP_WINDOW (widget));

  if (!lap_document_is_editable (document))
    lap_document_tell (document, lap_document_why_not (document));
  else if (g_str_equal (name, "win.save"))
    save_or_ask (LAP_WINDOW (widget), FALSE);
  else
    ask_where (LAP_WINDOW (widget), FALSE);
}

static void
close_cb (AdwMessageDialog *dialog, const char *response, LapWindow *self)
{
  if (g_str_equal (response, "save"))
    save_or_ask (self, TRUE);
  else if (g_str_equal (response, "discard")) {
    /* The dialog outlives the window by a moment and must not look for it. */
    gtk_window_set_transient_for (GTK_WINDOW (dialog), NULL);
    lap_window_close_anyway (self);
  }
}

void
lap_saving_ask_before_closing (LapWindow *self)
{
  g_autofree char *what = g_strdup_printf (_("Save “%s” before closing?"), lap_document_title (lap_window_document (self)));
  GtkWidget *dialog = question_new (self, what, _("What isn’t saved is lost."));
  AdwMessageDialog *message = ADW_MESSAGE_DIALOG (dialog);

  adw_message_dialog_add_responses (message, "discard", _("_Discard"), "save", _("_Save"), NULL);
  adw_message_dialog_set_response_appearance (message, "discard", ADW_RESPONSE_DESTRUCTIVE);
  adw_message_dialog_set_response_appearance (message, "save", ADW_RESPONSE_SUGGESTED);
  adw_message_dialog_set_default_response (message, "save");
  g_signal_connect_object (dialog, "response", G_CALLBACK (close_cb), self, 0);
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
revert_cb (AdwMessageDialog *dialog, const char *response, LapWindow *self)
{
  g_autoptr (GError) error = NULL;

  if (g_str_equal (response, "revert") && !lap_document_reload (lap_window_document (self), &error))
    lap_window_tell_error (self, _("The file can’t be read again"), error->message);
}

static void
revert_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);
  GtkWidget *dialog = question_new (self, _("Go back to what the file holds?"),
                                    _("What you changed since is taken back. That can be undone."));
  AdwMessageDialog *message = ADW_MESSAGE_DIALOG (dialog);

  adw_message_dialog_add_response (message, "revert", _("_Go back"));
  adw_message_dialog_set_response_appearance (message, "revert", ADW_RESPONSE_DESTRUCTIVE);
  g_signal_connect_object (dialog, "response", G_CALLBACK (revert_cb), self, 0);
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
duplicate_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);
  LapApplication *application = LAP_APPLICATION (gtk_window_get_application (GTK_WINDOW (self)));
  g_autoptr (LapDocument) copy = NULL;

  lap_window_commit (self);
  copy = lap_document_duplicate (lap_window_document (self));
  lap_application_show (application, copy);
}

void
lap_saving_install (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.save", NULL, save_action);
  gtk_widget_class_install_action (klass, "win.save-as", NULL, save_action);
  gtk_widget_class_install_action (klass, "win.revert", NULL, revert_action);
  gtk_widget_class_install_action (klass, "win.duplicate", NULL, duplicate_action);
}
