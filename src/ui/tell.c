/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/tell.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

void
lap_tell_error (GtkWindow *window, const char *what, const char *why)
{
  GtkWidget *dialog = adw_message_dialog_new (window, what, why);

  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (dialog), "close", _("_Close"));
  gtk_window_present (GTK_WINDOW (dialog));
}
