/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/notify.h"

#include "ui/tell.h"

#include <glib/gi18n-lib.h>

static gint64 patience = 5 * G_USEC_PER_SEC;

void
lap_notify_set_patience (gint64 microseconds)
{
  patience = microseconds;
}

static char *
id_of (GtkWindow *window)
{
  return g_strdup_printf ("ended-%u", gtk_application_window_get_id (GTK_APPLICATION_WINDOW (window)));
}

/* Some window of the program has the keyboard. */
static gboolean
somebody_looks (void)
{
  GListModel *all = gtk_window_get_toplevels ();

  for (guint i = 0; i < g_list_model_get_n_items (all); i++) {
    g_autoptr (GtkWindow) window = g_list_model_get_item (all, i);

    if (gtk_window_is_active (window))
      return TRUE;
  }
  return FALSE;
}

static void
looked_cb (GtkWindow *window)
{
  g_autofree char *id = id_of (window);
  GtkApplication *application = gtk_window_get_application (window);

  if (!gtk_window_is_active (window) || application == NULL)
    return;
  g_application_withdraw_notification (G_APPLICATION (application), id);
  g_signal_handlers_disconnect_by_func (window, looked_cb, NULL);
}

void
lap_notify_ended (GtkWindow *window, gint64 began, const char *title, const char *text, const char *path)
{
  GtkApplication *application = gtk_window_get_application (window);
  g_autoptr (GNotification) notification = NULL;
  g_autofree char *id = NULL;

  if (application == NULL || g_get_monotonic_time () - began < patience || somebody_looks ())
    return;
  notification = g_notification_new (title);
  g_notification_set_body (notification, text);
  g_notification_set_default_action_and_target (notification, "app.raise-window", "u",
                                                gtk_application_window_get_id (GTK_APPLICATION_WINDOW (window)));
  if (path != NULL) {
    g_autofree char *folder = g_file_test (path, G_FILE_TEST_IS_DIR) ? g_strdup (path) : g_path_get_dirname (path);

    g_notification_add_button_with_target (notification, _("Show the folder"), "app.show-folder", "s", folder);
  }
  id = id_of (window);
  g_application_send_notification (G_APPLICATION (application), id, notification);
  g_signal_handlers_disconnect_by_func (window, looked_cb, NULL);
  g_signal_connect (window, "notify::is-active", G_CALLBACK (looked_cb), NULL);
}

/* Actions */

static void
raise_action (GSimpleAction *action, GVariant *parameter, gpointer application)
{
  GtkWindow *window = gtk_application_get_window_by_id (application, g_variant_get_uint32 (parameter));

  if (window != NULL) /* it may be closed meanwhile */
    gtk_window_present (window);
  else
    g_application_activate (application);
}

static void
shown_cb (GObject *source, GAsyncResult *result, gpointer application)
{
  g_autoptr (GError) error = NULL;
  GtkWindow *window = gtk_application_get_active_window (application);

  if (!g_app_info_launch_default_for_uri_finish (result, &error) && window != NULL)
    lap_tell_error (window, _("The folder can’t be shown"), error->message);
  g_application_release (application);
}

static void
folder_action (GSimpleAction *action, GVariant *parameter, gpointer application)
{
  g_autoptr (GFile) folder = g_file_new_for_path (g_variant_get_string (parameter, NULL));
  g_autofree char *uri = g_file_get_uri (folder);

  g_application_hold (application);
  g_app_info_launch_default_for_uri_async (uri, NULL, NULL, shown_cb, application);
}

void
lap_notify_install (GApplication *application)
{
  static const GActionEntry actions[] = {
    { "raise-window", raise_action, "u" }, { "show-folder", folder_action, "s" },
  };

  g_action_map_add_action_entries (G_ACTION_MAP (application), actions, G_N_ELEMENTS (actions), application);
}
