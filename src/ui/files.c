/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/files.h"

#include "ui/help.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

typedef struct {
  GtkFileChooserNative *dialog;
  char                 *suffix, *longer; /* the path with the suffix that nobody typed */
  LapFileFunc           func;
  gpointer              data;
} Question;

/* NULL where it has its suffix, or needs none. */
static char *
with_suffix (const char *path, const char *suffix)
{
  return path == NULL || suffix == NULL || g_str_has_suffix (path, suffix) ? NULL : g_strconcat (path, suffix, NULL);
}

static void
answer (Question *question, const char *path)
{
  question->func (path, question->data);
  g_object_unref (question->dialog);
  g_free (question->longer);
  g_free (question->suffix);
  g_free (question);
}

static void
replace_cb (AdwMessageDialog *dialog, const char *response, Question *question)
{
  answer (question, g_str_equal (response, "replace") ? question->longer : NULL);
}

/* GTK has asked about the name as it was typed, not about the one with the suffix. */
static void
ask_to_replace (Question *question)
{
  g_autofree char *name = g_path_get_basename (question->longer);
  g_autofree char *what = g_strdup_printf (_("“%s” is there already"), name);
  GtkWindow *over = gtk_native_dialog_get_transient_for (GTK_NATIVE_DIALOG (question->dialog));
  AdwMessageDialog *dialog = ADW_MESSAGE_DIALOG (adw_message_dialog_new (over, what, _("Replacing it loses what it holds.")));

  adw_message_dialog_add_responses (dialog, "cancel", _("_Cancel"), "replace", _("_Replace"), NULL);
  adw_message_dialog_set_close_response (dialog, "cancel");
  adw_message_dialog_set_response_appearance (dialog, "replace", ADW_RESPONSE_DESTRUCTIVE);
  gtk_widget_set_name (GTK_WIDGET (dialog), LAP_HELP_FILE);
  g_signal_connect (dialog, "response", G_CALLBACK (replace_cb), question);
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
response_cb (GtkNativeDialog *dialog, int response, Question *question)
{
  g_autoptr (GFile) file = NULL;
  g_autofree char *path = NULL;

  if (response == GTK_RESPONSE_ACCEPT)
    file = gtk_file_chooser_get_file (GTK_FILE_CHOOSER (dialog));
  if (file != NULL)
    path = g_file_get_path (file);
  question->longer = with_suffix (path, question->suffix);
  if (question->longer != NULL && g_file_test (question->longer, G_FILE_TEST_EXISTS))
    ask_to_replace (question);
  else
    answer (question, question->longer != NULL ? question->longer : path);
}

static void
ask (GtkFileChooserNative *dialog, const char *suffix, LapFileFunc func, gpointer data)
{
  Question *question = g_new (Question, 1);

  *question = (Question) { dialog, g_strdup (suffix), NULL, func, data };
  gtk_native_dialog_set_modal (GTK_NATIVE_DIALOG (dialog), TRUE);
  g_signal_connect (dialog, "response", G_CALLBACK (response_cb), question);
  gtk_native_dialog_show (GTK_NATIVE_DIALOG (dialog));
}

static void
add_filter (GtkFileChooserNative *dialog, const char *name, const char *const *patterns)
{
  g_autoptr (GtkFileFilter) filter = gtk_file_filter_new ();

  gtk_file_filter_set_name (filter, name);
  for (guint i = 0; patterns[i] != NULL; i++)
    gtk_file_filter_add_pattern (filter, patterns[i]);
  gtk_file_chooser_add_filter (GTK_FILE_CHOOSER (dialog), filter);
}

void
lap_files_choose (GtkWindow *parent, const char *title, const char *kind, const char *const *patterns,
                  const char *beside, LapFileFunc func, gpointer data)
{
  static const char *const every[] = { "*", NULL };
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (title, parent, GTK_FILE_CHOOSER_ACTION_OPEN, NULL, NULL);

  if (beside != NULL) {
    g_autoptr (GFile) file = g_file_new_for_path (beside), folder = g_file_get_parent (file);

    gtk_file_chooser_set_current_folder (GTK_FILE_CHOOSER (dialog), folder, NULL);
  }
  add_filter (dialog, kind, patterns);
  add_filter (dialog, _("All files"), every);
  ask (dialog, NULL, func, data);
}

gboolean
lap_files_is_table (const char *path)
{
  g_autofree char *lower = g_ascii_strdown (path, -1);

  return g_str_has_suffix (lower, ".csv");
}

void
lap_files_open (GtkWindow *parent, LapFileFunc func, gpointer data)
{
  static const char *const documents[] = { "*.lapwing", "*.lapweek", "*.csv", "*.CSV", NULL };

  lap_files_choose (parent, _("Open a session or a week"), _("Sessions, weeks and tables of classes"), documents, NULL, func, data);
}

void
lap_files_folder (GtkWindow *parent, const char *title, LapFileFunc func, gpointer data)
{
  ask (gtk_file_chooser_native_new (title, parent, GTK_FILE_CHOOSER_ACTION_SELECT_FOLDER, NULL, NULL), NULL, func, data);
}

void
lap_files_save (GtkWindow *parent, const char *title, const char *name, const char *suffix, LapFileFunc func,
                gpointer data)
{
  GtkFileChooserNative *dialog = gtk_file_chooser_native_new (title, parent, GTK_FILE_CHOOSER_ACTION_SAVE, NULL, NULL);
  g_autofree char *offered = g_strconcat (name, suffix, NULL);

  gtk_file_chooser_set_current_name (GTK_FILE_CHOOSER (dialog), g_strdelimit (offered, G_DIR_SEPARATOR_S, '-'));
  ask (dialog, suffix, func, data);
}
