/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/errand.h"

#include "ui/help.h"
#include "ui/notify.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapErrandKind kind;
  LapWindow    *window;
  GApplication *application;
  GtkWidget    *dialog;
  LapWorker    *worker;
  gint64        began;
  gulong        shows; /* handler of the window */
} Errand;

static void
errand_free (Errand *errand)
{
  g_clear_signal_handler (&errand->shows, errand->window);
  gtk_window_destroy (GTK_WINDOW (errand->dialog));
  g_object_unref (errand->dialog);
  lap_worker_end (errand->worker);
  g_object_unref (errand->window);
  g_application_release (errand->application);
  g_free (errand);
}

/* Its window wasn't closed meanwhile. */
static gboolean
is_open (Errand *errand)
{
  return gtk_window_get_application (GTK_WINDOW (errand->window)) != NULL;
}

/* Somebody who works elsewhere isn't called back to look at a bar. */
static void
show (Errand *errand)
{
  if (is_open (errand) && gtk_window_is_active (GTK_WINDOW (errand->window)))
    gtk_window_present (GTK_WINDOW (errand->dialog));
}

static void
waits_cb (gpointer owner)
{
  Errand *errand = owner;

  errand->shows = g_signal_connect_swapped (errand->window, "notify::is-active", G_CALLBACK (show), errand);
  show (errand);
}

static void
found_cb (gpointer owner, gpointer answer)
{
  Errand *errand = owner;

  gtk_widget_set_visible (errand->dialog, FALSE);
  if (is_open (errand))
    errand->kind.done (errand->window, lap_worker_problem (errand->worker), answer, errand->began);
  else if (errand->kind.free_answer != NULL)
    errand->kind.free_answer (answer);
  errand_free (errand);
}

static void
failed_cb (gpointer owner, const GError *error)
{
  Errand *errand = owner;
  const char *title = g_dgettext (GETTEXT_PACKAGE, errand->kind.failed);

  if (is_open (errand) && !g_error_matches (error, G_IO_ERROR, G_IO_ERROR_CANCELLED)) {
    lap_notify_ended (GTK_WINDOW (errand->window), errand->began, title, error->message, NULL);
    lap_window_tell_error (errand->window, title, error->message);
  }
  errand_free (errand);
}

/* The dialog goes by itself. */
static void
cancel_cb (Errand *errand)
{
  g_clear_signal_handler (&errand->shows, errand->window);
  lap_worker_cancel (errand->worker);
}

static GtkWidget *
make_dialog (Errand *errand, const char *title)
{
  GtkWidget *bar = gtk_progress_bar_new ();

  errand->dialog = g_object_ref (adw_message_dialog_new (GTK_WINDOW (errand->window), title, NULL));
  gtk_widget_set_name (errand->dialog, LAP_HELP_EXPORTING);
  gtk_accessible_update_property (GTK_ACCESSIBLE (bar), GTK_ACCESSIBLE_PROPERTY_LABEL, _("How far it is"), -1);
  adw_message_dialog_set_extra_child (ADW_MESSAGE_DIALOG (errand->dialog), bar);
  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (errand->dialog), "cancel", _("_Cancel"));
  adw_message_dialog_set_close_response (ADW_MESSAGE_DIALOG (errand->dialog), "cancel");
  g_signal_connect_swapped (errand->dialog, "response", G_CALLBACK (cancel_cb), errand);
  return bar;
}

void
lap_errand_run (LapWindow *window, const LapErrandKind *kind, gpointer problem, const char *title)
{
  const LapWorkerKind work = { kind->work, waits_cb, found_cb, failed_cb, kind->free_problem, kind->free_answer };
  Errand *errand = g_new0 (Errand, 1);
  GtkWidget *bar;

  errand->kind = *kind;
  errand->window = g_object_ref (window);
  errand->application = G_APPLICATION (gtk_window_get_application (GTK_WINDOW (window)));
  errand->began = g_get_monotonic_time ();
  g_application_hold (errand->application);
  bar = make_dialog (errand, title);
  errand->worker = lap_worker_start (&work, problem, GTK_PROGRESS_BAR (bar), errand);
}

void
lap_errand_tell_wrote (LapWindow *window, const char *path, gint64 began)
{
  g_autofree char *name = g_path_get_basename (path), *text = g_strdup_printf (_("Exported as %s"), name);

  lap_notify_ended (GTK_WINDOW (window), began, text, lap_document_title (lap_window_document (window)), path);
  lap_window_tell (window, text, FALSE);
}
