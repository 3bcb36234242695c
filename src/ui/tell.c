/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/tell.h"

#include <glib/gi18n-lib.h>

void
lap_tell_error (GtkWindow *window, const char *what, const char *why)
{
  GtkWidget *dialog = adw_message_dialog_new (window, what, why);

  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (dialog), "close", _("_Close"));
  gtk_window_present (GTK_WINDOW (dialog));
}

void
lap_tell_in (AdwPreferencesWindow *dialog, const char *text)
{
  g_autofree char *markup = g_markup_escape_text (text, -1);

  adw_preferences_window_add_toast (dialog, adw_toast_new (markup));
}

void
lap_tell_refused (AdwPreferencesWindow *dialog, const char *text, gboolean undoable)
{
  if (!undoable)
    lap_tell_in (dialog, text);
}
